"""Would a page of the studio's own stand where the site has one already?"""

from __future__ import annotations

from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.views.compose import addresses


def taken_names(studio: Studio) -> list[Problem]:
    """Each page whose file has the name of a page that every site can have."""
    problems = []
    for page_id in studio.pages:
        if (address := addresses.of_page(page_id)) in addresses.FIXED:
            source = studio.sources["page", page_id]
            message = (
                f"The site has a page of its own at {address}: rename this file, for instance to "
                f"‘our-{page_id}.md’."
            )
            problems.append(Problem(source.file, 1, 1, message, source.line_of(1)))
    return problems
