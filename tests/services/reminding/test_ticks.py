"""One tick after the other: what is written, what is told, by whom, and how often."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from typing_extensions import override

from studio_planner.craft.due_rows import RowState
from studio_planner.services.reminding.calls import MOST_CALLS
from studio_planner.services.reminding.ticking import LEASE_SECONDS
from tests.services.reminding.kept import NOON, SILENT, Bell, Kept, reminder

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.services.ports import Notice
    from studio_planner.services.reminding.settling import Made

MINUTE, HOUR, DAY = timedelta(minutes=1), timedelta(hours=1), timedelta(days=1)


def names(rows: Sequence[DueRow]) -> list[str]:
    return [row.uid for row in rows]


def titles(notices: Sequence[Notice]) -> list[str]:
    return [notice.title for notice in notices]


class Killed(BaseException):
    """The process is gone in the middle of a call."""


@dataclass
class Dying(Bell):
    """A means in whose call the process is killed, once it has shown the notice or before."""

    shows: bool = True

    @override
    def ring(self, notice: Notice) -> None:
        if self.shows:
            super().ring(notice)
        raise Killed


def test_what_is_due_is_told_once_by_every_means_and_stays_on_the_list() -> None:
    kept, bell, sound = Kept(reminders=(reminder("a"),)), Bell(), Bell("sound")
    instance = kept.instance(bell, sound)
    tick = instance.tick()
    assert names(tick.due) == ["a"]
    assert [told.means for told in tick.told] == ["notification", "sound"]
    kept.now += HOUR
    assert names(instance.tick().due) == ["a"]
    assert (titles(bell.shown), titles(sound.shown)) == (["a"], ["a"])


def test_what_is_to_come_waits_for_its_time() -> None:
    kept, bell = Kept(reminders=(reminder("a", NOON + MINUTE),)), Bell()
    instance = kept.instance(bell)
    assert instance.tick().due == ()
    kept.now += MINUTE
    instance.tick()
    assert titles(bell.shown) == ["a"]


def test_without_any_means_what_is_due_is_listed_and_told_by_who_comes_next() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell()
    assert names(kept.instance().tick().due) == ["a"]
    assert kept.instance(bell).tick().told[0].failure is None
    assert titles(bell.shown) == ["a"]


def test_what_is_acknowledged_never_rings_again() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell()
    instance = kept.instance(bell)
    instance.tick()
    (row,) = instance.acknowledge(["a"])
    assert row.state is RowState.ACKNOWLEDGED
    kept.now += DAY
    kept.revision_ += 1
    assert instance.tick().due == ()
    assert len(bell.shown) == 1


def test_what_is_put_back_is_due_again_and_not_told_again() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell()
    instance = kept.instance(bell)
    instance.tick()
    instance.acknowledge(["a"])
    instance.put_back(["a"])
    kept.now += MINUTE
    assert names(instance.tick().due) == ["a"]
    assert len(bell.shown) == 1


def test_what_is_put_off_is_told_again_then_and_stays_on_the_list() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell()
    instance = kept.instance(bell)
    instance.tick()
    instance.snooze(["a"], lambda _: NOON + HOUR)
    kept.now += 59 * MINUTE
    assert names(instance.tick().due) == ["a"]
    assert len(bell.shown) == 1
    kept.now += MINUTE
    instance.tick()
    assert [notice.body for notice in bell.shown] == ["", ""]  # nobody was away
    assert instance.snooze(["a"], lambda _: None)[0].state is RowState.DUE


def test_what_a_late_word_of_the_maker_asks_for_was_not_missed() -> None:
    kept, bell = Kept(reminders=(reminder("a", NOON + DAY),)), Bell()
    instance = kept.instance(bell)
    instance.tick()
    kept.now += 15 * MINUTE
    instance.tick()
    kept.now += 14 * MINUTE
    kept.reminders, kept.revision_ = (reminder("a", NOON), reminder("b", NOON)), 2
    assert [row.late for row in instance.tick().due] == [False, False]
    assert {notice.body for notice in bell.shown} == {""}


def test_what_nobody_has_told_of_for_long_was_missed_once_it_can_be_told() -> None:
    kept, bell = Kept(reminders=(reminder("a"),), quiet=True), Bell()
    instance = kept.instance(bell)
    instance.tick()
    kept.now, kept.quiet = NOON + HOUR, False
    instance.tick()
    assert [notice.body for notice in bell.shown] == ["away"]


def test_two_instances_ring_once_between_them() -> None:
    kept, one, other = Kept(reminders=(reminder("a"),)), Bell(), Bell()
    kept.instance(one, caller="one").tick()
    kept.instance(other, caller="other").tick()
    assert (len(one.shown), len(other.shown)) == (1, 0)


def test_while_one_may_ring_no_other_one_does() -> None:
    kept = Kept(reminders=(reminder("a"),))
    other = Bell()

    class Nested(Bell):
        @override
        def ring(self, notice: Notice) -> None:
            kept.instance(other, caller="other").tick()
            super().ring(notice)

    kept.instance(Nested(), caller="one").tick()
    assert other.shown == []


@pytest.mark.parametrize("shown", [True, False])
def test_a_call_whose_end_nobody_knows_is_made_once_more_and_says_so(shown: bool) -> None:
    kept = Kept(reminders=(reminder("a"),))

    with pytest.raises(Killed):
        kept.instance(Dying(shows=shown), caller="one").tick()
    heir = Bell()
    kept.instance(heir, caller="other").tick()
    assert heir.shown == []  # the dead one may still ring
    kept.steady += LEASE_SECONDS
    kept.instance(heir, caller="other").tick()
    assert [notice.body for notice in heir.shown] == ["perhaps"]
    kept.steady += LEASE_SECONDS
    kept.instance(heir, caller="other").tick()
    assert len(heir.shown) == 1


def test_what_was_shown_perhaps_is_so_still_after_the_next_call_has_failed() -> None:
    kept = Kept(reminders=(reminder("a"),))

    with pytest.raises(Killed):
        kept.instance(Dying(), caller="one").tick()
    kept.steady += LEASE_SECONDS
    bell = Bell(broken=SILENT)
    heir = kept.instance(bell, caller="other")
    assert heir.tick().told[0].failure == "It is broken."
    bell.broken = None
    heir.tick()
    assert [notice.body for notice in bell.shown] == ["perhaps"]


def test_others_of_a_bundle_do_not_take_the_place_of_what_was_shown_of_it() -> None:
    both = (reminder("a", together="m"), reminder("b", together="m"))
    kept = Kept(reminders=both)

    with pytest.raises(Killed):
        kept.instance(Dying(), caller="one").tick()
    kept.reminders, kept.revision_ = both[:1], 2
    kept.steady += LEASE_SECONDS
    bell = Bell()
    heir = kept.instance(bell, caller="other")
    heir.tick()
    kept.reminders, kept.revision_ = both, 3
    heir.tick()
    assert [(n.title, n.body) for n in bell.shown] == [("a", "perhaps"), ("b", "perhaps")]
    assert bell.shown[0].key != bell.shown[1].key


def test_a_notice_that_is_told_again_keeps_its_key() -> None:
    kept = Kept(reminders=(reminder("a"),))
    dying = Dying()
    with pytest.raises(Killed):
        kept.instance(dying, caller="one").tick()
    kept.reminders = (*kept.reminders, reminder("b"))
    kept.revision_ += 1
    kept.steady += LEASE_SECONDS
    heir = Bell()
    kept.instance(heir, caller="other").tick()
    assert heir.shown[0].key == dying.shown[0].key
    assert titles(heir.shown) == ["a", "b"]


def test_a_means_that_fails_says_so_and_the_others_are_tried() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell("sound")
    tick = kept.instance(Bell(broken=SILENT), bell).tick()
    assert [(t.means, t.failure) for t in tick.told] == [
        ("notification", "It is broken."),
        ("sound", None),
    ]
    assert not tick.nobody_reached
    assert kept.instance(Bell()).tick().told == ()


def test_a_fault_of_a_means_is_told_as_one() -> None:
    kept = Kept(reminders=(reminder("a"),))
    tick = kept.instance(Bell(broken=RuntimeError("oops"))).tick()
    assert tick.told[0].failure == "notification failed: oops"
    assert tick.nobody_reached


def test_what_reached_nobody_is_tried_again_a_few_times() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell(broken=SILENT)
    instance = kept.instance(bell)
    tries = []
    for _ in range(MOST_CALLS + 2):
        tries.append(len(instance.tick().told))
        kept.now += MINUTE
    assert tries == [1] * MOST_CALLS + [0, 0]
    assert names(instance.due()) == ["a"]


def test_what_reached_nobody_is_told_once_the_means_works() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell(broken=SILENT)
    instance = kept.instance(bell)
    instance.tick()
    bell.broken = None
    instance.tick()
    assert [(n.title, n.body) for n in bell.shown] == [("a", "")]


def test_what_was_missed_is_told_in_one_go_what_can_be_saved_first() -> None:
    late = NOON - DAY
    kept = Kept(
        reminders=(
            reminder("open", late),
            reminder("gone", late, saved_until=late + HOUR),
            reminder("soon", late, saved_until=NOON + HOUR),
            reminder("soonest", late, saved_until=NOON + MINUTE),
            reminder("now", NOON),
        )
    )
    bell = Bell()
    tick = kept.instance(bell).tick()
    assert names(tick.due) == ["soonest", "soon", "open", "now", "gone"]
    assert [(n.title, n.body) for n in bell.shown] == [
        ("soonest soon open gone", "away"),
        ("now", ""),
    ]


def test_the_pieces_of_one_mix_are_told_in_one_go() -> None:
    kept, bell = (
        Kept(
            reminders=(
                reminder("a", together="mix 1"),
                reminder("b", together="mix 1"),
                reminder("c", together="mix 2"),
            )
        ),
        Bell(),
    )
    kept.instance(bell).tick()
    assert titles(bell.shown) == ["a b", "c"]


def test_what_the_quiet_hours_put_off_is_told_in_one_go() -> None:
    night = NOON - 5 * HOUR
    kept = Kept(reminders=tuple(replace(reminder(u), meant=night) for u in ("a", "b")))
    bell = Bell()
    kept.instance(bell).tick()
    assert titles(bell.shown) == ["a b"]


def test_what_comes_due_in_the_quiet_hours_is_listed_and_told_after_them() -> None:
    kept, bell = Kept(reminders=(reminder("a"),), quiet=True), Bell()
    instance = kept.instance(bell)
    assert names(instance.tick().due) == ["a"]
    assert bell.shown == []
    kept.quiet = False
    instance.tick()
    assert titles(bell.shown) == ["a"]


def test_what_was_over_when_it_was_planned_is_no_news() -> None:
    kept = Kept(reminders=(reminder("old", NOON - HOUR), reminder("new")), since=NOON - MINUTE)
    assert names(kept.instance().tick().due) == ["new"]


def test_what_nobody_needs_is_forgotten_after_a_while_with_its_rings() -> None:
    kept, bell = Kept(reminders=(reminder("a"),)), Bell()
    instance = kept.instance(bell)
    instance.tick()
    kept.reminders, kept.revision_ = (), 2
    instance.tick()
    assert [row.state for row in instance.every()] == [RowState.WITHDRAWN]
    kept.now, kept.revision_ = NOON + 50 * DAY, 3
    instance.tick()
    assert instance.every() == ()
    with kept.rows() as rows:
        assert rows.rings() == ()


def test_reminders_are_made_again_only_when_the_studio_changed_or_time_went_by() -> None:
    kept = Kept(reminders=(reminder("a"),))
    instance = kept.instance()
    instance.tick()
    kept.reminders = (reminder("a"), reminder("b"))
    kept.now += MINUTE
    assert names(instance.tick().due) == ["a"]
    kept.now += HOUR
    assert names(instance.tick().due) == ["a", "b"]


def test_a_quiet_tick_writes_nothing() -> None:
    kept = Kept(reminders=(reminder("a", NOON + DAY),))
    instance = kept.instance(Bell())
    instance.tick()
    before = kept.file.connection.total_changes
    kept.now += MINUTE
    instance.tick()
    assert kept.file.connection.total_changes == before


def test_a_studio_that_is_changed_meanwhile_is_looked_at_again() -> None:
    class Changing(Kept):
        @override
        def made(self, now: datetime) -> Made:
            found = super().made(now)
            self.revision_ += 1
            self.reminders = (*self.reminders, reminder(f"r{self.revision_}"))
            return found

    kept = Changing(reminders=(reminder("a"),))
    assert names(kept.instance().tick().due) == ["a", "r2", "r3"]


def test_a_notice_leads_back_to_what_it_was_about() -> None:
    kept, bell = (
        Kept(reminders=(reminder("a", together="m"), reminder("b", together="m"))),
        Bell(),
    )
    instance = kept.instance(bell)
    instance.tick()
    assert instance.told_as(bell.shown[0].key) == ("a", "b")
    assert instance.told_as("unknown") == ()
