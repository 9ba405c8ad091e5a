"""How long a piece should take whoever makes it for the first time, the second, the tenth?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.trade.hours.learning import HELPER, whole_minutes
from corymb.trade.looks import Look
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.compose.look_words import Words
from corymb.views.compose.training.path import indicative
from corymb.views.training import ExpectedView

TIMES = 20
"""So many pieces are told apart; further on a helper hardly gets quicker."""


def expected_view(catalogue: Catalogue, look: Look) -> ExpectedView:
    """The recipe's time, and a helper's for each piece, by Wright's curve."""
    minutes = Words.of(catalogue.studio, look).told("time").minutes
    helper = tuple(whole_minutes(HELPER.piece_minutes(minutes, n)) for n in range(1, TIMES + 1))
    told = _("A practised hand takes {practised}; a helper {first} at first, {tenth} by the tenth.")
    return ExpectedView(
        minutes=minutes,
        helper=helper,
        words=told.format(
            practised=time_words(minutes),
            first=time_words(helper[0]),
            tenth=time_words(helper[9]),
        ),
        indicative=indicative(),
    )
