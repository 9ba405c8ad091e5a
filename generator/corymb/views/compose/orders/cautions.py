"""What is to be taken care of with an order: its plants, candles near dried stems, warm days?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import and_list
from corymb.studio.models import Stem
from corymb.trade.dried import is_dried
from corymb.trade.hours.clock import between
from corymb.trade.hours.heat import HOT_FROM, heat_advice
from corymb.trade.orders.due import Due
from corymb.trade.orders.timed import Timed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import at_the_bench, plant_of

WARM_MONTHS = range(4, 11)
"""April to October may turn warm in the north; in the south it is the other half. House value."""

CANDLES = noted(
    "Candles: no naked flame near flowers, ribbon or cloth. Deep glasses, a hand's breadth clear "
    "all round, never left alone."
)
DRIED = noted("{names}: dried, and burns at a touch. Keep it well away from candles and hot lamps.")
BLOWS_OVER = noted("Under the sky: weight every vessel, and stand tall pieces out of the wind.")


def cautions_for(catalogue: Catalogue, due: Due, of_due: Timed) -> tuple[str, ...]:
    """The usual cautions of the trade (common practice, no source), fire first."""
    stems = [catalogue.stem(known_as) for known_as in _stems(of_due)]
    return (*_fire(due, stems), *_wind(due), *at_the_bench(stems))


def hot_advice(catalogue: Catalogue, due: Due, of_due: Timed) -> tuple[str, ...]:
    """What to do where the day turns hot; nothing outside the warm months."""
    if not may_be_warm(due.day, catalogue.studio.house.place.latitude):
        return ()
    given, used = of_due.timeline.steps[-2:]
    hours = between(given.start, used.end).total_seconds() / 3600
    return heat_advice(HOT_FROM, round(hours), of_due.cut_at_in_heat)


def may_be_warm(day: date, latitude: float) -> bool:
    """Whether a day lies in the half of the year that can turn hot."""
    month = day.month if latitude >= 0 else (day.month + 5) % 12 + 1
    return month in WARM_MONTHS


def _stems(of_due: Timed) -> dict[str, None]:
    return dict.fromkeys(stem for line in of_due.lines for stem in line.stems)


def _fire(due: Due, stems: Iterable[Stem]) -> Iterator[str]:
    """By candle always; dried stems where candles or lamps shine."""
    light = due.order.where.light
    if light == "candle":
        yield _(CANDLES)
    dried = dict.fromkeys(plant_of(stem) for stem in stems if is_dried(stem))
    if dried and light != "daylight":
        yield _(DRIED).format(names=and_list(dried))


def _wind(due: Due) -> Iterator[str]:
    if due.order.where.setting != "indoors":
        yield _(BLOWS_OVER)
