"""What a calendar is told of an event that stays, changes, goes and comes back."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from studio_planner.craft.told_events import (
    TOLD_FOR,
    ToldEvent,
    is_still_told,
    told_again,
    told_no_more,
)

NOON = datetime(2026, 2, 3, 12, tzinfo=UTC)
HOUR = timedelta(hours=1)
EVENT = ToldEvent(
    uid="pour/tray/flood@x",
    sequence=3,
    fingerprint="as it is",
    cancelled=False,
    changed=NOON - HOUR,
    starts=NOON + HOUR,
    ends=NOON + 2 * HOUR,
    words="Pour",
)


def test_an_event_that_is_the_same_keeps_its_number_and_its_time_of_change() -> None:
    assert told_again(EVENT, replace(EVENT, sequence=0, changed=NOON)) == EVENT
    assert told_again(None, EVENT) == EVENT


def test_a_change_raises_the_number() -> None:
    changed = told_again(EVENT, replace(EVENT, sequence=0, fingerprint="other", changed=NOON))
    assert (changed.sequence, changed.changed) == (4, NOON)


def test_what_is_no_more_is_cancelled_once_and_may_come_back_under_a_higher_number() -> None:
    gone = told_no_more(EVENT, NOON)
    assert (gone.cancelled, gone.sequence, gone.changed) == (True, 4, NOON)
    assert told_no_more(gone, NOON + HOUR) == gone
    back = told_again(gone, replace(EVENT, sequence=0))
    assert (back.cancelled, back.sequence) == (False, 5)


def test_what_is_over_is_not_cancelled_afterwards() -> None:
    assert told_no_more(EVENT, EVENT.ends) == EVENT


def test_a_cancelled_event_is_told_of_for_a_month() -> None:
    gone = told_no_more(EVENT, NOON)
    assert is_still_told(gone, NOON)
    assert not is_still_told(gone, EVENT.ends + TOLD_FOR)
    assert not is_still_told(EVENT, NOON)
