"""Cup life over the mass of a mix, drawn small beside what the sheet prints."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.product_pages.law_words import short_mass
from studio_planner.desktop.product_pages.plot_axes import PlotAxes, axes_for
from studio_planner.desktop.tongue import translate
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.science.stages import Basis
from studio_planner.services.data_sheets.law_curves import CupPoint, cup_curve, cup_point

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas

_HEIGHT = 190
_LEFT, _RIGHT, _TOP, _BOTTOM = 54.0, 14.0, 8.0, 26.0
_GUESSED = {Basis.ASSUMED, Basis.OUTSIDE}
_TICKS = (10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0, 10_000.0)
_LEAST_TICK = 52.0


class CupPlot(QWidget):
    """How much sooner a larger mix has to be out of its cup, at one temperature."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no product yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._units: Units | None = None
        self._product: Product | None = None
        self._celsius = 20.0
        self.points: tuple[CupPoint, ...] = ()
        self.setMinimumSize(260, _HEIGHT)
        self.setMaximumWidth(560)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(translate("products", "Cup life over the mass of a mix"))
        canvas.redrawn.connect(self.update)

    @override
    def sizeHint(self) -> QSize:
        return QSize(420, _HEIGHT)

    def show_product(self, product: Product, celsius: float, units: Units) -> None:
        """Show cup life at a temperature [°C]; nothing where the sheet has none."""
        self._units, self._product, self._celsius = units, product, celsius
        self.points = cup_curve(product, celsius)
        self.setAccessibleDescription(self.sentence)
        self.update()

    @property
    def sentence(self) -> str:
        """How long the largest cup stays usable, in words."""
        if not self.points or self._units is None or self._product is None:
            return ""
        grams = self._product.cup_limit_g
        near = cup_point(self._product, self._celsius, grams)
        if near is None:
            return ""
        return translate(
            "products",
            "At {degrees} a cup of {mass} stays usable for {life} at least; be out of it "
            "after {out}.",
        ).format(
            degrees=words.degrees(self._celsius, self._units, decimals=0),
            mass=short_mass(near.grams, self._units),
            life=words.length_of_time(near.early),
            out=words.length_of_time(near.early * SHARE_TO_USE),
        )

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        if not self.points or self._units is None:
            return
        area = QRectF(self.rect()).adjusted(_LEFT, _TOP, -_RIGHT, -_BOTTOM)
        span = self.points[0].grams, self.points[-1].grams
        hours = [h for p in self.points for h in (p.early * SHARE_TO_USE, p.likely)]
        axes = axes_for(area, span, hours, log_across=True)
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setFont(self._canvas.fonts.small)
            painter.fillRect(area, self._canvas.theme.colour("field"))
            self._draw_marks(painter, axes, self._units)
            self._draw_lines(painter, axes)

    def _draw_marks(self, painter: QPainter, axes: PlotAxes, units: Units) -> None:
        theme, line = self._canvas.theme, self._canvas.fonts.small_height
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        for hours in axes.hour_marks():
            y = axes.y(hours)
            painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
            painter.drawLine(QLineF(axes.area.left(), y, axes.area.right(), y))
            painter.setPen(theme.colour("quiet"))
            box = QRectF(0.0, y - line / 2, axes.area.left() - 6.0, line)
            painter.drawText(box, right, words.length_of_time(hours))
        last = -_LEAST_TICK
        for grams in _TICKS:
            x = axes.x(grams)
            if axes.low <= grams <= axes.high and x - last >= _LEAST_TICK:
                last = x
                box = QRectF(x - 35.0, axes.area.bottom() + 5.0, 70.0, line)
                painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, short_mass(grams, units))
        painter.setPen(QPen(theme.colour("rule"), 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(axes.area)

    def _draw_lines(self, painter: QPainter, axes: PlotAxes) -> None:
        theme = self._canvas.theme
        for one, two in zip(self.points, self.points[1:], strict=False):
            pen = QPen(theme.colour("ink"), 2.0)
            if one.basis in _GUESSED or two.basis in _GUESSED:
                pen.setDashPattern([5.0, 4.0])
                pen.setDashOffset(axes.x(one.grams) / 2.0)
            painter.setPen(pen)
            painter.drawLine(
                axes.point(one.grams, one.likely), axes.point(two.grams, two.likely)
            )
        painter.setPen(QPen(theme.colour("now"), 1.4))
        out = [axes.point(p.grams, p.early * SHARE_TO_USE) for p in self.points]
        painter.drawPolyline(QPolygonF(out))
        self._say(painter, axes)

    def _say(self, painter: QPainter, axes: PlotAxes) -> None:
        """Name both lines where they are far from the frame."""
        theme, metrics = self._canvas.theme, QFontMetricsF(painter.font())
        left = axes.area.left() + 8.0
        painter.setPen(theme.colour("now"))
        low = translate("products", "be out of the cup")
        painter.drawText(QPointF(left, axes.area.bottom() - metrics.descent() - 4.0), low)
        painter.setPen(theme.colour("ink"))
        high = translate("products", "usable, likely")
        width = metrics.horizontalAdvance(high)
        top = axes.area.top() + metrics.ascent() + 4.0
        painter.drawText(QPointF(axes.area.right() - width - 8.0, top), high)
