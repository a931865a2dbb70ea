"""Temperatures, masses and times inside a line of a data sheet, with where they stand."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.science.units import celsius_from, grams_from
from studio_planner.services.data_sheets.times import FOUND, HAS_UNIT, PrintedTime, printed_time

if TYPE_CHECKING:
    from collections.abc import Iterable

_NUMBER = r"[-−]?\d+(?:[.,]\d+)?"  # noqa: RUF001 - a minus as it is printed
_DEGREE = r"(?:°|º|deg(?:rees?)?\.?)\s*"
_TEMPERATURE = re.compile(
    rf"(?:(?P<low>{_NUMBER})\s*(?:{_DEGREE}[CF]?)?\s*(?:-|–|to)\s*)?"  # noqa: RUF001
    rf"(?P<number>{_NUMBER})\s*(?:{_DEGREE}(?P<unit>[CF])?|(?P<bare>[CF]))(?![\w])",
    re.IGNORECASE,
)
_MASS = re.compile(r"(\d+(?:[.,]\d+)?)\s*(kg|g|oz|lb)\b(?!\s*/)", re.IGNORECASE)
_ONE_SIDED = re.compile(r"[<>≤≥]\s*$|\b(?:more|less) than\s*$|\bover\s*$", re.IGNORECASE)
_SAME_CELSIUS = 1.0


@dataclass(frozen=True, slots=True)
class Mark:
    """Something with a number, from one letter of a line to another."""

    begin: int
    end: int


@dataclass(frozen=True, slots=True)
class Warmth(Mark):
    """A temperature [°C]; `span` is true where a range of temperatures is printed."""

    celsius: float
    span: bool = False


@dataclass(frozen=True, slots=True)
class Mass(Mark):
    """A mixed mass [g]."""

    grams: float


@dataclass(frozen=True, slots=True)
class Stretch(Mark):
    """A time; `wrong` says in a sentence why it cannot be used."""

    time: PrintedTime | None
    wrong: str = ""


def warmths_in(line: str) -> list[Warmth]:
    """The temperatures of a line; one printed in °C and again in °F counts once.

    Examples
    --------
    >>> [round(warmth.celsius) for warmth in warmths_in("at 15 °C / 59 °F and 77°F")]
    [15, 25]
    """
    found: list[Warmth] = []
    for match in _TEMPERATURE.finditer(line):
        unit = (match["unit"] or match["bare"] or "C").upper()
        celsius = celsius_from(_number(match["number"]), unit)
        beside = found and _again(line[found[-1].end : match.start()], found[-1], celsius)
        if not beside:
            found.append(Warmth(match.start(), match.end(), celsius, match["low"] is not None))
    return found


def _again(between: str, last: Warmth, celsius: float) -> bool:
    return not re.sub(r"[\s/(,]", "", between) and abs(last.celsius - celsius) < _SAME_CELSIUS


def masses_in(line: str) -> list[Mass]:
    """The masses of a line.

    Examples
    --------
    >>> masses_in("Pot life (100 g, 23 °C): 40 min")[0].grams
    100.0
    """
    return [
        Mass(m.start(), m.end(), grams_from(_number(m[1]), m[2].lower()))
        for m in _MASS.finditer(line)
    ]


def stretches_in(line: str, taken: Iterable[Mark]) -> list[Stretch]:
    """The times of a line, each with its unit, apart from what is `taken` already.

    Examples
    --------
    >>> line = "Recoat window 4-6 h to 24 h"
    >>> [line[found.begin : found.end].strip() for found in stretches_in(line, ())]
    ['4-6 h', '24 h']
    """
    blank = line
    for mark in taken:
        blank = blank[: mark.begin] + " " * (mark.end - mark.begin) + blank[mark.end :]
    return [
        _stretch(match, blank) for match in FOUND.finditer(blank) if HAS_UNIT.search(match[0])
    ]


def _stretch(match: re.Match[str], line: str) -> Stretch:
    before = _ONE_SIDED.search(line[: match.start()])
    text = (before[0] if before else "") + match[0].strip()
    try:
        return Stretch(match.start(), match.end(), printed_time(text))
    except ValueError as error:
        return Stretch(match.start(), match.end(), None, str(error))


def _number(text: str) -> float:
    return float(text.replace(",", ".").replace("−", "-"))  # noqa: RUF001 - likewise
