"""What the record of practice has to know: where it may be sent, and what times are worth."""

from __future__ import annotations

from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.training.path import indicative
from corymb.views.training import RecordView


def record_view(catalogue: Catalogue) -> RecordView:
    """The page; what was made and answered stands on the telephone alone."""
    house = catalogue.studio.house
    return RecordView(house.contact.email, house.name, indicative())
