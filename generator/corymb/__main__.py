"""Where the `corymb` command begins: Ctrl+C ends it quietly while the rest is still being read."""

from __future__ import annotations

import sys


def main() -> None:
    """Run the command; reading its parts takes about a second, so that comes in here."""
    try:
        from corymb.cli import main as command
    except KeyboardInterrupt:
        sys.exit("\nStopped.")  # as the command itself says later on
    command()


if __name__ == "__main__":
    main()
