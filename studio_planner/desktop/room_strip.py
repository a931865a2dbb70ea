"""The room under the timeline, on its time axis: temperature and dew-point margin."""

from __future__ import annotations

from math import floor
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QLineF, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QHelpEvent, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QMenu, QPushButton, QToolTip, QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.ground_painter import draw_ground, draw_now
from studio_planner.desktop.measures import LANE_HEAD_WIDTH, ROOM_HEIGHT
from studio_planner.desktop.patterns import pattern
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QContextMenuEvent, QPaintEvent, QShowEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.backdrop import AirSample
    from studio_planner.services.desk import DeskView

_STEPS = (300, 600, 1200, 1800, 3600, 7200, 10_800, 21_600)
_LEAST_PIXELS = 4.0
_CHUNK = 48
_TOP = 10.0
_SPLIT = 0.56
_LEAST_RANGE = 4.0
_VERB = QRect(14, 52, 132, 26)
_QUARTER = 900


class RoomStrip(QWidget):
    """Temperature with its growing band, and the dew-point margin with the least allowed.

    Signals:
        asked: another temperature is to be expected for a time: from when (aware), or None.
    """

    asked = Signal(object)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Draw what `canvas` shows."""
        super().__init__(parent)
        self._canvas = canvas
        self._kept: dict[tuple[int, int], tuple[AirSample, ...]] = {}
        self._view: DeskView | None = None
        self.setFixedHeight(ROOM_HEIGHT)
        self.setAccessibleName(translate("room", "Room"))
        self.another = QPushButton(translate("room", "Another temperature…"), self)
        self.another.setAccessibleName(translate("room", "Another temperature for a time…"))
        self.another.setFont(canvas.fonts.small)
        self.another.setGeometry(_VERB)
        self.another.clicked.connect(lambda _checked=False: self.asked.emit(None))
        self.menu = QMenu(self)
        canvas.scale.changed.connect(self.update)
        canvas.redrawn.connect(self._redrawn)
        self._redrawn()

    @override
    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._redrawn()

    def _redrawn(self) -> None:
        if not self.isVisible():
            return  # behind another page nobody looks at it, or hears of it
        view = self._canvas.view
        self.another.setVisible(view is not None and view.backdrop.room is not None)
        if self._view is not view:
            before, self._view = self._view, view
            if before is None or view is None or not view.backdrop.same_air(before.backdrop):
                self._kept.clear()
        self.setAccessibleDescription(self.summary())
        self.update()

    def summary(self) -> str:
        """The room in view in one sentence."""
        samples = self._samples()
        if not samples or self._canvas.view is None:
            return translate("room", "Nothing is known about the room.")
        units = self._canvas.view.studio.units
        low = words.degrees(min(s.celsius for s in samples), units, decimals=0)
        high = words.degrees(max(s.celsius for s in samples), units, decimals=0)
        margins = [s.margin for s in samples if s.margin is not None]
        if not margins:
            said = translate("room", "{low} to {high}; the dew-point margin is unknown.")
            return said.format(low=low, high=high)
        least = words.degree_step(min(margins), units)
        said = translate("room", "{low} to {high}; dew-point margin at least {least}.")
        return said.format(low=low, high=high, least=least)

    def _samples(self) -> list[AirSample]:
        scale, view = self._canvas.scale, self._canvas.view
        if view is None:
            return []
        wanted = scale.seconds_per_pixel * _LEAST_PIXELS
        step = next((s for s in _STEPS if s >= wanted), _STEPS[-1])
        length = step * _CHUNK
        first, last = floor(scale.origin / length), floor(scale.end / length)
        samples: list[AirSample] = []
        for chunk in range(first, last + 1):
            key = (step, chunk)
            if key not in self._kept:
                seconds = (float(chunk * length + step * i) for i in range(_CHUNK))
                self._kept[key] = view.backdrop.air(seconds)
            samples += self._kept[key]
        margin = 2 * step
        return [s for s in samples if scale.origin - margin <= s.second <= scale.end + margin]

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        canvas = self._canvas
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), canvas.theme.colour("paper"))
            samples = self._samples()
            painter.save()
            painter.setClipRect(QRectF(LANE_HEAD_WIDTH, 0, canvas.scale.width, self.height()))
            painter.translate(LANE_HEAD_WIDTH, 0)
            draw_ground(painter, self.height(), canvas)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            if samples:
                self._draw_air(painter, samples)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
            draw_now(painter, self.height(), canvas.theme, canvas.now_x)
            painter.restore()
            self._draw_words(painter, samples)
            painter.setPen(QPen(canvas.theme.colour("rule"), 1.0))
            painter.drawLine(QLineF(0, 0.5, self.width(), 0.5))

    def _draw_air(self, painter: QPainter, samples: list[AirSample]) -> None:
        theme, x = self._canvas.theme, self._canvas.scale.x
        warm = self._warmth_axis(samples)
        upper = [QPointF(x(s.second), warm.y(s.celsius + s.band)) for s in samples]
        lower = [QPointF(x(s.second), warm.y(s.celsius - s.band)) for s in samples]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.colour("warmth_band"))
        painter.drawPolygon(QPolygonF(upper + lower[::-1]))
        painter.setPen(QPen(theme.colour("warmth"), 1.8))
        middle = [QPointF(x(s.second), warm.y(s.celsius)) for s in samples]
        painter.drawPolyline(QPolygonF(middle))
        self._draw_margin(painter, samples)

    def _draw_margin(self, painter: QPainter, samples: list[AirSample]) -> None:
        theme, x = self._canvas.theme, self._canvas.scale.x
        dew = self._margin_axis(samples)
        least = dew.y(self._least_margin)
        known = [(x(s.second), dew.y(s.margin)) for s in samples if s.margin is not None]
        if not known:
            return
        painter.setPen(QPen(theme.colour("now"), 1.0, Qt.PenStyle.DashLine))
        painter.drawLine(QLineF(0.0, least, self._canvas.scale.width, least))
        below = [QPointF(px, max(py, least)) for px, py in known]
        ends = [QPointF(known[-1][0], least), QPointF(known[0][0], least)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(pattern(painter, theme.colour("now"), Qt.BrushStyle.BDiagPattern))
        painter.drawPolygon(QPolygonF(below + ends))
        painter.setPen(QPen(theme.colour("dew"), 1.8))
        painter.drawPolyline(QPolygonF([QPointF(px, py) for px, py in known]))

    @property
    def _least_margin(self) -> float:
        view = self._canvas.view
        return view.studio.settings.dew_margin_celsius if view else 3.0

    def _warmth_axis(self, samples: list[AirSample]) -> _Axis:
        low = min(s.celsius - s.band for s in samples)
        high = max(s.celsius + s.band for s in samples)
        return _Axis(low, high, _TOP, ROOM_HEIGHT * _SPLIT - 2.0)

    def _margin_axis(self, samples: list[AirSample]) -> _Axis:
        margins = [s.margin for s in samples if s.margin is not None] or [0.0]
        least = self._least_margin
        low, high = min(*margins, least - 1.5), max(*margins, least + 1.0)
        return _Axis(low, high, ROOM_HEIGHT * _SPLIT + 10.0, ROOM_HEIGHT - 8.0)

    def _draw_words(self, painter: QPainter, samples: list[AirSample]) -> None:
        canvas = self._canvas
        fonts, theme, view = canvas.fonts, canvas.theme, canvas.view
        if view is None or view.backdrop.room is None:
            self._caption(painter, _TOP, translate("room", "No room yet."), "quiet")
            return
        units = view.studio.units
        bold = QFontMetricsF(fonts.bold)
        room = view.backdrop.room.name
        painter.setFont(fonts.bold)
        painter.setPen(theme.colour("ink"))
        painter.drawText(
            QPointF(14.0, _TOP + bold.ascent()),
            bold.elidedText(room, Qt.TextElideMode.ElideRight, LANE_HEAD_WIDTH - 74.0),
        )
        band = translate("room", "temperature, likely band")
        self._caption(painter, _TOP + bold.height() + 2.0, band, "warmth")
        if not samples:
            return
        warm = self._warmth_axis(samples)
        for celsius in (warm.low, warm.high):
            self._tick(
                painter, warm.y(celsius), words.degrees(celsius, units, decimals=0), "quiet"
            )
        top = ROOM_HEIGHT * _SPLIT + 8.0
        if all(s.margin is None for s in samples):
            self._caption(painter, top, translate("room", "dew-point margin unknown"), "quiet")
            return
        self._caption(painter, top, translate("room", "margin to dew point"), "dew")
        dew = self._margin_axis(samples)
        least = words.degree_step(self._least_margin, units)
        line = dew.y(self._least_margin)
        self._tick(painter, line, least, "now")
        dashes = translate("room", "no pour under the dashes")
        self._caption(painter, top + fonts.small_height + 1.0, dashes, "quiet")

    def _caption(self, painter: QPainter, top: float, text: str, colour: str) -> None:
        fonts = self._canvas.fonts
        painter.setFont(fonts.small)
        painter.setPen(self._canvas.theme.colour(colour))
        painter.drawText(QPointF(14.0, top + QFontMetricsF(fonts.small).ascent()), text)

    def _tick(self, painter: QPainter, y: float, text: str, colour: str) -> None:
        fonts = self._canvas.fonts
        metrics = QFontMetricsF(fonts.small)
        painter.setFont(fonts.small)
        painter.setPen(self._canvas.theme.colour(colour))
        left = LANE_HEAD_WIDTH - 6.0 - metrics.horizontalAdvance(text)
        painter.drawText(QPointF(left, y + metrics.capHeight() / 2.0), text)

    @override
    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            QToolTip.showText(event.globalPos(), self.reading_at(event.pos().x()), self)
            return True
        return super().event(event)

    @override
    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        self.fill_menu(event.pos().x())
        if self.menu.actions():
            self.menu.popup(event.globalPos())

    def fill_menu(self, x: float) -> None:
        """Put into the menu what can be done about the air at a pixel of this widget."""
        self.menu.clear()
        canvas, view = self._canvas, self._canvas.view
        if view is None or view.backdrop.room is None:
            return
        second = canvas.scale.second(x - LANE_HEAD_WIDTH) // _QUARTER * _QUARTER
        start = None
        text = translate("room", "Another temperature for a time…")
        if x >= LANE_HEAD_WIDTH and second > view.now.timestamp():
            start = words.local(second, canvas.zone)
            from_then = translate("room", "Another temperature from {moment}…")
            text = from_then.format(moment=words.moment(start, canvas.wall))
        self.menu.addAction(text).triggered.connect(
            lambda _checked=False: self.asked.emit(start)
        )

    def reading_at(self, x: float) -> str:
        """The room at a pixel of this widget, in words; empty beside the time axis."""
        view = self._canvas.view
        if view is None or x < LANE_HEAD_WIDTH:
            return ""
        second = self._canvas.scale.second(x - LANE_HEAD_WIDTH)
        units, canvas = view.studio.units, self._canvas
        for sample in view.backdrop.air([second]):
            when = words.moment(words.local(second, canvas.zone), canvas.wall)
            band = words.degree_step(sample.band, units, decimals=1)
            text = f"{when}: {words.degrees(sample.celsius, units, decimals=1)} ± {band}"
            if sample.margin is None:
                unknown = translate("room", "dew-point margin unknown")
                return f"{text}, {unknown}"
            margin = words.degree_step(sample.margin, units, decimals=1)
            above = translate("room", "{margin} above the dew point").format(margin=margin)
            return f"{text}, {above}"
        return ""


class _Axis:
    """A vertical axis from the lowest to the highest value, upside down as pixels are."""

    def __init__(self, low: float, high: float, top: float, bottom: float) -> None:
        short = max(0.0, _LEAST_RANGE - (high - low)) / 2.0
        self.low, self.high = low - short, high + short
        self._top, self._bottom = top, bottom

    def y(self, value: float) -> float:
        share = (value - self.low) / (self.high - self.low)
        return self._bottom - share * (self._bottom - self._top)
