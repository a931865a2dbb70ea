"""The words of a lane: clock times of doorways, names of coats and steps, ready flags.

Words are laid out once for a lane, a zoom and a stretch of time a little longer than the view,
in pixels from the start of the record; a frame only looks up which of them are in view.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass, field
from itertools import zip_longest
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust
from studio_planner.desktop import words
from studio_planner.desktop.labels import LabelRow, PlacedLabel, TextStore
from studio_planner.desktop.time_scale import FixedView
from studio_planner.desktop.tongue import translate
from studio_planner.services.ribbons import Ribbon
from studio_planner.services.step_words import step_words

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QFont

    from studio_planner.desktop.fonts import Fonts
    from studio_planner.desktop.lane_shape import LaneShape
    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.time_scale import TimeView
    from studio_planner.services.doorways import Doorway
    from studio_planner.services.ready_flags import Flag
    from studio_planner.services.ribbons import Bar, Lane, StepMark

_LEAST_NAME = 24.0
_SHORT_GAP = 6.0
_SIDE = 2.0
_GAP = 6.0
_LONGEST = 240.0
_SPARE = 0.25

SeenLabel = tuple[float, float, PlacedLabel]
"""Left and top in pixels of the timeline, and the label."""


@dataclass(slots=True)
class LaneWords:
    """The labels of one lane at one zoom, in two rows, each from left to right.

    They are those of the bars from `first` to `last` [s since 1970 UTC].
    """

    first: float
    last: float
    upper: list[PlacedLabel] = field(default_factory=list)
    lower: list[PlacedLabel] = field(default_factory=list)


class LaneLabels:
    """Lays the words of lanes out and finds those in view."""

    def __init__(self, theme: Theme, fonts: Fonts, wall: words.Wall, store: TextStore) -> None:
        """Write with one theme and set of fonts, on the studio's wall clock."""
        self._fonts = fonts
        self._wall = wall
        self._store = store
        self._ink = theme.colour("ink")
        self._quiet = theme.colour("quiet")
        self._blue = theme.colour("window")
        self._zoom: tuple[float, LaneShape] | None = None
        self._kept: dict[Lane, LaneWords] = {}

    def in_view(
        self, lane: Lane, top: float, shape: LaneShape, view: TimeView
    ) -> Iterator[SeenLabel]:
        """The labels of a lane in view; a coat's name stays while its film is in view."""
        found = self._words(lane, shape, view)
        shift = view.x(lane.timing.start.timestamp())
        for row in (found.upper, found.lower):
            yield from _seen(row, shift, top, view.width)
        yield from _staying(found.lower, shift, top)

    def _words(self, lane: Lane, shape: LaneShape, view: TimeView) -> LaneWords:
        zoom = (view.seconds_per_pixel, shape)
        if zoom != self._zoom:
            self._zoom = zoom
            self._kept.clear()
        start, end = view.second(0.0), view.second(view.width)
        found = self._kept.get(lane)
        if found is None or start < found.first or end > found.last:
            spare = _SPARE * (end - start)
            found = LaneWords(start - spare, end + spare)
            self._kept[lane] = found
            self._lay_out(found, lane, shape, view.seconds_per_pixel)
        return found

    def _lay_out(
        self, found: LaneWords, lane: Lane, shape: LaneShape, seconds_per_pixel: float
    ) -> None:
        view = FixedView(lane.timing.start.timestamp(), seconds_per_pixel, 0)
        height = self._fonts.small_height
        upper = LabelRow(self._store, shape.upper_label or 0.0, height)
        lower = LabelRow(self._store, shape.lower_label or 0.0, height)
        bars = tuple(
            bar
            for bar in lane.bars
            if bar.begins < found.last and bar.shows_until > found.first
        )
        if shape.labelled:
            for bar in bars:
                if isinstance(bar, Ribbon) and bar.doorway is not None:
                    self._write_doorway(bar, bar.doorway, view, upper)
            for flag in lane.flags:
                self._write_flag(flag, view, upper)
            self._write_names(bars, view, lower)
        else:
            self._write_short_names(bars, view, lower)
        found.upper, found.lower = upper.labels, lower.labels

    def _write_doorway(
        self, bar: Ribbon, door: Doorway, view: FixedView, row: LabelRow
    ) -> None:
        left = view.x(door.opens.timestamp())
        right = view.x((door.closes or bar.until).timestamp())
        opens, font = words.clock_time(door.opens, self._wall), self._fonts.small
        if right <= left:
            return
        if door.closes is None:
            self._first_that_fits(
                row,
                left,
                (translate("timeline", "{opens}, stays open").format(opens=opens), opens),
                font,
            )
            return
        closes = words.clock_time(door.closes, self._wall)
        both = self._store.width(opens, font) + self._store.width(closes, font) + 8.0
        if right - left >= both:
            row.place(left, opens, font, self._blue)
            row.place_before(right, closes, font, self._blue)
        else:
            row.place(left, f"{opens}{words.TO}{closes}", font, self._blue)

    def _first_that_fits(
        self, row: LabelRow, left: float, texts: tuple[str, ...], font: QFont
    ) -> None:
        for text in texts:
            if row.place(left, text, font, self._blue):
                return

    def _write_flag(self, flag: Flag, view: FixedView, row: LabelRow) -> None:
        when = flag.safe or flag.likely
        if when is None:
            return
        x, text, font = (
            view.x(when.timestamp()),
            words.flag_word(flag.stage),
            self._fonts.small,
        )
        if not row.place(x, text, font, self._ink):
            row.place_before(x, text, font, self._ink)

    def _write_names(self, bars: tuple[Bar, ...], view: FixedView, row: LabelRow) -> None:
        starts = [view.x(bar.begins) for bar in bars if isinstance(bar, Ribbon)]
        nexts = dict(zip_longest(starts, starts[1:], fillvalue=float("inf")))
        limit = float("inf")
        for bar in bars:
            left = view.x(bar.begins)
            if isinstance(bar, Ribbon):
                limit = nexts[left]
                self._name_coat(bar, left, limit - left - _GAP, row, view)
            else:
                self._name_step(bar, left, limit, row)

    def _name_coat(
        self, bar: Ribbon, left: float, room: float, row: LabelRow, view: FixedView
    ) -> None:
        if room < _LEAST_NAME:
            return
        font, kind = self._fonts.small_bold, kind_word(bar.coat.kind)
        full = f"{kind}{_suffix(bar)}"
        if self._store.width(full, font) > room:
            full = self._store.elided(kind, font, room)
        if row.place(left, full, font, self._ink):
            row.labels[-1].stays_until = view.x(bar.hidden_after.timestamp())

    def _write_short_names(self, bars: tuple[Bar, ...], view: FixedView, row: LabelRow) -> None:
        """Names of coats alone, as much of each as there is room for before the next."""
        ribbons = [bar for bar in bars if isinstance(bar, Ribbon)]
        lefts = [view.x(bar.begins) for bar in ribbons]
        nexts = zip_longest(lefts, lefts[1:], fillvalue=float("inf"))
        for bar, (left, right) in zip(ribbons, nexts, strict=True):
            room = right - left - _SHORT_GAP
            text = self._short_name(kind_word(bar.coat.kind), room)
            if text and row.place(left, text, self._fonts.small, self._ink):
                row.labels[-1].stays_until = view.x(bar.hidden_after.timestamp())

    def _short_name(self, kind: str, room: float) -> str:
        """The whole name, its first word, or that cut short; empty where none would tell."""
        font = self._fonts.small
        first = kind.partition(" ")[0]
        fitting = (text for text in (kind, first) if self._store.width(text, font) <= room)
        cut = self._store.elided(first, font, room) if room >= _LEAST_NAME else ""
        return next(fitting, cut)

    def _name_step(self, step: StepMark, left: float, limit: float, row: LabelRow) -> None:
        text, font = step_words(step.lane.studio, step.planned), self._fonts.small
        fits = left + self._store.width(text, font) + _GAP <= limit
        if not (fits and row.place(left, text, font, self._quiet)):
            row.place_before(left + 7.0, text, font, self._quiet)


def _suffix(bar: Ribbon) -> str:
    window = bar.planned.window
    if window is not None and window.trust is Trust.TEST_FIRST:
        return ", " + translate("timeline", "test first")
    scuffed = bar.planned.joint is Joint.SCUFFED
    return f", {kind_word(bar.planned.joint)}" if scuffed else ""


def _left(label: PlacedLabel) -> float:
    return label.left


def _seen(
    row: list[PlacedLabel], shift: float, top: float, width: float
) -> Iterator[SeenLabel]:
    for label in row[bisect_left(row, -shift - _LONGEST, key=_left) :]:
        left = label.left + shift
        if left > width:
            return
        whole = left >= 0.0 or not label.stays_until
        if left + label.width > 0.0 and whole:
            yield left, top + label.top, label


def _staying(row: list[PlacedLabel], shift: float, top: float) -> Iterator[SeenLabel]:
    """The name of the coat whose film comes in from the left, held at the edge."""
    following = bisect_left(row, -shift, key=_left)
    for index in range(following - 1, -1, -1):
        label = row[index]
        if label.stays_until:
            room = row[following].left + shift - _GAP if following < len(row) else float("inf")
            left = min(_SIDE, room - label.width)
            if label.stays_until + shift > label.width / 2.0 and left + label.width > 0.0:
                yield left, top + label.top, label
            return
