"""What is due, on the desk: it comes up, is answered, stays, and survives."""

from __future__ import annotations

from datetime import time
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.reminders import Means
from studio_planner.desktop.page_keys import STUDIO
from studio_planner.services.editing.reminding_words import changed_reminding
from studio_planner.services.ports import Pressed
from studio_planner.services.reminding.due_list import MOST_ITEMS
from studio_planner.services.reminding.notices import DONE, OPEN, SNOOZE
from tests.desktop import scenes
from tests.desktop.due_scene import REFUSED, items, kept, look, titled, with_tray
from tests.failing_disk import NEEDS_LIMITS, no_room

if TYPE_CHECKING:
    from pathlib import Path

    import pytest
    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.due_pages.due_row import DueRow
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.due_scene import NotingNotifier, OpenDesk

EVENING = scenes.at(1, "18:45")
"""A minute at which the second evening's pours are near and the first one's are not done."""

WEIGH = "Weigh now: Slate coasters, seal"


def row_of(window: DeskWindow, title: str) -> DueRow:
    window.due.open()
    return window.due.panel.rows[titled(window, title)[0].uid]


def test_what_comes_due_stands_in_the_head_with_its_number(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    window = reminding_desk(reminded)
    before = len(items(window))
    assert not titled(window, WEIGH)
    clock.when = scenes.at(0, "20:02")
    look(qtbot, window)
    assert titled(window, WEIGH)
    assert len(items(window)) > before
    assert window.title_bar.due.text() == f"{len(items(window))} due"
    assert "things are due" in window.title_bar.due.accessibleName()


def test_done_takes_it_off_and_is_in_the_file_at_once(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    (item,) = titled(window, WEIGH)
    row = row_of(window, WEIGH)
    QTest.mouseClick(row.done_verb, Qt.MouseButton.LeftButton)
    assert not titled(window, WEIGH)
    qtbot.waitUntil(lambda: not window.reminding.busy)
    assert kept(reminded, clock)[item.uid].acknowledged == clock.when
    look(qtbot, window)
    assert not titled(window, WEIGH)
    assert item.uid not in window.due.panel.rows


def test_later_says_when_and_it_stays_on_the_list(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    (item,) = titled(window, WEIGH)
    assert item.later == scenes.at(0, "20:10")
    row = row_of(window, WEIGH)
    assert "Later: Tue 8 Dec 20:10" in row.told_again.text()
    row.later_verb.click()
    qtbot.waitUntil(lambda: bool(titled(window, WEIGH)[0].put_off))
    assert row.told_again.text() == "Put off: told again Tue 8 Dec 20:10."
    assert row.later_verb.isHidden()
    assert kept(reminded, clock)[item.uid].rings_at == item.later


def test_what_was_put_off_is_told_again_at_its_moment(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    row_of(window, WEIGH).later_verb.click()
    qtbot.waitUntil(lambda: bool(titled(window, WEIGH)[0].put_off))
    before = len(notifier.notices)
    clock.when = scenes.at(0, "20:11")
    look(qtbot, window)
    assert not titled(window, WEIGH)[0].put_off
    assert any("Slate coasters" in one.title for one in notifier.notices[before:])


def test_a_restart_brings_it_back_and_tells_nothing_twice(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    before, told = items(window), len(notifier.notices)
    assert told
    window.leave()
    assert window.reminding.answers.due is None
    again = reminding_desk(reminded)
    look(qtbot, again)
    assert [item.uids for item in items(again)] == [item.uids for item in before]
    assert len(notifier.notices) == told


def test_two_windows_tell_once_and_share_what_is_done(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    one, other = reminding_desk(reminded), reminding_desk(reminded)
    clock.when = scenes.at(0, "20:02")
    told = len(notifier.notices)
    one.reminding.look()
    other.reminding.look()
    for window in (one, other):
        look(qtbot, window)
    about = [n for n in notifier.notices[told:] if "Slate coasters" in n.title + n.body]
    assert len(about) == 1
    row_of(one, WEIGH).done_verb.click()
    qtbot.waitUntil(lambda: not one.reminding.busy)
    look(qtbot, other)
    assert not titled(other, WEIGH)


def test_a_button_on_the_notice_does_what_it_says(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    notice = next(n for n in notifier.notices if n.title.startswith(WEIGH))
    window.go_to(STUDIO)
    notifier.answers.append(Pressed(notice.key, OPEN))
    qtbot.waitUntil(lambda: window.pages.current_key == "plan")
    assert window.timeline.lanes.lanes[window.canvas.current_row].piece.key == "c"
    notifier.answers.append(Pressed(notice.key, SNOOZE))
    qtbot.waitUntil(lambda: bool(titled(window, WEIGH)[0].put_off))
    notifier.answers.append(Pressed(notice.key, DONE))
    qtbot.waitUntil(lambda: not titled(window, WEIGH))


def test_a_notice_about_several_things_opens_the_list(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    clock.when = EVENING
    window = reminding_desk(reminded)
    notice = next(n for n in notifier.notices if n.title.startswith("Missed"))
    notifier.answers.append(Pressed(notice.key, OPEN))
    qtbot.waitUntil(lambda: window.due.is_open)


def test_where_no_notification_comes_through_the_tray_does_and_both_are_said(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    window = reminding_desk(reminded)
    tray = with_tray(window)
    clock.when = scenes.at(0, "20:02")
    look(qtbot, window)
    assert not tray.notices
    assert window.reminding.outcomes == {"notification": "", "sound": ""}
    notifier.fails = True
    clock.when = scenes.at(0, "20:56")
    look(qtbot, window)
    assert any("Fen clock" in notice.title for notice in tray.notices)
    assert window.reminding.outcomes["notification"] == REFUSED
    window.due.open()
    assert window.due.panel.failures.text().endswith(f"Notification: {REFUSED}")


def test_without_any_tray_the_list_still_has_it_and_says_why(
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    notifier.fails = True
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    window.due.open()
    assert titled(window, WEIGH)
    assert "There is no tray on this system" in window.due.panel.failures.text()


def test_what_was_missed_stands_under_a_heading_of_its_own(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = EVENING
    window = reminding_desk(reminded)
    window.due.open()
    panel = window.due.panel
    qtbot.waitUntil(lambda: len(panel.rows) == len(items(window)))
    assert panel.missed.text().startswith("Missed while you were away: ")
    assert panel.missed.isVisible()
    assert panel.now_due.isVisible()
    saved = [item.saved for item in items(window)]
    assert saved == sorted(saved, reverse=True)


def test_what_cannot_be_saved_later_is_said_in_words_and_counted_in_the_head(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    window = reminding_desk(reminded)
    clock.when = scenes.at(2, "22:01")
    look(qtbot, window)
    urgent = [item for item in items(window) if item.urgent]
    assert urgent
    assert window.title_bar.due.text().startswith("\N{BLACK RIGHT-POINTING TRIANGLE} ")
    assert "can't be saved later" in window.title_bar.due.accessibleName()
    window.due.open()
    assert any("lock coat" in notice.title for notice in notifier.notices), (
        "in quiet hours, too"
    )
    row = window.due.panel.rows[urgent[0].uid]
    assert row.strong.text().endswith("Can't be saved later.")


def test_all_that_is_too_late_goes_at_once(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = EVENING
    window = reminding_desk(reminded)
    assert any(not item.saved for item in items(window))
    window.due.open()
    window.due.panel.clear_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    assert items(window)
    assert all(item.saved for item in items(window))
    assert window.due.panel.clear_verb.isHidden()


def test_answering_with_the_keys_goes_on_to_the_next(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = EVENING
    window = reminding_desk(reminded)
    QTest.keyClick(window, Qt.Key.Key_D, Qt.KeyboardModifier.ControlModifier)
    panel = window.due.panel
    qtbot.waitUntil(lambda: not window.reminding.busy)
    first, second = list(panel.rows.values())[:2]
    assert first.done_verb.hasFocus()
    QTest.keyClick(first.done_verb, Qt.Key.Key_Space)
    assert second.done_verb.hasFocus()
    QTest.keyClick(second.done_verb, Qt.Key.Key_Escape)
    assert not window.due.is_open
    assert window.title_bar.due.hasFocus()
    assert not window.title_bar.due.isChecked()


def test_pieces_of_one_mix_are_one_thing_on_the_list(
    qtbot: QtBot, reminding_desk: OpenDesk, shared_mix: Path, clock: scenes.StillClock
) -> None:
    clock.when = scenes.at(1, "08:02")
    window = reminding_desk(shared_mix)
    (item,) = titled(window, "Weigh now: Harbour board 1, flood")
    assert "Harbour board 2" in item.title
    assert len(item.uids) == 2
    row_of(window, "Weigh now: Harbour board 1, flood").done_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    rows = kept(shared_mix, clock)
    assert all(rows[uid].acknowledged for uid in item.uids)


def test_an_answer_given_while_a_look_is_on_its_way_is_not_undone_by_it(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    (item,) = titled(window, WEIGH)
    shown: list[bool] = []

    def note(_due: object) -> None:
        shown.append(bool(titled(window, WEIGH)))

    window.reminding.answers.changed.connect(note)
    window.reminding.look()
    window.reminding.answers.done(item.uids)
    qtbot.waitUntil(lambda: not window.reminding.busy)
    window.reminding.answers.changed.disconnect(note)
    assert shown
    assert not any(shown)


def test_a_file_out_of_reach_is_said_and_looked_at_again(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    window = reminding_desk(reminded)
    reminders = window.reminding._kept
    assert reminders is not None

    def refuse() -> None:
        raise StudioFileError(REFUSED)

    with monkeypatch.context() as patch:
        patch.setattr(reminders, "tick", refuse)
        with qtbot.waitSignal(window.reminding.told):
            window.reminding.look()
        window.due.open()
        qtbot.waitUntil(lambda: not window.reminding.busy)
        assert window.due.panel.failures.text().endswith(REFUSED)
    look(qtbot, window)
    assert window.due.panel.failures.text() == ""


def test_an_answer_that_cannot_be_written_down_comes_back_and_says_why(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    (item,) = titled(window, WEIGH)

    def refuse(_uids: object) -> None:
        raise StudioFileError(REFUSED)

    refused: list[str] = []
    window.reminding.answers.refused.connect(refused.append)
    with monkeypatch.context() as patch:
        patch.setattr(window.reminding._kept, "acknowledge", refuse)
        window.reminding.answers.done(item.uids)
        assert not titled(window, WEIGH)
        qtbot.waitUntil(lambda: refused == [REFUSED])
    qtbot.waitUntil(lambda: bool(titled(window, WEIGH)))


@NEEDS_LIMITS
def test_while_the_disk_is_full_the_desk_says_once_that_nothing_new_rings(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    window = reminding_desk(reminded)
    badge, heard = window.title_bar.due, window.reminding.told
    counted = badge.text()
    clock.when = scenes.at(0, "20:02")
    with no_room():
        with qtbot.waitSignal(heard):
            window.reminding.look()
        said = window.notice.words
        assert said.startswith("Reminders cannot be written down: ")
        assert "disk" in said
        assert badge.text().endswith("due, reminders stopped")
        assert said in badge.accessibleName()
        badge.be_narrow(narrow=True)
        assert badge.text().startswith("\N{BLACK RIGHT-POINTING TRIANGLE}")
        badge.be_narrow(narrow=False)
        window.notice.hide()
        with qtbot.waitSignal(heard):
            window.reminding.look()
        assert not window.notice.words
        window.notice.say(said)
    look(qtbot, window)
    assert not window.notice.words
    assert "stopped" not in badge.text()
    assert badge.text() != counted
    assert titled(window, WEIGH)


def test_an_empty_list_says_what_comes_next(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path
) -> None:
    window = reminding_desk(reminded)
    window.reminding.answers.done([uid for item in items(window) for uid in item.uids])
    qtbot.waitUntil(lambda: not window.reminding.busy)
    window.due.open()
    assert window.title_bar.due.text() == "Nothing due"
    assert window.due.panel.count.text() == "Nothing is due"
    assert window.due.panel.empty.text().startswith("Next: ")


def test_of_very_many_the_first_are_shown_and_the_others_counted(
    qtbot: QtBot, reminding_desk: OpenDesk, crowded_studio: Path, clock: scenes.StillClock
) -> None:
    clock.when = scenes.at(3, "12:00")
    window = reminding_desk(crowded_studio)
    due = window.reminding.answers.due
    assert due is not None
    assert due.count > MOST_ITEMS
    assert window.title_bar.due.text() == f"{due.count} due"
    window.due.open()
    panel = window.due.panel
    qtbot.waitUntil(lambda: len(panel.rows) == MOST_ITEMS)
    assert str(due.count - MOST_ITEMS) in panel.more.text()
    before = set(panel.rows)
    next(iter(panel.rows.values())).done_verb.click()
    qtbot.waitUntil(lambda: bool(set(panel.rows) - before))
    qtbot.waitUntil(lambda: len(panel.rows) == MOST_ITEMS)


def test_open_goes_to_the_piece(
    reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = scenes.at(0, "20:02")
    window = reminding_desk(reminded)
    window.go_to(STUDIO)
    row_of(window, WEIGH).open_verb.click()
    assert window.pages.current_key == "plan"
    assert window.timeline.lanes.lanes[window.canvas.current_row].piece.key == "c"
    assert not window.due.is_open


def test_open_goes_to_the_coat_it_is_about_though_its_time_has_passed(
    reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = EVENING
    window = reminding_desk(reminded)
    row_of(window, "Weigh now: Harbour board 1, seal").open_verb.click()
    bar = window.timeline.lanes.bar(window.timeline.currentIndex())
    assert bar is not None
    assert (bar.planned.piece, bar.planned.coat) == ("h1", "seal")


def test_after_a_change_it_looks_by_itself(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    window = reminding_desk(reminded)
    window.reminding.pause_milliseconds = 0
    clock.when = scenes.at(0, "20:02")
    window.changes.make(changed_reminding("evening", {"evening": time(19)}))
    qtbot.waitUntil(lambda: bool(titled(window, WEIGH)))


def test_a_desk_without_ways_out_reminds_of_nothing(desk: DeskWindow) -> None:
    assert not desk.reminding.possible
    assert desk.title_bar.due.isHidden()
    assert not desk.verbs["due"].isEnabled()
    desk.reminding.look()
    assert desk.reminding.answers.due is None
    assert not desk.reminding.busy


def test_means_are_tried_in_their_order(reminding_desk: OpenDesk, reminded: Path) -> None:
    window = reminding_desk(reminded)
    names = [notifier.means for notifier in window.reminding._means[1]]
    assert names == [Means.NOTIFICATION, Means.TRAY, Means.SOUND]
