"""Sheets as PDFs, read and rendered as a viewer would; the window that shows and saves them."""

from __future__ import annotations

import re
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING, Any

import pypdfium2
import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QFileDialog, QLineEdit
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.craft.orders import ContactClaim
from studio_planner.desktop.dialogs import Dialogs
from studio_planner.desktop.page_keys import ORDERS
from studio_planner.desktop.pages.orders_page import OrdersPage
from studio_planner.desktop.paper import paper_type, printing
from studio_planner.desktop.paper.page_drawing import PaperPages
from studio_planner.desktop.paper.paging import pages_of
from studio_planner.desktop.paper.paper_type import Face, width_of, wrapped, writable
from studio_planner.desktop.paper.pdf import draw_pdf, draw_pdf_without_screen
from studio_planner.desktop.paper.printing import print_pages, take_paper
from studio_planner.desktop.tongue import Language, speak
from studio_planner.services.desk import DeskView
from studio_planner.services.editing.changes import Change
from studio_planner.services.paper.choosing import SheetKind, choices, sheet_of
from studio_planner.services.paper.pages import (
    Column,
    Fields,
    LargeNumber,
    PaperSize,
    Part,
    Row,
    Sheet,
    Table,
)
from tests.desktop import scenes

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow

MADE = datetime(2026, 12, 8, 18, 36, tzinfo=UTC)
SIZES = {PaperSize.A5: (419.5, 595.3), PaperSize.A4: (595.3, 841.9)}
"""Points: 148 by 210 and 210 by 297 mm at 72 points to 25.4 mm."""

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)


def every_sheet() -> list[Sheet]:
    """Sheets of every kind: the first of each, and all that a day pours."""
    view = DeskView(scenes.planned(), scenes.NOW)
    return [
        sheet_of(view, kind, one.key) for kind in SheetKind for one in choices(view, kind)[:1]
    ]


def read(pdf: bytes) -> Any:  # noqa: ANN401 - published without types
    return pypdfium2.PdfDocument(pdf)


def text_of(pdf: bytes) -> str:
    return " ".join(page.get_textpage().get_text_range() for page in read(pdf))


def squeezed(text: str) -> str:
    return re.sub(r"\s+", "", text)


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize("language", [Language.ENGLISH, Language.GERMAN])
def test_everything_on_a_sheet_can_be_found_in_its_pdf(language: Language) -> None:
    speak(language)
    for sheet in every_sheet():
        found = squeezed(text_of(draw_pdf(sheet, MADE)))
        for text in sheet.texts:
            # A text may be broken over lines and stand beside others: its words are looked for.
            for word in text.split():
                assert word in found, (sheet.title, text)


@pytest.mark.usefixtures("qapp")
def test_pages_are_numbered_on_their_paper_and_nothing_runs_over_an_edge() -> None:
    for sheet in every_sheet():
        document = read(draw_pdf(sheet, MADE))
        for number, page in enumerate(document, start=1):
            assert page.get_size() == pytest.approx(SIZES[sheet.paper], abs=1.0)
            text = page.get_textpage()
            assert f"page {number} of {len(document)}" in text.get_text_range()
            assert sheet.studio in text.get_text_range()
            assert sheet.made in " ".join(text.get_text_range().split())
            width, height = page.get_size()
            for place in range(text.count_chars()):
                left, bottom, right, top = text.get_charbox(place)
                if left == right:
                    continue  # the end of a line
                assert left >= 20.0
                assert right <= width - 20.0
                assert bottom >= 15.0
                assert top <= height - 15.0


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize(("rows", "pages"), [(40, 1), (54, 1), (58, 1), (75, 2)])
def test_a_sheet_for_the_door_is_drawn_smaller_where_that_saves_its_second_page(
    rows: int, pages: int
) -> None:
    table = Table(
        title="",
        columns=(Column(head="", share=1.0),),
        rows=tuple(Row(cells=(f"row {number}",)) for number in range(rows)),
    )
    week = next(one for one in every_sheet() if one.one_page)
    sheet = replace(week, parts=(Part(blocks=(table,)),))
    document = read(draw_pdf(sheet, MADE))
    assert len(document) == pages
    texts = [page.get_textpage().get_text_range() for page in document]
    assert all(sheet.title in text for text in texts)
    assert [f"row {rows - 1}" in text for text in texts] == [False] * (pages - 1) + [True]
    full = PaperPages(replace(sheet, one_page=False)).pages
    assert len(full) == (1 if rows == 40 else 2)


@pytest.mark.usefixtures("qapp")
def test_a_page_is_black_and_white_alone() -> None:
    for sheet in every_sheet():
        pdf = draw_pdf(sheet, MADE)
        for page in read(pdf):
            picture = page.render(scale=3, optimize_mode=None).to_numpy()
            shades = picture[..., 0]
            assert (picture[..., :3] == shades[..., None]).all()
            # What is neither is the smoothed edge of something black.
            grey = ((shades >= 100) & (shades < 200)).sum()
            assert (shades == 0).sum() > grey / 8
            assert (shades == 255).mean() > 0.7


@pytest.mark.usefixtures("qapp")
def test_every_font_is_inside_the_pdf() -> None:
    for sheet in every_sheet():
        pdf = draw_pdf(sheet, MADE)
        fonts = re.findall(rb"/Type /FontDescriptor.*?>>", pdf, flags=re.DOTALL)
        assert fonts
        assert all(b"/FontFile" in font for font in fonts)
        assert pdf.count(b"/ToUnicode") >= len(fonts)


@pytest.mark.usefixtures("qapp")
def test_the_same_sheet_is_the_same_file_and_says_when_it_was_made() -> None:
    sheet = every_sheet()[0]
    pdf = draw_pdf(sheet, MADE)
    assert pdf == draw_pdf(sheet, MADE)
    dates = re.findall(rb"D:(\d{14})", pdf) + re.findall(rb'Date="([^"]*)"', pdf)
    assert set(dates) == {b"20261208183600", b"2026-12-08T18:36:00+00:00"}
    assert pdf != draw_pdf(sheet, MADE + timedelta(seconds=1))
    read(pdf)


@pytest.mark.usefixtures("qapp")
def test_where_an_application_runs_it_is_the_one_that_draws() -> None:
    before = QGuiApplication.instance()
    sheet = every_sheet()[0]
    assert draw_pdf_without_screen(sheet, MADE) == draw_pdf(sheet, MADE)
    assert QGuiApplication.instance() is before


def long_table(rows: int, *, studio: str = "Fen") -> Sheet:
    table = Table(
        title="Many",
        columns=(Column(head="what", share=0.5), Column(head="", share=0.5, write=True)),
        rows=tuple(Row(cells=(f"row {n} ends", "")) for n in range(rows)),
    )
    return Sheet(
        paper=PaperSize.A5, title="Long", studio=studio, made="now", caution="Mind.",
        file_name="long", parts=(Part(blocks=(table,)),),
    )  # fmt: skip


@pytest.mark.usefixtures("qapp")
def test_what_is_longer_than_a_page_is_divided_between_rows_and_none_is_lost() -> None:
    pdf = draw_pdf(long_table(120), MADE)
    assert len(read(pdf)) > 3
    text = " ".join(text_of(pdf).split())
    assert [int(n) for n in re.findall(r"row (\d+) ends", text)] == list(range(120))
    assert text.count("Many what") == len(read(pdf))


@pytest.mark.usefixtures("qapp")
def test_what_belongs_together_is_not_divided_where_it_fits_a_page() -> None:
    sheet = long_table(12)
    parts = sheet.parts * 3
    pages = pages_of(parts, 128.0, 170.0)
    for page in pages:
        for placed in page.blocks:
            assert isinstance(placed.block, Table)
            assert len(placed.block.rows) == 12


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize("language", [Language.ENGLISH, Language.GERMAN])
def test_a_mix_in_three_colours_fits_one_page_with_its_clock(language: Language) -> None:
    speak(language)
    pages = PaperPages(every_sheet()[0]).pages
    numbers = [
        [one.block.number for one in page.blocks if isinstance(one.block, LargeNumber)]
        for page in pages
    ]
    mixes = [page for page, found in zip(pages, numbers, strict=True) if found]
    assert len(mixes) > 1
    for page in mixes:
        assert isinstance(page.blocks[-1].block, Fields)
    # What follows all of them comes after the last.
    assert [bool(found) for found in numbers] == sorted(map(bool, numbers), reverse=True)


@pytest.mark.usefixtures("qapp")
def test_a_letter_that_no_font_has_is_a_question_mark(monkeypatch: pytest.MonkeyPatch) -> None:
    assert not paper_type._has("\U0010fffd")
    assert paper_type._has("\N{MULTIPLICATION SIGN}")
    monkeypatch.setattr(paper_type, "_has", lambda letter: letter != "\u0416")
    paper_type.forget_fonts()
    said = writable("Fen \u0416\t~ \u00d7")
    text = text_of(draw_pdf(long_table(1, studio="Fen \u0416"), MADE))
    monkeypatch.undo()
    paper_type.forget_fonts()
    assert said == "Fen ? ~ \u00d7"
    assert "Fen ?" in " ".join(text.split())


@pytest.mark.usefixtures("qapp")
def test_without_a_font_nothing_is_drawn_and_it_says_why(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(paper_type, "_has", lambda _letter: False)
    with pytest.raises(StudioError, match="fonts-dejavu-core"):
        draw_pdf(long_table(1), MADE)


@pytest.mark.usefixtures("qapp")
def test_a_word_that_is_wider_than_its_room_is_cut_and_nothing_lost() -> None:
    word = "Ober" + "flaechen" * 9
    lines = wrapped(f"a {word} b", Face.PLAIN, 30.0)
    assert "".join(lines).replace("a", "", 1)[: len(word)] == word
    assert all(width_of(line, Face.PLAIN) <= 30.0 for line in lines)
    assert wrapped("", Face.PLAIN, 30.0) == ("",)


@pytest.mark.usefixtures("qapp")
def test_a_printer_gets_the_same_pages(tmp_path: Path) -> None:
    pages = PaperPages(every_sheet()[0])
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    take_paper(printer, pages)
    print_pages(printer, pages)
    del printer
    printed = (tmp_path / "printed.pdf").read_bytes()
    assert squeezed(text_of(printed)) == squeezed(text_of(draw_pdf(pages.sheet, MADE)))
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "one.pdf"))
    take_paper(printer, pages)
    printer.setFromTo(2, 2)
    print_pages(printer, pages)
    del printer
    assert len(read((tmp_path / "one.pdf").read_bytes())) == 1


@pytest.mark.journey
def test_print_asks_for_a_printer_and_says_that_it_was_sent(
    desk: DeskWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[QPrinter] = []

    class Dialog(QPrintDialog):
        """Chooses a PDF instead of a printer the second time, none the first."""

        @override
        def exec(self) -> int:
            asked.append(self.printer())
            self.printer().setOutputFormat(QPrinter.OutputFormat.PdfFormat)
            self.printer().setOutputFileName(str(tmp_path / "printed.pdf"))
            return len(asked) - 1

    monkeypatch.setattr(printing, "QPrintDialog", Dialog)
    open_paper(desk, SheetKind.WEEK)
    paper = desk.others.paper
    paper.print.click()
    assert paper.notice.words == ""
    paper.print.click()
    assert paper.notice.words == "Sent to the printer."
    assert len(read((tmp_path / "printed.pdf").read_bytes())) >= 1


# The window


def open_paper(desk: DeskWindow, kind: SheetKind) -> None:
    desk.verbs[f"paper {kind}"].trigger()
    QApplication.processEvents()


def saving_to(desk: DeskWindow, target: Path | None, asked: list[str]) -> None:
    def answer(_parent: object, proposed: str) -> Path | None:
        asked.append(proposed)
        return target

    desk.dialogs = replace(desk.dialogs, sheet=answer)


@pytest.mark.journey
@pytest.mark.parametrize("kind", list(SheetKind))
def test_each_sheet_is_shown_and_saved_by_keys(
    desk: DeskWindow, tmp_path: Path, kind: SheetKind
) -> None:
    open_paper(desk, kind)
    paper = desk.others.paper
    assert paper.isVisible()
    assert paper.sheet_view.pages is not None
    asked: list[str] = []
    target = tmp_path / "out.pdf"
    saving_to(desk, target, asked)
    paper.save.setFocus()
    QTest.keyClick(paper.save, Qt.Key.Key_Space)
    assert asked == [str(tmp_path / f"{paper.sheet_view.pages.sheet.file_name}.pdf")]
    assert paper.notice.words == f"Saved as {target}."
    assert squeezed(paper.sheet_view.pages.sheet.title) in squeezed(
        text_of(target.read_bytes())
    )


@pytest.mark.journey
def test_another_day_is_another_sheet_and_nothing_is_saved_without_a_name(
    desk: DeskWindow,
) -> None:
    open_paper(desk, SheetKind.POURS)
    paper = desk.others.paper
    first = paper.sheet_view.pages
    QTest.keyClick(paper.which, Qt.Key.Key_Down)
    second = paper.sheet_view.pages
    assert first is not None
    assert second is not None
    assert first.sheet.title != second.sheet.title
    saving_to(desk, None, [])
    paper.save.click()
    assert paper.notice.words == ""


@pytest.mark.journey
def test_the_slip_is_that_of_the_order_that_is_chosen_and_says_what_it_says_of_food(
    desk: DeskWindow,
) -> None:
    desk.changes.plans_by_itself = False
    assert desk.session is not None
    before = desk.session.studio
    last = before.orders[-1]
    desk.go_to(ORDERS, last.key)
    page = desk.pages.page(ORDERS)
    assert isinstance(page, OrdersPage)
    box = page.form.form.fields["contact"].findChild(QComboBox)
    assert isinstance(box, QComboBox)
    QTest.keyClick(box, Qt.Key.Key_Down)
    assert desk.session.studio.orders[-1].contact is ContactClaim.DECLARED
    open_paper(desk, SheetKind.ORDER)
    pages = desk.others.paper.sheet_view.pages
    assert pages is not None
    assert pages.sheet.file_name == f"order-{last.key}"
    assert "declaration number" in pages.sheet.texts
    desk.verbs["undo"].trigger()
    assert desk.session.studio == before


@pytest.mark.journey
def test_a_folder_that_is_gone_is_told_and_nothing_is_there(
    desk: DeskWindow, tmp_path: Path
) -> None:
    open_paper(desk, SheetKind.STOCK)
    paper = desk.others.paper
    saving_to(desk, tmp_path / "gone" / "out.pdf", [])
    paper.save.click()
    assert paper.notice.words.startswith("Not done: ")
    assert "no folder" in paper.notice.words
    assert not (tmp_path / "gone").exists()


@pytest.mark.journey
def test_a_sheet_never_takes_the_place_of_the_studio(desk: DeskWindow) -> None:
    assert desk.session is not None
    studio = desk.session.path
    before = studio.read_bytes()
    open_paper(desk, SheetKind.STOCK)
    paper = desk.others.paper
    saving_to(desk, studio, [])
    paper.save.click()
    assert "is a studio file, which only a studio is ever written over" in paper.notice.words
    assert studio.read_bytes() == before


@pytest.mark.journey
def test_without_a_studio_the_window_says_what_to_do(window: DeskWindow) -> None:
    open_paper(window, SheetKind.POURS)
    paper = window.others.paper
    assert paper.nothing.text() == "No studio is open."
    assert not paper.save.isEnabled()
    assert not paper.print.isEnabled()


@pytest.mark.journey
def test_the_window_follows_what_is_changed_on_the_desk(qtbot: QtBot, desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    open_paper(desk, SheetKind.ORDER)
    paper = desk.others.paper
    desk.changes.make(Change("Emptied", lambda now: replace(now, orders=())))
    qtbot.waitUntil(paper.nothing.isVisible)
    assert "no order yet" in paper.nothing.text()
    assert not paper.sheet_view.isVisible()


@pytest.mark.journey
def test_everything_in_the_window_has_a_name_and_is_large_enough(desk: DeskWindow) -> None:
    open_paper(desk, SheetKind.WEEK)
    paper = desk.others.paper
    for widget in (paper.which, paper.save, paper.print):
        assert widget.accessibleName() or widget.text()  # type: ignore[union-attr]
        assert widget.height() >= 24
    assert paper.sheet_view.accessibleName() == "The sheet"
    assert "Monday" in paper.sheet_view.accessibleDescription()
    bar = paper.sheet_view.horizontalScrollBar()
    assert bar.maximum() == 0


@contextmanager
def naming(name: str) -> Iterator[None]:
    """Type a name into the dialog that opens."""

    def answer() -> None:
        dialog = QApplication.activeModalWidget()
        if isinstance(dialog, QFileDialog):
            line = dialog.findChild(QLineEdit)
            assert isinstance(line, QLineEdit)
            line.setText(name)
            dialog.accept()

    timer = QTimer()
    timer.timeout.connect(answer)
    timer.start(30)
    yield
    timer.stop()


@pytest.mark.journey
def test_the_real_dialog_proposes_a_name_and_adds_the_ending(
    desk: DeskWindow, tmp_path: Path
) -> None:
    open_paper(desk, SheetKind.STOCK)
    desk.dialogs = Dialogs()
    with naming(str(tmp_path / "bottles")):
        desk.others.paper.save.click()
    assert (tmp_path / "bottles.pdf").read_bytes().startswith(b"%PDF")
