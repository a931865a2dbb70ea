"""The expected air as a line to be drawn with the mouse, or moved by keys."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.craft.settings import ClockForm, Units
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.room_pages.air_axes import AirAxes
from studio_planner.desktop.room_pages.air_drawing import AirDrawing, minutes_of, point_words
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.air_weeks import DAY_MINUTES, GRID_MINUTES, moved

if TYPE_CHECKING:
    from PySide6.QtCore import QPointF
    from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent

    from studio_planner.craft.places import Place
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.room_pages.air_axes import Spotted
    from studio_planner.services.editing.air_weeks import Pattern

_SNAP_DEGREES = 0.5
_SNAP_MINUTES = 15
_STILL = 3.0
"""A press that moves by fewer pixels along one axis leaves that figure as it is."""

_LEAST_WIDTH = 420


class AirCurve(QWidget):
    """One pattern. A drag is shown while it lasts and is one change when it ends.

    Signals:
        drawing: the pattern as it would be, while a point is dragged.
        drawn: the pattern as the maker wants it, when the drag has ended.
        left_as_it_was: a drag was given up.
        add_asked: (day or -1, minute) of a double click.
        remove_asked: the chosen point is to go.
        chosen: the place in the pattern of the point that is chosen.
    """

    drawing = Signal(object)
    drawn = Signal(object)
    left_as_it_was = Signal()
    add_asked = Signal(int, int)
    remove_asked = Signal()
    chosen = Signal(int)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._place: Place | None = None
        self._units = Units()
        self._form = ClockForm.HOURS_24
        self._drag: tuple[QPointF, Spotted, Pattern, AirAxes] | None = None
        self._drawn: Pattern = ()
        self.index = 0
        self.setMouseTracking(True)
        self.setMinimumWidth(_LEAST_WIDTH)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(translate("room", "Expected air"))
        canvas.redrawn.connect(self.update)

    def show_place(self, place: Place, units: Units) -> None:
        """Show a place's pattern; one that is being dragged stays in hand."""
        if self._drag is not None and self._place is not None and place == self._place:
            return
        fresh = self._place is None or self._place.key != place.key
        self._drag = None
        self._place, self._units, self._form = place, units, units.clock
        self._drawn = place.pattern
        self.index = 0 if fresh else min(self.index, len(place.pattern) - 1)
        self.setFixedHeight(round(self.axes.height))
        self._say()
        self.update()

    @property
    def pattern(self) -> Pattern:
        """The pattern as it is drawn now."""
        return self._drawn

    @property
    def axes(self) -> AirAxes:
        """Where everything lies at the present width."""
        if self._drag is not None:
            return self._drag[3]
        band = self._place.band_celsius if self._place else 1.0
        return AirAxes(self._drawn, band, self._units, float(self.width()))

    def choose(self, index: int) -> None:
        """Choose a point by its place in the pattern."""
        if 0 <= index < len(self._drawn) and index != self.index:
            self.index = index
            self._say()
            self.update()
            self.chosen.emit(index)

    def _say(self) -> None:
        if self._drawn:
            said = point_words(self._drawn, self.index, self.axes, self._form)
            self.setAccessibleDescription(
                translate("room", "Point {number} of {all}: {said}").format(
                    number=self.index + 1, all=len(self._drawn), said=said
                )
            )

    @override
    def sizeHint(self) -> QSize:
        return QSize(720, round(self.axes.height) if self._place else 240)

    # Drawing

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        if self._place is None or not self._drawn:
            return
        axes = self.axes
        drawing = AirDrawing(self._canvas, axes, self._drawn, self._place.band_celsius)
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), self._canvas.theme.colour("paper"))
            drawing.draw(painter, self._form)
            spots = axes.spots(self._drawn)
            drawing.draw_points(painter, spots, self.index, focus=self.hasFocus())
            if self._drag is not None:
                held = self._drag[1]
                here = next(
                    s
                    for s in spots
                    if (s.index, s.day, s.damp) == (held.index, held.day, held.damp)
                )
                text = point_words(self._drawn, self.index, axes, self._form)
                drawing.draw_figures(painter, here, text)

    # The mouse

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton or not self._drawn:
            return
        at = event.position()
        spot = self.axes.spot_at(self._drawn, at.x(), at.y())
        if spot is not None:
            self.choose(spot.index)
            self._drag = (at, spot, self._drawn, self.axes)

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self._drag is None:
            over = self._drawn and self.axes.spot_at(self._drawn, at.x(), at.y())
            shape = Qt.CursorShape.SizeAllCursor if over else Qt.CursorShape.ArrowCursor
            self.setCursor(shape)
            return
        self._draw_to(at)

    def _draw_to(self, at: QPointF) -> None:
        if self._drag is None:
            return
        pressed, spot, before, axes = self._drag
        along, up = at.x() - pressed.x(), pressed.y() - at.y()
        point = before[spot.index]
        minute = None
        if abs(along) >= _STILL:
            wanted = minutes_of(before, spot.index) + along / axes.width * axes.minutes
            minute = round(wanted / self._snap) * self._snap
        celsius = humidity = None
        if abs(up) >= _STILL and spot.damp:
            humidity = float(round((point.humidity_pct or 0.0) + axes.humidity_of(up)))
        elif abs(up) >= _STILL:
            celsius = self._snapped(point.celsius + axes.celsius_of(up))
        self._drawn = moved(
            before, spot.index, minute=minute, celsius=celsius, humidity=humidity
        )
        self._say()
        self.update()
        self.drawing.emit(self._drawn)

    @property
    def _snap(self) -> int:
        return _SNAP_MINUTES if self.axes.days > 1 else GRID_MINUTES

    def _snapped(self, celsius: float) -> float:
        scale = scale_of(Quantity.TEMPERATURE, self._units)
        shown = round(scale.shown(celsius) / _SNAP_DEGREES) * _SNAP_DEGREES
        return round(scale.inside(shown), 6)

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._drag is None or event.button() is not Qt.MouseButton.LeftButton:
            return
        before, self._drag = self._drag[2], None
        self.update()
        if self._drawn != before:
            self.drawn.emit(self._drawn)

    def _give_up(self) -> None:
        if self._drag is not None:
            self._drawn, self._drag = self._drag[2], None
            self.update()
            self.left_as_it_was.emit()

    @override
    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        at, axes = event.position(), self.axes
        if axes.spot_at(self._drawn, at.x(), at.y()) is not None:
            return
        minute = round(axes.minute(at.x()) / GRID_MINUTES) * GRID_MINUTES
        if 0 <= minute < axes.minutes:
            day, within = divmod(minute, DAY_MINUTES)
            self.add_asked.emit(day if axes.days > 1 else -1, within)

    # Keys

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if not self._drawn:
            super().keyPressEvent(event)
        elif key == Qt.Key.Key_Escape and self._drag is not None:
            self._give_up()
        elif key in {Qt.Key.Key_Delete, Qt.Key.Key_Backspace}:
            self.remove_asked.emit()
        elif not self._moved_by(key, event.modifiers()):
            super().keyPressEvent(event)

    def _moved_by(self, key: int, modifiers: Qt.KeyboardModifier) -> bool:
        """Left and right choose a point, with Shift they move it; up and down warm it."""
        sideways = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(key), 0)
        upwards = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}.get(Qt.Key(key), 0)
        shift = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
        if upwards:
            celsius = self._drawn[self.index].celsius
            step = scale_of(Quantity.DEGREES, self._units).inside(_SNAP_DEGREES)
            self.drawn.emit(moved(self._drawn, self.index, celsius=celsius + upwards * step))
        elif sideways and shift:
            minute = minutes_of(self._drawn, self.index) + sideways * self._snap
            self.drawn.emit(moved(self._drawn, self.index, minute=minute))
        elif sideways:
            self.choose(self.index + sideways)
        return bool(upwards or sideways)
