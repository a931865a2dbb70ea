"""Where the program begins: ``studio-planner`` and ``python -m studio_planner``."""

from __future__ import annotations

import sys

from studio_planner.assembly import run


def main() -> int:
    """Run with the arguments of the command line; returns the exit code."""
    return run(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(main())
