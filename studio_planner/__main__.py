"""Where the program begins: ``studio-planner`` and ``python -m studio_planner``."""

from __future__ import annotations

import sys

from studio_planner.assembly import run


def main() -> int:
    """Run with the arguments of the command line; returns the exit code."""
    if getattr(sys, "frozen", False):
        # In a frozen program this is also what the solving process starts with.
        from multiprocessing import freeze_support  # noqa: PLC0415

        freeze_support()
    return run(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(main())
