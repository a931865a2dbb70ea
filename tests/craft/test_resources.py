"""The program's own files are found wherever it lives."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft import resources
from studio_planner.craft.resources import resource_path

if TYPE_CHECKING:
    from pathlib import Path


def place(root: Path, *folders: str) -> Path:
    """A table of its own in ``root`` under ``folders``."""
    path = root.joinpath(*folders, "table.csv")
    path.parent.mkdir(parents=True)
    path.touch()
    return path


def test_the_source_tree_keeps_them_beside_the_package(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(resources, "PACKAGE", tmp_path / "studio_planner")
    table = place(tmp_path, "resources")
    assert resource_path("table.csv") == table


def test_a_wheel_keeps_them_inside_the_package(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(resources, "PACKAGE", tmp_path / "studio_planner")
    place(tmp_path, "resources")
    table = place(tmp_path, "studio_planner", "resources")
    assert resource_path("table.csv") == table


def test_a_frozen_build_unpacks_them(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "_MEIPASS", str(tmp_path), raising=False)
    table = place(tmp_path, "studio_planner", "resources")
    assert resource_path("table.csv") == table


def test_a_missing_file_says_what_to_do() -> None:
    with pytest.raises(FileNotFoundError, match=r"resources/no\.csv is missing: install"):
        resource_path("no.csv")
