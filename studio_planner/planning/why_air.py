"""Why the air of a place allows no pour: which limit of the product it never keeps."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import partial
from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.science.air import dew_point

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from studio_planner.craft.places import Place
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.chain_times import Means
    from studio_planner.planning.problem import Task
    from studio_planner.science.samples import History

    _Rule = Callable[[Sequence["_Look"]], str]

_STEP = 1800
_DAYS_LOOKED_AT = 28 * 86_400


@dataclass(frozen=True, slots=True)
class _Look:
    """The likely air at one instant, and whether somebody could work then."""

    celsius: float
    humidity: float | None
    staffed: bool

    @property
    def margin(self) -> float | None:
        """How far the air is above its dew point in °C."""
        if self.humidity is None:
            return None
        return self.celsius - dew_point(self.celsius, self.humidity)


def why_air(studio: Studio, means: Means, task: Task, place: str) -> str:
    """The limit that stops a coat, to follow its name.

    A limit that is never kept is named with how near the room comes; then one that is kept only
    while nobody can work; else all of them, which are never kept together.
    """
    home = next(one for one in studio.places if one.key == place)
    looks = list(_looks(studio, means, home))
    staffed = [look for look in looks if look.staffed]
    for rule in _rules(studio, task, home):
        words = rule(looks)
        if words:
            return words
    for rule in _rules(studio, task, home):
        words = rule(staffed)
        if words:
            return f"{words} while somebody can work"
    return (
        f"finds no time when {home.name} keeps every limit of {task.product.name} "
        "(temperature, humidity, dew point) for its whole block and somebody can work"
    )


def _looks(studio: Studio, means: Means, place: Place) -> Iterator[_Look]:
    until = min(means.end, means.now + _DAYS_LOOKED_AT)
    start, end = (datetime.fromtimestamp(second, UTC) for second in (means.now, until))
    history = place.history(studio.time_zone, start, end)
    seconds = [second for second in history.seconds if means.now <= second <= until]
    seconds += [float(second) for second in range(means.now, until, _STEP)]
    for second in seconds:
        celsius = history.celsius_at(second)
        if celsius is not None:
            staffed = means.shop.somebody(int(second), int(second) + 1) is not None
            yield _Look(celsius, _humidity(history, second), staffed)


def _humidity(history: History, second: float) -> float | None:
    """The humidity straight between two samples; None where either is not known."""
    at = bisect_right(history.seconds, second)
    low, high = max(0, at - 1), min(at, len(history.seconds) - 1)
    one, other = history.humidity[low], history.humidity[high]
    if one is None or other is None:
        return None
    length = history.seconds[high] - history.seconds[low]
    share = 0.0 if length <= 0 else (second - history.seconds[low]) / length
    return one + (other - one) * share


def _rules(studio: Studio, task: Task, place: Place) -> list[_Rule]:
    """One rule for each limit; its words are empty where some look keeps it."""
    product, name = task.product, place.name
    rules: list[_Rule] = []
    if product.minimum_celsius is not None:
        rules.append(partial(_cold, product, product.minimum_celsius, name))
    if product.maximum_celsius is not None:
        rules.append(partial(_hot, product, product.maximum_celsius, name))
    if product.kind is not ProductKind.LEAF:
        if product.humidity_limit_pct is not None:
            rules.append(partial(_damp, product, product.humidity_limit_pct, name))
        rules.append(partial(_near_dew, studio.settings.dew_margin_celsius, name))
    return rules


def _cold(product: Product, low: float, name: str, looks: Sequence[_Look]) -> str:
    warmest = max((look.celsius for look in looks), default=low)
    if warmest >= low:
        return ""
    return (
        f"needs {low:g} °C, the minimum of {product.name}, and {name} never gets warmer than "
        f"{warmest:.1f} °C"
    )


def _hot(product: Product, high: float, name: str, looks: Sequence[_Look]) -> str:
    coldest = min((look.celsius for look in looks), default=high)
    if coldest <= high:
        return ""
    return (
        f"needs {high:g} °C at most, the maximum of {product.name}, and {name} never gets "
        f"colder than {coldest:.1f} °C"
    )


def _damp(product: Product, most: float, name: str, looks: Sequence[_Look]) -> str:
    # Where the humidity is unknown the limit is neither kept nor broken.
    driest = min((look.humidity or 0.0 for look in looks), default=most)
    if driest <= most:
        return ""
    return (
        f"needs {most:g} % of humidity at most, the limit of {product.name}, and {name} never "
        f"gets drier than {driest:.0f} %"
    )


def _near_dew(least: float, name: str, looks: Sequence[_Look]) -> str:
    margins = [look.margin for look in looks]
    known = [margin for margin in margins if margin is not None]
    if len(known) < len(margins) or max(known, default=least) >= least:
        return ""
    return (
        f"needs a surface at least {least:g} °C above the dew point, and {name} never gets "
        f"more than {max(known):.1f} °C above it"
    )
