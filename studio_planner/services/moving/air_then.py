"""Whether the air lets a pour be: warm, dry, clear of the dew point, steady on bare wood."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from datetime import UTC, datetime
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.grid import GRID_SECONDS
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.products import ProductKind
from studio_planner.science.air import AirError, dew_point_margin
from studio_planner.services.moving.breaks import Break, Rule
from studio_planner.services.questions.sentences import (
    Degrees,
    Moment,
    Share,
    Step,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.timing import Timing
    from studio_planner.science.history import History
    from studio_planner.services.ribbons import Ribbon

_SAME = 0.01
_WHOLE = 100.0


class _Margin(NamedTuple):
    """The margin of a surface above the dew point at an instant; None: not known."""

    second: float
    celsius: float | None


class AirThen:
    """The air of a studio's places; what was looked up for one time is kept for the next."""

    def __init__(self, timing: Timing) -> None:
        """Look at the air of `timing`."""
        self._timing = timing
        self._margins: dict[tuple[str, Material, float], float | None] = {}

    def breaks(self, bar: Ribbon) -> Iterator[Break]:
        """What is wrong with the air around a pour."""
        place = self._timing.studio.place_of_spot(bar.planned.spot).key
        history = self._timing.history(place)
        start, end = bar.begins, bar.spread
        celsius = [c for s in _seconds(history, start, end) for c in _both(history, s)]
        yield from _temperature(bar, celsius)
        if bar.product.kind is not ProductKind.LEAF:
            yield from _humidity(bar, history)
            yield from self._dew(bar, place)
        yield from _warming(bar, celsius)

    def unknown(self, bar: Ribbon) -> bool:
        """Whether nobody knows the margin above the dew point all through."""
        if bar.product.kind is ProductKind.LEAF:
            return False
        place = self._timing.studio.place_of_spot(bar.planned.spot).key
        return any(m.celsius is None for m in self._margins_of(bar, place))

    def _dew(self, bar: Ribbon, place: str) -> Iterator[Break]:
        needed = self._timing.studio.settings.dew_margin_celsius
        known = [(m.celsius, m.second) for m in self._margins_of(bar, place)]
        least, second = min(
            ((c, s) for c, s in known if c is not None), default=(needed, bar.begins)
        )
        if least < needed:
            text = "Too damp: at {when} the surface is only {least} above the dew point."
            words = said(text, when=Moment(_instant(second)), least=Step(least))
            yield Break(rule=Rule.AIR, words=words)

    def _margins_of(self, bar: Ribbon, place: str) -> Iterable[_Margin]:
        settings = self._timing.studio.settings
        end = bar.spread + settings.dew_hours * 3600.0
        seconds = _seconds(self._timing.history(place), bar.begins, end)
        material = bar.lane.piece.material
        return [_Margin(s, self._margin(place, material, s)) for s in seconds]

    def _margin(self, place: str, material: Material, second: float) -> float | None:
        key = (place, material, second)
        if key not in self._margins:
            history = self._timing.history(place)
            surface = self._timing.surface(place, material)
            cover, air = surface.celsius_at(second), history.celsius_at(second)
            self._margins[key] = (
                None
                if cover is None or air is None
                else _above_dew(cover, air, history.humidity_at(second))
            )
        return self._margins[key]


def _above_dew(cover: float, air: float, humidity: float | None) -> float | None:
    try:
        return dew_point_margin(cover, air, humidity)
    except AirError:
        return None


def _seconds(history: History, start: float, end: float) -> list[float]:
    """Instants from `start` to `end` on the grid, and every one where the air bends."""
    first = int(start // GRID_SECONDS) + 1
    grid = [float(s * GRID_SECONDS) for s in range(first, int(end // GRID_SECONDS) + 1)]
    seconds = history.seconds
    bends = seconds[bisect_right(seconds, start) : bisect_left(seconds, end)]
    return sorted({start, *grid, *bends, end})


def _both(history: History, second: float) -> Iterator[float]:
    """The temperature at an instant, from both sides where it makes a step."""
    seconds = history.seconds
    first = bisect_left(seconds, second)
    yield from history.celsius[first : bisect_right(seconds, second)]
    celsius = history.celsius_at(second)
    if celsius is not None:
        yield celsius


def _temperature(bar: Ribbon, celsius: list[float]) -> Iterator[Break]:
    low, high = bar.product.minimum_celsius, bar.product.maximum_celsius
    coldest, warmest = min(celsius, default=low), max(celsius, default=high)
    if low is not None and coldest is not None and coldest < low - _SAME:
        text = "Too cold: the room is at {air} then, {product} needs {limit}."
        yield _air(text, coldest, bar, low)
    if high is not None and warmest is not None and warmest > high + _SAME:
        text = "Too warm: the room is at {air} then, {product} bears {limit}."
        yield _air(text, warmest, bar, high)


def _air(text: str, celsius: float, bar: Ribbon, limit: float) -> Break:
    facts = {"air": Degrees(celsius), "limit": Degrees(limit)}
    return Break(rule=Rule.AIR, words=said(text, product=bar.product.name, **facts))


def _humidity(bar: Ribbon, history: History) -> Iterator[Break]:
    limit = bar.product.humidity_limit_pct
    if limit is None:
        return
    found = [history.humidity_at(s) for s in _seconds(history, bar.begins, bar.spread)]
    dampest = max((h for h in found if h is not None), default=0.0)
    if dampest > limit + _SAME:
        text = "Too damp: the air has {air} humidity then, {product} bears {limit}."
        facts = {"air": Share(dampest / _WHOLE), "limit": Share(limit / _WHOLE)}
        words = said(text, product=bar.product.name, **facts)
        yield Break(rule=Rule.AIR, words=words)


def _warming(bar: Ribbon, celsius: list[float]) -> Iterator[Break]:
    piece = bar.lane.piece
    if piece.below(bar.position) is not None or not piece.material.porous or not celsius:
        return
    rise, limit = max(celsius) - celsius[0], bar.lane.studio.settings.steady_celsius
    if rise > limit + _SAME:
        text = "Bare {material} while the room warms by {rise}: it would blow bubbles."
        words = said(text, material=kind_word(piece.material), rise=Step(rise))
        yield Break(rule=Rule.WARMING, words=words)


def _instant(second: float) -> datetime:
    return datetime.fromtimestamp(second, UTC)
