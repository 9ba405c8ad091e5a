"""The calculations of the trade: pure functions on plain values. No file, clock or page here."""
