"""Can someone guess a style link's page after all, by a code that others have seen?"""

from __future__ import annotations

from corymb.studio.examples import example_of
from corymb.studio.models.link import StyleLink, fresh_code
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio


def known_codes(studio: Studio) -> list[Problem]:
    """Every code that was copied: from Corymb's own example, or from another link.

    In capitals too, since the two pages would be one file on many computers.
    """
    whose = {example_of(StyleLink, "code").lower(): "Corymb's own example"}
    problems = []
    for known_as, link in sorted(studio.links.items()):
        source = studio.sources["link", known_as]
        if source.in_doubt("code"):  # an example stands in for what is missing or wrong
            continue
        code = link.code.lower()
        if code in whose:
            message = (
                f"This is the code of {whose[code]}: a page that nobody else finds needs one "
                f"of its own, like ‘{fresh_code()}’."
            )
            problems.append(source.problem(message, "code"))
        whose.setdefault(code, f"the style link ‘{known_as}’")
    return problems
