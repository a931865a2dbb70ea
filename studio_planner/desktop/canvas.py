"""What every drawn part of the desk shares: theme, fonts, time scale, and what is shown."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from studio_planner.desktop.recolouring import Recolouring
from studio_planner.desktop.time_scale import DAY_SECONDS, TimeScale

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from datetime import datetime
    from zoneinfo import ZoneInfo

    from studio_planner.craft.local_time import Span
    from studio_planner.desktop.fonts import Fonts
    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.words import Wall
    from studio_planner.services.desk import DeskView

_AHEAD_DAYS = 6.0
_BEHIND_DAYS = 1.0
_FEW_DAYS = 2.0
_ROOM_FOR_WEEK = 600
"""From this many pixels on times and names of coats are read in a whole week, too."""


class Canvas(QObject):
    """Theme, fonts, scale and the view of the studio, for the timeline, its heads and the room.

    `recoloured` is connected to what a widget does when the colours are others.

    Signals:
        redrawn: colours, the studio or the present moment are others; draw again.
    """

    redrawn = Signal()

    def __init__(self, theme: Theme, fonts: Fonts, now: datetime) -> None:
        """Start without a studio."""
        super().__init__()
        self.recoloured = Recolouring(self)
        self.theme = theme
        self.fonts = fonts
        self.now = now
        self.view: DeskView | None = None
        self.current_row = -1
        self._wanted: Callable[[], None] | None = None
        second = now.timestamp()
        self.scale = TimeScale(second - DAY_SECONDS, second + _AHEAD_DAYS * DAY_SECONDS, self)

    def show_view(self, view: DeskView | None) -> None:
        """Show another view of a studio; the stretch of time stays where it can."""
        self.view = view
        if view is not None:
            timing = view.timing
            self.scale.cover(timing.start.timestamp(), timing.end.timestamp())
        self.redrawn.emit()

    def set_theme(self, theme: Theme) -> None:
        """Change the colours."""
        self.theme = theme
        self.recoloured.emit()
        self.redrawn.emit()

    def set_now(self, now: datetime) -> None:
        """Move the now line."""
        self.now = now
        self.redrawn.emit()

    @property
    def zone(self) -> ZoneInfo:
        """The studio's time zone."""
        from zoneinfo import ZoneInfo  # noqa: PLC0415 - the window stands before it is needed

        return self.view.studio.time_zone if self.view else ZoneInfo("UTC")

    @property
    def wall(self) -> Wall:
        """The clock on the studio's wall."""
        from studio_planner.desktop.words import Wall, wall_of  # noqa: PLC0415 - likewise

        return wall_of(self.view.studio) if self.view else Wall(self.zone)

    @property
    def week_starts(self) -> int:
        """The day on which the studio's weeks begin, 0 for Monday."""
        return self.view.studio.units.week_starts if self.view else 0

    @property
    def now_x(self) -> float:
        """Where the now line stands."""
        return self.scale.x(self.now.timestamp())

    @property
    def nights(self) -> Sequence[Span]:
        """Spans in which nobody is awake."""
        return self.view.backdrop.nights if self.view else ()

    @property
    def working(self) -> Sequence[Span]:
        """Spans in which somebody can work."""
        return self.view.backdrop.working if self.view else ()

    def show_now(self) -> None:
        """Bring the now line into the first quarter of the view, at the present zoom."""
        ahead = 0.2 * self.scale.width * self.scale.seconds_per_pixel
        self.scale.show(self.now.timestamp() - ahead, self.scale.seconds_per_pixel)

    def set_width(self, width: int) -> None:
        """Tell how wide the time axis is; days that were asked for before are shown now."""
        self.scale.set_width(width)
        if self._wanted is not None and width > 1:
            self._wanted()

    def show_week(self) -> None:
        """Show a little of what was and the week to come, as soon as there is room for it."""
        self._show_days(_AHEAD_DAYS, self.show_week)

    def show_first(self) -> None:
        """Show the week where it can be read, else the next days; as soon as there is room."""
        roomy = self.scale.width >= _ROOM_FOR_WEEK
        self._show_days(_AHEAD_DAYS if roomy else _FEW_DAYS, self.show_first)

    def _show_days(self, days: float, again: Callable[[], None]) -> None:
        self._wanted = again if self.scale.width <= 1 else None
        if self._wanted is not None:
            return
        start = self.now.timestamp() - _BEHIND_DAYS * DAY_SECONDS * days / _AHEAD_DAYS
        self.scale.show_span(start, start + days * DAY_SECONDS)

    def show_plan(self) -> None:
        """Show the whole plan."""
        plan = self.view.plan if self.view else None
        if plan is None or not plan.coats:
            self.show_week()
            return
        first = min(coat.start for coat in plan.coats).timestamp() - DAY_SECONDS / 4
        last = max(
            [coat.end for coat in plan.coats]
            + [r.safe for r in plan.ready if r.safe is not None]
        )
        self.scale.show_span(first, last.timestamp() + DAY_SECONDS / 2)
