"""The pages of a sheet on the screen, white under one another as they will lie on the desk."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPalette
from PySide6.QtWidgets import QScrollArea, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.paper.page_drawing import PaperPages
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.services.paper.pages import Sheet

_PIXELS_PER_MM = 4.0
"""About life size on a usual screen, and large enough to read."""

_WIDEST = 690
"""A page is no wider [pixels], so that the window shows all of it."""

_BETWEEN = 14


class PageView(QWidget):
    """One page."""

    def __init__(self, pages: PaperPages, number: int, parent: QWidget) -> None:
        """Show the page of that number, counted from 0."""
        super().__init__(parent)
        self._pages = pages
        self._number = number
        scale = min(_PIXELS_PER_MM, _WIDEST / pages.size_mm[0])
        width, height = (round(side * scale) for side in pages.size_mm)
        self.setFixedSize(QSize(width, height))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), Qt.GlobalColor.white)
        scale = self.width() / self._pages.dots.width()
        painter.scale(scale, scale)
        self._pages.draw(painter, self._number)
        painter.resetTransform()
        painter.setPen(self.palette().color(QPalette.ColorRole.Mid))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(self.rect().adjusted(0, 0, -1, -1))


class SheetView(QScrollArea):
    """All pages of a sheet; a screen reader is given what is written on them."""

    def __init__(self, parent: QWidget) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self.setAccessibleName(translate("paper", "The sheet"))
        self.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.pages: PaperPages | None = None

    def show_sheet(self, sheet: Sheet | None) -> None:
        """Show a sheet, or none; StudioError when there is no font to write with."""
        self.pages = None if sheet is None else PaperPages(sheet)
        inside = QWidget(self)
        layout = QVBoxLayout(inside)
        layout.setContentsMargins(_BETWEEN, _BETWEEN, _BETWEEN, _BETWEEN)
        layout.setSpacing(_BETWEEN)
        if self.pages is not None:
            for number in range(len(self.pages.pages)):
                layout.addWidget(PageView(self.pages, number, inside))
        self.setWidget(inside)
        self.setAccessibleDescription("" if sheet is None else "\n".join(sheet.texts))
