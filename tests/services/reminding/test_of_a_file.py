"""The reminders of a studio file on disk, from the plan to the button."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.due_rows import RowState
from studio_planner.craft.reminders import Means, Reminding, sign_of
from studio_planner.services.naming import UnknownName
from studio_planner.services.ports import Pressed
from studio_planner.services.reminding.due_list import due_list
from studio_planner.services.reminding.notices import DONE, OPEN, SNOOZE
from studio_planner.services.reminding.studio_reminders import StudioReminders
from studio_planner.storage.studio_file import create_studio, open_studio
from tests.desktop import scenes
from tests.desktop.scenes import at
from tests.services.questions.steady import PlainVoice
from tests.services.reminding.kept import SILENT, Bell

if TYPE_CHECKING:
    from pathlib import Path

HOUR = timedelta(hours=1)


def test_what_the_plan_asks_for_is_told_in_its_time(
    reminders: StudioReminders, bell: Bell, clock: scenes.StillClock
) -> None:
    tick = reminders.tick()
    assert "weigh-now/c/seal" in [row.uid for row in tick.due]
    assert bell.shown[-1].title == "Weigh now: Slate coasters, seal"
    assert [row.uid for row in reminders.due()] == [row.uid for row in tick.due]
    assert reminders.coming()[0].rings_at == at(0, "20:55")
    clock.when = at(0, "20:55")
    reminders.tick()
    assert bell.shown[-1].title == "Weigh now: Fen clock, prime"


def test_writing_reminders_says_nothing_of_the_studio(
    path: Path, reminders: StudioReminders
) -> None:
    with open_studio(path) as other:
        before, studio = other.revision(), other.read()
        reminders.tick()
        assert other.revision() == before
        assert other.read() == studio


def plan_an_hour_later(path: Path, piece: str) -> None:
    """Have somebody else keep the plan with the coats of one piece an hour later."""
    with open_studio(path) as other:
        plan = other.read().plan
        assert plan is not None
        coats = tuple(
            replace(c, start=c.start + HOUR, end=c.end + HOUR) if c.piece == piece else c
            for c in plan.coats
        )
        other.keep_plan(replace(plan, coats=coats))


def test_a_plan_that_was_made_again_is_followed(
    path: Path, reminders: StudioReminders, clock: scenes.StillClock
) -> None:
    reminders.tick()
    plan_an_hour_later(path, "f")
    clock.when = at(0, "20:56")
    assert "weigh-now/f/prime" not in [row.uid for row in reminders.tick().due]
    assert reminders.row("weigh-now/f/prime").rings_at == at(0, "21:55")


def test_what_the_plan_has_moved_says_so_and_was_not_missed(
    path: Path, reminders: StudioReminders, clock: scenes.StillClock
) -> None:
    reminders.tick()
    plan_an_hour_later(path, "c")
    clock.when = at(0, "20:11")
    reminders.tick()
    due = due_list(reminders, reminders.due(), PlainVoice(), clock.now())
    weigh = next(item for item in due.items if "weigh-now/c/seal" in item.uids)
    assert weigh.put_off.startswith("The plan has moved it: told again ")
    assert not weigh.missed


def test_done_on_the_notice_takes_it_off_the_list(
    reminders: StudioReminders, bell: Bell
) -> None:
    reminders.tick()
    bell.answers.append(Pressed(bell.shown[-1].key, DONE))
    ((pressed, rows),) = reminders.answered(0.0)
    assert pressed.button == DONE
    assert [row.uid for row in rows] == ["weigh-now/c/seal"]
    assert "weigh-now/c/seal" not in [row.uid for row in reminders.due()]


def test_later_on_the_notice_puts_it_off_to_its_moment(
    reminders: StudioReminders, bell: Bell
) -> None:
    reminders.tick()
    (row,) = reminders.answer(Pressed(bell.shown[-1].key, SNOOZE))
    assert (row.state, row.rings_at) == (RowState.PUT_OFF, at(0, "20:10"))
    (same,) = reminders.answer(Pressed(bell.shown[-1].key, OPEN))
    assert same == row


def test_whoever_pours_needs_no_other_word_of_that_window(
    reminders: StudioReminders, clock: scenes.StillClock
) -> None:
    clock.when = at(1, "20:35")
    listed = {row.uid for row in reminders.tick().due}
    about = {"window-opens/h1/tide", "weigh-now/h1/tide", "window-about-to-close/h1/tide"}
    assert about <= listed
    done = reminders.acknowledge(["weigh-now/h1/tide"])
    assert {row.uid for row in done} == about
    left = {row.uid for row in reminders.due()}
    assert "weigh-now/h2/tide" in left
    seen = reminders.acknowledge(["window-opens/h2/tide"])
    assert [row.uid for row in seen] == ["window-opens/h2/tide"]


def test_what_is_too_late_is_cleared_in_one_go(
    reminders: StudioReminders, clock: scenes.StillClock
) -> None:
    clock.when = at(2, "12:00")
    reminders.tick()
    assert any(not row.reminder.can_be_saved(clock.when) for row in reminders.due())
    cleared = reminders.clear()
    assert cleared
    assert all(row.reminder.can_be_saved(clock.when) for row in reminders.due())
    assert all(row.acknowledged is not None for row in cleared)


def test_at_night_only_what_cannot_be_saved_later_rings(
    reminders: StudioReminders, clock: scenes.StillClock, bell: Bell
) -> None:
    clock.when = at(2, "03:00")
    tick = reminders.tick()
    assert tick.due
    assert bell.shown == []
    clock.when = at(2, "07:00")
    reminders.tick()
    assert len(bell.shown) == 2  # what was missed, and what waited for breakfast


def test_a_means_that_is_switched_off_is_not_tried(
    path: Path, clock: scenes.StillClock, bell: Bell
) -> None:
    with open_studio(path) as file:
        silent = Reminding(means_off=frozenset({Means.NOTIFICATION}))
        file.write(replace(file.read(), reminding=silent))
        sound = Bell("sound")
        StudioReminders(file, clock, (bell, sound), lambda _: PlainVoice()).tick()
    assert bell.shown == []
    assert sound.shown


def test_a_reminder_is_found_by_its_name_or_its_sign(reminders: StudioReminders) -> None:
    reminders.tick()
    uid = "weigh-now/c/seal"
    assert reminders.row(uid).uid == reminders.row(sign_of(uid)).uid == uid
    with pytest.raises(UnknownName, match="no reminder “nothing”"):
        reminders.row("nothing")


def test_ringing_now_tries_every_means(reminders: StudioReminders, bell: Bell) -> None:
    bell.broken = SILENT
    assert [(told.means, told.failure) for told in reminders.ring_now()] == [
        ("notification", "It is broken."),
        ("sound", None),
    ]


def test_a_studio_without_a_plan_has_nothing_due(
    tmp_path: Path, clock: scenes.StillClock
) -> None:
    path = tmp_path / "bare.studio"
    create_studio(path, scenes.studio()).close()
    with open_studio(path) as file:
        reminders = StudioReminders(file, clock, (), lambda _: PlainVoice())
        assert reminders.tick().due == ()
        assert reminders.studio.name == "Lantern Yard"
        reminders.close()


def test_rows_are_read_as_they_were_written(reminders: StudioReminders, path: Path) -> None:
    reminders.tick()
    before = {row.uid: row for row in (*reminders.due(), *reminders.coming())}
    with open_studio(path) as file:
        again = StudioReminders(file, scenes.StillClock(at(0, "20:00")), (), _plain)
        after = {row.uid: row for row in (*again.due(), *again.coming())}
    assert after == before


def _plain(_: object) -> PlainVoice:
    return PlainVoice()


def test_two_windows_on_one_file_ring_once(
    path: Path, clock: scenes.StillClock, reminders: StudioReminders, bell: Bell
) -> None:
    other = Bell()
    with open_studio(path) as file:
        second = StudioReminders(file, clock, (other,), _plain)
        second.tick()
        reminders.tick()
        assert {row.uid for row in second.due()} == {row.uid for row in reminders.due()}
    assert other.shown
    assert bell.shown == []
    assert isinstance(clock.now(), datetime)
