"""How much is due, in the head of the desk: a number and a word, and the way to the list."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QAbstractButton, QWidget
from typing_extensions import override

from studio_planner.desktop.tongue import counted, translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.reminding.due_list import DueList

_PAD, _CORNER = 10, 3
_SIGN = "\N{BLACK RIGHT-POINTING TRIANGLE}"


class DueBadge(QAbstractButton):
    """A slip of paper with the number on it; framed in ink once something is due.

    What can't be saved later puts the sign of a warning before the number, and so does what
    keeps reminders from being written down.
    """

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Say that nothing is due."""
        super().__init__(parent)
        self._canvas = canvas
        self._count = self._urgent = 0
        self._trouble = ""
        self._narrow = False
        self.setCheckable(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        canvas.redrawn.connect(self.update)
        self.show_due(None)
        self.hide()

    def show_due(self, due: DueList | None) -> None:
        """Say how much is due; more than before is spoken, too."""
        before = self._count
        self._count = 0 if due is None else due.count
        self._urgent = 0 if due is None else due.urgent
        self._show()
        if self._count > before:
            self._announce(self._whole())

    def show_trouble(self, trouble: str) -> None:
        """Say that reminders cannot be written down, in a sentence; empty when they can."""
        self._trouble = trouble
        self._show()

    def _show(self) -> None:
        self.setText(self._short())
        self.setAccessibleName(self._whole())
        self.setToolTip(self._whole())
        self.updateGeometry()
        self.update()

    def _announce(self, words: str) -> None:
        # Loaded with the first words, not with the window, which mostly has none to say.
        from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent  # noqa: PLC0415

        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, words))

    def be_narrow(self, narrow: bool) -> None:  # noqa: FBT001 - a fact
        """Show the number alone where there is no room; pointing at it says the rest."""
        if narrow != self._narrow:
            self._narrow = narrow
            self.setText(self._short())
            self.updateGeometry()

    @property
    def _warns(self) -> bool:
        return bool(self._urgent or self._trouble)

    def _short(self) -> str:
        if self._narrow:
            words = str(self._count)
        elif self._trouble:
            words = (
                translate("due", "{count} due, reminders stopped").format(count=self._count)
                if self._count
                else translate("due", "Reminders stopped")
            )
        elif self._count:
            words = translate("due", "{count} due").format(count=self._count)
        else:
            words = translate("due", "Nothing due")
        return f"{_SIGN} {words}" if self._warns else words

    def _whole(self) -> str:
        things = self._things()
        return f"{things}. {self._trouble}" if self._trouble else things

    def _things(self) -> str:
        if not self._count:
            return translate("due", "Nothing is due")
        words = counted(
            self._count,
            translate("due", "{count} thing is due"),
            translate("due", "{count} things are due"),
        )
        if not self._urgent:
            return words
        return translate("due", "{things}, {urgent} of them can't be saved later").format(
            things=words, urgent=self._urgent
        )

    @override
    def sizeHint(self) -> QSize:
        metrics = QFontMetrics(self._canvas.fonts.bold)
        width = metrics.horizontalAdvance(self.text()) + 2 * _PAD
        return QSize(width, max(metrics.height() + 8, 28))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        ink = theme.colour("now" if self._warns else "ink" if self._count else "quiet")
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            edge = self.rect().adjusted(1, 1, -2, -2)
            if self._count or self._warns or self.isChecked():
                painter.setPen(QPen(ink, 2.0 if self._warns else 1.2))
                painter.setBrush(theme.colour("field" if self.isChecked() else "panel"))
                painter.drawRoundedRect(edge, _CORNER, _CORNER)
            painter.setPen(ink)
            painter.setFont(fonts.bold if self._count else fonts.plain)
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.text())
            if self.underMouse() and not self._count:
                painter.drawLine(
                    _PAD, self.height() - 5, self.width() - _PAD, self.height() - 5
                )
            if self.hasFocus():
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(theme.colour("window"), 2.0))
                painter.drawRect(self.rect().adjusted(1, 1, -2, -2))
