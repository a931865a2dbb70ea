"""The names of the pages in the head of the desk, the one in front underlined in ink."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QHBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas

_PAD, _NARROW_PAD, _LINE = 8, 4, 3


class PageName(QAbstractButton):
    """The name of one page."""

    def __init__(self, canvas: Canvas, words: str, parent: QWidget) -> None:
        """Show `words`."""
        super().__init__(parent)
        self._canvas = canvas
        self.narrow = False
        self.setText(words)
        self.setAccessibleName(words)
        self.setCheckable(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    @override
    def sizeHint(self) -> QSize:
        fonts = self._canvas.fonts
        metrics = QFontMetrics(fonts.small if self.narrow else fonts.bold)
        pad = _NARROW_PAD if self.narrow else _PAD
        return QSize(metrics.horizontalAdvance(self.text()) + 2 * pad, metrics.height() + 14)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        with QPainter(self) as painter:
            wide = fonts.bold if self.isChecked() else fonts.plain
            painter.setFont(fonts.small if self.narrow else wide)
            strong = self.isChecked() or self.underMouse()
            painter.setPen(theme.colour("ink" if strong else "quiet"))
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.text())
            bottom = self.height() - 2.0
            if self.isChecked():
                painter.setPen(QPen(theme.colour("ink"), _LINE))
                painter.drawLine(QLineF(_PAD, bottom, self.width() - _PAD, bottom))
            if self.hasFocus():
                painter.setPen(QPen(theme.colour("window"), 2.0))
                painter.drawRect(self.rect().adjusted(1, 1, -2, -2))


class PageBar(QWidget):
    """All names in a row.

    Signals:
        page_asked: the key of the page that the maker wants to see.
    """

    page_asked = Signal(str)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start without pages."""
        super().__init__(parent)
        self._canvas = canvas
        self.names: dict[str, PageName] = {}
        self._group = QButtonGroup(self)
        self._layout = QHBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(0)
        self.setAccessibleName(translate("pages", "Pages"))
        canvas.redrawn.connect(self.update)

    def add(self, key: str, words: str, number: int) -> None:
        """Add the name of a page; its number is what the keyboard knows it by."""
        name = PageName(self._canvas, words, self)
        name.setToolTip(f"Ctrl+{number}")
        name.clicked.connect(lambda: self.page_asked.emit(key))
        self.names[key] = name
        self._group.addButton(name)
        self._layout.addWidget(name)

    def be_narrow(self, narrow: bool) -> None:  # noqa: FBT001 - a fact
        """Write smaller where there is little room."""
        for name in self.names.values():
            if name.narrow != narrow:
                name.narrow = narrow
                name.updateGeometry()

    def show_page(self, key: str) -> None:
        """Underline the page that is in front."""
        self.names[key].setChecked(True)
