"""Windows on one time axis: each pour has the doorway without the change over the tried one."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView
    from studio_planner.services.trying.pours import PourBeside, PourThen

_LONGEST = timedelta(hours=60)
_BEFORE = timedelta(hours=2)
_MOST_ROWS = 4
_LINE, _GAP, _RULER = 17.0, 12.0, 20.0
_POST, _BLOCK = 2.0, 5.0
_HOURS = 6
_ROW = 3 * _LINE + _GAP


class WindowStrip(QWidget):
    """The windows of the first pours that change; what it draws is said in words above it."""

    def __init__(
        self,
        canvas: Canvas,
        today: DeskView,
        pours: Sequence[PourBeside],
        parent: QWidget | None = None,
    ) -> None:
        """Draw the windows that open within two and a half days of the first one."""
        super().__init__(parent)
        self._canvas = canvas
        self._today = today
        self._rows, self._start, self._end = _near(today.now, pours)
        self.setMinimumHeight(round(_RULER + len(self._rows) * (_ROW)))
        text = translate("questions", "Windows then and now: {pours}")
        self.setAccessibleName(text.format(pours=", ".join(row.words for row in self._rows)))
        canvas.redrawn.connect(self.update)

    @property
    def worth_drawing(self) -> bool:
        """Whether there is a window to draw."""
        return bool(self._rows)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._draw_ground(painter)
            top = _RULER
            for row in self._rows:
                self._draw_row(painter, row, top)
                top += _ROW

    @property
    def _left(self) -> float:
        metrics = QFontMetricsF(self._canvas.fonts.small)
        names = [_tried_words(), _without_words()]
        return max(metrics.horizontalAdvance(name) for name in names) + 12.0

    def _x(self, when: datetime) -> float:
        share = (when - self._start) / (self._end - self._start)
        return self._left + (self.width() - self._left - 1.0) * min(max(share, 0.0), 1.0)

    def _draw_ground(self, painter: QPainter) -> None:
        theme, bottom = self._canvas.theme, float(self.height())
        for begins, ends in self._today.backdrop.nights:
            if ends > self._start and begins < self._end:
                left, right = self._x(begins), self._x(ends)
                area = QRectF(left, _RULER, right - left, bottom - _RULER)
                painter.fillRect(area, theme.colour("night"))
        painter.setFont(self._canvas.fonts.small)
        wall = words.wall_of(self._today.studio)
        for mark in _marks(self._start, self._end, self._today):
            x = self._x(mark)
            painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
            painter.drawLine(QLineF(x, _RULER, x, bottom))
            painter.setPen(theme.colour("quiet"))
            painter.drawText(QPointF(x + 3.0, _RULER - 6.0), words.moment(mark, wall))

    def _draw_row(self, painter: QPainter, row: PourBeside, top: float) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        lines = ((_without_words(), row.without, "quiet"), (_tried_words(), row.tried, "ink"))
        painter.setFont(fonts.small_bold)
        painter.setPen(theme.colour("ink"))
        painter.drawText(QPointF(0.0, top + _LINE - 4.0), row.words)
        for index, (name, then, colour) in enumerate(lines):
            y = top + (index + 1) * _LINE
            painter.setFont(fonts.small)
            painter.setPen(theme.colour(colour))
            flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
            painter.drawText(QRectF(0.0, y, self._left, _LINE), flags, name)
            if then is not None:
                self._draw_window(painter, then, y, tried=index == 1)

    def _draw_window(self, painter: QPainter, then: PourThen, y: float, *, tried: bool) -> None:
        theme = self._canvas.theme
        if then.opens is None:
            return
        left = self._x(then.opens)
        right = self._x(self._end if then.closes is None else then.closes)
        band = QRectF(left, y + 4.0, max(right - left, 1.0), _LINE - 8.0)
        if tried:
            painter.fillRect(band, theme.colour("window_wash"))
        style = Qt.PenStyle.SolidLine if tried else Qt.PenStyle.DotLine
        painter.setPen(QPen(theme.colour("window"), _POST if tried else 1.0, style))
        painter.drawLine(QLineF(left, band.top(), right, band.top()))
        painter.drawLine(QLineF(left, y + 2.0, left, y + _LINE - 1.0))
        if then.closes is not None and then.closes <= self._end:
            painter.drawLine(QLineF(right, y + 2.0, right, y + _LINE - 1.0))
        if self._start <= then.start <= self._end:
            block = QRectF(self._x(then.start), y + 2.0, _BLOCK, _LINE - 3.0)
            painter.fillRect(block, theme.colour("ink"))


def _without_words() -> str:
    return translate("questions", "without it")


def _tried_words() -> str:
    return translate("questions", "tried")


def _near(
    now: datetime, pours: Sequence[PourBeside]
) -> tuple[tuple[PourBeside, ...], datetime, datetime]:
    """The pours with a window that opens soonest, and the stretch of time that shows them."""
    opening = [(min(found), row) for row in pours if (found := _openings(row))]
    if not opening:
        return (), now, now + _LONGEST
    start = max(min(first for first, _ in opening), now) - _BEFORE
    rows = tuple(row for first, row in opening if first < start + _LONGEST)[:_MOST_ROWS]
    ends = [then.closes for row in rows for then in _both(row) if then.closes is not None]
    last = min(max([*ends, start + _LONGEST / 2]), start + _LONGEST)
    return rows, start, last + _BEFORE


def _both(row: PourBeside) -> list[PourThen]:
    return [then for then in (row.without, row.tried) if then is not None]


def _openings(row: PourBeside) -> list[datetime]:
    return [then.opens for then in _both(row) if then.opens is not None]


def _marks(start: datetime, end: datetime, view: DeskView) -> list[datetime]:
    local = start.astimezone(view.studio.time_zone)
    hour = timedelta(hours=1)
    first = start - timedelta(minutes=local.minute, seconds=local.second)
    first = first.replace(microsecond=0) + hour * (_HOURS - local.hour % _HOURS)
    step = hour * _HOURS * (1 if end - start < timedelta(hours=30) else 2)
    found = []
    while first < end:
        found.append(first)
        first += step
    return found
