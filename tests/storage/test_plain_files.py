"""Exchange files on disk: whole or not there, and every refusal in a sentence."""

from __future__ import annotations

import os
from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.storage.plain_files import bytes_of, export_studio, import_studio

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.studio import Studio


def test_an_exported_studio_can_be_imported(tmp_path: Path, full_studio: Studio) -> None:
    path = tmp_path / "out.json"
    export_studio(path, full_studio)
    assert import_studio(path) == full_studio
    assert [other.name for other in tmp_path.iterdir()] == ["out.json"]


def test_an_export_replaces_a_file_only_when_told_to(
    tmp_path: Path, full_studio: Studio
) -> None:
    path = tmp_path / "out.json"
    path.write_text("mine")
    with pytest.raises(StudioFileError, match="is there already"):
        export_studio(path, full_studio)
    assert path.read_text() == "mine"
    export_studio(path, full_studio, overwrite=True)
    assert import_studio(path) == full_studio


def test_an_export_that_fails_leaves_what_was_there(
    tmp_path: Path, full_studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "out.json"
    path.write_text("mine")

    def fail(_descriptor: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", fail)
    with pytest.raises(StudioFileError, match="disk is full"):
        export_studio(path, full_studio, overwrite=True)
    assert path.read_text() == "mine"
    assert [other.name for other in tmp_path.iterdir()] == ["out.json"]


def test_a_name_that_cannot_be_written_is_refused(tmp_path: Path, full_studio: Studio) -> None:
    with pytest.raises(StudioFileError, match="cannot be exported"):
        export_studio(tmp_path / "out.json", replace(full_studio, name="\ud83d"))
    assert list(tmp_path.iterdir()) == []


def test_what_cannot_be_read_is_refused_in_a_sentence(tmp_path: Path) -> None:
    (tmp_path / "latin.json").write_bytes(b"\xff\xfe\xfa")
    (tmp_path / "bad.json").write_text(
        '{"format": "studio-exchange", "version": 1, "studio": {}}'
    )
    with pytest.raises(StudioFileError, match="is not there"):
        import_studio(tmp_path / "missing.json")
    with pytest.raises(StudioFileError, match="is a folder"):
        import_studio(tmp_path)
    with pytest.raises(StudioFileError, match="not UTF-8"):
        import_studio(tmp_path / "latin.json")
    with pytest.raises(InvalidEntry, match="name: it is missing"):
        import_studio(tmp_path / "bad.json")
    with pytest.raises(StudioFileError, match="larger than 0 MiB"):
        bytes_of(tmp_path / "latin.json", 2)
