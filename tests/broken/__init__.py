"""A small good studio, and every way in which a hand can slip in its files."""
