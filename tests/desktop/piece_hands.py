"""What a maker's hands do on the page of pieces, for its tests."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.desktop.page_keys import PIECES
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.pieces import CoatKind, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.piece_pages.stack_section import StackSection
    from studio_planner.desktop.window import DeskWindow

LEFT = Qt.MouseButton.LeftButton
ALT, CONTROL = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier


def opened(window: DeskWindow) -> PiecesPage:
    window.changes.plans_by_itself = False
    window.go_to(PIECES)
    found = window.pages.page(PIECES)
    assert isinstance(found, PiecesPage)
    QApplication.processEvents()
    return found


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def piece_of(desk: DeskWindow, key: str) -> Piece:
    return studio_of(desk).piece(key)


def kinds(piece: Piece) -> list[CoatKind]:
    return [coat.kind for coat in piece.stack]


def changed(desk: DeskWindow, studio: Studio) -> None:
    assert desk.changes.attempt(Change("Set the scene", lambda _now: studio))


def undo_until(desk: DeskWindow, start: Studio) -> int:
    steps = 0
    while studio_of(desk) != start:
        assert desk.verbs["undo"].isEnabled()
        desk.verbs["undo"].trigger()
        steps += 1
    return steps


def type_film(page: PiecesPage, text: str) -> None:
    editor = page.stack.coat_form.film.editor
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)


def type_line(field: object, text: str) -> None:
    editor = field.editor  # type: ignore[attr-defined]
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)


def add_coat(page: PiecesPage, kind: CoatKind) -> None:
    actions = page.stack.verbs.add_menu.actions()
    next(a for a in actions if a.text().endswith(f" {kind}")).trigger()


def grip_of(section: StackSection, key: str) -> QPoint:
    assert section.picture is not None
    stratum = section.picture.shape.stratum(key)
    assert stratum is not None
    return stratum.grip.pointAt(0.3).toPoint()


def middle_of(section: StackSection, key: str) -> QPoint:
    assert section.picture is not None
    stratum = section.picture.shape.stratum(key)
    assert stratum is not None
    return (stratum.grip.pointAt(0.4) + stratum.seat.pointAt(0.4)).toPoint() / 2


def drag(section: StackSection, start: QPoint, by: QPoint) -> None:
    QTest.mousePress(section, LEFT, pos=start)
    QTest.mouseMove(section, start + by / 2)
    QTest.mouseMove(section, start + by)
    QTest.mouseRelease(section, LEFT, pos=start + by)


def picture_file(folder: Path, name: str = "wet tide.png", width: int = 3000) -> Path:
    image = QImage(width, 900, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.darkCyan)
    path = folder / name
    assert image.save(str(path))
    return path
