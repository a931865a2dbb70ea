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
        ("cycles", "craft", "import studio_planner.services"),
    ],
)
def test_a_planted_import_breaks_its_contract(
    copy: Path, contract: str, room: str, line: str
) -> None:
    planted = copy / PACKAGE.name / room / "planted.py"
    planted.write_text(f"{line}\n", encoding="utf-8")
    try:
        code, text = run(*LINT, "--contract", contract, folder=copy)
    finally:
        planted.unlink()
    assert code == 1, text
    assert "BROKEN" in text
    assert f"studio_planner.{room}" in text


def test_an_import_inside_a_function_breaks_its_contract_too(copy: Path) -> None:
    planted = copy / PACKAGE.name / "craft" / "planted.py"
    planted.write_text("def late():\n    import PySide6.QtCore\n", encoding="utf-8")
    try:
        code, text = run(*LINT, "--contract", "qt", folder=copy)
    finally:
        planted.unlink()
    assert code == 1, text


def test_an_undeclared_room_breaks_the_order_of_rooms(copy: Path) -> None:
    room = copy / PACKAGE.name / "cellar"
    room.mkdir()
    (room / "__init__.py").write_text('"""Not declared."""\n', encoding="utf-8")
    try:
        code, text = run(*LINT, "--contract", "rooms", folder=copy)
    finally:
        shutil.rmtree(room)
    assert code == 1, text
    assert "cellar" in text
