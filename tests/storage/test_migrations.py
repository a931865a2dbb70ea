"""Older files are brought up to date in one go, after a backup, or stay as they are."""

from __future__ import annotations

import hashlib
import os
import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.orders import ContactClaim
from studio_planner.craft.prices import Prices
from studio_planner.craft.reminders import Reminding
from studio_planner.craft.saying import Saying
from studio_planner.craft.settings import Units
from studio_planner.craft.stock import StockRules
from studio_planner.storage import migrations, studio_file
from studio_planner.storage.migrating import start_file
from studio_planner.storage.migrations import RELEASED
from studio_planner.storage.migrations.m0007_reasons_in_any_language import (
    reasons_in_any_language,
)
from studio_planner.storage.opening import expected_schema, require_whole, version_in_header
from studio_planner.storage.studio_file import create_studio, open_studio

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.storage.migrations import Migration

FROZEN = {
    "m0001_first_tables.py": "2776f31dc66f5ab4",
    "m0001_plan_tables.py": "2ffc1a902c7d52cc",
    "m0001_studio_tables.py": "c2ec9e4484ed70ba",
    "m0001_work_tables.py": "58048cef908e4c96",
    "m0002_worth_of_a_plan.py": "a1ce6254eed383fc",
    "m0003_what_a_maker_enters.py": "8bca9a753bbcc059",
    "m0004_gained_columns.py": "e6f1e73b84a9d588",
    "m0004_reminder_tables.py": "b2fb46552bafbda2",
    "m0004_what_happens.py": "5e13babb34987947",
    "m0005_food_contact.py": "06d4c82e1a854c69",
    "m0006_pots_and_leaf.py": "46f22d2ef97985f9",
    "m0007_reasons_in_any_language.py": "24e9fdde7aace300",
    "m0008_what_weeks_tell.py": "78fb042ffdca80a8",
}

NEXT = len(RELEASED) + 1

ROWS_OF_VERSION_1 = Path(__file__).with_name("version_1_rows.sql")


def file_of_version_1(path: Path) -> Path:
    """A studio file as the first version wrote it."""
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        start_file(connection, RELEASED[:1])
        connection.executescript(ROWS_OF_VERSION_1.read_text(encoding="utf-8"))
    return path


def as_of_version_1(studio: Studio) -> Studio:
    """The studio as version 1 knew it: a plan and what was poured, nothing of what happened."""
    units = studio.units
    bare = replace(
        studio,
        units=Units(temperature=units.temperature, mass=units.mass, length=units.length),
        settings=replace(studio.settings, tariff_per_kwh=0.0),
        places=tuple(
            replace(place, heat_loss_w_per_k=None, spells=()) for place in studio.places
        ),
        pieces=tuple(
            replace(piece, note="", photos=(), blank_price=0.0, stack=_as_poured_at_once(piece))
            for piece in studio.pieces
        ),
        orders=tuple(
            replace(order, note="", price=None, contact=ContactClaim.DECORATIVE)
            for order in studio.orders
        ),
        products=tuple(
            replace(product, taught=(), viscosity_mpas=None, leaf_mm=None, leaf_price=0.0)
            for product in studio.products
        ),
        poured=tuple(replace(pour, batch=None) for pour in studio.poured),
        reminding=Reminding(moved_minutes=30),
        stock=StockRules(),
        prices=Prices(),
        lots=(),
        pigments=(),
        patterns=(),
        log=(),
        mixes=(),
        gone=(),
        pins=(),
    )
    return without_worth(bare)


def _as_poured_at_once(piece: Piece) -> tuple[Coat, ...]:
    return tuple(
        replace(coat, colours=tuple(replace(one, pour_at_minute=None) for one in coat.colours))
        for coat in piece.stack
    )


def _in_words(plan: Plan) -> Plan:
    """The plan with every reason as one text, as it was kept before version 7."""
    outcomes = tuple(
        replace(
            one,
            reason=Saying(str(one.reason)),
            changes=tuple(replace(c, words=Saying(str(c.words))) for c in one.changes),
        )
        for one in plan.outcomes
    )
    rows = tuple(replace(row, reason=Saying(str(row.reason))) for row in plan.unplanned)
    return replace(plan, outcomes=outcomes, unplanned=rows)


def without_worth(studio: Studio) -> Studio:
    """The studio with a plan that says nothing of goals or rehearsals."""
    assert studio.plan is not None
    plan = _in_words(studio.plan)
    bare = replace(
        plan,
        coats=tuple(replace(coat, held=None, wrong_first=None) for coat in plan.coats),
        outcomes=tuple(
            replace(outcome, held=None, day_held=None, rehearsed_spare_hours=None)
            for outcome in plan.outcomes
        ),
        goals=(),
        grid_minutes=5,
        solved_seconds=0.0,
        rehearsals=0,
    )
    return replace(studio, plan=bare)


def add_glaze(connection: sqlite3.Connection) -> None:
    """Add an invented table and fill it from what is there."""
    connection.execute("CREATE TABLE glaze (name TEXT NOT NULL) STRICT")
    connection.execute("INSERT INTO glaze SELECT name FROM pieces")


def rename_pieces(connection: sqlite3.Connection) -> None:
    """Change rows."""
    connection.execute("UPDATE pieces SET name = name || ' (glazed)'")


def run_out_of_disk(connection: sqlite3.Connection) -> None:
    """Fill the disk."""
    connection.execute("PRAGMA max_page_count = 1")
    connection.execute("CREATE TABLE big (x BLOB) STRICT")
    connection.execute("INSERT INTO big VALUES (zeroblob(10000000))")


def tear_a_reference(connection: sqlite3.Connection) -> None:
    """Leave coats without their product."""
    connection.execute("DELETE FROM products")


def stumble(connection: sqlite3.Connection) -> None:
    """Have a bug."""
    connection.execute("DELETE FROM pieces")
    raise ZeroDivisionError


def names(path: Path) -> list[str]:
    connection = sqlite3.connect(path)
    found = [row[0] for row in connection.execute("SELECT name FROM pieces ORDER BY position")]
    connection.close()
    return found


def test_released_migrations_are_never_edited() -> None:
    folder = Path(migrations.__file__).parent
    found = {
        path.name: hashlib.sha256(path.read_text("utf-8").encode()).hexdigest()[:16]
        for path in sorted(folder.glob("m[0-9]*.py"))
    }
    assert found == FROZEN


def test_every_released_migration_says_what_it_does() -> None:
    assert all(step.__doc__ for step in RELEASED)


def test_an_older_file_is_brought_up_to_date_after_a_backup(studio_path: Path) -> None:
    before = names(studio_path)
    steps = (*RELEASED, add_glaze, rename_pieces)
    with open_studio(studio_path, steps=steps) as file:
        assert [piece.name for piece in file.read().pieces] == [f"{n} (glazed)" for n in before]
    backup = studio_path.with_name(f"full (before version {NEXT}).studio")
    assert names(backup) == before
    assert names(studio_path) == [f"{name} (glazed)" for name in before]
    with open_studio(studio_path, steps=steps):
        pass
    assert sorted(p.name for p in studio_path.parent.iterdir()) == [backup.name, "full.studio"]


def test_a_file_of_version_1_keeps_everything_and_takes_what_came_later(
    tmp_path: Path, full_studio: Studio
) -> None:
    path = file_of_version_1(tmp_path / "old.studio")
    with open_studio(path) as file:
        assert file.read() == as_of_version_1(full_studio)
        file.write(full_studio)
    with open_studio(path) as file:
        assert file.read() == full_studio
    with closing(sqlite3.connect(tmp_path / "old (before version 2).studio")) as backup:
        assert backup.execute("PRAGMA user_version").fetchone() == (1,)
        assert len(backup.execute("SELECT * FROM plan_coats").fetchall()) == 2


def test_an_old_file_without_a_plan_is_brought_up_to_date_too(
    tmp_path: Path, full_studio: Studio
) -> None:
    path = file_of_version_1(tmp_path / "old.studio")
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("DELETE FROM plan")
        connection.commit()
    with open_studio(path) as file:
        assert file.read() == replace(as_of_version_1(full_studio), plan=None)


@pytest.mark.parametrize("words", ["", '„Zu kalt“: nie {über} "22 °C"\n', '{"text": "a"}'])
def test_reasons_that_were_kept_in_words_stay_those_words(
    studio_path: Path, full_studio: Studio, words: str
) -> None:
    """Before version 7 a reason in a table was the words themselves."""
    with closing(sqlite3.connect(studio_path)) as connection:
        connection.execute("UPDATE plan_outcomes SET reason = ?", (words,))
        connection.execute("UPDATE plan_outcomes_changes SET words = ?", (words,))
        connection.execute("UPDATE plan_unplanned SET reason = ?", (words,))
        reasons_in_any_language(connection)
        connection.commit()
    with open_studio(studio_path) as file:
        studio = file.read()
    assert studio.plan is not None
    said = [one.reason for one in studio.plan.outcomes]
    said += [change.words for one in studio.plan.outcomes for change in one.changes]
    said += [row.reason for row in studio.plan.unplanned]
    assert len(said) == 6
    assert set(said) == {Saying(words)}
    assert {str(one) for one in said} == {words}
    assert replace(studio, plan=None) == replace(full_studio, plan=None)


def test_the_backup_opens_with_the_older_program(
    studio_path: Path, full_studio: Studio
) -> None:
    open_studio(studio_path, steps=(*RELEASED, add_glaze)).close()
    with open_studio(studio_path.with_name(f"full (before version {NEXT}).studio")) as file:
        assert file.read() == full_studio


def test_an_older_program_refuses_the_file_afterwards(studio_path: Path) -> None:
    open_studio(studio_path, steps=(*RELEASED, add_glaze)).close()
    with pytest.raises(StudioFileError, match="newer version"):
        open_studio(studio_path)


def test_a_migrated_file_and_a_new_one_have_the_same_tables(
    studio_path: Path, full_studio: Studio, tmp_path: Path
) -> None:
    steps = (*RELEASED, add_glaze)
    open_studio(studio_path, steps=steps).close()
    create_studio(tmp_path / "new.studio", full_studio, steps=steps).close()
    assert len(expected_schema(steps)) == len(expected_schema(RELEASED)) + 1


def test_an_earlier_backup_is_not_written_over(studio_path: Path) -> None:
    taken = studio_path.with_name(f"full (before version {NEXT}).studio")
    taken.write_text("precious")
    open_studio(studio_path, steps=(*RELEASED, add_glaze)).close()
    assert taken.read_text() == "precious"
    assert names(studio_path.with_name(f"full (before version {NEXT} 2).studio"))


@pytest.mark.parametrize(
    ("bad", "error"),
    [
        (run_out_of_disk, StudioFileError),
        (tear_a_reference, StudioFileError),
        (stumble, ZeroDivisionError),
    ],
)
def test_a_migration_that_fails_changes_nothing(
    studio_path: Path, full_studio: Studio, bad: Migration, error: type[Exception]
) -> None:
    before = studio_path.read_bytes()
    with pytest.raises(error):
        open_studio(studio_path, steps=(*RELEASED, add_glaze, bad))
    assert studio_path.read_bytes() == before
    with open_studio(studio_path) as file:
        assert file.read() == full_studio


def test_a_backup_that_fails_stops_the_migration(
    studio_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = studio_path.read_bytes()

    def fail(_descriptor: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", fail)
    with pytest.raises(StudioFileError, match="disk is full"):
        open_studio(studio_path, steps=(*RELEASED, add_glaze))
    assert studio_path.read_bytes() == before


def test_a_migration_that_is_killed_changes_nothing(
    studio_path: Path, full_studio: Studio
) -> None:
    script = (
        "import os, signal, sys; from pathlib import Path\n"
        "from studio_planner.storage.migrations import RELEASED\n"
        "from studio_planner.storage.studio_file import open_studio\n"
        "def die(connection):\n"
        "    connection.execute('PRAGMA cache_size = 1')\n"
        "    connection.execute('CREATE TABLE big (x BLOB) STRICT')\n"
        "    connection.execute('INSERT INTO big VALUES (zeroblob(3000000))')\n"
        "    connection.execute('DELETE FROM plan_coats')\n"
        "    os.kill(os.getpid(), signal.SIGKILL)\n"
        "open_studio(Path(sys.argv[1]), steps=(*RELEASED, die))\n"
    )
    done = subprocess.run(  # noqa: S603 - our own script
        [sys.executable, "-c", script, str(studio_path)],
        check=False,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
    )
    assert done.returncode != 0
    with open_studio(studio_path) as file:
        assert file.read() == full_studio


def test_two_windows_that_open_an_older_file_at_once_both_open_it(
    studio_path: Path, full_studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The other brings it up to date between our first look at the file and our own turn."""
    steps = (*RELEASED, add_glaze)
    with monkeypatch.context() as patch:

        def looks(path: Path, newest: int) -> int:
            found = version_in_header(path, newest)
            patch.undo()
            open_studio(studio_path, steps=steps).close()
            return found

        patch.setattr(studio_file, "version_in_header", looks)
        with open_studio(studio_path, steps=steps) as file:
            assert file.read() == full_studio
    with monkeypatch.context() as patch:

        def checks(
            connection: sqlite3.Connection, path: Path, known: Sequence[Migration]
        ) -> int:
            found = require_whole(connection, path, known)
            patch.undo()
            open_studio(studio_path, steps=(*steps, rename_pieces)).close()
            return found

        patch.setattr(studio_file, "require_whole", checks)
        with open_studio(studio_path, steps=(*steps, rename_pieces)) as file:
            assert [piece.name for piece in file.read().pieces] == [
                f"{piece.name} (glazed)" for piece in full_studio.pieces
            ]
    assert len(list(studio_path.parent.iterdir())) == 3  # one backup for each step


def test_a_file_whose_migration_was_cut_off_at_its_end_is_opened(
    studio_path: Path, full_studio: Studio, tmp_path: Path
) -> None:
    """Its first bytes say the newer version already; the journal beside it takes that back."""
    cut_off = tmp_path / "cut" / "off.studio"
    cut_off.parent.mkdir()
    with closing(sqlite3.connect(studio_path, isolation_level=None)) as migrating:
        migrating.execute("PRAGMA cache_size = 1")  # pages reach the disk before it is done
        migrating.execute("BEGIN IMMEDIATE")
        migrating.execute(f"PRAGMA user_version = {NEXT}")
        migrating.execute("UPDATE products SET name = printf('%.*c', 100000, 'x')")
        shutil.copy(studio_path, cut_off)
        shutil.copy(f"{studio_path}-journal", f"{cut_off}-journal")
    with cut_off.open("r+b") as file:  # the first page is written last of all
        file.seek(60)
        file.write(NEXT.to_bytes(4, "big"))
    assert version_in_header(cut_off, NEXT) == NEXT
    with open_studio(cut_off, steps=(*RELEASED, add_glaze)) as opened:
        assert opened.read() == full_studio
