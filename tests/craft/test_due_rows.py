"""What becomes of a reminder, step by step; random histories are played elsewhere."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from studio_planner.craft.due_rows import (
    DueRow,
    Ring,
    Ringing,
    RowState,
    acknowledged,
    all_tried,
    clock_set_back,
    come_due,
    learnt_late,
    new_row,
    no_longer_needed,
    planned_again,
    put_back,
    snoozed,
)
from studio_planner.craft.reminders import Reminder, ReminderKind, Urgency

NOON = datetime(2026, 2, 3, 12, tzinfo=UTC)
MINUTE, HOUR, DAY = timedelta(minutes=1), timedelta(hours=1), timedelta(days=1)


def reminder(due: datetime = NOON, kind: ReminderKind = ReminderKind.WEIGH) -> Reminder:
    return Reminder(
        uid="weigh-now/tray/flood",
        kind=kind,
        urgency=Urgency.CAN_WAIT,
        due=due,
        meant=due,
        moment=due + 10 * MINUTE,
    )


def told(due: datetime = NOON) -> DueRow:
    """A row that came due in its time and was told."""
    return all_tried(come_due(new_row(reminder(due)), due), 1)


def test_a_row_waits_until_its_time_and_is_due_from_then_on() -> None:
    row = new_row(reminder())
    assert row.state is RowState.WAITING
    assert come_due(row, NOON - MINUTE) == row
    due = come_due(row, NOON)
    assert (due.state, due.listed, due.to_ring, due.late) == (RowState.DUE, True, True, False)
    assert come_due(due, NOON + DAY) == due


def test_what_comes_due_long_after_its_time_was_missed() -> None:
    assert come_due(new_row(reminder()), NOON + HOUR).late


def test_what_is_asked_for_only_after_its_time_was_not_missed() -> None:
    looked, now = NOON + HOUR, NOON + 2 * HOUR
    arisen = learnt_late(new_row(reminder()), None, looked, now)
    assert arisen.rings_at == now
    assert not come_due(arisen, now).late
    waiting = new_row(reminder(NOON + DAY))
    assert not come_due(learnt_late(new_row(reminder()), waiting, looked, now), now).late
    assert learnt_late(waiting, None, looked, now) == waiting
    assert learnt_late(told(), None, looked, now) == told()
    due = new_row(reminder(NOON + 90 * MINUTE))
    assert learnt_late(due, None, looked, now) == due  # nobody looked after its time
    ahead = new_row(reminder(NOON + 3 * HOUR))
    assert learnt_late(ahead, None, NOON + DAY, now) == ahead  # by a clock that was wrong


def test_what_is_planned_after_its_time_but_before_its_moment_rings_at_once() -> None:
    late = new_row(reminder(), NOON + 5 * MINUTE)
    assert late.rings_at == NOON + 5 * MINUTE
    assert new_row(reminder(), NOON + HOUR).rings_at == NOON


def test_a_row_that_was_told_rests_until_it_is_acknowledged() -> None:
    row = told()
    assert row.uid == "weigh-now/tray/flood"
    assert row.listed
    assert not row.to_ring
    seen = acknowledged(row, NOON + MINUTE)
    assert (seen.state, seen.listed) == (RowState.ACKNOWLEDGED, False)
    assert acknowledged(seen, NOON + HOUR) == seen


def test_what_was_not_done_after_all_is_on_the_list_again_and_rings_no_more_for_it() -> None:
    row = told()
    again = put_back(acknowledged(row, NOON + MINUTE))
    assert again.listed
    assert not again.to_ring
    assert again == row
    waiting = new_row(reminder())
    assert put_back(waiting) == waiting
    assert put_back(acknowledged(waiting, NOON - HOUR)).state is RowState.ACKNOWLEDGED


def test_what_waits_moves_with_the_plan() -> None:
    row = planned_again(new_row(reminder()), reminder(NOON + HOUR))
    assert row.rings_at == NOON + HOUR


def test_what_was_told_rings_again_only_for_another_time() -> None:
    near = planned_again(told(), reminder(NOON + 20 * MINUTE))
    assert near.rings_at is None
    moved = planned_again(near, reminder(NOON + DAY))
    assert (moved.rings_at, moved.state) == (NOON + DAY, RowState.PUT_OFF)
    assert planned_again(moved, reminder()).rings_at is None
    again = come_due(moved, NOON + DAY)
    assert (again.round, again.to_ring, again.rang_for) == (2, True, NOON + DAY)
    assert again.came_due == NOON + DAY


def test_what_was_acknowledged_rings_again_for_a_time_after_it() -> None:
    seen = acknowledged(told(), NOON + MINUTE)
    assert planned_again(seen, reminder(NOON + 20 * MINUTE)).rings_at is None
    moved = planned_again(seen, reminder(NOON + DAY))
    assert (moved.rings_at, moved.state) == (NOON + DAY, RowState.ACKNOWLEDGED)
    assert planned_again(moved, reminder()).rings_at is None
    again = come_due(moved, NOON + DAY)
    assert (again.state, again.came_due) == (RowState.DUE, NOON + DAY)
    late = acknowledged(told(), NOON + 2 * DAY)
    assert planned_again(late, reminder(NOON + DAY)).rings_at is None


def test_what_is_acknowledged_after_it_was_moved_still_rings_then() -> None:
    moved = planned_again(told(), reminder(NOON + DAY))
    assert acknowledged(moved, NOON + HOUR).rings_at == NOON + DAY


def test_what_is_acknowledged_ahead_is_acknowledged_for_that_time() -> None:
    seen = acknowledged(new_row(reminder()), NOON - HOUR)
    assert planned_again(seen, reminder()).rings_at is None
    moved = planned_again(seen, reminder(NOON + DAY))
    assert acknowledged(moved, NOON).rang_for == NOON + DAY


def test_what_nothing_asks_for_is_withdrawn_and_may_come_back() -> None:
    gone = no_longer_needed(told(), NOON + HOUR)
    assert (gone.state, gone.listed) == (RowState.WITHDRAWN, False)
    assert no_longer_needed(gone, NOON + DAY) == gone
    assert come_due(replace(gone, rings_at=NOON), NOON + DAY).withdrawn is not None
    assert planned_again(gone, reminder()).listed


def test_news_of_a_night_stays_on_the_list_until_it_is_acknowledged() -> None:
    row = come_due(new_row(reminder(kind=ReminderKind.COLD)), NOON)
    assert no_longer_needed(row, NOON + DAY) == row
    waiting = new_row(reminder(kind=ReminderKind.COLD))
    assert no_longer_needed(waiting, NOON).withdrawn == NOON


def test_only_what_is_listed_can_be_put_off() -> None:
    waiting = new_row(reminder())
    assert snoozed(waiting, NOON + HOUR) == waiting
    later = snoozed(told(), NOON + HOUR)
    assert (later.state, later.listed) == (RowState.PUT_OFF, True)
    again = come_due(later, NOON + HOUR)
    assert (again.round, again.rang_for) == (2, NOON)


def test_a_clock_that_goes_forward_changes_nothing() -> None:
    for row in (told(), new_row(reminder()), acknowledged(told(), NOON)):
        assert clock_set_back(row, NOON + HOUR) == row


def test_what_was_told_too_early_is_told_again_in_its_time() -> None:
    early = clock_set_back(told(NOON + DAY), NOON)
    assert (early.rings_at, early.came_due) == (NOON + DAY, NOON)
    moved = replace(told(NOON + DAY), reminder=reminder(NOON - HOUR))
    assert clock_set_back(moved, NOON).rings_at is None


def test_what_was_put_off_is_told_again_though_the_clock_was_set_back() -> None:
    moved = planned_again(told(), reminder(NOON - 10 * HOUR))
    early = clock_set_back(snoozed(moved, NOON + HOUR), NOON - 2 * HOUR)
    assert early.rings_at == NOON + HOUR
    assert come_due(early, NOON + HOUR).to_ring


def test_nothing_was_acknowledged_in_the_future() -> None:
    seen = acknowledged(told(), NOON + DAY)
    assert clock_set_back(seen, NOON).acknowledged == NOON


def test_a_call_failed_only_once_it_has_ended_with_a_reason() -> None:
    ring = Ring(uid="a", round=1, means="sound", notice="n", caller="c", calls=1, started=NOON)
    assert not ring.failed
    assert not replace(ring, finished=NOON).failed
    assert replace(ring, finished=NOON, failure="no sound").failed


def test_the_right_to_ring_ends_with_its_time_and_with_a_steady_clock_that_began_anew() -> None:
    free = Ringing()
    assert free.free_for("me", 5.0)
    taken = Ringing(holder="you", taken=100.0, until=130.0)
    assert not taken.free_for("me", 120.0)
    assert taken.free_for("you", 120.0)
    assert taken.free_for("me", 130.0)
    assert taken.free_for("me", 3.0)
