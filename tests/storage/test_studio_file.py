"""What goes into a studio file comes out of it, and two windows do not undo each other."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
import threading
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.craft.plans import Plan
from studio_planner.craft.studio import Studio
from studio_planner.storage import studio_file, transaction
from studio_planner.storage.migrations import RELEASED
from studio_planner.storage.opening import APPLICATION_ID
from studio_planner.storage.studio_file import create_studio, open_studio
from studio_planner.storage.tables import studio_table

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

NOON = datetime(2031, 3, 4, 12, tzinfo=UTC)


def read(path: Path) -> Studio:
    with open_studio(path) as file:
        return file.read()


def test_a_studio_that_uses_everything_comes_back_the_same(
    studio_path: Path, full_studio: Studio
) -> None:
    assert read(studio_path) == full_studio


def test_an_empty_studio_can_be_kept(tmp_path: Path) -> None:
    create_studio(tmp_path / "empty.studio", Studio(name="Empty")).close()
    assert read(tmp_path / "empty.studio") == Studio(name="Empty")


@settings(
    max_examples=60,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(data=st.data())
def test_any_studio_comes_back_the_same(
    data: st.DataObject,
    studios: st.SearchStrategy[Studio],
    tmp_path_factory: pytest.TempPathFactory,
) -> None:
    path = tmp_path_factory.mktemp("any") / "any.studio"
    before, after = data.draw(studios), data.draw(studios)
    create_studio(path, before).close()
    with open_studio(path) as file:
        assert file.read() == before
        file.write(after)
        assert file.read() == after
    assert read(path) == after


def test_times_come_back_in_utc(studio_path: Path) -> None:
    moments = [reading.when for place in read(studio_path).places for reading in place.readings]
    assert {moment.tzinfo for moment in moments} == {UTC}


def test_the_file_says_what_it_is(studio_path: Path) -> None:
    header = studio_path.read_bytes()[:100]
    assert header[68:72] == APPLICATION_ID.to_bytes(4, "big") == b"Coat"
    assert int.from_bytes(header[60:64], "big") == len(RELEASED)


def test_the_guards_are_on(studio_path: Path) -> None:
    with open_studio(studio_path) as file:
        values = {
            name: file._connection.execute(f"PRAGMA {name}").fetchone()[0]
            for name in (
                "foreign_keys",
                "trusted_schema",
                "cell_size_check",
                "synchronous",
                "fullfsync",
                "journal_mode",
                "busy_timeout",
                "query_only",
            )
        }
    # synchronous 3 is EXTRA (the SQLite manual's page on PRAGMA statements).
    assert values == {
        "foreign_keys": 1,
        "trusted_schema": 0,
        "cell_size_check": 1,
        "synchronous": 3,
        "fullfsync": 1,
        "journal_mode": "delete",
        "busy_timeout": 3000,
        "query_only": 0,
    }


def test_every_table_is_strict(studio_path: Path) -> None:
    connection = sqlite3.connect(studio_path)
    tables = connection.execute("PRAGMA table_list").fetchall()
    connection.close()
    ours = [row for row in tables if not row[1].startswith("sqlite_")]
    beside = {"change_count", "photo_files", "calendar_events", "reminders", "rings", "ringing"}
    assert {row[1] for row in ours} == {table.name for table in studio_table().all} | beside
    assert all(row[5] == 1 for row in ours)


def test_tables_have_a_column_for_every_field(studio_path: Path) -> None:
    connection = sqlite3.connect(studio_path)
    for table in studio_table().all:
        found = connection.execute(f'PRAGMA table_info("{table.name}")').fetchall()
        lead = len(table.leading)
        assert [row[1] for row in found[:lead]] == list(table.leading)
        expected = [(c.name, c.sql_type, not c.optional) for c in table.columns]
        assert [(row[1], row[2], bool(row[3])) for row in found[lead:]] == expected, table.name
    connection.close()


def test_an_existing_file_is_never_made_anew(studio_path: Path, full_studio: Studio) -> None:
    before = studio_path.read_bytes()
    with pytest.raises(StudioFileError, match="is there already"):
        create_studio(studio_path, Studio(name="Other"))
    assert studio_path.read_bytes() == before
    assert read(studio_path) == full_studio


def test_a_new_file_leaves_nothing_beside_it(studio_path: Path) -> None:
    assert [path.name for path in studio_path.parent.iterdir()] == ["full.studio"]


def test_each_change_raises_the_revision(studio_path: Path, full_studio: Studio) -> None:
    with open_studio(studio_path) as file:
        seen = [file.revision()]
        seen.append(file.write(full_studio))
        seen.append(file.keep_plan(None))
        assert file.revision() == seen[-1]
    assert seen == [0, 1, 2]


def test_only_the_plan_changes_when_a_plan_is_kept(
    studio_path: Path, full_studio: Studio
) -> None:
    plan = Plan(made=NOON, start=NOON, coats=())
    with open_studio(studio_path) as file:
        file.read()
        file.keep_plan(plan)
        assert file.read() == replace(full_studio, plan=plan)
    assert read(studio_path) == replace(full_studio, plan=plan)


def test_a_plan_that_is_kept_is_of_the_studio_as_it_is(
    studio_path: Path, full_studio: Studio
) -> None:
    with open_studio(studio_path) as file:
        file.write(replace(full_studio, plan_outdated=True))
        assert file.read().plan_outdated
        file.keep_plan(full_studio.plan)
        assert not file.read().plan_outdated
    assert not read(studio_path).plan_outdated


def test_a_photo_is_kept_in_the_file_and_in_its_copies(
    studio_path: Path, tmp_path: Path
) -> None:
    with open_studio(studio_path) as file:
        file.add_photo("5f2c", b"picture")
        file.add_photo("5f2c", b"another one")
        file.save_copy(tmp_path / "copy.studio")
    with open_studio(tmp_path / "copy.studio") as copy:
        assert copy.photo("5f2c") == b"picture"
        assert copy.photo("gone") is None


def test_a_plan_can_be_forgotten(studio_path: Path, full_studio: Studio) -> None:
    with open_studio(studio_path) as file:
        file.keep_plan(None)
    assert read(studio_path) == replace(full_studio, plan=None)


def test_a_change_in_one_window_is_seen_in_the_other(
    studio_path: Path, full_studio: Studio
) -> None:
    with open_studio(studio_path) as one, open_studio(studio_path) as other:
        assert other.read() == full_studio
        one.write(replace(full_studio, name="Renamed"))
        assert other.revision() == 1
        assert other.read().name == "Renamed"


def test_a_stale_change_is_refused(studio_path: Path, full_studio: Studio) -> None:
    with open_studio(studio_path) as one, open_studio(studio_path) as other:
        seen = other.revision()
        one.write(replace(full_studio, name="First"))
        with pytest.raises(StudioFileError, match="changed in another window"):
            other.write(replace(full_studio, name="Second"), expected_revision=seen)
        with pytest.raises(StudioFileError, match="changed in another window"):
            other.keep_plan(None, expected_revision=seen)
        assert other.read().name == "First"


def test_a_window_that_did_not_look_still_writes_everything(
    studio_path: Path, full_studio: Studio
) -> None:
    with open_studio(studio_path) as one, open_studio(studio_path) as other:
        other.read()
        one.write(replace(full_studio, people=(), name="First"))
        other.write(full_studio)
    assert read(studio_path) == full_studio


@pytest.mark.parametrize("ours", ["a studio", "a plan"])
def test_a_change_that_follows_ours_at_once_is_not_taken_for_ours(
    studio_path: Path, full_studio: Studio, monkeypatch: pytest.MonkeyPatch, ours: str
) -> None:
    """The other window writes between the end of our change and whatever we do next."""
    follower = iter([replace(full_studio, name="Follower")])

    @contextmanager
    def followed(connection: sqlite3.Connection) -> Iterator[None]:
        with transaction.changing(connection):
            yield
        with open_studio(studio_path) as other:
            for studio in follower:
                other.write(studio)

    with open_studio(studio_path) as file:
        file.read()
        monkeypatch.setattr(studio_file, "changing", followed)
        file.write(full_studio) if ours == "a studio" else file.keep_plan(None)
        monkeypatch.undo()
        assert file.read().name == "Follower"
        file.write(full_studio)
    assert read(studio_path) == full_studio


def test_a_change_by_another_program_is_seen_too(
    studio_path: Path, full_studio: Studio
) -> None:
    with open_studio(studio_path) as file:
        assert file.read() == full_studio
        other = sqlite3.connect(studio_path)
        other.execute("UPDATE pieces SET name = 'Elsewhere' WHERE key = 'p1'")
        other.commit()
        other.close()
        assert file.read().piece("p1").name == "Elsewhere"
        file.write(full_studio)
        assert file.read() == full_studio
    assert read(studio_path) == full_studio


def test_a_file_in_use_is_said_to_be_in_use(studio_path: Path, full_studio: Studio) -> None:
    blocker = sqlite3.connect(studio_path, isolation_level=None)
    blocker.execute("BEGIN EXCLUSIVE")
    try:
        with pytest.raises(StudioFileError, match="in use by another window"):
            open_studio(studio_path, busy_milliseconds=20)
    finally:
        blocker.close()
    assert read(studio_path) == full_studio


def test_reading_goes_on_while_another_window_prepares_a_change(
    studio_path: Path, full_studio: Studio
) -> None:
    with open_studio(studio_path, busy_milliseconds=20) as file:
        blocker = sqlite3.connect(studio_path, isolation_level=None)
        blocker.execute("BEGIN IMMEDIATE")
        assert file.read() == full_studio
        with pytest.raises(StudioFileError, match="in use by another window"):
            file.write(full_studio)
        blocker.close()
        assert file.write(full_studio) == 1


def test_a_change_keeps_others_out_though_its_file_is_opened_twice_here(
    studio_path: Path,
) -> None:
    """Closing a second handle of a file takes the locks of the first one, where fcntl rules."""
    script = (
        "import sqlite3, sys\n"
        "other = sqlite3.connect(sys.argv[1], isolation_level=None, timeout=0)\n"
        "other.execute('BEGIN IMMEDIATE')\n"
    )
    with open_studio(studio_path) as file, file.beside():
        open_studio(studio_path).close()
        done = subprocess.run(  # noqa: S603 - our own script
            [sys.executable, "-c", script, str(studio_path)],
            check=False,
            capture_output=True,
            text=True,
        )
    assert "database is locked" in done.stderr


def test_a_file_may_be_used_from_another_thread(studio_path: Path, full_studio: Studio) -> None:
    found = []
    with open_studio(studio_path) as file:
        worker = threading.Thread(target=lambda: found.append(file.read()))
        worker.start()
        worker.join()
    assert found == [full_studio]


def test_windows_that_take_turns_lose_no_change(studio_path: Path, full_studio: Studio) -> None:
    def rename(number: int) -> None:
        with open_studio(studio_path) as file:
            for turn in range(5):
                while True:
                    seen = file.revision()
                    studio = replace(file.read(), name=f"{number}.{turn}")
                    try:
                        file.write(studio, expected_revision=seen)
                        break
                    except StudioFileError:
                        continue

    workers = [threading.Thread(target=rename, args=(number,)) for number in range(3)]
    for worker in workers:
        worker.start()
    for worker in workers:
        worker.join()
    with open_studio(studio_path) as file:
        assert file.revision() == 15
        assert replace(file.read(), name=full_studio.name) == full_studio


def test_text_that_cannot_be_written_is_refused_and_nothing_changes(
    studio_path: Path, full_studio: Studio
) -> None:
    with open_studio(studio_path) as file:
        with pytest.raises(InvalidEntry, match=r"studio\[0\]"):
            file.write(replace(full_studio, name="half a pair \ud83d"))
        *people, last = full_studio.people
        broken = replace(last, name="half a pair \ud83d")
        with pytest.raises(InvalidEntry, match=rf"people\[{len(people)}\]"):
            file.write(replace(full_studio, people=(*people, broken)))
        assert file.revision() == 0
    assert read(studio_path) == full_studio


def test_a_time_without_a_zone_is_refused_and_nothing_changes(
    studio_path: Path, full_studio: Studio
) -> None:
    plan = Plan(made=NOON.replace(tzinfo=None), start=NOON, coats=())
    with open_studio(studio_path) as file:
        with pytest.raises(InvalidEntry, match="no time zone"):
            file.keep_plan(plan)
        assert file.read() == full_studio


def test_a_copy_is_a_whole_studio(
    studio_path: Path, full_studio: Studio, tmp_path: Path
) -> None:
    copy = tmp_path / "copy.studio"
    with open_studio(studio_path) as file:
        file.save_copy(copy)
        with pytest.raises(StudioFileError, match="is there already"):
            file.save_copy(copy)
        file.write(replace(full_studio, name="Newer"))
        file.save_copy(copy, overwrite=True)
        with pytest.raises(StudioFileError, match="the open studio itself"):
            file.save_copy(studio_path, overwrite=True)
    assert read(copy) == replace(full_studio, name="Newer")


def test_a_copy_into_a_missing_folder_is_refused_in_a_sentence(
    studio_path: Path, tmp_path: Path
) -> None:
    with open_studio(studio_path) as file, pytest.raises(StudioFileError, match="folder"):
        file.save_copy(tmp_path / "missing" / "copy.studio")


@pytest.mark.parametrize(
    "name", ["a b.studio", "50%#?.studio", "ö\u2603.studio", "a'b;.studio"]
)
def test_any_file_name_will_do(tmp_path: Path, name: str) -> None:
    create_studio(tmp_path / name, Studio(name="Any")).close()
    assert read(tmp_path / name).name == "Any"
    assert [path.name for path in tmp_path.iterdir()] == [name]


def test_readings_of_a_year_are_kept_quickly_enough(
    tmp_path: Path, full_studio: Studio
) -> None:
    room = full_studio.places[0]
    reading = room.readings[0]
    readings = tuple(
        replace(reading, when=NOON + timedelta(hours=hour)) for hour in range(24 * 365)
    )
    studio = replace(
        full_studio, places=(replace(room, readings=readings), *full_studio.places[1:])
    )
    create_studio(tmp_path / "year.studio", studio).close()
    assert read(tmp_path / "year.studio") == studio


def test_another_plan_is_read_without_the_rest(studio_path: Path, full_studio: Studio) -> None:
    with open_studio(studio_path) as window, open_studio(studio_path) as planner:
        before = window.read()
        plan = Plan(made=NOON, start=NOON, coats=())
        planner.keep_plan(plan)
        after = window.read()
        assert after == replace(full_studio, plan=plan)
        assert after.places is before.places
        planner.write(replace(full_studio, name="Other", plan=plan))
        planner.keep_plan(None)
        assert window.read() == replace(full_studio, name="Other", plan=None)


def test_a_place_is_changed_without_writing_its_readings_again(
    studio_path: Path, full_studio: Studio
) -> None:
    written: list[str] = []
    room, *others = full_studio.places
    renamed = replace(room, name="Other room", spots=(), band_celsius=2.5)
    studio = replace(full_studio, places=(renamed, *others), poured=(), plan=None)
    with open_studio(studio_path) as file:
        file.read()
        file._connection.set_trace_callback(written.append)
        file.write(studio)
        file._connection.set_trace_callback(None)
        assert file.read() == studio
    assert read(studio_path) == studio
    assert any("places_spots" in statement for statement in written)
    assert not any("places_readings" in statement for statement in written)


def test_places_that_come_go_or_move_are_written_whole(
    studio_path: Path, full_studio: Studio
) -> None:
    room, box = full_studio.places
    bare = replace(full_studio, poured=(), plan=None)
    for places in ((box, room), (box,), (box, room, replace(room, key="new", spots=()))):
        with open_studio(studio_path) as file:
            file.read()
            file.write(replace(bare, places=places))
        assert read(studio_path) == replace(bare, places=places)
