"""What rings in the quiet hours, and until when the rest is put off."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest

from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.reminders import Reminder, ReminderKind, Reminding, Urgency
from studio_planner.services.reminding.quiet import QuietHours

BERLIN = ZoneInfo("Europe/Berlin")
HOUR = timedelta(hours=1)
QUIET = QuietHours(Reminding(), BERLIN)


def local(day: int, hour: int, minute: int = 0, month: int = 2) -> datetime:
    return datetime(2026, month, day, hour, minute, tzinfo=BERLIN).astimezone(UTC)


def reminder(due: datetime, saved_until: datetime | None, *, lost: bool = True) -> Reminder:
    return Reminder(
        uid="x",
        kind=ReminderKind.CLOSING,
        urgency=Urgency.LOST_LATER if lost else Urgency.CAN_WAIT,
        due=due,
        meant=due,
        moment=due + HOUR,
        saved_until=saved_until,
    )


def test_quiet_hours_last_over_midnight_on_the_studios_clock() -> None:
    assert QUIET.ends(local(3, 21, 59)) is None
    assert QUIET.ends(local(3, 22)) == local(4, 7)
    assert QUIET.ends(local(4, 6, 59)) == local(4, 7)
    assert QUIET.ends(local(4, 7)) is None


@pytest.mark.parametrize(("month", "day"), [(3, 29), (10, 25)])
def test_quiet_hours_end_at_seven_on_both_changes_of_the_clock(month: int, day: int) -> None:
    end = QUIET.ends(local(day - 1, 23, month=month))
    assert end == local(day, 7, month=month)


def test_what_can_wait_is_put_off_until_breakfast_and_says_so() -> None:
    put_off = QUIET.put_off(reminder(local(4, 3), local(4, 4), lost=False))
    assert put_off.due == local(4, 7)
    assert put_off.meant == local(4, 3)
    assert put_off.was_moved


def test_what_is_lost_before_breakfast_rings_at_night() -> None:
    assert QUIET.put_off(reminder(local(4, 3), local(4, 4))).due == local(4, 3)
    assert QUIET.put_off(reminder(local(4, 6, 30), local(4, 7, 30))).due == local(4, 6, 30)


def test_what_is_lost_only_after_breakfast_waits_for_it() -> None:
    assert QUIET.put_off(reminder(local(4, 3), local(4, 9))).due == local(4, 7)
    assert QUIET.put_off(reminder(local(4, 3), None)).due == local(4, 7)


def test_nobody_is_woken_for_what_is_too_late_already() -> None:
    late = reminder(local(3, 20), local(3, 23))
    assert QUIET.may_ring(late, local(3, 21))
    assert QUIET.may_ring(late, local(3, 22, 30))
    assert not QUIET.may_ring(late, local(4, 3))


def test_hours_in_which_somebody_works_are_not_quiet() -> None:
    night = Person(
        key="n",
        name="Night",
        work=(WorkHours(rule="FREQ=DAILY", start=time(23), end=time(2)),),
    )
    quiet = QuietHours(Reminding(), BERLIN, (night,))
    assert quiet.ends(local(4, 1)) is None
    assert quiet.ends(local(3, 22, 30)) == local(3, 23)
    assert quiet.ends(local(4, 3)) == local(4, 7)


def test_without_quiet_hours_everything_rings_in_its_time() -> None:
    none = QuietHours(replace(Reminding(), quiet_from=time(7)), BERLIN)
    assert none.ends(local(4, 3)) is None
    assert none.around(local(4, 3)) is None
