"""Spells: hours of one date in which a place is another than its weekly pattern says."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import translate
from studio_planner.science.air import AirError, dew_point, relative_humidity

if TYPE_CHECKING:
    from studio_planner.science.history import History

_LEAST_HUMIDITY = 1.0

Expected = tuple[float, float, float | None]
"""Second, °C and relative humidity in % of what is expected."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Spell:
    """From `start` to `end` (aware) a place is expected to be at `celsius`.

    A heater for a night, a window left open. Where `humidity_pct` is not given the air keeps
    the moisture that the pattern expects of it, and is drier for being warmer.
    """

    start: datetime
    end: datetime
    celsius: float
    humidity_pct: float | None = None

    def __post_init__(self) -> None:
        """Check ranges and the order of time."""
        rules = Rulebook(translate("nouns", "temperature for a time"))
        for name in ("start", "end"):
            rules.require(
                getattr(self, name).utcoffset() is not None,
                name,
                translate("rules", "give a time with a zone."),
            )
        rules.require(
            self.start.timestamp() < self.end.timestamp(),
            "end",
            translate("rules", "it ends before it begins."),
        )
        rules.between(self.celsius, -30, 80, "celsius")
        if self.humidity_pct is not None:
            rules.between(self.humidity_pct, 1, 100, "humidity_pct")
        rules.close()

    @property
    def span(self) -> tuple[float, float]:
        """From when to when [s since 1970 UTC]."""
        return self.start.timestamp(), self.end.timestamp()

    def over(self, expected: Expected) -> Expected:
        """What is expected at an instant of the spell, where it would be `expected` else."""
        second, air, humidity = expected
        given = self.humidity_pct
        return (
            second,
            self.celsius,
            _kept(air, self.celsius, humidity) if given is None else given,
        )


def in_order(spells: tuple[Spell, ...]) -> bool:
    """Whether spells are in the order of time, and none begins before the last has ended."""
    spans = [spell.span for spell in spells]
    return all(one[1] <= other[0] for one, other in pairwise(spans))


def with_spells(
    line: History, spells: tuple[Spell, ...], low: float, high: float
) -> list[Expected]:
    """What is expected from `low` to a later `high` [s]: a pattern's line, but for the spells.

    Where a spell begins or ends there is a step; `line` covers the whole stretch.
    """
    rows: list[Expected] = []
    done = low
    for spell in spells:
        begin, end = max(spell.span[0], low), min(spell.span[1], high)
        if begin >= end:
            continue
        rows += _rows(line, done, begin) if done < begin else []
        rows += [spell.over(row) for row in _rows(line, begin, end)]
        done = end
    return rows + (_rows(line, done, high) if done < high else [])


def _rows(line: History, low: float, high: float) -> list[Expected]:
    part = line.part(low, high)
    return list(zip(part.seconds, part.celsius, part.humidity, strict=True))


def _kept(air: float, celsius: float, humidity: float | None) -> float | None:
    """The humidity of air brought to another temperature: its dew point stays."""
    if humidity is None:
        return None
    try:
        damp = relative_humidity(celsius, min(dew_point(air, humidity), celsius))
    except AirError:
        return humidity
    return max(_LEAST_HUMIDITY, damp)
