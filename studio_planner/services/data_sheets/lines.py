"""Figures in lines of text, such as "Tack-free 8 h at 15 °C, 4 h at 25 °C"."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import marked, translate
from studio_planner.services.data_sheets.findings import (
    NO_TEMPERATURE,
    Finding,
    Unread,
    window_findings,
)
from studio_planner.services.data_sheets.marks import masses_in, stretches_in, warmths_in
from studio_planner.services.data_sheets.sentences import sentences_of
from studio_planner.services.data_sheets.words import stages_named

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.services.data_sheets.marks import Mark, Mass, Stretch, Warmth
    from studio_planner.services.data_sheets.times import PrintedTime
    from studio_planner.services.data_sheets.words import Named

_NO_STAGE = marked("sheets", "it names no stage that is known here.")
_NO_TIME = marked("sheets", "it has no time with a unit, such as 4 h or 30 min.")
_SPAN = marked(
    "sheets", "its times hold for a range of temperatures; enter the one that is meant by hand."
)
_UNEVEN = marked(
    "sheets", "its times, masses and temperatures do not pair up; enter them by hand."
)


class _Odd(Exception):  # noqa: N818 - never leaves this module
    """A part of a line that cannot be understood, with the reason."""


@dataclass(frozen=True, slots=True)
class _Part:
    """What a line says of one stage."""

    named: Named
    times: list[Stretch]
    warmths: list[Warmth]
    masses: list[Mass]


def read_lines(
    lines: Sequence[str], celsius: float | None
) -> tuple[list[Finding], list[Unread]]:
    """Read sentence after sentence; a bare temperature holds for those below it."""
    findings: list[Finding] = []
    unread: list[Unread] = []
    numbered = ((n, one) for n, line in enumerate(lines, 1) for one in sentences_of(line))
    for number, line in numbered:
        if not line.strip():
            continue
        warmths = warmths_in(line)
        if len(warmths) == 1 and not warmths[0].span and not _says_more(line, warmths):
            celsius = warmths[0].celsius
            continue
        found, reasons = _read_line(number, line.strip(), celsius)
        findings += found
        unread += [Unread(number, line.strip(), reason) for reason in reasons]
    return findings, unread


def _says_more(line: str, warmths: list[Warmth]) -> bool:
    return bool(stages_named(line) or stretches_in(line, warmths))


def _read_line(
    number: int, line: str, celsius: float | None
) -> tuple[list[Finding], list[str]]:
    parts = _parts(line)
    if not parts:
        return [], [translate("sheets", _NO_STAGE)]
    findings: list[Finding] = []
    reasons: list[str] = []
    for part in parts:
        try:
            findings += _of_part(number, line, part, celsius)
        except _Odd as odd:
            reasons.append(str(odd))
    return findings, list(dict.fromkeys(reasons))


def _parts(line: str) -> list[_Part]:
    """Cut a line at its stages; what stands before the first belongs to it too."""
    named = stages_named(line)
    warmths, masses = warmths_in(line), masses_in(line)
    times = stretches_in(line, [*warmths, *masses])
    cuts = [0, *(one.begin for one in named[1:]), len(line)]
    return [
        _Part(
            one,
            _between(times, begin, end),
            _between(warmths, begin, end) or (warmths if len(warmths) == 1 else []),
            _between(masses, begin, end),
        )
        for one, begin, end in zip(named, cuts, cuts[1:], strict=False)
    ]


def _between(marks: Iterable[Mark], begin: int, end: int) -> list:  # type: ignore[type-arg]
    return [mark for mark in marks if begin <= mark.begin < end]


def _of_part(number: int, line: str, part: _Part, celsius: float | None) -> list[Finding]:
    times = _times(part)
    if any(warmth.span for warmth in part.warmths):
        raise _Odd(translate("sheets", _SPAN))
    if part.warmths:
        celsiuses = [warmth.celsius for warmth in part.warmths]
    elif celsius is not None:
        celsiuses = [celsius]
    else:
        raise _Odd(translate("sheets", NO_TEMPERATURE))
    if part.named.both:
        return _of_window(number, line, part, celsiuses, times)
    grams: list[float | None] = [mass.grams for mass in part.masses] or [None]
    rows = _paired(celsiuses, grams, times)
    stage = part.named.stages[0]
    return [Finding(number, line, stage, at, time, mass) for at, mass, time in rows]


def _times(part: _Part) -> list[PrintedTime]:
    wrong = next((stretch.wrong for stretch in part.times if stretch.wrong), "")
    if wrong:
        raise _Odd(wrong)
    times = [stretch.time for stretch in part.times if stretch.time is not None]
    if not times:
        raise _Odd(translate("sheets", _NO_TIME))
    return times


def _of_window(
    number: int, line: str, part: _Part, celsiuses: list[float], times: list[PrintedTime]
) -> list[Finding]:
    each, left = divmod(len(times), len(celsiuses))
    if left or not 1 <= each <= 2:  # noqa: PLR2004 - a window has two ends
        raise _Odd(translate("sheets", _UNEVEN))
    return [
        finding
        for index, at in enumerate(celsiuses)
        for finding in window_findings(
            (number, line), part.named, at, times[index * each : (index + 1) * each]
        )
    ]


def _paired(
    celsiuses: list[float], grams: Sequence[float | None], times: list[PrintedTime]
) -> list[tuple[float, float | None, PrintedTime]]:
    """Times with their temperatures and masses: one of them for all, or as many as times."""
    count = len(times)
    if len(celsiuses) not in {1, count} or len(grams) not in {1, count}:
        raise _Odd(translate("sheets", _UNEVEN))
    warm = celsiuses * count if len(celsiuses) == 1 else celsiuses
    heavy = list(grams) * count if len(grams) == 1 else list(grams)
    if count > 1 and len(set(zip(warm, heavy, strict=True))) < count:
        raise _Odd(translate("sheets", _UNEVEN))
    return list(zip(warm, heavy, times, strict=True))
