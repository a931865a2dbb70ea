"""A backup is looked into without a byte of it being changed, however old it is."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.studio import Studio
from studio_planner.storage.looking_in import glance_at, photo_in, read_backup
from studio_planner.storage.studio_file import create_studio, open_studio
from tests.storage.test_migrations import as_of_version_1, file_of_version_1

if TYPE_CHECKING:
    from pathlib import Path


def test_a_glance_tells_what_is_in_a_file(studio_path: Path, full_studio: Studio) -> None:
    before = studio_path.read_bytes()
    glance = glance_at(studio_path)
    assert full_studio.plan is not None
    assert (glance.name, glance.pieces, glance.orders, glance.planned) == (
        full_studio.name,
        len(full_studio.pieces),
        len(full_studio.orders),
        full_studio.plan.made,
    )
    assert studio_path.read_bytes() == before


def test_a_studio_without_a_plan_was_never_planned(tmp_path: Path) -> None:
    path = tmp_path / "new.studio"
    create_studio(path, Studio(name="New")).close()
    assert glance_at(path).planned is None


def test_the_whole_studio_is_read_and_the_file_stays(
    studio_path: Path, full_studio: Studio
) -> None:
    before = studio_path.read_bytes()
    assert read_backup(studio_path) == full_studio
    assert studio_path.read_bytes() == before


def test_a_backup_of_an_older_version_is_read_and_stays_of_that_version(
    tmp_path: Path, full_studio: Studio
) -> None:
    path = file_of_version_1(tmp_path / "old.studio")
    before = path.read_bytes()
    assert read_backup(path) == as_of_version_1(full_studio)
    assert glance_at(path).pieces == len(full_studio.pieces)
    assert photo_in(path, "any") is None
    assert path.read_bytes() == before
    assert [one.name for one in tmp_path.iterdir()] == ["old.studio"]


def test_a_damaged_backup_of_an_older_version_is_called_by_its_own_name(
    tmp_path: Path,
) -> None:
    path = file_of_version_1(tmp_path / "old.studio")
    path.write_bytes(path.read_bytes()[:6000])
    with pytest.raises(StudioFileError) as refused:
        read_backup(path)
    assert str(path) in str(refused.value)
    assert "/tmp" not in str(refused.value).replace(str(path), "")  # noqa: S108 - a name


def test_a_picture_comes_out_of_a_backup(studio_path: Path) -> None:
    with open_studio(studio_path) as file:
        file.add_photo("sky", b"blue")
    assert photo_in(studio_path, "sky") == b"blue"
    assert photo_in(studio_path, "sea") is None


def test_what_is_missing_foreign_or_cut_short_is_a_sentence(
    studio_path: Path, tmp_path: Path
) -> None:
    with pytest.raises(StudioFileError, match="is not there"):
        glance_at(tmp_path / "gone.studio")
    notes = tmp_path / "notes.studio"
    notes.write_text("mine, and long enough to be looked at as if it were a header of ours")
    with pytest.raises(StudioFileError, match="not a studio file"):
        read_backup(notes)
    studio_path.write_bytes(studio_path.read_bytes()[:3000])
    with pytest.raises(StudioFileError, match="damaged"):
        glance_at(studio_path)


def test_a_backup_that_is_brought_back_is_spared_when_old_ones_go(
    studio_path: Path, tmp_path: Path
) -> None:
    now = datetime(2031, 3, 4, 12, tzinfo=UTC)
    with open_studio(studio_path) as file:
        first = file.back_up(tmp_path / "b", now)
        for minute in range(1, 12):
            file.back_up(tmp_path / "b", now + timedelta(minutes=minute), sparing=first.path)
        assert first in file.backups(tmp_path / "b")
        file.back_up(tmp_path / "b", now + timedelta(minutes=20))
        assert first not in file.backups(tmp_path / "b")
