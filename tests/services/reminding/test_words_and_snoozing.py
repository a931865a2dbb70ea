"""What reminders say, which buttons they have, and until when they can be put off."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.due_rows import DueRow, come_due, new_row
from studio_planner.craft.log import Gone, GoneKind
from studio_planner.craft.reminders import Means, Reminder, ReminderKind, Reminding, Urgency
from studio_planner.services.reminding.bundles import Bundle
from studio_planner.services.reminding.making import reminders_of
from studio_planner.services.reminding.notices import DONE, OPEN, SNOOZE, notice_of
from studio_planner.services.reminding.snoozing import snooze_until
from studio_planner.services.reminding.words import about, details
from tests.desktop import scenes
from tests.desktop.scenes import at
from tests.services.questions.steady import PlainVoice, steady_studio

if TYPE_CHECKING:
    from studio_planner.services.ports import Notice

STUDIO = steady_studio()
MADE = {one.uid: one for one in reminders_of(STUDIO, scenes.NOW)}
VOICE = PlainVoice()
MINUTE, HOUR = timedelta(minutes=1), timedelta(hours=1)


def row(reminder: Reminder, now: datetime) -> DueRow:
    return come_due(new_row(reminder), now)


def notice(now: datetime, *uids: str, again: bool = False) -> Notice:
    rows = tuple(row(MADE[uid], now) for uid in uids)
    bundle = Bundle("key", rows, any(one.late for one in rows))
    return notice_of(STUDIO, bundle, VOICE, now, perhaps_shown=again)


def test_a_notice_says_what_when_and_what_happens_otherwise() -> None:
    shown = notice(at(1, "20:00"), "weigh-now/h1/tide")
    assert shown.title == "Weigh now: Harbour board 1, colour pour"
    assert shown.body.split("\n") == [
        "Planned for Wed 20:10.",
        "It has to begin by Wed 22:07.",
        "After that: wash and sand the one below first.",
    ]
    assert not shown.strong


def test_what_no_sanding_saves_is_shown_strongly_while_it_can_be_saved() -> None:
    lock = "window-about-to-close/m/lock"
    shown = notice(MADE[lock].due, lock)
    assert shown.strong
    assert "After that it does not bond, and no sanding helps." in shown.body
    late = notice(at(4, "12:00"), lock)
    assert not late.strong
    assert "It is too late for that now." in late.body


def test_several_of_one_kind_are_named_in_one_line() -> None:
    shown = notice(at(0, "18:10"), "weigh-now/h1/seal", "weigh-now/h2/seal")
    assert shown.title == "Weigh now: Harbour board 1, seal and Harbour board 2, seal"


def test_what_was_missed_says_how_much_can_still_be_done() -> None:
    uids = ("weigh-now/h1/tide", "order-can-ship/31", "window-opens/h1/flood")
    shown = notice(at(2, "12:00"), *uids)
    assert shown.title.startswith("Missed while you were away: 3 reminders")
    assert "of them can still be done" in shown.title
    assert "Ready" not in shown.body
    assert "Order can ship: Harbour pair" in shown.body
    over = notice(at(9, "12:00"), "weigh-now/h1/tide", "window-opens/h1/flood")
    assert over.title == "Missed while you were away: 2 reminders"


def test_one_that_was_missed_says_so() -> None:
    shown = notice(at(1, "21:30"), "weigh-now/h1/tide")
    assert shown.title.startswith("Weigh now")
    assert "It was due while you were away." in shown.body


def test_what_the_quiet_hours_put_off_says_from_when() -> None:
    opens = MADE["window-opens/h1/flood"]
    assert opens.was_moved
    shown = notice(at(1, "07:00"), "window-opens/h1/flood")
    assert "Put off from Tue 22:09" in shown.body
    assert "until the quiet hours end" in shown.body
    both = notice(at(1, "07:00"), "window-opens/h1/flood", "ready-to-pack/k")
    assert both.title == "After the quiet hours: 2 reminders"


def test_a_long_list_is_cut_and_counted() -> None:
    uids = [uid for uid in MADE if uid.startswith(("weigh-now", "window-opens"))][:9]
    shown = notice(at(9, "12:00"), *uids)
    assert shown.body.split("\n")[-1] == "and 3 more"


def test_what_is_told_again_says_that_it_was_shown_perhaps() -> None:
    shown = notice(at(0, "20:00"), "weigh-now/c/seal", again=True)
    assert shown.body.endswith("Perhaps shown already.")


def test_the_buttons_are_done_a_sensible_moment_and_open() -> None:
    shown = notice(at(0, "20:00"), "weigh-now/c/seal")
    assert [one.key for one in shown.buttons] == [DONE, SNOOZE, OPEN]
    assert shown.buttons[1].words == "Remind me at Tue 20:10"


def test_without_a_later_moment_there_is_nothing_to_put_off() -> None:
    lock = MADE["window-about-to-close/m/lock"]
    last = replace(lock, saved_until=at(0, "20:05"), moment=at(0, "20:05"))
    bundle = Bundle("key", (row(last, at(0, "20:00")),), away=False)
    shown = notice_of(STUDIO, bundle, VOICE, at(0, "20:00"), perhaps_shown=False)
    assert [one.key for one in shown.buttons] == [DONE, OPEN]


def test_a_studio_that_wants_no_sound_gets_none() -> None:
    silent = replace(STUDIO, reminding=Reminding(means_off=frozenset({Means.SOUND})))
    rows = (row(MADE["weigh-now/c/seal"], at(0, "20:00")),)
    bundle = Bundle("key", rows, away=False)
    assert notice(at(0, "20:00"), "weigh-now/c/seal").sound
    shown = notice_of(silent, bundle, VOICE, at(0, "20:00"), perhaps_shown=False)
    assert not shown.sound


@pytest.mark.parametrize("kind", ReminderKind)
def test_every_kind_says_when_it_is(kind: ReminderKind) -> None:
    one = replace(MADE["weigh-now/c/seal"], kind=kind, saved_until=None)
    first, *_ = details(one, VOICE, at(0, "20:00"))
    assert first[0].isupper()
    assert first.endswith(".")
    assert "{" not in first


def test_what_is_gone_from_the_studio_is_called_as_the_log_calls_it_else_by_its_key() -> None:
    weigh, ship = MADE["weigh-now/c/seal"], MADE["order-can-ship/31"]
    bare = replace(STUDIO, pieces=(), orders=(), places=(), plan=None)
    assert about(bare, [weigh]) == "c"
    assert about(bare, [ship]) == "31"
    gone = (
        Gone(kind=GoneKind.PIECE, key="c", name="Slate coasters"),
        Gone(kind=GoneKind.ORDER, key="31", name="Ines"),
    )
    assert about(replace(bare, gone=gone), [weigh]) == "Slate coasters"
    assert about(replace(bare, gone=gone), [ship]) == "Ines"
    box = MADE["move-to-the-warm-box/m/seal"]
    assert about(STUDIO, [replace(box, piece="")]) == "Warm box"
    assert about(STUDIO, [replace(weigh, coat="gone")]) == "Slate coasters"


def test_it_is_put_off_to_its_moment_and_then_halfway_to_the_last_one() -> None:
    weigh = MADE["weigh-now/h1/tide"]  # planned for 20:10, to begin by 22:07
    assert snooze_until(STUDIO, weigh, at(1, "20:00")) == at(1, "20:10")
    halfway = snooze_until(STUDIO, weigh, at(1, "20:10"))
    assert halfway == at(1, "21:10")
    assert snooze_until(STUDIO, weigh, at(1, "22:03")) is None


def test_what_closes_in_days_is_told_again_in_hours() -> None:
    far = replace(MADE["weigh-now/h1/tide"], moment=at(1, "12:00"), saved_until=at(3, "12:00"))
    assert snooze_until(STUDIO, far, at(1, "13:00")) == at(1, "17:00")


def test_what_is_too_late_waits_for_the_next_time_that_somebody_works() -> None:
    late = replace(MADE["weigh-now/h1/tide"], saved_until=at(1, "10:00"))
    late = replace(late, moment=at(1, "10:00"))
    # Ada works from 18:00 on.
    assert snooze_until(STUDIO, late, at(1, "12:00")) == at(1, "18:00")
    assert snooze_until(STUDIO, late, at(1, "18:30")) == at(1, "19:30")


def test_what_has_no_end_waits_for_its_moment_or_an_hour_or_the_morning() -> None:
    open_end = replace(MADE["weigh-now/c/seal"], saved_until=None)
    assert snooze_until(STUDIO, open_end, at(0, "19:00")) == at(0, "20:10")
    nobody = replace(STUDIO, people=(), plan=None)
    assert snooze_until(nobody, open_end, at(1, "12:00")) == at(1, "13:00")
    assert snooze_until(nobody, open_end, at(1, "23:00")) == at(2, "07:00")


def test_a_moment_near_its_end_is_not_rounded_past_it() -> None:
    soon = replace(MADE["weigh-now/h1/tide"], moment=at(1, "20:00"), saved_until=at(1, "20:23"))
    again = snooze_until(STUDIO, soon, at(1, "20:12"))
    assert again is not None
    assert at(1, "20:12") + 5 * MINUTE <= again < at(1, "20:23")
    assert soon.urgency is Urgency.CAN_WAIT
