"""What is in a studio's files? One module for each kind of file; keys are the fields' names."""

from corymb.studio.models.link import StyleLink
from corymb.studio.models.log import CutLog
from corymb.studio.models.made import MadeWork
from corymb.studio.models.order import Order, StandingOrder
from corymb.studio.models.photo import Photo
from corymb.studio.models.prose import Page, Technique
from corymb.studio.models.recipe import Drop, Recipe, RecipeLine, Sundry, Swap, Variant, Vessel
from corymb.studio.models.stem import Conditioning, Stem, StemFile
from corymb.studio.models.studio_file import ColourThresholds, StudioFile, Style
from corymb.studio.models.walk import Walk

__all__ = [
    "ColourThresholds",
    "Conditioning",
    "CutLog",
    "Drop",
    "MadeWork",
    "Order",
    "Page",
    "Photo",
    "Recipe",
    "RecipeLine",
    "StandingOrder",
    "Stem",
    "StemFile",
    "StudioFile",
    "Style",
    "StyleLink",
    "Sundry",
    "Swap",
    "Technique",
    "Variant",
    "Vessel",
    "Walk",
]
