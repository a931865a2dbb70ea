"""The rooms import downwards only; each contract of pyproject.toml is shown to bite."""

from __future__ import annotations

import shutil
from typing import TYPE_CHECKING

import pytest

from tests.architecture.checkout import PACKAGE, ROOT, run

if TYPE_CHECKING:
    from pathlib import Path

LINT = ("-c", "from importlinter.cli import lint_imports_command as lint; lint()", "--no-cache")


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the package and its contracts, to plant wrong imports in."""
    folder = tmp_path_factory.mktemp("planted")
    shutil.copy(ROOT / "pyproject.toml", folder)
    shutil.copytree(
        PACKAGE, folder / PACKAGE.name, ignore=shutil.ignore_patterns("__pycache__")
    )
    return folder


def test_every_contract_is_kept() -> None:
    code, text = run(*LINT)
    assert code == 0, text


@pytest.mark.parametrize(
    ("contract", "room", "line"),
    [
        ("rooms", "science", "import studio_planner.craft"),
        ("rooms", "craft", "import studio_planner.services"),
        ("rooms", "planning", "import studio_planner.storage"),
        ("rooms", "storage", "import studio_planner.planning"),
        ("rooms", "services", "import studio_planner.terminal"),
        ("rooms", "terminal", "import studio_planner.desktop"),
        ("rooms", "ringing", "import studio_planner.assembly"),
        ("qt", "science", "import PySide6.QtCore"),
        ("qt", "services", "from PySide6 import QtCore"),
        ("qt", "terminal", "import PySide6.QtGui"),
        ("qt", "ringing", "import shiboken6"),
        ("sqlite", "services", "import sqlite3"),
        ("sqlite", "desktop", "from sqlite3 import connect"),
        ("light", "science", "import numpy"),
        ("light", "planning", "from ortools.sat.python import cp_model"),
        ("light", "desktop", "import pandas"),
        ("light", "craft", "from scipy import integrate"),
        ("desktop-asks-services", "desktop", "import studio_planner.storage"),
        ("desktop-asks-services", "desktop", "from studio_planner.planning import quick"),
    ],
)
def test_a_planted_import_breaks_its_contract(
    copy: Path, contract: str, room: str, line: str
) -> None:
    code, text = lint_planted(copy, contract, {f"{room}/planted.py": line})
    assert code == 1, text
    assert "BROKEN" in text
    assert f"studio_planner.{room}" in text


def test_an_import_inside_a_function_breaks_its_contract_too(copy: Path) -> None:
    late = "def late():\n    import PySide6.QtCore"
    code, text = lint_planted(copy, "qt", {"craft/planted.py": late})
    assert code == 1, text


def test_two_modules_that_need_each_other_break_a_contract(copy: Path) -> None:
    pair = {
        "craft/planted.py": "import studio_planner.craft.sown",
        "craft/sown.py": "import studio_planner.craft.planted",
    }
    code, text = lint_planted(copy, "cycles", pair)
    assert code == 1, text


def test_an_undeclared_room_breaks_the_order_of_rooms(copy: Path) -> None:
    code, text = lint_planted(copy, "rooms", {"cellar.py": "import studio_planner.craft"})
    assert code == 1, text
    assert "cellar" in text


def lint_planted(copy: Path, contract: str, planted: dict[str, str]) -> tuple[int, str]:
    """Judge ``contract`` with the files of ``planted`` in the copy, then remove them."""
    paths = {copy / PACKAGE.name / name: text for name, text in planted.items()}
    for path, text in paths.items():
        path.write_text(f"{text}\n", encoding="utf-8")
    try:
        return run(*LINT, "--contract", contract, folder=copy)
    finally:
        for path in paths:
            path.unlink()
