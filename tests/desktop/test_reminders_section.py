"""How the studio reminds, on the page of the studio."""

from __future__ import annotations

from datetime import time, timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtWidgets import QAbstractButton, QLabel, QMenu, QWidget

from studio_planner.craft.reminders import Means, ReminderKind
from studio_planner.desktop.due_pages.reminders_section import RemindersSection
from studio_planner.desktop.page_keys import REMINDERS, STUDIO
from studio_planner.desktop.pages.studio_page import StudioPage
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes
from tests.desktop.due_scene import REFUSED, with_tray

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.craft.reminders import Reminding
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.due_scene import NotingNotifier, NotingScheduler, OpenDesk


def section_of(window: DeskWindow) -> RemindersSection:
    window.go_to(STUDIO, REMINDERS)
    page = window.pages.page(STUDIO)
    assert isinstance(page, StudioPage)
    section = page.section(REMINDERS)
    assert isinstance(section, RemindersSection)
    return section


def reminding_of(window: DeskWindow) -> Reminding:
    assert window.session is not None
    return window.session.studio.reminding


@pytest.fixture
def window(reminding_desk: OpenDesk, reminded: Path) -> DeskWindow:
    return reminding_desk(reminded)


def test_a_kind_is_switched_off_and_undo_switches_it_on(window: DeskWindow) -> None:
    section = section_of(window)
    section.kinds.switches[ReminderKind.COVER].editor.click()
    assert reminding_of(window).off == {ReminderKind.COVER}
    assert "Reminders, cover" in window.verbs["undo"].text()
    window.changes.undo()
    assert not reminding_of(window).off
    assert section.kinds.switches[ReminderKind.COVER].value()


def test_a_lead_is_typed_and_nonsense_is_said_beside_it(window: DeskWindow) -> None:
    field = section_of(window).kinds.leads[ReminderKind.WEIGH]
    field.editor.setText("45")
    field.editor.editingFinished.emit()
    assert reminding_of(window).lead(ReminderKind.WEIGH) == 45
    field.editor.setText("99999")
    field.editor.editingFinished.emit()
    assert field.wrong
    assert field.editor.text() == "99999"
    assert reminding_of(window).lead(ReminderKind.WEIGH) == 45


def test_quiet_hours_say_what_rings_in_them(window: DeskWindow) -> None:
    section = section_of(window)
    assert "From 22:00 to 07:00 only what can't be saved later rings" in section.quiet.text()
    section.quiet_from.show_value(time(7, 0))
    section.form.enter("quiet_from")
    assert reminding_of(window).quiet_from == time(7, 0)
    assert section.quiet.text().startswith("There are no quiet hours")


def test_the_coming_night_is_told_thing_by_thing(window: DeskWindow) -> None:
    said = section_of(window).tonight.text()
    assert "Waits until Wed 9 Dec 07:00: Window opens: Harbour board 1, flood." in said


def test_a_means_is_switched_off(window: DeskWindow) -> None:
    section_of(window).means.fields[Means.SOUND].editor.click()
    assert reminding_of(window).means_off == {Means.SOUND}


def test_ring_me_now_tries_every_means_and_says_what_came_of_each(
    qtbot: QtBot, window: DeskWindow, notifier: NotingNotifier
) -> None:
    section, tray = section_of(window), with_tray(window)
    notifier.notices.clear()
    section.means.ring.click()
    qtbot.waitUntil(section.means.ring.isEnabled)
    assert [one.title for one in notifier.notices] == ["This is how the studio reminds you"]
    assert [one.title for one in tray.notices] == ["This is how the studio reminds you"]
    assert "none has failed" in section.means.rung.text()
    assert section.means.outcomes[Means.TRAY].text() == "It worked the last time."
    notifier.fails = True
    section.means.ring.click()
    qtbot.waitUntil(section.means.ring.isEnabled)
    assert section.means.rung.text().endswith("not working: notification.")
    assert section.means.failures[Means.NOTIFICATION].text().endswith(REFUSED)
    assert section.means.failures[Means.TRAY].isHidden()


def test_the_scheduler_is_told_only_after_it_was_said_what(
    qtbot: QtBot, window: DeskWindow, scheduler: NotingScheduler
) -> None:
    closed = section_of(window).closed
    assert "nobody reminds of this studio" in closed.state.text()
    closed.install.click()
    assert "The system will look into lantern.studio each minute." in closed.says.text()
    assert "It runs: timers on" in closed.says.text()
    assert not scheduler.done
    closed.refuse.click()
    assert closed.agree.isHidden()
    closed.install.click()
    closed.agree.click()
    qtbot.waitUntil(lambda: closed.says.text() == "Done.")
    assert len(scheduler.done) == 1
    assert "the system's own scheduler reminds" in closed.state.text()
    closed.remove.click()
    assert "no more" in closed.says.text()
    closed.agree.click()
    qtbot.waitUntil(lambda: closed.says.text() == "Done.")
    assert len(scheduler.done) == 2
    assert "nobody reminds of this studio" in closed.state.text()


def test_a_scheduler_that_refuses_is_said(
    qtbot: QtBot, window: DeskWindow, scheduler: NotingScheduler
) -> None:
    closed = section_of(window).closed
    scheduler.refuses = True
    closed.install.click()
    closed.agree.click()
    qtbot.waitUntil(lambda: closed.says.text().endswith(REFUSED))
    assert closed.install.isEnabled()


def test_a_desk_without_a_tray_says_so_beside_the_tick(window: DeskWindow) -> None:
    with_tray(window).there = False
    section = section_of(window)
    assert "There is no tray on this system" in section.closed.tray.text()
    section.closed.stays.editor.click()
    assert reminding_of(window).stays_in_tray


@pytest.mark.parametrize("which", ["whole", "week", "write_order"])
def test_calendar_files_are_written_where_the_maker_says(
    qtbot: QtBot,
    window: DeskWindow,
    which: str,
    answers: dict[str, Path | None],
    tmp_path: Path,
) -> None:
    answers["calendar"] = target = tmp_path / "phone.ics"
    getattr(section_of(window).phone, which).click()
    assert window.notice.words == "phone.ics is being written…"
    qtbot.waitUntil(lambda: "phone.ics holds" in window.notice.words)
    text = target.read_text(encoding="utf-8")
    assert text.startswith("BEGIN:VCALENDAR")
    assert "BEGIN:VALARM" in text


def test_a_calendar_without_an_event_says_why(
    qtbot: QtBot,
    window: DeskWindow,
    clock: scenes.StillClock,
    answers: dict[str, Path | None],
    tmp_path: Path,
) -> None:
    answers["calendar"] = tmp_path / "later.ics"
    clock.when += timedelta(days=700)
    section_of(window).phone.week.click()
    qtbot.waitUntil(lambda: "later.ics is not written: nothing that" in window.notice.words)


def test_a_test_event_is_written_for_the_phone(
    qtbot: QtBot, window: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    answers["calendar"] = target = tmp_path / "try.ics"
    section_of(window).phone.trial.click()
    qtbot.waitUntil(lambda: "try.ics holds one event" in window.notice.words)
    assert target.read_text(encoding="utf-8").count("BEGIN:VEVENT") == 1


def test_a_file_that_cannot_be_written_is_said(
    qtbot: QtBot, window: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    answers["calendar"] = tmp_path / "nowhere" / "phone.ics"
    section_of(window).phone.whole.click()
    qtbot.waitUntil(lambda: window.notice.words.startswith("Not done: "))


def test_whoever_changes_their_mind_writes_nothing(window: DeskWindow) -> None:
    section_of(window).phone.whole.click()
    assert window.notice.words == ""


def test_a_studio_without_a_plan_has_nothing_for_the_phone(
    reminding_desk: OpenDesk, tmp_path: Path
) -> None:
    path = tmp_path / "bare.studio"
    create_studio(path, scenes.studio()).close()
    window = reminding_desk(path)
    assert not section_of(window).phone.whole.isEnabled()
    window.calendars.write_plan()
    assert "There is no plan yet" in window.notice.words


def test_the_menu_offers_the_calendar_of_each_order(window: DeskWindow) -> None:
    menu = QMenu()
    window.calendars.fill(menu)
    orders = next(action.menu() for action in menu.actions() if action.menu() is not None)
    assert isinstance(orders, QMenu)
    assert "Moon tray…" in [action.text() for action in orders.actions()]


def test_steps_follow_the_family_of_phones(window: DeskWindow) -> None:
    phone = section_of(window).phone
    before = phone.steps.text()
    assert before.startswith("1. First try the test event")
    phone.family.editor.setCurrentIndex(2)
    phone.family.editor.activated.emit(2)
    assert phone.steps.text() != before


def test_everything_has_a_name_and_no_word_is_cut(qtbot: QtBot, window: DeskWindow) -> None:
    section = section_of(window)
    window.due.open()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    for root in (section, window.due.panel):
        for widget in root.findChildren(QWidget):
            if widget.focusPolicy() is Qt.FocusPolicy.NoFocus or not widget.isVisibleTo(root):
                continue
            assert widget.accessibleName() or getattr(widget, "text", str)(), widget
        for button in root.findChildren(QAbstractButton):
            if button.isVisibleTo(root) and button.text():
                needed = button.fontMetrics().horizontalAdvance(button.text())
                assert needed < button.width(), button.text()
        for label in root.findChildren(QLabel):
            if label.isVisibleTo(root) and label.text():
                wrap = int(Qt.TextFlag.TextWordWrap) if label.wordWrap() else 0
                room = QRect(0, 0, label.width(), 10_000)
                need = label.fontMetrics().boundingRect(room, wrap, label.text())
                assert need.width() <= label.width() + 1, label.text()
                assert need.height() <= label.height() + 1, label.text()
