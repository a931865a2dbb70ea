"""The air at a pour: temperature, humidity, the dew point, and bare wood that must not warm."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.degree_words import degree_step_said, degrees_said
from studio_planner.craft.plans import Air
from studio_planner.planning.checking.air import Moment, dew_margin, moments
from studio_planner.planning.checking.findings import Finding, Rule

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.planning.checking.evidence import Laid
    from studio_planner.planning.checking.reading import Reading

_SAME_CELSIUS = 0.01
_MARGIN_CELSIUS = 0.05
"""How far two integrations of a surface's lag may differ and still agree."""
_SAME_PCT = 0.01
_LOOK_EVERY_SECONDS = 300.0
_SECONDS_PER_HOUR = 3600.0


def broken_air(reading: Reading) -> Iterator[Finding]:
    """Pours in air that is too cold, too warm, too damp, or where dew may settle."""
    for laid in reading.laid:
        if not laid.planned.poured:
            air = _air_of(reading, laid)
            yield from _broken_temperature(reading, laid, air)
            if not laid.leaf:
                yield from _broken_humidity(reading, laid, air)
                yield from _broken_margin(reading, laid)
            yield from _warming_wood(reading, laid, air)


def unknown_air(reading: Reading) -> Iterator[Finding]:
    """Warnings: pours whose distance from the dew point nobody knows."""
    for laid in reading.laid:
        if not laid.planned.poured and laid.planned.air is Air.UNKNOWN:
            sentence = "the room's humidity is not known, so neither is its dew point"
            yield reading.about(Rule.AIR_UNKNOWN, laid, sentence)


def _air_of(reading: Reading, laid: Laid) -> list[Moment]:
    history = reading.clocks.history(laid.place.key)
    return list(moments(history, laid.start, laid.end, _LOOK_EVERY_SECONDS))


def _broken_temperature(reading: Reading, laid: Laid, air: list[Moment]) -> Iterator[Finding]:
    low, high = laid.product.minimum_celsius, laid.product.maximum_celsius
    units = reading.studio.units
    coldest = min((now.celsius for now in air), default=low)
    warmest = max((now.celsius for now in air), default=high)
    if low is not None and coldest is not None and coldest < low - _SAME_CELSIUS:
        limit = f"{laid.product.name} needs {degrees_said(low, units)}"
        poured = f"is poured {reading.local(laid.start)} at {degrees_said(coldest, units)}"
        yield reading.about(Rule.AIR, laid, f"{poured}, but {limit}")
    if high is not None and warmest is not None and warmest > high + _SAME_CELSIUS:
        limit = f"{laid.product.name} bears {degrees_said(high, units)}"
        poured = f"is poured {reading.local(laid.start)} at {degrees_said(warmest, units)}"
        yield reading.about(Rule.AIR, laid, f"{poured}, but {limit}")


def _broken_humidity(reading: Reading, laid: Laid, air: list[Moment]) -> Iterator[Finding]:
    limit = laid.product.humidity_limit_pct
    dampest = max((now.humidity for now in air if now.humidity is not None), default=0.0)
    if limit is not None and dampest > limit + _SAME_PCT:
        sentence = f"is poured {reading.local(laid.start)} at {dampest:.0f} % humidity, but "
        limits = f"{laid.product.name} bears {limit:g} %"
        yield reading.about(Rule.AIR, laid, sentence + limits)


def _broken_margin(reading: Reading, laid: Laid) -> Iterator[Finding]:
    settings = reading.studio.settings
    history = reading.clocks.history(laid.place.key)
    lag = settings.surface_lag_hours.get(laid.piece.material, 0.0)
    end = laid.end + settings.dew_hours * _SECONDS_PER_HOUR
    margin = dew_margin(history, lag, laid.start, end)
    needed = settings.dew_margin_celsius
    if margin.least < needed - _MARGIN_CELSIUS:
        units = reading.studio.units
        sentence = (
            f"its surface is only {degree_step_said(margin.least, units)} above the dew point "
            f"{reading.local(margin.second)}, not {degree_step_said(needed, units)}"
        )
        yield reading.about(Rule.AIR, laid, sentence)
    rightly = Air.KEPT if margin.known else Air.UNKNOWN
    if laid.planned.air is not rightly:
        known = "known" if margin.known else "not known"
        sentence = f"is marked {laid.planned.air}, but the humidity is {known}"
        yield reading.about(Rule.AIR, laid, sentence)


def _warming_wood(reading: Reading, laid: Laid, air: list[Moment]) -> Iterator[Finding]:
    if laid.piece.below(laid.index) is not None or not laid.piece.material.porous:
        return
    rise = max((now.celsius - air[0].celsius for now in air), default=0.0)
    limit = reading.studio.settings.steady_celsius
    if rise > limit + _SAME_CELSIUS:
        units = reading.studio.units
        sentence = (
            f"the room warms by {degree_step_said(rise, units)} during the pour, so the bare "
            f"{laid.piece.material} blows bubbles; {degree_step_said(limit, units)} is allowed"
        )
        yield reading.about(Rule.STEADY, laid, sentence)
