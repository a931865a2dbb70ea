"""The law of a product's stages, drawn: hours over temperature, with a reader."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.desktop.product_pages.law_drawing import LawDrawing
from studio_planner.desktop.product_pages.law_words import law_sentence, stage_name
from studio_planner.desktop.product_pages.plot_axes import PlotAxes, axes_for
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.tongue import translate
from studio_planner.services.data_sheets.law_curves import (
    LawPoint,
    law_curve,
    law_point,
    span_of,
)

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent

    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.science.stages import Stage
    from studio_planner.services.data_sheets.law_curves import LawCurve

_HEIGHT = 330
_MOST_HEIGHT = 460
_LEFT, _RIGHT, _TOP, _BOTTOM = 54.0, 92.0, 26.0, 26.0


class LawPlot(QWidget):
    """All stages as thin lines, one of them in front with its band and its printed figures.

    Left and right move the reader by a degree, up and down choose the stage in front.

    Signals:
        moved: the reader is at another temperature, or another stage is in front.
    """

    moved = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no product yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._product: Product | None = None
        self._units: Units | None = None
        self._room: tuple[float, float] | None = None
        self.curves: dict[Stage, LawCurve] = {}
        self.stage: Stage | None = None
        self.celsius = 20.0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(280, _HEIGHT)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMaximumHeight(_MOST_HEIGHT)
        self.setAccessibleName(translate("products", "Hours over temperature"))
        canvas.redrawn.connect(self.update)

    @override
    def sizeHint(self) -> QSize:
        return QSize(460, _HEIGHT)

    def showing(
        self, product: Product, units: Units, room: tuple[float, float] | None
    ) -> Iterator[None]:
        """Show the laws of a product, one law in each part.

        `room` is how cold and warm the room likely gets [°C].
        """
        other = self._product is None or self._product.key != product.key
        if self._product != product:
            curves: dict[Stage, LawCurve] = {}
            for stage in sheet_stages(product):
                curve = law_curve(product, stage)
                if curve is not None:
                    curves[stage] = curve
                yield
            self.curves = curves
        self._product, self._units, self._room = product, units, room
        if other and room is not None:
            self.celsius = round((room[0] + room[1]) / 2)
        if self.stage not in self.curves:
            wished = [stage for stage in self.curves if stage.value == "recoat_opens"]
            self.stage = next(iter([*wished, *self.curves]), None)
        low, high = span_of(product)
        self.celsius = min(max(self.celsius, low), high)
        self._changed()

    def choose_stage(self, stage: Stage) -> None:
        """Bring a stage to the front, if the sheet has figures for it."""
        if stage in self.curves and stage is not self.stage:
            self.stage = stage
            self._changed()

    def read_at(self, celsius: float) -> None:
        """Move the reader."""
        if self._product is not None:
            low, high = span_of(self._product)
            self.celsius = min(max(celsius, low), high)
            self._changed()

    @property
    def reading(self) -> LawPoint | None:
        """The three times of the stage in front at the reader."""
        if self._product is None or self.stage is None:
            return None
        return law_point(self._product, self.stage, self.celsius)

    @property
    def sentence(self) -> str:
        """What the law in front says at the reader, in words."""
        if self._product is None or self._units is None or self.stage is None:
            return ""
        return law_sentence(self._product, self.stage, self.celsius, self._units)

    def _changed(self) -> None:
        name = "" if self.stage is None else stage_name(self.stage)
        self.setAccessibleDescription(f"{name}. {self.sentence}" if name else "")
        self.moved.emit()
        self.update()

    @property
    def axes(self) -> PlotAxes | None:
        """Where everything lies; None without a product."""
        if self._product is None:
            return None
        area = QRectF(self.rect()).adjusted(_LEFT, _TOP, -_RIGHT, -_BOTTOM)
        hours = [
            hours
            for stage, curve in self.curves.items()
            for point in (curve.points[0], curve.points[-1])
            for hours in ((point.early, point.late) if stage is self.stage else (point.likely,))
        ]
        return axes_for(area, span_of(self._product), hours)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        axes = self.axes
        if axes is None or self._units is None or self._product is None:
            return
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            drawing = LawDrawing(painter, axes, self._canvas, self._units)
            drawing.ground(self._room, self._product.minimum_celsius)
            front = None if self.stage is None else self.curves[self.stage]
            drawing.others([c for s, c in self.curves.items() if s is not self.stage], front)
            if front is None:
                drawing.nothing(
                    translate("products", "Type a figure, and its law is drawn here.")
                )
            else:
                drawing.front(front)
                drawing.reader(self.reading)
            if self.hasFocus():
                drawing.focus(QRectF(self.rect()))

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        axes = self.axes
        if axes is not None:
            self.read_at(axes.value(event.position().x()))

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        axes, at = self.axes, event.position()
        if axes is None or not self.curves:
            return
        celsius = axes.value(at.x())
        nearest = min(
            self.curves.values(),
            key=lambda curve: abs(axes.y(_likely(curve, celsius)) - at.y()),
        )
        self.choose_stage(nearest.stage)

    def _step(self, by: int) -> None:
        """Move the reader by one degree of the maker's unit, onto a whole one."""
        if self._units is not None:
            scale = scale_of(Quantity.TEMPERATURE, self._units)
            self.read_at(scale.inside(round(scale.shown(self.celsius)) + by))

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        across = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        up = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}
        if event.key() in across:
            self._step(across[Qt.Key(event.key())])
        elif event.key() in up and self.stage is not None:
            by_time = sorted(
                self.curves, key=lambda stage: _likely(self.curves[stage], self.celsius)
            )
            place = by_time.index(self.stage) + up[Qt.Key(event.key())]
            self.choose_stage(by_time[min(max(place, 0), len(by_time) - 1)])
        else:
            super().keyPressEvent(event)


def _likely(curve: LawCurve, celsius: float) -> float:
    return min(curve.points, key=lambda point: abs(point.celsius - celsius)).likely


def sheet_stages(product: Product) -> list[Stage]:
    """The stages that a sheet has figures for, each once."""
    return list(dict.fromkeys(point.stage for point in product.sheet))
