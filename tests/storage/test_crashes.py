"""Whatever interrupts a change, the file holds the studio from before or from after it."""

from __future__ import annotations

import errno
import os
import shutil
import signal
import sqlite3
import subprocess
import sys
import time
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.storage import placing
from studio_planner.storage.studio_file import create_studio, open_studio

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.studio import Studio

WRITER = """
import sys
from dataclasses import replace
from pathlib import Path
from studio_planner.storage.studio_file import open_studio
with open_studio(Path(sys.argv[1])) as file:
    studio = file.read()
    for number in range(1_000_000):
        pieces = tuple(replace(piece, name=f"{number}") for piece in studio.pieces)
        people = tuple(replace(person, name=f"{number}") for person in studio.people)
        file.write(replace(studio, name=f"{number}", pieces=pieces, people=people))
        print(number, flush=True)
"""


def child(script: str, *arguments: str) -> subprocess.Popen[str]:
    return subprocess.Popen(  # noqa: S603 - our own script
        [sys.executable, "-c", script, *arguments],
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
    )


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="needs SIGKILL")
def test_a_killed_writer_leaves_a_whole_studio(studio_path: Path, full_studio: Studio) -> None:
    for attempt in range(10):
        writer = child(WRITER, str(studio_path))
        assert writer.stdout is not None
        first = writer.stdout.readline()
        time.sleep(0.003 * attempt)
        writer.kill()
        said = (first + writer.stdout.read()).split()
        writer.wait()
        writer.stdout.close()
        with open_studio(studio_path) as file:
            studio = file.read()
        names = {studio.name}
        names.update(piece.name for piece in studio.pieces)
        names.update(person.name for person in studio.people)
        assert len(names) == 1, "half a change was kept"
        assert int(studio.name) >= int(said[-1]), "a change that was reported is gone"
        assert studio.places == full_studio.places


def test_a_change_that_was_cut_off_is_taken_back(
    studio_path: Path, full_studio: Studio, tmp_path: Path
) -> None:
    writer = sqlite3.connect(studio_path, isolation_level=None)
    writer.execute("PRAGMA cache_size = 1")  # pages reach the disk before the change is done
    writer.execute("BEGIN IMMEDIATE")
    writer.execute("UPDATE pieces SET name = 'half done'")
    writer.execute("DELETE FROM plan_coats")
    writer.execute("UPDATE products SET name = printf('%.*c', 100000, 'x')")
    cut_off = tmp_path / "cut" / "off.studio"
    cut_off.parent.mkdir()
    shutil.copy(studio_path, cut_off)
    shutil.copy(f"{studio_path}-journal", f"{cut_off}-journal")
    before = cut_off.read_bytes()
    with open_studio(cut_off) as file:
        assert file.read() == full_studio
    assert cut_off.read_bytes() != before, "nothing had reached the disk"
    writer.close()


def fails_with(code: int) -> Callable[..., None]:
    def fail(*_arguments: object) -> None:
        raise OSError(code, os.strerror(code))

    return fail


@pytest.mark.parametrize("code", [errno.ENOSPC, errno.EIO, errno.EACCES])
def test_a_disk_that_fails_while_a_file_is_made_leaves_nothing(
    tmp_path: Path, full_studio: Studio, monkeypatch: pytest.MonkeyPatch, code: int
) -> None:
    monkeypatch.setattr(os, "fsync", fails_with(code))
    with pytest.raises(StudioFileError, match="written"):
        create_studio(tmp_path / "new.studio", full_studio)
    assert list(tmp_path.iterdir()) == []


def test_what_a_kill_left_of_a_copy_goes_with_the_next_copy_into_that_folder(
    studio_path: Path, tmp_path: Path
) -> None:
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    ages = {
        ".old.studio.0a1b2c3d.part": 25,
        ".old.studio.0a1b2c3d.part-journal": 25,
        ".young.studio.0a1b2c3d.part": 23,
        ".other.csv.0a1b2c3d.part": 25,
        "old.studio.part": 25,
    }
    for name, hours in ages.items():
        path = elsewhere / name
        path.write_bytes(b"half")
        written = path.stat().st_mtime - hours * 3600
        os.utime(path, (written, written))
    with open_studio(studio_path) as file:
        file.save_copy(elsewhere / "copy.studio")
    left = {path.name for path in elsewhere.iterdir()}
    assert left == {"copy.studio", *list(ages)[2:]}


def test_a_copy_that_fails_leaves_the_old_copy(
    studio_path: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    copy = tmp_path / "copy.studio"
    with open_studio(studio_path) as file:
        file.save_copy(copy)
        before = copy.read_bytes()
        monkeypatch.setattr(Path, "replace", fails_with(errno.ENOSPC))
        with pytest.raises(StudioFileError, match="disk is full"):
            file.save_copy(copy, overwrite=True)
    assert copy.read_bytes() == before
    assert len(list(tmp_path.iterdir())) == 2


def test_a_full_disk_changes_nothing(studio_path: Path, full_studio: Studio) -> None:
    before = studio_path.read_bytes()
    with open_studio(studio_path) as file:
        file._connection.execute("PRAGMA max_page_count = 1")
        room = full_studio.places[0]
        names = tuple(
            replace(spot, key=f"{spot.key} {number}", name="x" * 200)
            for spot in room.spots
            for number in range(2000)
        )
        crowded = replace(room, spots=(*room.spots, *names))
        with pytest.raises(StudioFileError, match="disk is full"):
            file.write(replace(full_studio, places=(crowded, *full_studio.places[1:])))
        assert file.read() == full_studio
        assert file.revision() == 0
    assert studio_path.read_bytes() == before


def test_without_hard_links_a_file_is_still_placed_whole(
    tmp_path: Path, full_studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(os, "link", fails_with(errno.EPERM))
    path = tmp_path / "new.studio"
    create_studio(path, full_studio).close()
    with open_studio(path) as file:
        assert file.read() == full_studio
    with pytest.raises(StudioFileError, match="is there already"):
        create_studio(path, full_studio)
    assert list(tmp_path.iterdir()) == [path]


@pytest.mark.parametrize("links", ["with links", "without"])
def test_a_name_taken_in_the_meantime_is_not_written_over(
    tmp_path: Path, full_studio: Studio, monkeypatch: pytest.MonkeyPatch, links: str
) -> None:
    path = tmp_path / "new.studio"
    flush = placing._flush_file

    def flush_and_be_overtaken(temporary: Path) -> None:
        flush(temporary)
        path.write_text("somebody else's")

    monkeypatch.setattr(placing, "_flush_file", flush_and_be_overtaken)
    if links == "without":
        monkeypatch.setattr(os, "link", fails_with(errno.EPERM))
    with pytest.raises(StudioFileError, match="is there already"):
        create_studio(path, full_studio)
    assert path.read_text() == "somebody else's"
    assert list(tmp_path.iterdir()) == [path]


def test_a_swap_that_fails_without_hard_links_gives_the_name_back(
    tmp_path: Path, full_studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(os, "link", fails_with(errno.EPERM))
    monkeypatch.setattr(Path, "replace", fails_with(errno.EIO))
    with pytest.raises(StudioFileError, match="reported an error"):
        create_studio(tmp_path / "new.studio", full_studio)
    assert list(tmp_path.iterdir()) == []
