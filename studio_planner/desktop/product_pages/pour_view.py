"""A pour of the product in the studio's own room: its ribbon, and its stages as clock times."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize
from PySide6.QtGui import QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.axis_marks import day_marks
from studio_planner.desktop.lane_shape import shape_for
from studio_planner.desktop.product_pages.law_words import stage_name
from studio_planner.desktop.ribbon_painter import RibbonPainter
from studio_planner.desktop.time_scale import DAY_SECONDS, FixedView
from studio_planner.desktop.tongue import translate
from studio_planner.science.stages import Edge, safe_edge

if TYPE_CHECKING:
    from datetime import datetime

    from PySide6.QtGui import QPaintEvent, QResizeEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.lane_shape import LaneShape
    from studio_planner.services.trial_pour import StageMoment, TrialPour

_NAMES, _TIMES = 104.0, 250.0
_NARROW = 560
"""Under this width names and times stand over their bands instead of beside them."""
_BEFORE = 3 * 3600.0
_AFTER = 6 * 3600.0
_ROW_GAP = 5.0
_ROOMY = 100.0
"""Pixels per day at which a lane is drawn with its labels."""


class PourView(QWidget):
    """The pour drawn as on the plan, and under it a row for each stage with its band."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no pour yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._pour: TrialPour | None = None
        self._painter_of_ribbons = RibbonPainter(canvas.theme)
        self.setMinimumWidth(300)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(translate("products", "A pour today, in your room"))
        canvas.recoloured.connect(self._recolour)

    def _recolour(self) -> None:
        if self._painter_of_ribbons.theme is not self._canvas.theme:
            self._painter_of_ribbons = RibbonPainter(self._canvas.theme)
        self.update()

    def show_pour(self, pour: TrialPour | None) -> None:
        """Show a pour; None where there is none to show."""
        self._pour = pour
        if pour is not None:
            pour.ribbon.ask_clocks(fine=True)
        self.setAccessibleDescription(self.spoken)
        self.setFixedHeight(self.sizeHint().height())
        self.update()

    @property
    def spoken(self) -> str:
        """All rows as one text."""
        if self._pour is None:
            return ""
        rows = self._pour.moments
        return "; ".join(f"{stage_name(row.stage)} {self.times_of(row)}" for row in rows)

    def times_of(self, row: StageMoment) -> str:
        """The clock times of a stage: for sure, and likely."""
        edge = safe_edge(row.stage)
        safe = row.late if edge is Edge.LATE else row.early
        if safe is None or row.likely is None:
            return translate("products", "not within five weeks")
        form = (
            translate("products", "from {safe}, likely {likely}")
            if row.stage.not_before
            else translate("products", "until {safe}, likely {likely}")
        )
        return form.format(safe=self._moment(safe), likely=self._near(row.likely, safe))

    def _moment(self, when: datetime) -> str:
        wall = self._canvas.wall
        return f"{words.day_name(when, wall, month=False)} {words.clock_time(when, wall)}"

    def _near(self, when: datetime, other: datetime) -> str:
        zone = self._canvas.zone
        same = when.astimezone(zone).date() == other.astimezone(zone).date()
        return words.clock_time(when, self._canvas.wall) if same else self._moment(when)

    @property
    def _line(self) -> float:
        return self._canvas.fonts.small_height

    @property
    def _shape(self) -> LaneShape:
        return shape_for(_ROOMY, self._canvas.fonts)

    @override
    def sizeHint(self) -> QSize:
        rows = len(self._pour.moments) if self._pour is not None else 0
        height = self._line + 4.0 + self._shape.height + rows * self._row_height + 8.0
        return QSize(700, round(height))

    @property
    def _narrow(self) -> bool:
        return self.width() < _NARROW

    @property
    def _sides(self) -> tuple[float, float]:
        """What the columns of names and of times take."""
        return (6.0, 6.0) if self._narrow else (_NAMES, _TIMES)

    @property
    def _row_height(self) -> float:
        return self._line * (2.0 if self._narrow else 1.0) + _ROW_GAP

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.setFixedHeight(self.sizeHint().height())

    def _view(self, pour: TrialPour) -> FixedView:
        begin = pour.start.timestamp() - _BEFORE
        lates = [row.late or row.likely for row in pour.moments]
        ends = [when.timestamp() for when in lates if when is not None]
        end = max([pour.start.timestamp() + DAY_SECONDS, *ends]) + _AFTER
        width = max(round(self.width() - sum(self._sides)), 1)
        return FixedView(begin, (end - begin) / width, width)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        pour = self._pour
        if pour is None:
            return
        view = self._view(pour)
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setFont(self._canvas.fonts.small)
            painter.translate(self._sides[0], 0.0)
            self._draw_days(painter, view)
            painter.translate(0.0, self._line + 4.0)
            painter.setClipRect(QRectF(-4.0, 0.0, view.width + 8.0, self._shape.height))
            self._painter_of_ribbons.paint(painter, [(pour.lane, 0.0)], self._shape, view)
            painter.setClipping(False)
            self._label_doorway(painter, pour, view)
            painter.translate(0.0, self._shape.height)
            for place, row in enumerate(pour.moments):
                self._draw_row(painter, row, place * self._row_height, view)

    def _draw_days(self, painter: QPainter, view: FixedView) -> None:
        theme = self._canvas.theme
        start, end = view.origin, view.second(view.width)
        pixels = DAY_SECONDS / view.seconds_per_pixel
        right = -10.0
        for mark in day_marks(self._canvas.zone, start, end, pixels):
            x = view.x(mark.second)
            if not 0.0 <= x <= view.width:
                continue
            painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
            painter.drawLine(QLineF(x, 0.0, x, float(self.height())))
            text = words.day_name(mark.local, self._canvas.wall, month=False)
            if x > right:
                painter.setPen(theme.colour("quiet"))
                self._write(painter, x + 4.0, 0.0, text)
                right = x + 14.0 + QFontMetricsF(painter.font()).horizontalAdvance(text)

    def _label_doorway(self, painter: QPainter, pour: TrialPour, view: FixedView) -> None:
        doorway = pour.ribbon.doorway
        top = self._shape.upper_label
        if doorway is None or top is None or doorway.opens > pour.ribbon.until:
            return
        metrics = QFontMetricsF(painter.font())
        painter.setPen(self._canvas.theme.colour("window"))
        opens = self._moment(doorway.opens)
        x = view.x(doorway.opens.timestamp())
        wide = metrics.horizontalAdvance(opens)
        if doorway.closes is None:
            self._write(painter, x, top, opens)
            return
        last = view.x(doorway.closes.timestamp())
        left = min(x, last - wide - 8.0)
        self._write(painter, max(left, 0.0), top, opens)
        self._write(
            painter, max(last, max(left, 0.0) + wide + 8.0), top, self._moment(doorway.closes)
        )

    def _draw_row(
        self, painter: QPainter, row: StageMoment, top: float, view: FixedView
    ) -> None:
        theme = self._canvas.theme
        painter.setPen(theme.colour("ink"))
        name, times = stage_name(row.stage), self.times_of(row)
        if self._narrow:
            self._write(painter, 0.0, top, f"{name}: {times}")
            top += self._line
        else:
            self._write(painter, -_NAMES, top, name)
            self._write(painter, view.width + 12.0, top, times)
        if row.early is None or row.likely is None or row.late is None:
            return
        early, likely, late = (
            view.x(when.timestamp()) for when in (row.early, row.likely, row.late)
        )
        height = self._line - 6.0
        band = QRectF(early, top + 3.0, max(late - early, 2.0), height)
        painter.fillRect(band, theme.colour("window_wash"))
        painter.setPen(QPen(theme.colour("ink"), 1.4))
        painter.drawLine(QLineF(likely, band.top(), likely, band.bottom()))
        # The side on which it is safe to be wrong has the post.
        safe = late if safe_edge(row.stage) is Edge.LATE else early
        painter.setPen(QPen(theme.colour("window"), 2.0))
        painter.drawLine(QLineF(safe, band.top() - 1.0, safe, band.bottom() + 1.0))

    def _write(self, painter: QPainter, left: float, top: float, text: str) -> None:
        ascent = QFontMetricsF(painter.font()).ascent()
        painter.drawText(QPointF(left, top + ascent), text)
