"""What is being typed when the studio is left is kept, or said to be refused."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit

from studio_planner.desktop import application
from studio_planner.desktop.page_keys import ORDERS, PIECES, PLAN, PRODUCTS
from studio_planner.desktop.pages.orders_page import OrdersPage
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.desktop.piece_pages.part_names import BLANK
from studio_planner.services.editing.reminding_words import changed_reminding
from studio_planner.storage.studio_file import create_studio, open_studio
from tests.desktop import scenes
from tests.desktop.due_scene import with_tray
from tests.desktop.studio_steps import studio_of

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtWidgets import QWidget
    from pytestqt.qtbot import QtBot

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.forms.form import Form
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.due_scene import OpenDesk

pytestmark = pytest.mark.journey


@pytest.fixture
def other(tmp_path: Path) -> Path:
    path = tmp_path / "other.studio"
    create_studio(path, scenes.planned()).close()
    return path


def kept(path: Path) -> Studio:
    with open_studio(path) as file:
        return file.read()


def order_form(desk: DeskWindow) -> Form:
    desk.changes.plans_by_itself = False
    desk.go_to(ORDERS)
    page = desk.pages.page(ORDERS)
    assert isinstance(page, OrdersPage)
    return page.form.form


def piece_form(desk: DeskWindow) -> Form:
    desk.changes.plans_by_itself = False
    desk.go_to(PIECES)
    page = desk.pages.page(PIECES)
    assert isinstance(page, PiecesPage)
    page.show_part(BLANK)
    return page.blank.form


def half_typed(qtbot: QtBot, form: Form, name: str, text: str) -> QWidget:
    """Type into a field, and leave the cursor in it."""
    return half(qtbot, form.fields[name].focusProxy(), text)


def half(qtbot: QtBot, editor: QWidget | None, text: str) -> QWidget:
    assert isinstance(editor, QLineEdit | QPlainTextEdit)
    editor.setFocus()
    qtbot.waitUntil(editor.hasFocus)
    editor.selectAll()
    QTest.keyClicks(editor, text)
    return editor


def closed(desk: DeskWindow) -> None:
    desk.close()


def left(desk: DeskWindow) -> None:
    desk.verbs["close"].trigger()


def ended_by_the_system(desk: DeskWindow) -> None:
    application.leave_session(desk, Session(asks=False))


class Session:
    """A session that ends."""

    def __init__(self, *, asks: bool) -> None:
        """Let programs ask something first if it `asks`."""
        self._asks = asks
        self.cancelled = False

    def allowsInteraction(self) -> bool:  # noqa: N802 - Qt's own
        return self._asks

    def cancel(self) -> None:
        self.cancelled = True


ENDS = [closed, left, ended_by_the_system]


@pytest.mark.parametrize("end", ENDS)
def test_the_name_of_an_order_that_is_being_typed_is_kept(
    qtbot: QtBot, desk: DeskWindow, studio_path: Path, end: Callable[[DeskWindow], None]
) -> None:
    half_typed(qtbot, order_form(desk), "name", "Tern House")
    end(desk)
    assert desk.session is None
    assert kept(studio_path).orders[0].name == "Tern House"


@pytest.mark.parametrize("end", ENDS)
def test_so_is_its_note(
    qtbot: QtBot, desk: DeskWindow, studio_path: Path, end: Callable[[DeskWindow], None]
) -> None:
    half_typed(qtbot, order_form(desk), "note", "paid 50")
    end(desk)
    assert kept(studio_path).orders[0].note == "paid 50"


def test_so_is_the_name_of_a_piece_when_another_studio_is_opened(
    qtbot: QtBot, desk: DeskWindow, studio_path: Path, other: Path
) -> None:
    half_typed(qtbot, piece_form(desk), "name", "Sun tray")
    assert desk.open_path(other)
    assert kept(studio_path).pieces[0].name == "Sun tray"
    assert studio_of(desk).pieces[0].name == kept(other).pieces[0].name != "Sun tray"


def test_so_it_is_when_the_same_studio_is_opened_again(
    qtbot: QtBot, desk: DeskWindow, studio_path: Path
) -> None:
    half_typed(qtbot, piece_form(desk), "name", "Sun tray")
    assert desk.open_path(studio_path)
    assert studio_of(desk).pieces[0].name == "Sun tray"


def test_a_copy_holds_what_is_being_typed(
    qtbot: QtBot, desk: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    half_typed(qtbot, piece_form(desk), "name", "Sun tray")
    answers["copy"] = tmp_path / "copy.studio"
    desk.verbs["copy"].trigger()
    assert kept(tmp_path / "copy.studio").pieces[0].name == "Sun tray"


def test_a_desk_that_stays_in_the_tray_keeps_it(
    qtbot: QtBot, reminding_desk: OpenDesk, studio_path: Path
) -> None:
    desk = reminding_desk(studio_path)
    with_tray(desk)
    desk.changes.make(changed_reminding("tray", {"stays_in_tray": True}))
    half_typed(qtbot, piece_form(desk), "name", "Sun tray")
    desk.close()
    assert desk.isHidden()
    assert studio_of(desk).pieces[0].name == "Sun tray"


@pytest.mark.parametrize("end", [closed, left])
def test_what_is_refused_keeps_the_desk_there_once_and_says_why(
    qtbot: QtBot, desk: DeskWindow, studio_path: Path, end: Callable[[DeskWindow], None]
) -> None:
    form, before = order_form(desk), kept(studio_path)
    editor = half_typed(qtbot, form, "packing_minutes", "soon")
    end(desk)
    assert desk.isVisible()
    assert desk.session is not None
    assert form.fields["packing_minutes"].wrong in desk.notice.words
    assert "leave once more" in desk.notice.words
    assert editor.hasFocus()
    assert form.fields["packing_minutes"].wrong
    end(desk)
    assert not desk.isVisible()
    assert kept(studio_path) == before


def test_so_does_a_figure_of_a_piece_though_another_field_is_wrong(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    form = piece_form(desk)
    half_typed(qtbot, form, "count", "some")
    half_typed(qtbot, form, "name", "Sun tray")
    desk.close()
    assert desk.session is not None
    assert form.fields["count"].wrong in desk.notice.words


def test_put_right_it_is_kept(qtbot: QtBot, desk: DeskWindow, studio_path: Path) -> None:
    form = order_form(desk)
    half_typed(qtbot, form, "packing_minutes", "soon")
    desk.close()
    half_typed(qtbot, form, "packing_minutes", "25")
    desk.close()
    assert kept(studio_path).orders[0].packing_minutes == 25


@pytest.mark.parametrize("verb", ["open", "new", "copy"])
def test_no_other_file_is_asked_for_while_it_is_refused(
    qtbot: QtBot, desk: DeskWindow, answers: dict[str, Path | None], tmp_path: Path, verb: str
) -> None:
    half_typed(qtbot, order_form(desk), "packing_minutes", "soon")
    before = desk.session
    answers[verb] = tmp_path / "asked.studio"
    if verb == "open":
        create_studio(tmp_path / "asked.studio", scenes.planned()).close()
    desk.verbs[verb].trigger()
    assert desk.session is before
    assert (tmp_path / "asked.studio").exists() == (verb == "open")
    assert "leave once more" in desk.notice.words


def test_nor_is_another_studio_opened(
    qtbot: QtBot, desk: DeskWindow, studio_path: Path, other: Path
) -> None:
    half_typed(qtbot, order_form(desk), "packing_minutes", "soon")
    assert not desk.open_path(other)
    assert desk.session is not None
    assert desk.session.path == studio_path
    assert desk.open_path(other)


def test_a_system_that_ends_the_session_is_asked_to_wait(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    half_typed(qtbot, order_form(desk), "packing_minutes", "soon")
    session = Session(asks=True)
    application.leave_session(desk, session)
    assert session.cancelled
    assert desk.session is not None


def test_one_that_cannot_wait_ends_the_desk(qtbot: QtBot, desk: DeskWindow) -> None:
    half_typed(qtbot, order_form(desk), "packing_minutes", "soon")
    session = Session(asks=False)
    application.leave_session(desk, session)
    assert not session.cancelled
    assert desk.session is None


def test_a_figure_of_a_sheet_that_is_refused_keeps_the_desk_there(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    desk.changes.plans_by_itself = False
    desk.go_to(PRODUCTS)
    page = desk.pages.page(PRODUCTS)
    assert isinstance(page, ProductsPage)
    grid = page.panel.sheet.grid
    cell = next(place for place in grid.edits if 0 not in place)
    half(qtbot, grid.edits[cell], "soon")
    desk.close()
    assert desk.session is not None
    assert grid.wrong_in(cell[0]) in desk.notice.words
    desk.close()
    assert desk.session is None


def test_what_a_notice_says_to_be_refused_keeps_the_desk_there(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    desk.go_to(PLAN)
    line = QLineEdit(desk)
    line.show()
    line.editingFinished.connect(lambda: desk.notice.say("No such day.", wrong=True))
    half(qtbot, line, "soon")
    desk.close()
    assert desk.session is not None
    assert "No such day. Put it right" in desk.notice.words
