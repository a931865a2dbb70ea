"""Starting stays light: what a fresh interpreter has loaded after importing a room."""

from __future__ import annotations

import json

import pytest

from tests.architecture.checkout import PACKAGE, run

HEAVY = {"numpy", "ortools", "pandas", "scipy"}
QT = {"PySide6", "shiboken6"}
WITHOUT_QT = sorted(
    entry.name for entry in PACKAGE.iterdir() if entry.is_dir() and entry.name != "desktop"
)
LOADED = """
import importlib, json, pkgutil, sys
package = importlib.import_module(sys.argv[1])
for module in pkgutil.walk_packages(getattr(package, "__path__", []), package.__name__ + "."):
    importlib.import_module(module.name)
print(json.dumps(sorted({name.partition(".")[0] for name in sys.modules})))
"""


def loaded_by(module: str) -> set[str]:
    """The top-level names in a fresh interpreter that imported ``module`` and all below it."""
    code, text = run("-c", LOADED, module)
    assert code == 0, text
    return set(json.loads(text.splitlines()[-1]))


def test_the_program_begins_without_qt_or_anything_heavy() -> None:
    assert not loaded_by("studio_planner.__main__") & (HEAVY | QT)


@pytest.mark.parametrize("room", [name for name in WITHOUT_QT if name != "__pycache__"])
def test_a_room_without_windows_loads_neither_qt_nor_anything_heavy(room: str) -> None:
    assert not loaded_by(f"studio_planner.{room}") & (HEAVY | QT)


def test_the_window_loads_nothing_heavy() -> None:
    assert not loaded_by("studio_planner.desktop") & HEAVY
