"""Spots: a piece fits where it stands, alone, and stays there until it can be handled."""

from __future__ import annotations

import math
from itertools import groupby
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.planning.checking.evidence import SLACK_SECONDS, Laid, Lane
from studio_planner.planning.checking.faces import skipped
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.planning.checking.reading import Reading


class _Stay(NamedTuple):
    """A piece on a spot from its pour, or since it was carried there, until it goes [s].

    It goes when it can be handled, with the next coat, or is carried somewhere else.
    """

    spot: str
    start: float
    end: float
    laid: Laid


def broken_spots(reading: Reading) -> Iterator[Finding]:
    """Spots that are too small or taken, and pieces moved before they can be handled."""
    stays: list[_Stay] = []
    for lane in reading.lanes.values():
        yield from _moved_too_early(reading, lane)
        stays += _stays(lane)
    yield from _too_small(reading)
    stays.sort(key=lambda stay: (stay.spot, stay.start))
    for _, on_spot in groupby(stays, key=lambda stay: stay.spot):
        yield from _taken(reading, list(on_spot))


def _stays(lane: Lane) -> Iterator[_Stay]:
    for laid in lane.laid:
        freed, after = lane.freed[laid.index], lane.next_in_time(laid)
        end = math.inf if freed is None else freed
        if after is not None:
            end = min(end, after.start)
        stands = lane.stands[laid.index]
        leaves = [*(stand.since for stand in stands[1:]), end]
        for stand, left in zip(stands, leaves, strict=True):
            if stand is stands[0] or stand.since < end:
                yield _Stay(stand.spot.key, stand.since, min(left, end), laid)


def _moved_too_early(reading: Reading, lane: Lane) -> Iterator[Finding]:
    for laid in lane.laid:
        freed, after = lane.freed[laid.index], lane.next_in_time(laid)
        if after is None or after.planned.poured:
            yield from _never_freed(reading, lane, laid, freed)
            continue
        early = freed is None or after.start < freed - SLACK_SECONDS
        there = lane.stands[laid.index][-1].spot
        if early and after.planned.spot != there.key:
            sentence = (
                f"is moved from {there.name} to {after.spot.name} "
                f"{reading.local(after.start)}, but the {laid.name} can be handled from "
            )
            yield reading.about(Rule.SPOT, after, sentence + reading.local(freed))
        elif early:
            yield from _never_freed(reading, lane, laid, freed)


def _never_freed(
    reading: Reading, lane: Lane, laid: Laid, freed: float | None
) -> Iterator[Finding]:
    excused = laid.planned.poured or skipped(lane, laid, Stage.HANDLE)
    if freed is None and not excused:
        sentence = f"can never be handled within this record, so {laid.spot.name} stays taken"
        yield reading.about(Rule.SPOT, laid, sentence)


def _too_small(reading: Reading) -> Iterator[Finding]:
    for laid in reading.laid:
        piece, spot = laid.piece, laid.spot
        length, width = piece.footprint
        height = piece.body_mm + piece.cover_mm
        if not laid.planned.poured and not spot.holds((length, width), height):
            sentence = (
                f"needs {length:g} x {width:g} mm and {height:g} mm of height, more than "
                f"{spot.name} has"
            )
            yield reading.about(Rule.SPOT, laid, sentence)


def _taken(reading: Reading, stays: list[_Stay]) -> Iterator[Finding]:
    there: list[_Stay] = []
    for stay in stays:
        there = [other for other in there if other.end > stay.start + SLACK_SECONDS]
        for other in there:
            if other.laid.piece is not stay.laid.piece and not _both_poured(stay, other):
                yield _two_on_one(reading, stay, other)
        there.append(stay)


def _two_on_one(reading: Reading, stay: _Stay, other: _Stay) -> Finding:
    mine, theirs = (other, stay) if stay.laid.planned.poured else (stay, other)
    until = "for good" if theirs.end == math.inf else f"till {reading.local(theirs.end)}"
    sentence = f"{mine.laid.spot.name} is taken by {theirs.laid.piece.name} {until}"
    return reading.about(Rule.SPOT, mine.laid, sentence)


def _both_poured(one: _Stay, other: _Stay) -> bool:
    return one.laid.planned.poured and other.laid.planned.poured
