"""Backups of an open studio: once a day, looked at without harm, brought back and undone."""

from __future__ import annotations

import errno
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.part_of_studio import part_of
from studio_planner.craft.pieces import Photo
from studio_planner.craft.studio import Studio
from studio_planner.services.backups import Backups, differences
from studio_planner.services.desk import DeskSession
from studio_planner.services.editing.changes import Change
from studio_planner.services.sample import sample_studio
from studio_planner.storage.studio_file import create_studio
from tests.services.small_studios import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

NOW = datetime(2026, 2, 2, 7, tzinfo=UTC)


class SetClock:
    """A clock that stands until it is set."""

    def __init__(self, moment: datetime) -> None:
        self.moment = moment

    def now(self) -> datetime:
        return self.moment


@pytest.fixture
def clock() -> SetClock:
    return SetClock(NOW)


@pytest.fixture
def session(tmp_path: Path, clock: SetClock) -> Iterator[DeskSession]:
    path = tmp_path / "try.studio"
    create_studio(path, sample_studio(DAY)).close()
    opened = DeskSession(path, clock)
    yield opened
    opened.close()


@pytest.fixture
def backups(session: DeskSession, tmp_path: Path) -> Backups:
    return Backups(session, tmp_path / "data" / "backups")


def emptied(session: DeskSession) -> None:
    assert session.apply(Change("Empty", lambda now: part_of(now, (), ())))


def test_a_studio_without_backups_has_none(backups: Backups) -> None:
    assert backups.all() == ()


def test_a_backup_says_what_is_in_it(backups: Backups) -> None:
    made = backups.make()
    (kept,) = backups.all()
    assert (kept.made, kept.path, kept.fault) == (made.made, made.path, "")
    assert kept.holds is not None
    assert (kept.holds.name, kept.holds.pieces, kept.holds.orders, kept.holds.planned) == (
        "Tallowmere workshop",
        15,
        4,
        None,
    )


def test_one_backup_is_made_by_itself_on_each_local_day(
    backups: Backups, clock: SetClock
) -> None:
    assert backups.make_for_today() is not None
    assert backups.make_for_today() is None
    clock.moment = NOW + timedelta(days=1)
    assert backups.make_for_today() is not None
    assert len(backups.all()) == 2


def test_two_backups_of_one_moment_are_both_kept(backups: Backups) -> None:
    assert backups.make() != backups.make()
    assert len(backups.all()) == 2


def test_bringing_back_is_one_change_and_what_was_there_is_backed_up(
    session: DeskSession, backups: Backups
) -> None:
    before = session.studio
    backups.make()
    emptied(session)
    empty = session.studio
    (kept,) = backups.all()
    assert session.apply(backups.bringing_back(kept, "Bring back"))
    # Nothing had been planned, and nothing is now.
    assert replace(session.studio, plan_outdated=False) == before
    back = session.studio
    assert [backups.studio_in(one).pieces for one in backups.all()] == [(), before.pieces]
    session.undo()
    assert session.studio == empty
    session.redo()
    assert session.studio == back


def test_the_backup_that_is_brought_back_stays_however_many_there_are(
    session: DeskSession, backups: Backups, clock: SetClock
) -> None:
    first = backups.make()
    for minute in range(1, 11):
        clock.moment = NOW + timedelta(minutes=minute)
        backups.make()
    assert first.path not in [kept.path for kept in backups.all()]
    oldest = backups.all()[-1]
    emptied(session)
    session.apply(backups.bringing_back(oldest, "Bring back"))
    assert oldest.path in [kept.path for kept in backups.all()]


def test_looking_at_a_backup_leaves_it_as_it_is(session: DeskSession, backups: Backups) -> None:
    made = backups.make()
    before = made.path.read_bytes()
    assert backups.studio_in(backups.all()[0]) == session.studio
    assert made.path.read_bytes() == before
    assert [path.name for path in made.path.parent.iterdir()] == [made.path.name]


def test_a_damaged_backup_is_listed_with_a_sentence_and_refused(
    session: DeskSession, backups: Backups
) -> None:
    made = backups.make()
    made.path.write_bytes(b"SQLite format 3\x00" + bytes(200))
    (kept,) = backups.all()
    assert kept.holds is None
    assert str(made.path) in kept.fault
    before = session.studio
    with pytest.raises(StudioFileError, match="belongs to another program"):
        backups.bringing_back(kept, "Bring back")
    assert session.studio is before
    assert len(backups.all()) == 1


def test_a_backup_cut_short_is_refused_when_it_is_read(backups: Backups) -> None:
    made = backups.make()
    whole = made.path.read_bytes()
    made.path.write_bytes(whole[: len(whole) // 2])
    with pytest.raises(StudioFileError, match="damaged"):
        backups.studio_in(backups.all()[0])


def test_a_folder_that_cannot_be_made_is_said_in_a_sentence(
    session: DeskSession, tmp_path: Path
) -> None:
    (tmp_path / "data").write_text("a file")
    backups = Backups(session, tmp_path / "data" / "backups")
    with pytest.raises(StudioFileError) as refused:
        backups.make()
    assert str(tmp_path) in str(refused.value)


def test_a_full_disk_is_said_and_leaves_no_half_a_backup(
    backups: Backups, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_descriptor: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    with monkeypatch.context() as patched:
        patched.setattr("os.fsync", full)
        with pytest.raises(StudioFileError, match="the disk is full"):
            backups.make()
    assert list(backups.folder.iterdir()) == []
    backups.make()
    assert len(backups.all()) == 1


def test_pictures_that_the_studio_has_lost_come_back_too(
    session: DeskSession, backups: Backups
) -> None:
    taken = Photo(key="sky", taken=NOW)
    session.add_photo("sky", b"blue")
    session.apply(
        Change(
            "Photo",
            lambda now: replace(
                now, pieces=(replace(now.pieces[0], photos=(taken,)), *now.pieces[1:])
            ),
        )
    )
    backups.make()
    (kept,) = backups.all()
    path = session.path.with_name("other.studio")
    create_studio(path, Studio(name="Other")).close()
    other = DeskSession(path, session.clock)
    other.apply(Backups(other, backups.folder).bringing_back(kept, "Bring back"))
    assert other.photo("sky") == b"blue"
    other.close()


def test_what_would_come_back_go_and_change_is_named() -> None:
    now = sample_studio(DAY)
    first, second, *rest = now.pieces
    then = replace(
        Studio(name="Then"),
        products=now.products,
        pieces=(replace(first, name="As it was"), *rest),
    )
    found = {
        one.noun: one for one in differences(then, replace(now, orders=(), poured=(), lots=()))
    }
    assert found["pieces"].other == ("As it was",)
    assert found["pieces"].gone == (second.name,)
    assert found["people"].gone == ("Ilka", "Bram")
    assert "products" not in found
    assert differences(now, now) == ()
