"""The log through the real window: corrected, withdrawn, narrowed, weighed, traced."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.touches import Verdict
from studio_planner.services.desk import DeskView
from studio_planner.services.log_book.tracing import trace_piece
from studio_planner.storage.studio_file import create_studio
from tests.desktop import logged_scene, scenes
from tests.desktop.log_hands import choose, click, last, log_of, studio_of, undone, words

if TYPE_CHECKING:
    from datetime import datetime
    from pathlib import Path

    from studio_planner.desktop.pages.log_page import LogPage
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def studio_path(tmp_path: Path) -> Path:
    path = tmp_path / "lantern.studio"
    create_studio(path, logged_scene.logged()).close()
    return path


@pytest.fixture
def page(desk: DeskWindow) -> LogPage:
    return log_of(desk)


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
