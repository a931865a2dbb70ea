"""Reminders: their names, their settings, and when it is too late."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta

import pytest

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.reminders import (
    LEAD_MINUTES,
    WORDS,
    Means,
    Reminder,
    ReminderKind,
    Reminding,
    Urgency,
    reminder_word,
    sign_of,
    uid_of,
)

NOON = datetime(2026, 2, 3, 12, tzinfo=UTC)
HOUR = timedelta(hours=1)


def a_reminder() -> Reminder:
    return Reminder(
        uid="weigh-now/tray/flood",
        kind=ReminderKind.WEIGH,
        urgency=Urgency.CAN_WAIT,
        due=NOON,
        meant=NOON,
        moment=NOON + HOUR,
    )


def test_every_kind_urgency_and_means_has_a_word_and_every_kind_a_lead() -> None:
    values = {one.value for kinds in (ReminderKind, Urgency, Means) for one in kinds}
    assert values == set(WORDS)
    assert set(LEAD_MINUTES) == set(ReminderKind)
    assert reminder_word(ReminderKind.SHIP) == "order can ship"


def test_a_lead_that_nobody_chose_is_common_practice() -> None:
    chosen = Reminding(leads={ReminderKind.WEIGH: 45})
    assert chosen.lead(ReminderKind.WEIGH) == 45
    assert chosen.lead(ReminderKind.CLOSING) == LEAD_MINUTES[ReminderKind.CLOSING]


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"quiet_from": time(22, tzinfo=UTC)}, "quiet_from"),
        ({"evening": time(18, tzinfo=UTC)}, "evening"),
        ({"readings_hours": 0.1}, "readings_hours"),
        ({"moved_minutes": 1}, "moved_minutes"),
        ({"leads": {ReminderKind.TAPE: -1}}, "leads, pull tape"),
    ],
)
def test_settings_out_of_range_are_refused(change: dict[str, object], field: str) -> None:
    with pytest.raises(InvalidEntry) as refused:
        replace(Reminding(), **change)  # type: ignore[arg-type]
    assert [rule.field for rule in refused.value.broken] == [field]


def test_a_reminder_needs_a_name_and_times_with_a_zone() -> None:
    naive = NOON.replace(tzinfo=None)
    with pytest.raises(InvalidEntry) as refused:
        replace(a_reminder(), uid=" ", saved_until=naive)
    assert [rule.field for rule in refused.value.broken] == ["uid", "saved_until"]


def test_a_reminder_that_quiet_hours_put_off_says_so() -> None:
    assert not a_reminder().was_moved
    assert a_reminder().put_off(NOON + HOUR).was_moved


def test_what_has_no_end_can_always_be_saved() -> None:
    assert a_reminder().can_be_saved(NOON + 1000 * HOUR)
    ends = replace(a_reminder(), saved_until=NOON)
    assert ends.can_be_saved(NOON - HOUR)
    assert not ends.can_be_saved(NOON)


def test_two_things_never_share_a_name() -> None:
    names = {
        uid_of(ReminderKind.PACK, *about)
        for about in (("a", "b"), ("a/b",), ("a%2f;b",), ("a b",), ("ab",), ("Süd",))
    }
    assert len(names) == 6
    assert all(" " not in name for name in names)


def test_a_sign_is_short_and_stays_the_same_in_every_process() -> None:
    # Written down once: a maker may type it days after it was read.
    assert sign_of("weigh-now/tray/flood") == "633549"
