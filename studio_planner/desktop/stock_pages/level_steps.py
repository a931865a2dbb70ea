"""What is left of a part pour by pour, as a stair that goes down to nothing or stays above."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, time, timedelta
from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.desktop.patterns import pattern

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView
    from studio_planner.services.stocks.running_out import StockRow
    from studio_planner.services.stocks.stock_view import Stock

_LEAST_WIDE, _HIGH, _EDGE, _POST = 150, 62, 6.0, 7.0
_AFTER = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stair:
    """Instants (seconds) with the grams left from then on; `short` is when they run out."""

    begins: float
    ends: float
    levels: tuple[tuple[float, float], ...]
    short: float | None
    order_by: float | None
    reserve_g: float

    @property
    def highest_g(self) -> float:
        """The most that is ever there."""
        return max((grams for _, grams in self.levels), default=0.0)


def stair_of(view: DeskView, stock: Stock, row: StockRow) -> Stair:
    """How the level of a part goes down with the plan, and up with bottles that are to come."""
    zone = view.studio.time_zone
    begins = view.now.timestamp()
    today = view.now.astimezone(zone).date()
    steps = [
        (datetime.combine(one.lot.received, time(), zone).timestamp(), one.level.left_g)
        for one in stock.lots
        if (one.lot.product, one.lot.part) == (row.product, row.part)
        if one.lot.received > today
    ]
    steps += [
        (use.at.timestamp(), -use.grams)
        for use in stock.uses
        if (use.product, use.part) == (row.product, row.part)
    ]
    left, levels = row.left_g, [(begins, row.left_g)]
    for at, grams in sorted(steps):
        left += grams
        levels.append((max(at, begins), max(0.0, left)))
    uses = [use.at for use in stock.uses]
    ends = max([view.now, *uses]) + _AFTER
    order_by = row.order_by
    return Stair(
        begins=begins,
        ends=ends.timestamp(),
        levels=tuple(levels),
        short=None if row.runs_out is None else row.runs_out.at.timestamp(),
        order_by=None
        if order_by is None
        else datetime.combine(order_by, time(12), zone).timestamp(),
        reserve_g=row.reserve_g,
    )


class LevelSteps(QWidget):
    """The stair of one part; the words beside it say the same."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Draw nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self.stair: Stair | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        canvas.redrawn.connect(self.update)

    def show_row(self, view: DeskView, stock: Stock, row: StockRow) -> None:
        """Draw the stair of one part of a product."""
        self.stair = stair_of(view, stock, row) if row.planned_g > 0.0 and row.known else None
        self.update()

    @override
    def sizeHint(self) -> QSize:
        return QSize(_LEAST_WIDE, _HIGH)

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(_LEAST_WIDE // 2, _HIGH)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        stair = self.stair
        if stair is None or stair.highest_g <= 0.0:
            return
        with QPainter(self) as painter:
            self._draw(painter, stair, QRectF(self.rect()).adjusted(1, _EDGE, -1, -_EDGE))

    def _draw(self, painter: QPainter, stair: Stair, area: QRectF) -> None:
        theme = self._canvas.theme

        def x(at: float) -> float:
            share = (at - stair.begins) / max(1.0, stair.ends - stair.begins)
            return area.left() + min(1.0, max(0.0, share)) * area.width()

        def y(grams: float) -> float:
            return area.bottom() - grams / stair.highest_g * area.height()

        line = QPainterPath(QPointF(area.left(), y(stair.levels[0][1])))
        for (_, before), (at, grams) in pairwise(stair.levels):
            line.lineTo(x(at), y(before))
            line.lineTo(x(at), y(grams))
        line.lineTo(area.right(), y(stair.levels[-1][1]))
        under = QPainterPath(line)
        under.lineTo(area.right(), area.bottom())
        under.lineTo(area.left(), area.bottom())
        under.closeSubpath()
        painter.fillPath(under, theme.film_colour(0.7))
        painter.setPen(QPen(theme.colour("ink"), 1.4))
        painter.drawPath(line)
        painter.drawLine(area.bottomLeft(), area.bottomRight())
        if stair.reserve_g > 0.0:
            painter.setPen(QPen(theme.colour("quiet"), 1.0, Qt.PenStyle.DashLine))
            at = y(min(stair.reserve_g, stair.highest_g))
            painter.drawLine(QPointF(area.left(), at), QPointF(area.right(), at))
        if stair.short is not None:
            hole = QRectF(x(stair.short), area.top(), 0, area.height())
            hole.setRight(area.right())
            hatch = pattern(painter, theme.colour("now"), Qt.BrushStyle.FDiagPattern)
            painter.fillRect(hole, hatch)
        if stair.order_by is not None:
            painter.setPen(QPen(theme.colour("window"), 2.0))
            post = x(stair.order_by)
            painter.drawLine(
                QPointF(post, area.top() - _EDGE), QPointF(post, area.bottom() + _EDGE)
            )
