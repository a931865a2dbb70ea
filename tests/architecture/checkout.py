"""The checkout as the tests of its shape see it, and a way to run its tools."""

from __future__ import annotations

import fnmatch
import os
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "studio_planner"
TEXT = {".cfg", ".css", ".csv", ".json", ".lock", ".md", ".py", ".svg", ".toml", ".txt", ""}


def run(*arguments: str, folder: Path = ROOT) -> tuple[int, str]:
    """Run this Python with ``arguments`` in ``folder``; exit code, and all that it prints."""
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    ended = subprocess.run(  # noqa: S603 - the arguments are written in these tests
        [sys.executable, *arguments],
        cwd=folder,
        env={**kept, "PYTHONUTF8": "1", "NO_COLOR": "1", "COLUMNS": "200"},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        check=False,
    )
    return ended.returncode, ended.stdout


def own_files(*folders: str) -> Iterator[Path]:
    """Every text file of ``folders`` (or of the whole checkout) that git would keep."""
    starts = [ROOT / folder for folder in folders] or [
        entry for entry in ROOT.iterdir() if entry.name != ".git" and not is_ignored(entry.name)
    ]
    for start in starts:
        found = [start] if start.is_file() else sorted(start.rglob("*"))
        yield from (path for path in found if path.is_file() and _is_own_text(path))


def is_ignored(name: str) -> bool:
    """Whether .gitignore leaves out ``name`` at the top of the checkout."""
    lines = (ROOT / ".gitignore").read_text(encoding="utf-8").splitlines()
    patterns = [line.strip("/") for line in lines if line and not line.startswith("#")]
    return any(fnmatch.fnmatch(name, pattern) for pattern in patterns)


def _is_own_text(path: Path) -> bool:
    return path.suffix in TEXT and not any(map(is_ignored, path.relative_to(ROOT).parts))
