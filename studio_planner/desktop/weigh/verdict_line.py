"""What is said about a step: a note beside a dotted post, a stop beside a barred one."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QLabel, QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas

_POST = 14
_STEP = 9


class VerdictLine(QLabel):
    """Sentences; `stops` draws them with a barred post, else with a dotted one."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Say nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self.stops = False
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setContentsMargins(_POST + 12, 0, 0, 0)

    def say(self, text: str, *, stops: bool) -> None:
        """Say something, or nothing."""
        self.stops = stops
        self.setText(text)
        theme = self._canvas.theme
        palette = theme.palette
        palette.setColor(
            palette.ColorRole.WindowText, theme.colour("now" if stops else "quiet")
        )
        self.setPalette(palette)
        self.update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self.text():
            return
        theme = self._canvas.theme
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            post = QRectF(1.0, 2.0, _POST - 2.0, self.height() - 4.0)
            if not self.stops:
                painter.setPen(QPen(theme.colour("quiet"), 4.0, Qt.PenStyle.DotLine))
                painter.drawLine(post.topLeft(), post.bottomLeft())
                return
            painter.setPen(QPen(theme.colour("now"), 2.0))
            painter.drawRect(post)
            painter.setClipRect(post)
            for row in range(int(self.height()) // _STEP + 3):
                y = post.top() + row * _STEP
                painter.drawLine(
                    QPointF(post.left(), y),
                    QPointF(post.right(), y - _POST),
                )
