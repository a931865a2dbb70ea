"""What a coat may choose from: alike spots, alike pairs of hands, and the starts they leave."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import CoatKind
from studio_planner.planning.spans import (
    Stretches,
    common,
    grid_down,
    grid_up,
    outside,
    united,
)

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.exact.grid import Grid
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Task


@dataclass(frozen=True, slots=True)
class AlikeSpots:
    """Spots of one place that hold the same pieces: it does not matter which one is used."""

    place: str
    spots: tuple[str, ...]
    pieces: frozenset[str]


@dataclass(frozen=True, slots=True)
class AlikeHands:
    """People with the same working hours: who of them does a thing makes no difference."""

    people: tuple[str, ...]
    hours: tuple[tuple[int, int], ...]


def alike_spots(studio: Studio) -> tuple[AlikeSpots, ...]:
    """All spots of a studio, the alike ones together."""
    groups: dict[tuple[str, frozenset[str]], list[str]] = {}
    for place in studio.places:
        for spot in place.spots:
            fitting = frozenset(
                piece.key
                for piece in studio.pieces
                if spot.holds(piece.footprint, piece.body_mm + piece.cover_mm)
            )
            groups.setdefault((place.key, fitting), []).append(spot.key)
    return tuple(
        AlikeSpots(place, tuple(spots), pieces) for (place, pieces), spots in groups.items()
    )


def alike_hands(means: Means) -> tuple[AlikeHands, ...]:
    """All people of a studio, those with the same hours together."""
    groups: dict[tuple[tuple[int, int], ...], list[str]] = {}
    for key, free in means.shop.hands.items():
        groups.setdefault(tuple(free.from_(means.now)), []).append(key)
    return tuple(AlikeHands(tuple(people), hours) for hours, people in groups.items())


class Choices:
    """The starts that hours, air and the time looked at leave to a coat; found once each."""

    def __init__(self, studio: Studio, means: Means, grid: Grid) -> None:
        """Look at a studio through the means of one plan."""
        self.means = means
        self.grid = grid
        self.spots = alike_spots(studio)
        self.hands = alike_hands(means)
        self._open: dict[tuple[int, int, int], Stretches] = {}
        self._starts: dict[tuple[object, ...], Stretches] = {}

    def starts(
        self, task: Task, material: Material, place: str, hands: AlikeHands, length: int
    ) -> Stretches:
        """Slots in which a block of `length` seconds may start there, with these hands."""
        whom = (hands.people, task.lead, length)
        pinned = task.pinned_from(self.means.now)
        settled = self.means.settled(task)
        key = (task.product.key, task.bare_porous, material, place, pinned, settled, *whom)
        if key not in self._starts:
            seconds = self.working(hands, task.lead, length)
            seconds = common([(grid_up(settled), grid_down(self.means.until))], seconds)
            if pinned is not None:
                seconds = common([(pinned, pinned)], seconds)
            seconds = self._in_good_air(task, material, place, length, seconds)
            self._starts[key] = self.grid.slots(seconds)
        return self._starts[key]

    def working(self, hands: AlikeHands, lead: int, length: int) -> Stretches:
        """Instants at which somebody may start something that lasts so long."""
        key = (self.hands.index(hands), lead, length)
        if key not in self._open:
            now, until = self.means.now, self.means.until
            ranges = [(grid_up(now + lead), grid_down(until))]
            spans = (
                (grid_up(start + lead), grid_down(end - length))
                for start, end in hands.hours
                if end - start >= lead + length
            )
            self._open[key] = common(united(spans), ranges)
        return self._open[key]

    def for_steps(self, hands: AlikeHands, length: int) -> Stretches:
        """Slots in which sanding or packing of `length` seconds may start, to the very end."""
        now, end = self.means.now, self.means.end
        spans = (
            (grid_up(max(a, now)), grid_down(min(b, end) - length)) for a, b in hands.hours
        )
        return self.grid.slots(united(spans))

    def awake(self, length: int) -> Stretches:
        """Slots in which somebody is awake for `length` seconds."""
        spans = ((grid_up(a), grid_down(b - length)) for a, b, _ in self.means.shop.awake)
        return self.grid.slots(united(spans))

    def _in_good_air(
        self, task: Task, material: Material, place: str, length: int, found: Stretches
    ) -> Stretches:
        air = self.means.air
        lows, highs = air.holes(place, task.product, material, length)
        found = outside(found, [(int(a), int(b) + 1) for a, b in zip(lows, highs, strict=True)])
        if task.bare_porous and found:
            rising = air.rising(place, length, found[0][0], found[-1][1])
            found = outside(found, rising)
        return found


def is_wet(task: Task) -> bool:
    """Whether a coat is wet on its spot: leaf is not."""
    return task.coat.kind is not CoatKind.LEAF


def clipped(stretches: Iterable[tuple[int, int]], low: int, high: int) -> Stretches:
    """What of some slots lies between two, both inside."""
    spans = ((max(a, low), min(b, high)) for a, b in stretches)
    return [(a, b) for a, b in spans if a <= b]
