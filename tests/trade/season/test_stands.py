"""What stands in a week, by how sure it is."""

from __future__ import annotations

from corymb.studio.models import CutLog
from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.beds import Beds
from corymb.trade.season.stands import by_how_sure
from tests.trade.making import stem


def test_what_the_windows_hold_stands_though_the_log_doubts_it() -> None:
    years = {
        year: CutLog.model_validate({"cuts": {"rose": "June, 5 January - 14 January"}})
        for year in ("2024", "2025")
    }
    beds = Beds({"rose": stem("rose", in_season="June")}, years)
    assert by_how_sure(beds, ["rose"], IsoWeek(2027, 2)) == {"touch and go": ("rose",)}
    assert by_how_sure(beds, ["rose"], IsoWeek(2027, 6)) == {}


def test_what_stands_is_told_by_how_sure_it_is() -> None:
    stems = {
        "rose": stem("rose", in_season="W10 - W40"),
        "poppy": stem("poppy", in_season="W23 - W40"),
        "mint": stem("mint", in_season="W40 - W45"),
        "ivy": stem("ivy", in_season="all year"),
    }
    # The middle of week 23 is three days after its Monday, the poppy's first day: half a spread.
    assert by_how_sure(Beds(stems), stems, IsoWeek(2027, 23)) == {
        "sure": ("rose", "ivy"),
        "likely": ("poppy",),
    }
