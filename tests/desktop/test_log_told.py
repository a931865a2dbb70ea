"""What happened, told on the page of the log through the real window."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from studio_planner.craft.log import EntryKind
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.desktop.page_keys import PIECES
from studio_planner.services.desk import DeskView
from studio_planner.storage.studio_file import create_studio
from tests.desktop import logged_scene, scenes
from tests.desktop.log_hands import click, last, log_of, studio_of, undone, words

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.desktop.pages.log_page import LogPage
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.scenes import StillClock

SEAL = "Poured: seal (Slate coasters)"
NOTHING_NEAR = (
    "No step of the plan began lately or begins soon: nothing can be written down with one tap."
)


@pytest.fixture
def studio_path(tmp_path: Path) -> Path:
    path = tmp_path / "lantern.studio"
    create_studio(path, logged_scene.logged()).close()
    return path


@pytest.fixture
def page(desk: DeskWindow) -> LogPage:
    return log_of(desk)


def test_what_is_due_is_written_down_with_one_tap_and_undone(
    desk: DeskWindow, page: LogPage
) -> None:
    before = studio_of(desk)
    due = page.happened.due
    tap = next(one for one in due.buttons if one.text().startswith(SEAL))
    assert tap.text() == f"{SEAL}\nplanned 20:10"
    assert tap.accessibleName() == f"{SEAL}, planned 20:10"
    click(tap)
    assert not any(one.text().startswith(SEAL) for one in due.buttons)
    entry = last(desk)
    assert (entry.kind, entry.piece, entry.coat) == (EntryKind.POURED, "c", "seal")
    assert entry.end == scenes.NOW
    assert "Slate coasters, seal" in words(page)
    undone(desk, before)
    assert any(one.text().startswith(SEAL) for one in due.buttons)


def test_a_tap_for_what_was_planned_on_another_day_says_which(
    desk: DeskWindow, page: LogPage
) -> None:
    page.show_view(DeskView(studio_of(desk), scenes.at(1, "16:00")))
    assert any(
        one.text() == f"{SEAL}\nplanned Tue 8 Dec 20:10" for one in page.happened.due.buttons
    )


def test_where_no_step_is_near_it_says_so_without_calling_anything_due(
    desk: DeskWindow, page: LogPage
) -> None:
    page.show_view(DeskView(studio_of(desk), scenes.at(80, "12:00")))
    due = page.happened.due
    assert due.buttons == []
    said = [line.text() for line in due.findChildren(QLabel)]
    assert said == [NOTHING_NEAR]


def test_what_is_refused_does_not_stand_under_the_news_of_the_entry_before(
    desk: DeskWindow, page: LogPage, clock: StillClock
) -> None:
    form = page.happened.form
    form.ask("h1", EntryKind.TURNED)
    click(form.write)
    assert desk.notice.words == "It is in the log. Undo takes it back."
    form.fields["at"].set_back(clock.now() + timedelta(days=1))
    click(form.write)
    assert "ahead" in form.fields["at"].wrong
    assert desk.notice.words == ""
    desk.notice.say("This has to be read.", stays=True)
    click(form.write)
    assert desk.notice.words == "This has to be read."


def test_tape_of_a_bare_piece_is_refused_in_a_sentence(page: LogPage) -> None:
    form = page.happened.form
    form.ask("f", EntryKind.TAPED)
    click(form.write)
    assert form.fields["coat"].wrong == (
        "nothing is poured on Fen clock yet; write down its first coat before that."
    )


def test_each_touch_test_says_how_it_is_done_and_what_is_meant(page: LogPage) -> None:
    form = page.happened.form
    form.ask("h1", EntryKind.TOUCHED)
    said = set()
    for touch in Touch:
        form.fields["touch"].show_value(touch)
        form.fields["touch"].edited.emit()
        assert form.felt.isVisible()
        said.add(form.felt.text())
    assert len(said) == len(Touch)
    assert all("data sheet" in one for one in said)
    form.fields["kind"].show_value(EntryKind.TURNED)
    form.fields["kind"].edited.emit()
    assert not form.felt.isVisible()


def test_a_touch_test_is_told_with_its_verdict_and_a_time_set_back(
    desk: DeskWindow, page: LogPage
) -> None:
    form = page.happened.form
    form.ask("h1", EntryKind.TOUCHED)
    form.fields["touch"].show_value(Touch.STRING)
    form.fields["touch"].edited.emit()
    assert form.fields["verdict"].value() is Verdict.NOT_YET
    form.fields["at"].at.setFocus()
    form.fields["at"].at.setTime(form.fields["at"].at.time().addSecs(-600))
    QTest.keyClick(form.fields["at"].at, Qt.Key.Key_Return)
    QTest.keyClicks(form.fields["words"].editor, "by the door")
    click(form.write)
    entry = last(desk)
    assert (entry.coat, entry.touch, entry.verdict) == ("seal", Touch.STRING, Verdict.NOT_YET)
    assert entry.at == scenes.NOW - timedelta(minutes=10)
    assert entry.words == "by the door"
    assert "string, not yet (by the door)" in words(page)


@pytest.mark.parametrize(
    "kind",
    [EntryKind.TAPED, EntryKind.TURNED, EntryKind.SANDED, EntryKind.SPOILED, EntryKind.PACKED],
)
def test_each_kind_is_one_change_that_can_be_undone(
    desk: DeskWindow, page: LogPage, kind: EntryKind
) -> None:
    before = studio_of(desk)
    page.happened.form.ask("h1", kind)
    click(page.happened.form.write)
    assert (last(desk).kind, last(desk).piece) == (kind, "h1")
    undone(desk, before)


def test_a_move_has_its_spot_and_an_order_ships_whole(desk: DeskWindow, page: LogPage) -> None:
    form = page.happened.form
    form.ask("h1", EntryKind.MOVED)
    form.fields["spot"].show_value("C1")
    click(form.write)
    assert last(desk).spot == "C1"
    form.ask("h1", EntryKind.SHIPPED)
    assert "leaves with all of its pieces" in form.about.text()
    click(form.write)
    assert [e.piece for e in studio_of(desk).standing if e.order == "31"] == ["h1", "h2"]


def test_what_lies_ahead_is_said_beside_its_field_and_stays(
    desk: DeskWindow, page: LogPage
) -> None:
    before, form = studio_of(desk), page.happened.form
    form.ask("h1", EntryKind.PACKED)
    form.fields["at"].set_back(scenes.at(3, "10:00"))
    form.fields["words"].editor.setText("in the blue box")
    click(form.write)
    assert "it lies ahead" in form.fields["at"].wrong
    assert form.fields["at"].value() == scenes.at(3, "10:00")
    assert form.fields["words"].value() == "in the blue box"
    assert studio_of(desk) == before


def test_times_go_along_with_the_clock_until_they_are_set(
    desk: DeskWindow, page: LogPage, clock: StillClock
) -> None:
    form = page.happened.form
    form.ask("h1", EntryKind.POURED)
    clock.when += timedelta(minutes=7)
    desk.tick()
    page.happened.tick()
    assert form.fields["end"].value() == clock.when
    block = form.fields["end"].value() - form.fields["start"].value()
    assert block == timedelta(minutes=70)


def test_the_piece_that_is_chosen_on_the_plan_is_asked_about(
    desk: DeskWindow, page: LogPage
) -> None:
    desk.go_to("plan", "m")
    desk.go_to("log")
    form = page.happened.form
    assert form.fields["piece"].value() == "m"
    form.fields["words"].editor.setText("still being told")
    desk.go_to("plan", "c")
    desk.go_to("log")
    assert form.fields["piece"].value() == "m"
    assert form.fields["words"].value() == "still being told"


def test_who_asks_about_a_piece_is_asked_whether_it_was_poured(page: LogPage) -> None:
    form = page.happened.form
    form.ask(page.chosen, EntryKind.STRIPPED)
    page.choose(f"trace/{page.chosen}")
    page.choose(page.chosen)
    assert form.isVisible()
    assert form.fields["kind"].value() is EntryKind.POURED


def test_who_comes_for_a_piece_sees_the_form_though_its_trace_was_in_front(
    desk: DeskWindow, page: LogPage
) -> None:
    page.choose(f"trace/{page.chosen}")
    assert not page.happened.form.isVisible()
    desk.go_to("log", page.chosen)
    assert page.happened.form.isVisible()


def test_what_ends_a_piece_does_not_lie_ready_for_the_next_tap(page: LogPage) -> None:
    form = page.happened.form
    form.ask(page.chosen, EntryKind.SPOILED)
    click(form.write)
    assert form.fields["kind"].value() is EntryKind.POURED


def test_without_pieces_nothing_can_be_written_down(desk: DeskWindow, page: LogPage) -> None:
    bare = replace(
        studio_of(desk), pieces=(), orders=(), log=(), plan=None, poured=(), mixes=()
    )
    page.show_view(DeskView(bare, desk.clock.now()))
    happened = page.happened
    for hidden in (happened.form, happened.due, happened.narrowing, happened.list):
        assert not hidden.isVisible()
    assert "Enter what you coat" in happened.nothing.words.text()
    click(happened.nothing.enter)
    assert desk.pages.current_key == PIECES
    happened.show_view(None)
    for gone in (happened.nothing, happened.older, happened.all):
        assert gone.isHidden()


def test_a_narrow_window_scrolls_what_is_written_and_what_is_read(
    desk: DeskWindow, page: LogPage
) -> None:
    desk.resize(640, 400)
    assert page.happened.form.write.height() >= 28
    assert page.happened.list.height() >= 200
    assert desk.width() == 640
