"""A file that is no sound studio file gets one sentence and is left byte for byte as it was."""

from __future__ import annotations

import errno
import os
import random
import sqlite3
from contextlib import contextmanager, suppress
from pathlib import Path
from tempfile import gettempdir
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.studio import Studio
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.migrations import RELEASED
from studio_planner.storage.studio_file import create_studio, open_studio

if TYPE_CHECKING:
    from collections.abc import Iterator


def refused(path: Path, match: str) -> None:
    before = path.read_bytes()
    listing = sorted(other.name for other in path.parent.iterdir())
    with pytest.raises(StudioFileError, match=match) as told:
        open_studio(path).close()
    assert path.read_bytes() == before
    assert sorted(other.name for other in path.parent.iterdir()) == listing
    assert "\n" not in str(told.value)
    assert path.name in str(told.value)


def changed(path: Path, *statements: str) -> None:
    connection = sqlite3.connect(path, isolation_level=None)
    for statement in statements:
        connection.execute(statement)
    connection.close()


def test_a_missing_file_is_named(tmp_path: Path) -> None:
    with pytest.raises(StudioFileError, match=r"none\.studio is not there"):
        open_studio(tmp_path / "none.studio")
    assert list(tmp_path.iterdir()) == []


def test_a_missing_folder_is_named(tmp_path: Path, full_studio: Studio) -> None:
    path = tmp_path / "none" / "a.studio"
    for handle in (open_studio, lambda path: create_studio(path, full_studio)):
        with pytest.raises(StudioFileError) as told:
            handle(path)
        assert f"there is no folder {tmp_path / 'none'}; check its name." in str(told.value)


def test_what_may_not_be_read_is_not_called_unwritable(tmp_path: Path) -> None:
    path = tmp_path / "shut.studio"
    shut = PermissionError(errno.EACCES, "Permission denied")
    readable, written = r"cannot be read; .* yours to read", "cannot be written there"
    with pytest.raises(StudioFileError, match=readable), told_about(path, reading=True):
        raise shut
    with pytest.raises(StudioFileError, match=written), told_about(path):
        raise shut


def test_a_folder_that_may_not_even_be_looked_at_is_not_called_missing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def shut(_: Path) -> bool:
        raise PermissionError

    monkeypatch.setattr(type(tmp_path), "is_dir", shut)
    words = "is not there; check the name and the folder"
    path = tmp_path / "a.studio"
    with pytest.raises(StudioFileError, match=words), told_about(path):
        raise FileNotFoundError(errno.ENOENT, "No such file or directory")


def test_nothing_is_said_of_backups_that_nobody_made(studio_path: Path) -> None:
    studio_path.write_bytes(studio_path.read_bytes()[:5000])
    with pytest.raises(StudioFileError, match="open a copy of it if you have one") as told:
        open_studio(studio_path)
    assert "open a backup" not in str(told.value)


def test_a_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(StudioFileError, match="is a folder"):
        open_studio(tmp_path)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="needs named pipes")
def test_a_pipe_is_refused_without_waiting_for_it(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.studio")
    with pytest.raises(StudioFileError, match="is not a file"):
        open_studio(tmp_path / "pipe.studio")


@pytest.mark.parametrize(
    ("content", "match"),
    [
        (b"", "is empty"),
        (b"x", "is not a studio file"),
        (b"PK\x03\x04 a zip archive" * 100, "is not a studio file"),
        (b"SQLite format 3\x00" + bytes(20), "is cut short"),
        (b"SQLite format 3\x00" + bytes(2000), "another program"),
    ],
)
def test_a_file_that_is_no_studio_is_refused(
    tmp_path: Path, content: bytes, match: str
) -> None:
    path = tmp_path / "bad.studio"
    path.write_bytes(content)
    refused(path, match)


def test_the_file_of_another_program_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "other.db"
    changed(path, "CREATE TABLE t (x)", "PRAGMA user_version = 1")
    refused(path, "belongs to another program")


def test_a_newer_file_is_refused_and_left_untouched(studio_path: Path) -> None:
    changed(studio_path, f"PRAGMA user_version = {len(RELEASED) + 1}")
    refused(studio_path, "made by a newer version")


def test_a_file_turned_to_a_write_ahead_log_is_refused(studio_path: Path) -> None:
    changed(studio_path, "PRAGMA journal_mode = WAL")
    refused(studio_path, "second file")


@pytest.mark.parametrize(
    "statement",
    [
        "CREATE TRIGGER t AFTER INSERT ON places BEGIN DELETE FROM orders; END",
        "CREATE VIEW v AS SELECT 1",
        "CREATE TABLE more (x)",
        "CREATE INDEX i ON pieces (name)",
        "DROP TABLE plan_steps",
        "ALTER TABLE pieces ADD COLUMN more TEXT",
        "CREATE TEMP TABLE harmless (x)",
    ],
)
def test_a_file_with_other_tables_than_ours_is_refused(
    studio_path: Path, full_studio: Studio, statement: str
) -> None:
    changed(studio_path, statement)
    if "TEMP" in statement:  # never reaches the file
        with open_studio(studio_path) as file:
            assert file.read() == full_studio
    else:
        refused(studio_path, "changed by another program")


def test_a_table_turned_into_a_view_is_refused(studio_path: Path) -> None:
    changed(
        studio_path,
        "DROP TABLE change_count",
        "CREATE VIEW change_count AS SELECT 1 AS id, 0 AS revision, 0 AS beside_plans",
    )
    refused(studio_path, "changed by another program")


def test_an_entry_that_names_a_missing_owner_is_refused(studio_path: Path) -> None:
    changed(studio_path, "PRAGMA foreign_keys = OFF", "DELETE FROM pieces WHERE key = 'p1'")
    refused(studio_path, "is damaged")


@pytest.mark.parametrize(
    ("statement", "match"),
    [
        ("UPDATE pieces SET body_mm = 9000", "thickness of the body"),
        ("UPDATE pieces_stack SET film_mm = -1", "film: -1 is outside"),
        ("UPDATE places_readings SET celsius = 1000", "temperature: 1000 is outside"),
        ("UPDATE pieces SET material = 'cheese'", "pieces, row 1.*cheese"),
        ("UPDATE pieces SET shape_kind = 'star'", "pieces, row 1.*star"),
        ("UPDATE pieces SET shape_kind = 'oval'", "pieces, row 1.*missing"),
        ("UPDATE plan SET made = 9000000000000000000", "table plan"),
        ("UPDATE orders SET promised = 'soon'", "table orders.*soon"),
        ("UPDATE people SET wakes = '07:00+01:00'", "table people"),
        ("DELETE FROM settings", "table studio, row 1: there are 0 rows"),
        ("DELETE FROM studio", "no studio in it"),
        ("UPDATE studio SET zone = 'Moon/Far'", "Moon/Far"),
    ],
)
def test_an_entry_that_breaks_a_rule_is_named(
    studio_path: Path, statement: str, match: str
) -> None:
    changed(studio_path, "PRAGMA foreign_keys = ON", statement)
    before = studio_path.read_bytes()
    with open_studio(studio_path) as file, pytest.raises(StudioFileError, match=match):
        file.read()
    assert studio_path.read_bytes() == before


_DEEP = '{"text":"{a}","facts":{"a":' * 60 + '""' + "}}" * 60


@pytest.mark.parametrize(
    "cell",
    [
        "Too cold.",
        "1",
        '{"context":"late"}',
        '{"text":"{a}","facts":{"b":1}}',
        '{"text":"{a}","facts":{"a":NaN}}',
        '{"text":"{a}","facts":{"a":null}}',
        _DEEP,
        "[" * 200_000,
    ],
    ids=lambda cell: cell[:34],
)
def test_a_reason_that_cannot_be_said_is_named(studio_path: Path, cell: str) -> None:
    reason = f"UPDATE plan_unplanned SET reason = '{cell}' WHERE position = 1"  # noqa: S608 - our own
    changed(studio_path, reason)
    match = "cannot be understood at table plan_unplanned, row 1, 1: "
    with open_studio(studio_path) as file, pytest.raises(StudioFileError, match=match):
        file.read()


def test_text_that_is_not_utf8_is_damage(studio_path: Path) -> None:
    changed(studio_path, "UPDATE studio SET name = CAST(x'ff41' AS TEXT)")
    with open_studio(studio_path) as file, pytest.raises(StudioFileError, match="damaged"):
        file.read()


def test_a_file_without_its_counter_is_damaged(studio_path: Path) -> None:
    changed(studio_path, "DELETE FROM change_count")
    with open_studio(studio_path) as file, pytest.raises(StudioFileError, match="damaged"):
        file.revision()


def test_a_file_cut_short_anywhere_is_refused(studio_path: Path) -> None:
    whole = studio_path.read_bytes()
    lengths = [*range(0, 200, 17), *range(200, len(whole), 4096 + 7), len(whole) - 1]
    for length in lengths:
        studio_path.write_bytes(whole[:length])
        refused(studio_path, "is empty|not a studio file|cut short|damaged")


def test_a_flipped_byte_never_raises_anything_but_a_sentence(studio_path: Path) -> None:
    whole = studio_path.read_bytes()
    dice = random.Random(4)  # noqa: S311 - not for secrets
    outcomes = set()
    for _ in range(400):
        broken = bytearray(whole)
        for _ in range(dice.choice([1, 1, 8])):
            broken[dice.randrange(len(broken))] ^= 1 << dice.randrange(8)
        studio_path.write_bytes(broken)
        outcome = "refused"
        with suppress(StudioFileError), open_studio(studio_path) as file:
            assert isinstance(file.read(), Studio)
            outcome = "read"
        outcomes.add(outcome)
        assert studio_path.read_bytes() == broken
    assert outcomes == {"read", "refused"}


@contextmanager
def nobody_in_particular() -> Iterator[None]:
    """Be a user without rights while the block runs: nothing is forbidden to root."""
    if os.getuid() != 0:
        yield
        return
    os.seteuid(65534)
    try:
        yield
    finally:
        os.seteuid(0)


@pytest.mark.skipif(os.name != "posix", reason="needs permissions of a folder")
def test_a_folder_that_may_not_be_written_to_is_named(
    studio_path: Path, full_studio: Studio
) -> None:
    folder = studio_path.parent
    for parent in folder.parents:
        if parent.is_relative_to(gettempdir()) and parent != Path(gettempdir()):
            parent.chmod(0o755)
    folder.chmod(0o555)
    try:
        with nobody_in_particular(), open_studio(studio_path) as file:
            assert file.read() == full_studio
            with pytest.raises(StudioFileError, match="cannot be written there"):
                file.write(full_studio)
            with pytest.raises(StudioFileError, match="cannot be written there"):
                create_studio(folder / "new.studio", full_studio)
    finally:
        folder.chmod(0o755)
    assert list(folder.iterdir()) == [studio_path]


def test_a_studio_cannot_be_made_in_a_missing_folder(tmp_path: Path) -> None:
    with pytest.raises(StudioFileError, match="folder"):
        create_studio(tmp_path / "missing" / "new.studio", Studio(name="New"))
    assert list(tmp_path.iterdir()) == []


def test_a_python_with_an_old_sqlite_is_named(
    studio_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sqlite3, "sqlite_version_info", (3, 31, 1))
    refused(studio_path, "needs SQLite 3.37")
