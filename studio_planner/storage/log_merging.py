"""Gaps in a log, and a new log laid over the one that a place already has."""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from itertools import pairwise
from statistics import median
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.places import Reading

_GAP_STEPS = 3
"""From so many usual steps on, a stretch without readings is a gap (our choice)."""

_AT_ONCE = timedelta(0)


class Overlap(StrEnum):
    """Which readings stay where a new log and the present one cover the same stretch."""

    EXISTING_WINS = "the present log stays"
    NEW_WINS = "the new log replaces it"


@dataclass(frozen=True, slots=True, kw_only=True)
class Gap:
    """A stretch without readings: the last reading before and the first after it."""

    start: datetime
    end: datetime


def gaps_in(readings: Sequence[Reading]) -> tuple[Gap, ...]:
    """Stretches longer than three usual steps of the log."""
    longest = _longest_step(readings)
    return tuple(
        Gap(start=before.when, end=after.when)
        for before, after in pairwise(readings)
        if after.when - before.when > longest
    )


def overlapping(existing: Sequence[Reading], new: Sequence[Reading]) -> int:
    """How many new readings lie where the existing log has no gap."""
    return len(new) - len(_outside(new, existing))


def merged_log(
    existing: Sequence[Reading], new: Sequence[Reading], overlap: Overlap
) -> tuple[Reading, ...]:
    """Both logs as one, in order; in a stretch that both cover only one of them stays.

    Mixing two loggers there would make the room swing between them.
    """
    if overlap is Overlap.EXISTING_WINS:
        kept = [*existing, *_outside(new, existing)]
    else:
        kept = [*_outside(existing, new), *new]
    return tuple(sorted(kept, key=lambda reading: reading.when))


def _outside(readings: Sequence[Reading], log: Sequence[Reading]) -> list[Reading]:
    if not log:
        return list(readings)
    whens = [reading.when for reading in log]
    longest = _longest_step(log)
    return [reading for reading in readings if not _covered(reading.when, whens, longest)]


def _covered(when: datetime, whens: Sequence[datetime], longest: timedelta) -> bool:
    after = bisect_left(whens, when)
    if after < len(whens) and whens[after] == when:
        return True
    return 0 < after < len(whens) and whens[after] - whens[after - 1] <= longest


def _longest_step(readings: Sequence[Reading]) -> timedelta:
    steps = [(b.when - a.when).total_seconds() for a, b in pairwise(readings)]
    return timedelta(seconds=_GAP_STEPS * median(steps)) if steps else _AT_ONCE
