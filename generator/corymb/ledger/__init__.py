"""What was worked out, from what, and does it still hold now that a file has changed?

Whoever works something out marks it `@kept`; whatever it reads it reads from what is `Followed`,
or from what is kept as well.
"""

from corymb.ledger.as_asked import AsAsked
from corymb.ledger.followed import Followed
from corymb.ledger.keeping import HasLedger, kept
from corymb.ledger.ledger import Key, Ledger

__all__ = ["AsAsked", "Followed", "HasLedger", "Key", "Ledger", "kept"]
