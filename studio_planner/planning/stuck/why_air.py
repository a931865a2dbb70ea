"""Why the air of a place allows no pour: which limit of the product it never keeps."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import Counter
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import partial
from typing import TYPE_CHECKING

from studio_planner.craft.degree_words import degree_step_said, degrees_said
from studio_planner.craft.products import ProductKind
from studio_planner.craft.saying import SILENT, Saying, saying
from studio_planner.craft.timing import Timing
from studio_planner.craft.tongue import marked
from studio_planner.science.air import dew_point

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.places import Place
    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Units
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Task
    from studio_planner.planning.spans import Stretches
    from studio_planner.science.samples import History

    _Rule = Callable[[Sequence["_Look"]], Saying]

_STEP = 1800
_HOUR = 3600
_DAY = 86_400
_DAYS_LOOKED_AT = 28 * _DAY


@dataclass(frozen=True, slots=True)
class _Look:
    """The likely air and surface at one instant (seconds), and whether somebody could work."""

    second: float
    celsius: float
    surface: float
    humidity: float | None
    staffed: bool

    @property
    def margin(self) -> float | None:
        """How far the surface is above the dew point in °C."""
        if self.humidity is None:
            return None
        return self.surface - dew_point(self.celsius, self.humidity)


@dataclass(frozen=True, slots=True)
class Asked:
    """What is asked of the air: a coat on a material in a place, when it has hands."""

    task: Task
    material: Material
    place: str
    handy: Stretches


def why_air(studio: Studio, means: Means, asked: Asked) -> Saying:
    """The limit that stops a coat and what to do, to follow its name.

    A limit that is never kept is named with how near the room comes; then one that is kept
    only while nobody can work; then the one that is broken most often when somebody could pour.
    """
    home = next(one for one in studio.places if one.key == asked.place)
    looks = list(_looks(studio, means, asked))
    staffed = [look for look in looks if look.staffed]
    for rule, advice in _rules(studio, asked.task, home):
        words = rule(looks)
        if words:
            return saying("stuck", "{words}; {advice}", words=words, advice=advice)
    for rule, advice in _rules(studio, asked.task, home):
        words = rule(staffed)
        if words:
            text = marked("stuck", "{words} while somebody can work; {advice}")
            return saying("stuck", text, words=words, advice=advice)
    worst = _most_broken(studio, asked, looks)
    if worst:
        return saying(
            "stuck",
            "finds no time: whenever somebody can work, {home} breaks a limit before the "
            "pour is safe, most often {worst}; keep the room in its limits, or add hours at "
            "another time of day.",
            home=home.name,
            worst=worst,
        )
    return saying(
        "stuck",
        "finds no time when {home} keeps every limit of {product} (temperature, humidity, "
        "dew point) for its whole block and somebody can work; keep the room in its limits, or "
        "add hours at another time of day.",
        home=home.name,
        product=asked.task.product.name,
    )


def _looks(studio: Studio, means: Means, asked: Asked) -> Iterator[_Look]:
    until = min(means.end, means.now + _DAYS_LOOKED_AT)
    span = (datetime.fromtimestamp(second, UTC) for second in (means.now - _DAY, until))
    timing = Timing(studio, *span)
    history = timing.history(asked.place)
    surface = timing.surface(asked.place, asked.material)
    seconds = {second for second in history.seconds if means.now <= second <= until}
    seconds |= {float(second) for second in range(means.now, until, _STEP)}
    for second in sorted(seconds):
        celsius, film = history.celsius_at(second), surface.celsius_at(second)
        if celsius is not None and film is not None:
            staffed = means.shop.somebody(int(second), int(second) + 1) is not None
            yield _Look(second, celsius, film, _humidity(history, second), staffed)


def _most_broken(studio: Studio, asked: Asked, looks: Sequence[_Look]) -> Saying:
    """The limit that most starts with hands break in their block, or for dew hours after it."""
    task, settings = asked.task, studio.settings
    seconds = [look.second for look in looks]
    broken: Counter[Saying] = Counter()
    starts = [s for low, high in asked.handy for s in range(low, high + 1, _HOUR)]
    for start in (start for start in starts if start < seconds[-1]):
        first = bisect_left(seconds, start)
        last = bisect_right(seconds, start + task.block)
        dry = bisect_right(seconds, start + task.block + settings.dew_hours * _HOUR)
        broken.update(_limits_broken(studio.units, task.product, looks[first:last]))
        if task.product.kind is not ProductKind.LEAF:
            least = settings.dew_margin_celsius
            margins = [look.margin for look in looks[first:dry]]
            if any(margin is not None and margin < least for margin in margins):
                broken[
                    saying(
                        "stuck",
                        "the {least} above the dew point, which have to hold for "
                        "{dew_hours:g} h after it",
                        least=degree_step_said(least, studio.units),
                        dew_hours=settings.dew_hours,
                    )
                ] += 1
    return broken.most_common(1)[0][0] if broken else SILENT


def _limits_broken(units: Units, product: Product, looks: Sequence[_Look]) -> Iterator[Saying]:
    low, high = product.minimum_celsius, product.maximum_celsius
    damp = product.humidity_limit_pct
    if low is not None and any(look.celsius < low for look in looks):
        text = marked("stuck", "the minimum of {product}, {low}")
        yield saying("stuck", text, product=product.name, low=degrees_said(low, units))
    if high is not None and any(look.celsius > high for look in looks):
        text = marked("stuck", "the maximum of {product}, {high}")
        yield saying("stuck", text, product=product.name, high=degrees_said(high, units))
    if damp is None or product.kind is ProductKind.LEAF:
        return
    if any(look.humidity is not None and look.humidity > damp for look in looks):
        yield saying(
            "stuck",
            "the humidity limit of {product}, {damp:g} %",
            product=product.name,
            damp=damp,
        )


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


def _rules(studio: Studio, task: Task, place: Place) -> list[tuple[_Rule, Saying]]:
    """One rule for each limit, and what to do; its words are empty where some look keeps it."""
    product, name, units = task.product, place.name, studio.units
    low, high, damp = (
        product.minimum_celsius,
        product.maximum_celsius,
        product.humidity_limit_pct,
    )
    rules: list[tuple[_Rule, Saying]] = []
    if low is not None:
        advice = saying("stuck", "warm it, or choose another product.")
        rules.append((partial(_cold, units, product, low, name), advice))
    if high is not None:
        advice = saying("stuck", "cool it, or choose another product.")
        rules.append((partial(_hot, units, product, high, name), advice))
    if product.kind is not ProductKind.LEAF:
        if damp is not None:
            advice = saying("stuck", "dry its air, or choose another product.")
            rules.append((partial(_damp, product, damp, name), advice))
        advice = saying("stuck", "warm it, or dry its air.")
        least = studio.settings.dew_margin_celsius
        rules.append((partial(_near_dew, units, least, name), advice))
    return rules


def _cold(
    units: Units, product: Product, low: float, name: str, looks: Sequence[_Look]
) -> Saying:
    warmest = max((look.celsius for look in looks), default=low)
    if warmest >= low:
        return SILENT
    return saying(
        "stuck",
        "needs {low}, the minimum of {product}, and {name} never gets warmer than {warmest}",
        low=degrees_said(low, units),
        product=product.name,
        name=name,
        warmest=degrees_said(warmest, units),
    )


def _hot(
    units: Units, product: Product, high: float, name: str, looks: Sequence[_Look]
) -> Saying:
    coldest = min((look.celsius for look in looks), default=high)
    if coldest <= high:
        return SILENT
    return saying(
        "stuck",
        "needs {high} at most, the maximum of {product}, and {name} never gets colder than "
        "{coldest}",
        high=degrees_said(high, units),
        product=product.name,
        name=name,
        coldest=degrees_said(coldest, units),
    )


def _damp(product: Product, most: float, name: str, looks: Sequence[_Look]) -> Saying:
    # Where the humidity is unknown the limit is neither kept nor broken.
    driest = min((look.humidity or 0.0 for look in looks), default=most)
    if driest <= most:
        return SILENT
    return saying(
        "stuck",
        "needs {most:g} % of humidity at most, the limit of {product}, and {name} never gets "
        "drier than {driest:.0f} %",
        most=most,
        product=product.name,
        name=name,
        driest=driest,
    )


def _near_dew(units: Units, least: float, name: str, looks: Sequence[_Look]) -> Saying:
    margins = [look.margin for look in looks]
    known = [margin for margin in margins if margin is not None]
    if len(known) < len(margins) or max(known, default=least) >= least:
        return SILENT
    return saying(
        "stuck",
        "needs a surface at least {least} above the dew point, and {name} never gets more "
        "than {known} above it",
        least=degree_step_said(least, units),
        name=name,
        known=degree_step_said(max(known), units),
    )
