"""The finished sites in a real Chromium: what a visitor sees, hears read out, taps and types."""
