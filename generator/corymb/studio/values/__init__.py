"""Friendly values: what a florist writes by hand, read into exact values and printed back.

One module for each kind. Each has frozen values, `parse_…(text)`, which raises ValueError with a
sentence that says what is wrong and what would be right, and `str(value)`, which prints the
canonical text: reading that again gives the same value. `fields` makes them usable in models.
"""
