"""What may be written over: plain files that were agreed to, and never a studio."""

from __future__ import annotations

import os
import shutil
import sqlite3
from datetime import UTC, datetime
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.storage.migrations import RELEASED
from studio_planner.storage.placing import placed
from studio_planner.storage.studio_file import create_studio, open_studio

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.studio import Studio


def write(target: Path) -> None:
    with placed(target, overwrite=True) as temporary:
        temporary.write_text("a sheet")


def test_a_plain_file_is_written_over_once_that_was_agreed_to(tmp_path: Path) -> None:
    target = tmp_path / "a.pdf"
    target.write_text("mine")
    with pytest.raises(StudioFileError, match="is there already"), placed(target):
        pass
    assert target.read_text() == "mine"
    write(target)
    assert target.read_text() == "a sheet"


def test_a_studio_is_written_over_by_nothing_but_a_studio(
    studio_path: Path, full_studio: Studio
) -> None:
    before = studio_path.read_bytes()
    with pytest.raises(StudioFileError, match="which only a studio is ever written over"):
        write(studio_path)
    assert studio_path.read_bytes() == before
    another = studio_path.with_name("another.studio")
    with create_studio(another, full_studio) as file:
        file.save_copy(studio_path, overwrite=True)
    with open_studio(studio_path) as file:
        assert file.read() == full_studio


def test_under_any_name_and_of_any_version_a_studio_is_one(
    tmp_path: Path, full_studio: Studio
) -> None:
    old, new = tmp_path / "an old one.pdf", tmp_path / "new.pdf"
    create_studio(old, full_studio, steps=RELEASED).close()
    with sqlite3.connect(old) as connection:
        connection.execute("PRAGMA user_version = 1")
    connection.close()
    shutil.copy(old, new)
    new.write_bytes(new.read_bytes()[:2000])  # as a full disk has left it
    for path in (old, new):
        before = path.read_bytes()
        with pytest.raises(StudioFileError, match="is a studio file"):
            write(path)
        assert path.read_bytes() == before


def test_a_backup_is_a_studio_too(studio_path: Path, tmp_path: Path) -> None:
    with open_studio(studio_path) as file:
        made = file.back_up(tmp_path / "backups", datetime(2026, 2, 2, 7, tzinfo=UTC))
    with pytest.raises(StudioFileError, match="is a studio file"):
        write(made.path)


@pytest.mark.parametrize("ending", ["-journal", "-wal", "-shm"])
def test_what_may_hold_a_change_of_a_studio_is_never_written_over(
    studio_path: Path, ending: str
) -> None:
    beside = studio_path.with_name(studio_path.name + ending)
    with pytest.raises(StudioFileError, match=r"may hold changes of the studio .*full\.studio"):
        write(beside)
    assert not beside.exists()
    elsewhere = studio_path.with_name(f"letters{ending}")
    write(elsewhere)
    nameless = studio_path.with_name(ending)
    write(nameless)
    assert elsewhere.read_text() == nameless.read_text() == "a sheet"


def test_an_open_studio_is_known_without_being_opened_again(
    studio_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    # Closing it once more would take the locks of the change that is going on with it.
    with open_studio(studio_path) as file, file.beside():
        monkeypatch.setattr("pathlib.Path.open", lambda *_: pytest.fail("it was opened"))
        with pytest.raises(StudioFileError, match="is a studio file"):
            write(studio_path)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes in folders")
def test_what_is_no_plain_file_stays_what_it_is(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    with pytest.raises(StudioFileError, match="is no plain file"):
        write(tmp_path / "pipe")
    assert (tmp_path / "pipe").is_fifo()
