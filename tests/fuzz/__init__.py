"""Does it hold? Long tries by hand, each a command: `python -m tests.fuzz.NAME`."""
