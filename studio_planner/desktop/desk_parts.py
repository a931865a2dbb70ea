"""What the window holds once a studio is open: timeline, room, its scroll bar, and the side."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.idle_work import IdleWork
from studio_planner.desktop.measures import LINE_HEIGHT, ROOM_HEIGHT, SIDE_WIDTH
from studio_planner.desktop.page_keys import ANOTHER_AIR, STUDIO
from studio_planner.desktop.time_scroll import TimeScroll
from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from datetime import datetime

    from PySide6.QtGui import QResizeEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.room_pages.tonight import Tonight
    from studio_planner.desktop.room_strip import RoomStrip
    from studio_planner.desktop.side_panel import SidePanel
    from studio_planner.desktop.timeline_work.news_line import NewsLine
    from studio_planner.desktop.timeline_work.spot_table import SpotTable
    from studio_planner.desktop.timeline_work.work_line import WorkLine
    from studio_planner.services.ribbons import Bar


_ROOM_FOR_SIDE, _ROOM_FOR_AIR = 780, 500
"""From which width there is room for the side, and from which height for the air."""


class DeskParts(QWidget):
    """Timeline over room over scroll bar, the side beside them; a choice in one goes to all.

    Room and side have their places from the start and come once the timeline has been drawn.
    """

    def __init__(
        self, canvas: Canvas, attempt: Callable[[Callable[[], object]], bool], parent: QWidget
    ) -> None:
        """Draw what `canvas` shows; `attempt` runs what may fail in a sentence."""
        super().__init__(parent)
        self._canvas = canvas
        self._attempt = attempt
        self.timeline = WorkingTimeline(canvas, self)
        self.views = QStackedWidget(self)
        self.views.addWidget(self.timeline)
        self._line_place = _place(self)
        self._line_place.setFixedHeight(LINE_HEIGHT)
        self.time_scroll = TimeScroll(canvas.scale, self)
        self._news_place = _place(self)
        self._tonight_place = _place(self)
        self._room_place = _place(self)
        self._room_place.setFixedHeight(ROOM_HEIGHT)
        self._side_place = _place(self)
        self._side_place.setFixedWidth(SIDE_WIDTH)
        self._side_wanted: bool | None = None
        # The timeline learns once how wide it is: with this place, or without.
        self._give_side_room(parent.width())
        self._parts_soon = IdleWork(self)
        self._side_soon = IdleWork(self)
        self._news_soon = QTimer(self)
        self._news_soon.setSingleShot(True)
        self._news_soon.setInterval(0)
        self._news_soon.timeout.connect(self._show_news)
        self._lay_out()
        self.timeline.drawing.drawn.connect(self._drawn_once)

    @cached_property
    def room(self) -> RoomStrip:
        """The air of the room, on the timeline's axis."""
        from studio_planner.desktop.room_strip import RoomStrip  # noqa: PLC0415 - see the class

        room = RoomStrip(self._canvas, self._room_place)
        _put(room, self._room_place, shown=True)
        room.asked.connect(self.ask_air)
        return room

    @cached_property
    def tonight(self) -> Tonight:
        """What asks for another temperature, over the room while it does."""
        from studio_planner.desktop.room_pages.tonight import Tonight  # noqa: PLC0415

        assert self.timeline.desk is not None  # noqa: S101 - only a desk's own plan is worked on
        tonight = Tonight(self.timeline.desk, self._tonight_place)
        _put(tonight, self._tonight_place)
        return tonight

    def ask_air(self, start: datetime | None = None) -> None:
        """Ask for another temperature for the coming night, or from `start` on.

        Where there is no room for the air, the page of the studio asks for it.
        """
        desk = self.timeline.desk
        if desk is not None and self._room_place.isHidden():
            desk.go_to(STUDIO, ANOTHER_AIR)
        else:
            self.tonight.ask(self._canvas.view, start)

    @cached_property
    def side(self) -> SidePanel:
        """Hands next, promises, and the chosen piece in section."""
        from studio_planner.desktop.side_panel import SidePanel  # noqa: PLC0415 - see the class

        side = SidePanel(self._canvas, self._side_place)
        _put(side, self._side_place, shown=True)
        self.setTabOrder(self.timeline, side.hands)
        self.setTabOrder(side.hands, side.promises)
        self.setTabOrder(side.promises, side.foot.tabs)
        self.setTabOrder(side.foot.tabs, side.foot.worth)
        self.timeline.piece_chosen.connect(self._piece_chosen)
        side.piece_chosen.connect(self.timeline.choose_piece)
        return side

    @cached_property
    def work_line(self) -> WorkLine:
        """The line over the timeline that finds pieces and says how work on the plan goes."""
        from studio_planner.desktop.timeline_work.work_line import WorkLine  # noqa: PLC0415

        line = WorkLine(self._canvas, self._line_place)
        _put(line, self._line_place, shown=True)
        self.setTabOrder(line, self.timeline)
        line.wanted.connect(self.timeline.want)
        line.left.connect(self.timeline.setFocus)
        self.timeline.went_on.connect(line.pass_by)
        self.timeline.narrowed.connect(line.show_count)
        return line

    @cached_property
    def news(self) -> NewsLine:
        """The line under that one, there while a window has moved or was missed."""
        from studio_planner.desktop.timeline_work.news_line import NewsLine  # noqa: PLC0415

        news = NewsLine(self._canvas, self.timeline.desk, self._news_place)
        _put(news, self._news_place)
        news.shown.connect(self.timeline.choose_pour)
        return news

    @cached_property
    def spots(self) -> SpotTable:
        """The same plan by the shelf."""
        from studio_planner.desktop.timeline_work.spot_table import SpotTable  # noqa: PLC0415

        spots = SpotTable(self.timeline, self)
        if self.timeline.desk is not None:
            spots.work_here()
        self.views.addWidget(spots)
        spots.wanted = self.timeline.wanted
        spots.piece_chosen.connect(self.timeline.choose_piece)
        spots.went_on.connect(self.work_line.pass_by)
        self.work_line.wanted.connect(spots.want)
        return spots

    def show_by_piece(self) -> None:
        """Show a lane for each piece."""
        self.views.setCurrentWidget(self.timeline)
        self.timeline.setFocus()

    def show_by_spot(self) -> None:
        """Show a lane for each spot; the piece that was chosen stays so."""
        self.spots.show_spots()
        bar = self._chosen_bar()
        if bar is not None:
            self.spots.choose_piece(bar.lane.piece.key)
        self.views.setCurrentWidget(self.spots)
        self.spots.setFocus()

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(0)
        left.addWidget(self._line_place)
        left.addWidget(self._news_place)
        left.addWidget(self.views, 1)
        left.addWidget(self._tonight_place)
        left.addWidget(self._room_place)
        left.addWidget(self.time_scroll)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addLayout(left, 1)
        layout.addWidget(self._side_place)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        # In a small window the lanes come first.
        self._give_side_room(self.width())
        self._room_place.setVisible(self.height() >= _ROOM_FOR_AIR)

    def _give_side_room(self, width: int) -> None:
        wanted = self._side_wanted
        self._side_place.setVisible(width >= _ROOM_FOR_SIDE if wanted is None else wanted)

    def turn_side(self) -> None:
        """Show the side where it is hidden, in a small window too; hide it where it is not."""
        self._side_wanted = self._side_place.isHidden()
        self._give_side_room(self.width())
        if self._side_wanted:
            self.side.hands.setFocus()

    def show_view(self) -> None:
        """Show the canvas's view: on the timeline at once, in the other parts after it."""
        self.timeline.show_lanes()
        if self.views.currentWidget() is not self.timeline:
            self.spots.show_spots()
        if "tonight" in self.__dict__:
            self.tonight.show_view(self._canvas.view)
        self._show_side_soon()

    def _drawn_once(self) -> None:
        self.timeline.drawing.drawn.disconnect(self._drawn_once)
        QTimer.singleShot(0, self, self._fill)

    def _fill(self) -> None:
        # The timeline is up before any of these; each is a wait of its own.
        self._parts_soon.do(self._filling(), self._show_side_soon)

    def _filling(self) -> Iterator[QWidget]:
        yield self.work_line
        yield self.room
        yield self.side

    def _show_side_soon(self) -> None:
        """Show the side once the clocks that it asks have been asked, a few at a time."""
        view = self._canvas.view
        if "side" in self.__dict__:
            self._side_soon.do(self.side.asking_ahead(view), self.show_side)

    def show_side(self) -> None:
        """Ask anew what needs hands and how the promises stand, once the side is there."""
        if "side" not in self.__dict__:
            return
        view, row = self._canvas.view, self._canvas.current_row
        lanes = self.timeline.lanes.lanes
        lane = lanes[row] if 0 <= row < len(lanes) else None
        self.side.show_lane(lane, self._chosen_bar())
        self._attempt(lambda: self.side.show_view(view))
        # Windows ask the clocks of every film: what is pressed meanwhile comes first.
        self._news_soon.start()

    def _show_news(self) -> None:
        self._attempt(lambda: self.news.show_view(self._canvas.view))

    def _piece_chosen(self, key: str) -> None:
        lanes = self.timeline.lanes.lanes
        lane = next((lane for lane in lanes if lane.piece.key == key), None)
        self.side.show_lane(lane, self._chosen_bar())
        if self.timeline.hasFocus():
            # Whoever goes from bar to bar wants to see what they are made of.
            self.side.show_section()

    def _chosen_bar(self) -> Bar | None:
        return self.timeline.lanes.bar(self.timeline.currentIndex())


def _place(parent: QWidget) -> QWidget:
    place = QWidget(parent)
    layout = QVBoxLayout(place)
    layout.setContentsMargins(0, 0, 0, 0)
    return place


def _put(part: QWidget, place: QWidget, *, shown: bool = False) -> None:
    """Put a part into its place; one that is `shown` is there at once, whoever asks for it."""
    layout = place.layout()
    if layout is not None:
        layout.addWidget(part)
        layout.activate()
    if shown:
        part.show()
