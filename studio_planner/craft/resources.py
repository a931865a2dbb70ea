"""Where the files of ``resources/`` lie: icons, the sample studio, words, sourced tables."""

from __future__ import annotations

import sys
from pathlib import Path

PACKAGE = Path(__file__).resolve().parents[1]


def resource_path(name: str) -> Path:
    """The file or folder ``name`` of ``resources/``, as ``"published/cure_times.csv"``.

    It is found in the three places where the program can live: a frozen build (the folder
    it unpacks to), an installed wheel (inside the package) and the source tree (beside it).

    Raises
    ------
    FileNotFoundError
        None of the three holds it: the installation is not whole.
    """
    for root in _roots():
        path = root / name
        if path.exists():
            return path
    sentence = f"The program's own file resources/{name} is missing: install the program again."
    raise FileNotFoundError(sentence)


def _roots() -> list[Path]:
    unpacked = getattr(sys, "_MEIPASS", None)
    frozen = [Path(unpacked) / "studio_planner" / "resources"] if unpacked else []
    return [*frozen, PACKAGE / "resources", PACKAGE.parent / "resources"]
