"""The page of the log through the real window: told, corrected, withdrawn, weighed, traced."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.desktop.page_keys import PIECES
from studio_planner.desktop.pages.log_page import LogPage
from studio_planner.services.desk import DeskView
from studio_planner.services.log_book.tracing import trace_piece
from studio_planner.storage.studio_file import create_studio
from tests.desktop import logged_scene, scenes

if TYPE_CHECKING:
    from datetime import datetime
    from pathlib import Path

    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.studio import Studio
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
    desk.changes.plans_by_itself = False
    QTest.keyClick(desk, Qt.Key.Key_7, Qt.KeyboardModifier.ControlModifier)
    found = desk.pages.currentWidget()
    assert isinstance(found, LogPage)
    return found


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def last(desk: DeskWindow) -> LogEntry:
    return studio_of(desk).log[-1]


def click(button: QWidget) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def words(page: LogPage) -> str:
    return "\n".join(read.spoken for read in page.happened.list.read)


def choose(page: LogPage, kind: EntryKind, piece: str) -> LogEntry:
    for read in page.happened.list.read:
        if read.row and (read.row.entry.kind, read.row.entry.piece) == (kind, piece):
            page.happened.list.choose_entry(read.row.entry.number)
            return read.row.entry
    pytest.fail("no such entry")


def undone(desk: DeskWindow, before: Studio) -> None:
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


# Written down


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
    assert not happened.nothing.isVisible()


def test_a_narrow_window_scrolls_what_is_written_and_what_is_read(
    desk: DeskWindow, page: LogPage
) -> None:
    desk.resize(640, 400)
    assert page.happened.form.write.height() >= 28
    assert page.happened.list.height() >= 200
    assert desk.width() == 640


# Corrected and withdrawn


def test_a_correction_stands_beside_what_it_corrects(desk: DeskWindow, page: LogPage) -> None:
    before = studio_of(desk)
    entry = choose(page, EntryKind.TOUCHED, "k")
    click(page.happened.entry.correct)
    form = page.happened.form
    assert "Correct" in form.title.text()
    assert form.fields["at"].value() == entry.at
    form.fields["verdict"].show_value(Verdict.NOT_YET)
    click(form.write)
    assert last(desk).corrects == entry.number
    row = next(r for r in page.happened.list.read if r.row and r.row.entry == last(desk))
    struck = [line.text for line in row.lines if line.struck]
    assert len(struck) == 1
    assert "no mark, already" in struck[0]
    assert "wrong:" in row.spoken
    assert form.corrects is None
    undone(desk, before)


def test_a_corrected_pour_moves_the_plan_and_a_wrong_one_is_refused(
    desk: DeskWindow, page: LogPage
) -> None:
    choose(page, EntryKind.POURED, "h1")
    click(page.happened.entry.correct)
    form = page.happened.form
    form.fields["end"].set_back(scenes.at(0, "18:00"))
    click(form.write)
    assert "end" in form.fields["end"].wrong or form.form.wrong
    form.fields["end"].set_back(scenes.at(0, "19:15"))
    click(form.write)
    (pour,) = studio_of(desk).pours_of("h1")
    assert pour.end == scenes.at(0, "19:15")


def test_a_correction_can_be_left(desk: DeskWindow, page: LogPage) -> None:
    before = studio_of(desk)
    choose(page, EntryKind.TOUCHED, "k")
    click(page.happened.entry.correct)
    click(page.happened.form.leave)
    assert page.happened.form.corrects is None
    assert "What happened" in page.happened.form.title.text()
    assert studio_of(desk) == before


def test_what_is_withdrawn_stays_to_be_read(desk: DeskWindow, page: LogPage) -> None:
    before = studio_of(desk)
    entry = choose(page, EntryKind.POURED, "h2")
    click(page.happened.entry.withdraw)
    assert last(desk).corrects == entry.number
    assert studio_of(desk).pours_of("h2") == ()
    assert "it never happened" in words(page)
    undone(desk, before)


# Found


def test_the_log_is_narrowed_and_says_so_when_nothing_is_like_that(page: LogPage) -> None:
    narrowing, rows = page.happened.narrowing, page.happened.list
    narrowing.choose("piece", "k")
    assert {r.row.entry.piece for r in rows.read if r.row} == {"k"}
    narrowing.choose("kind", EntryKind.SANDED)
    assert "Nothing in the log is like that" in page.happened.none.text()
    assert page.happened.all.isVisible()
    click(page.happened.all)
    assert len({r.row.entry.piece for r in rows.read if r.row}) > 2
    narrowing.search.setText("second half")
    assert [r.row.entry.piece for r in rows.read if r.row] == ["k"]


def test_of_a_long_log_the_newest_are_shown_and_older_ones_when_asked_for(
    desk: DeskWindow, page: LogPage
) -> None:
    studio, now = studio_of(desk), desk.clock.now()
    hours = [timedelta(hours=number) for number in range(200, 0, -1)]
    turned = [
        LogEntry(
            number=studio.log[-1].number + place,
            kind=EntryKind.TURNED,
            at=now - ago - timedelta(days=20),
            written=now,
            piece="f",
        )
        for place, ago in enumerate(hours, 1)
    ]
    page.show_view(DeskView(replace(studio, log=(*studio.log, *turned)), now))
    rows, older = page.happened.list, page.happened.older

    def shown() -> list[datetime]:
        return [read.row.entry.at for read in rows.read if read.row]

    first = shown()
    assert first == sorted(first, reverse=True)
    assert turned[0].at not in first
    assert older.isVisible()
    click(older)
    assert shown()[: len(first)] == first
    assert turned[0].at in shown()
    assert not older.isVisible()


# Weights


def test_weights_are_written_on_a_pour_afterwards(desk: DeskWindow, page: LogPage) -> None:
    before = studio_of(desk)
    choose(page, EntryKind.POURED, "k")
    click(page.happened.entry.weights)
    form = page.happened.weights
    QTest.keyClicks(form.fields["a_grams"].editor, "120,5")
    click(form.write)
    assert form.fields["b_grams"].wrong
    QTest.keyClicks(form.fields["b_grams"].editor, "60")
    QTest.keyClicks(form.fields["lot_a"].editor, "L-9")
    QTest.keyClicks(form.fields["colourants"].editor, "1.2 teal; white")
    click(form.write)
    assert form.fields["colourants"].wrong.startswith("“white” is no mass and name")
    assert "1.2 teal" in form.fields["colourants"].wrong
    form.fields["colourants"].editor.setText("1.2 teal; 0.4 white")
    click(form.write)
    mix = studio_of(desk).mixes[-1]
    assert (mix.a_grams, mix.b_grams, mix.lot_a, mix.batch) == (120.5, 60.0, "L-9", 2)
    assert [one.name for one in mix.colourants] == ["teal", "white"]
    (pour,) = studio_of(desk).pours_of("k")
    assert pour.batch == 2
    assert form.isHidden()
    undone(desk, before)


def test_a_pour_can_be_said_to_come_from_a_known_mix(desk: DeskWindow, page: LogPage) -> None:
    click(next(b for b in page.happened.due.buttons if "Slate" in b.text()))
    choose(page, EntryKind.POURED, "c")
    click(page.happened.entry.weights)
    form = page.happened.weights
    form.fields["batch"].show_value(1)
    form.fields["batch"].edited.emit()
    assert form.fields["a_grams"].isHidden()
    click(form.write)
    (pour,) = studio_of(desk).pours_of("c")
    assert pour.batch == 1


def test_weights_are_corrected_under_their_number(desk: DeskWindow, page: LogPage) -> None:
    choose(page, EntryKind.WEIGHED, "")
    click(page.happened.entry.weights)
    form = page.happened.weights
    assert form.fields["lot_a"].value() == "SF-2207"
    form.fields["a_grams"].editor.setText("42")
    click(form.write)
    assert studio_of(desk).mixes[-1].a_grams == 42
    assert studio_of(desk).mixes[-1].batch == 1


# Readings


def test_a_reading_is_typed_on_one_line(desk: DeskWindow, page: LogPage) -> None:
    row = page.happened.reading
    QTest.keyClicks(row.warmth.editor, "200")
    click(row.write)
    assert row.warmth.wrong
    assert row.warmth.editor.text() == "200"
    row.warmth.editor.setText("18,5")
    QTest.keyClick(row.warmth.editor, Qt.Key.Key_Return)
    (reading,) = studio_of(desk).places[0].readings
    assert reading.celsius == 18.5
    place = studio_of(desk).places[0].name
    assert desk.notice.words == f"The reading is kept: {place}, 18.5 °C. Undo takes it back."


def test_what_can_hardly_be_right_is_said_with_the_entry_and_stays(
    desk: DeskWindow, page: LogPage
) -> None:
    page.happened.form.ask("m", EntryKind.PACKED)
    click(page.happened.form.write)
    assert "It is in the log." in desk.notice.words
    assert "is written down. Write down what was poured" in desk.notice.words
    assert desk.notice.stays
    desk.notice.tick(desk.clock.now() + timedelta(hours=1))
    assert "Write down what was poured" in desk.notice.words


# Traced


def test_a_piece_is_followed_back_and_its_sentence_copied(
    desk: DeskWindow, page: LogPage
) -> None:
    choose(page, EntryKind.POURED, "h1")
    click(page.happened.entry.trace)
    trace = page.trace
    assert trace.isVisible()
    assert "A of lot SF-2207" in trace.words
    assert "Harbour board 2, seal: same mix 1" in trace.words
    click(trace.copy_customer)
    assert "from mix 1" in QGuiApplication.clipboard().text()
    assert trace_piece(studio_of(desk), "h1").sisters


def test_a_number_is_followed_to_its_pieces_and_an_unknown_one_is_said(page: LogPage) -> None:
    page.show_part("trace")
    QTest.keyClicks(page.trace.number.editor, "sh-0310")
    click(page.trace.follow)
    assert "Harbour pair" in page.trace.words
    page.trace.number.editor.setText("99")
    click(page.trace.follow)
    assert "99 is no piece" in page.trace.number.wrong
    assert page.trace.words == ""
    assert not page.trace.copy_all.isVisible()
    page.trace.number.editor.setText("Harbour pair")
    click(page.trace.follow)
    assert "Harbour board 1" in page.trace.words
