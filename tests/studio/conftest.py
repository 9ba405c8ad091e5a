"""Tests that try many texts take as long as they need, on a busy machine too."""

from hypothesis import settings

settings.register_profile("patient", deadline=None)
settings.load_profile("patient")
