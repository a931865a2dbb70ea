"""Bring the list of texts up to date with the source, and make what the program reads of it.

    python packaging/translations.py

Run it with the project's own Python. New texts come into resources/translations/*.ts as
unfinished; write their translation there, in any editor or with Qt's linguist, and run it
again.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import Final

import PySide6

ROOT: Final = Path(__file__).resolve().parents[1]
TEXTS: Final = ROOT / "resources" / "translations"
SOURCE: Final = ROOT / "studio_planner"
_END: Final = ".exe" if sys.platform == "win32" else ""
_READ: Final = (
    *("-extensions", "py", "-tr-function-alias", "translate+=marked"),
    *("-no-obsolete", "-locations", "none", "-silent"),
    *("-disable-heuristic", "sametext", "-disable-heuristic", "similartext"),
)


def tool(name: str) -> str:
    """Where one of Qt's own programs lies: lupdate, or lrelease."""
    return str(Path(PySide6.__file__).parent / f"{name}{_END}")


def update(texts: Path) -> None:
    """Bring every text of the source into the list `texts`, and take out what is gone."""
    subprocess.run([tool("lupdate"), *_READ, str(SOURCE), "-ts", str(texts)], check=True)


def release(texts: Path, made: Path) -> str:
    """Make what the program reads; give what Qt says of it."""
    program = [tool("lrelease"), str(texts), "-qm", str(made)]
    return subprocess.run(program, check=True, capture_output=True, text=True).stdout


def main() -> int:
    """Do both for every language; 1 when a text has no translation yet."""
    unfinished = 0
    for texts in sorted(TEXTS.glob("*.ts")):
        update(texts)
        print(release(texts, texts.with_suffix(".qm")).strip())
        unfinished += texts.read_text(encoding="utf-8").count('type="unfinished"')
    print(f"{unfinished} texts have no translation yet.")
    return 1 if unfinished else 0


if __name__ == "__main__":
    sys.exit(main())
