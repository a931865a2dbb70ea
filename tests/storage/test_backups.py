"""Backups: whole, verified, thinned out by age, and never those of another studio."""

from __future__ import annotations

import os
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.studio import Studio
from studio_planner.storage.backups import Backup, no_longer_kept
from studio_planner.storage.studio_file import create_studio, open_studio

NOW = datetime(2031, 3, 4, 12, tzinfo=UTC)


def test_a_backup_is_a_whole_studio(
    studio_path: Path, full_studio: Studio, tmp_path: Path
) -> None:
    with open_studio(studio_path) as file:
        backup = file.back_up(tmp_path / "backups", NOW)
        assert file.backups(tmp_path / "backups") == (backup,)
    with open_studio(backup.path) as file:
        assert file.read() == full_studio


def test_many_backups_are_thinned_out(studio_path: Path, tmp_path: Path) -> None:
    folder = tmp_path / "backups"
    with open_studio(studio_path) as file:
        for hour in range(30):
            file.back_up(folder, NOW + timedelta(hours=4 * hour))
        made = [backup.made for backup in file.backups(folder)]
    newest = NOW + timedelta(hours=4 * 29)
    assert made[:10] == [newest - timedelta(hours=4 * step) for step in range(10)]
    assert [moment.date() for moment in made[10:]] == sorted(
        {moment.date() for moment in made[10:]}, reverse=True
    )


def test_backups_of_a_namesake_elsewhere_are_left_alone(
    studio_path: Path, tmp_path: Path
) -> None:
    other = tmp_path / "elsewhere" / "full.studio"
    other.parent.mkdir()
    with create_studio(other, Studio(name="Other")) as file:
        old = file.back_up(tmp_path / "backups", NOW - timedelta(days=400))
    with open_studio(studio_path) as file:
        for minute in range(15):
            file.back_up(tmp_path / "backups", NOW + timedelta(minutes=minute))
        assert len(file.backups(tmp_path / "backups")) == 10
    assert old.path.exists()


def test_other_files_in_the_folder_are_left_alone(studio_path: Path, tmp_path: Path) -> None:
    keep = tmp_path / "backups" / "notes.txt"
    keep.parent.mkdir()
    keep.write_text("mine")
    with open_studio(studio_path) as file:
        file.back_up(keep.parent, NOW)
    assert keep.read_text() == "mine"


def test_a_folder_that_cannot_be_made_is_named(studio_path: Path, tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("a file")
    with open_studio(studio_path) as file, pytest.raises(StudioFileError, match="taken"):
        file.back_up(tmp_path / "taken", NOW)


@given(
    st.lists(
        st.integers(0, 60 * 24 * 80).map(lambda minutes: NOW - timedelta(minutes=minutes)),
        unique=True,
        max_size=80,
    )
)
def test_the_ten_newest_and_the_last_of_each_of_thirty_days_stay(times: list[datetime]) -> None:
    backups = [Backup(made=made, path=Path(f"{made:%s}")) for made in times]
    gone = {backup.made for backup in no_longer_kept(backups, NOW)}
    kept = set(times) - gone
    assert set(sorted(times)[-10:]) <= kept
    recent = [made for made in times if made > NOW - timedelta(days=30)]
    last_of_day = {max(m for m in recent if m.date() == made.date()) for made in recent}
    assert last_of_day <= kept
    assert len(kept) <= 10 + 31
    assert kept <= last_of_day | set(sorted(times)[-10:])


def test_what_a_kill_left_goes_a_day_later(studio_path: Path, tmp_path: Path) -> None:
    folder = tmp_path / "backups"
    folder.mkdir()
    left = [
        folder / ".full 2031-03-01.studio.0a1b2c3d.part",
        folder / ".full 2031-03-01.studio.0a1b2c3d.part-journal",
        studio_path.parent / ".copy.studio.0a1b2c3d.part",
    ]
    fresh = folder / ".full 2031-03-04.studio.0a1b2c3d.part"
    foreign = folder / ".film.part"
    for path in (*left, fresh, foreign):
        path.write_bytes(b"half")
        hours = 23 if path == fresh else 25
        written = (NOW - timedelta(hours=hours)).timestamp()
        os.utime(path, (written, written))
    with open_studio(studio_path) as file:
        file.back_up(folder, NOW)
    assert not any(path.exists() for path in left)
    assert fresh.exists()
    assert foreign.exists()
