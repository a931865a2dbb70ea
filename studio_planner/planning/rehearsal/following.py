"""A maker follows a plan through simulated weeks, all weeks at once.

The rule: begin each thing at its planned time, late as makers are, with the hands there are,
on a spot that is free. Where the coat below is not open yet, wait for it till the hours are
over (`hands.py` says when that is), else take the next hands. Where its window has closed:
wash and sand if the coat below can be sanded, else the piece is lost. What comes later on that
piece comes later; everything else keeps its planned time unless hands or the spot are taken.
Pieces are packed in the first hands after they have cured, even before the planned time.

A maker who does not test goes by the plan alone: nothing begins before its planned time, nor
sooner after the coat below than the plan's window; what the film says is not asked.

Air, dust on other pieces, tape and drips are not rehearsed.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_of, legs_of_pours
from studio_planner.planning.rehearsal.fates import Fate, Followed
from studio_planner.planning.rehearsal.hands import hours_of
from studio_planner.planning.rehearsal.lanes import Lane
from studio_planner.planning.rehearsal.leaving import Leaving
from studio_planner.planning.rehearsal.work import Block, Sanding, poured_layer, work_of
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.rehearsal.arrays import Flags, Floats
    from studio_planner.planning.rehearsal.fates import World
    from studio_planner.planning.rehearsal.work import Layer, Packing

SLACK_SECONDS = 60.0
"""A minute either way is no missed window: plans and clocks are rounded to less."""

_SLIPPED_SECONDS = 7200.0
"""A coat that begins later than planned by more has slipped: no delay of hands is so long."""

_PACKED_SOONER = 3 * 86_400.0
"""By how much a piece may be packed before its planned time, when it has cured [s]."""


def follow(studio: Studio, plan: Plan, world: World) -> Followed:
    """Follow a plan of a studio through all weeks of a world."""
    walk = _Walk(studio, plan, world)
    for index, work in enumerate(work_of(studio, plan)):
        walk.late, walk.slower = world.late[:, index], world.slower[:, index]
        walk.hours[work.person].forget(work.start - _PACKED_SOONER)
        if isinstance(work, Block):
            walk.pour(work)
        elif isinstance(work, Sanding):
            walk.sand(work)
        else:
            walk.pack(work)
    leaves, raw = walk.leaving.of_orders()
    return Followed(walk.fates, leaves, raw)


class _Walk:
    """The state of all weeks while the work is done in its planned order."""

    def __init__(self, studio: Studio, plan: Plan, world: World) -> None:
        import numpy as np

        zone, span = studio.time_zone, world.grid.span
        rest = studio.resting_place
        self._studio = studio
        self._world = world
        self._begins = plan.start.timestamp()
        self.hours = hours_of(studio.people, zone, span)
        self._spots: dict[str, tuple[str, Floats]] = {}
        self._dusted: dict[int, Floats] = {}
        self._sanded_well: dict[int, Flags] = {}
        self.fates: dict[int, Fate] = {}
        self.leaving = Leaving(studio, world.grid, world.weeks)
        self.late: Floats = np.zeros(world.weeks)
        self.slower: Floats = np.ones(world.weeks)
        home = studio.places[0].key if rest is None else rest.key
        self._lanes = {
            key: Lane(world.films, home, world.weeks) for key in {c.piece for c in plan.coats}
        }
        ends = {(coat.piece, coat.coat): coat.end for coat in plan.coats}
        carried = legs_of_pours(studio)
        for coat in sorted(plan.coats, key=lambda coat: coat.start):
            if coat.poured:
                start, end = coat.start.timestamp(), coat.end.timestamp()
                layer = poured_layer(studio, coat, ends, legs_of(carried, coat))
                self._lay(layer, np.full(world.weeks, start), np.full(world.weeks, end))

    def sand(self, work: Sanding) -> None:
        """Wash and sand the coat below a layer that is planned scuffed."""
        layer = work.layer
        lane = self._lanes[layer.planned.piece]
        sandable = self._sandable(lane, layer)
        after = self._ready(lane, work.start + self.late, sandable)
        length = (work.end - work.start) * self.slower
        end = self._take(work.person, after, length)
        number = layer.planned.number
        self._sanded_well[number] = end - length >= sandable - SLACK_SECONDS
        self._dusted[number] = end + 60.0 * self._studio.settings.settle_minutes

    def pour(self, block: Block) -> None:
        """Put on the coats of one mix."""
        import numpy as np

        lanes = [self._lanes[layer.planned.piece] for layer in block.layers]
        windows = [self._window(*pair) for pair in zip(lanes, block.layers, strict=True)]
        length = (block.end - block.start) * self.slower
        after = block.start + self.late
        for lane, layer, (opens, _) in zip(lanes, block.layers, windows, strict=True):
            needs = self._needs(lane, layer, opens, block.lead)
            after = np.maximum(after, np.where(lane.lost, -math.inf, needs))
        hours = self.hours[block.person]
        start = hours.earliest(after - block.lead, block.lead + length) + block.lead
        somebody = np.zeros(self._world.weeks, dtype=np.bool_)
        for lane, window in zip(lanes, windows, strict=True):
            goes = ~lane.lost & np.isfinite(start)
            if self._world.tests:
                goes &= start < window[1] + SLACK_SECONDS
            somebody |= goes
        hours.book(start - block.lead, start + length, somebody)
        for lane, layer, window in zip(lanes, block.layers, windows, strict=True):
            self._put_on(lane, layer, window, start, length)

    def _put_on(
        self,
        lane: Lane,
        layer: Layer,
        window: tuple[Floats, Floats],
        start: Floats,
        length: Floats,
    ) -> None:
        """One coat of a block: in its window, or scuffed after it, or not at all."""
        import numpy as np

        opens, closes = window
        there = ~lane.lost & np.isfinite(start)
        closed = there & (start >= closes + SLACK_SECONDS)
        scuffed = np.zeros_like(closed)
        if self._world.tests and closed.any():
            again = self._scuff(lane, layer, np.where(closed, start, math.inf), length)
            scuffed = closed & np.isfinite(again)
            start = np.where(closed, again, start)
        lane.lost = lane.lost | ~np.isfinite(start)
        poured = ~lane.lost
        start = np.where(poured, start, math.inf)
        end = start + length
        early = poured & (start < opens - SLACK_SECONDS)
        held = poured & ~early & ~scuffed & (end <= closes + SLACK_SECONDS)
        slipped = start > layer.planned.start.timestamp() + _SLIPPED_SECONDS
        self.fates[layer.planned.number] = Fate(poured, held, early, scuffed, slipped)
        self._lay(layer, start, end)

    def _scuff(self, lane: Lane, layer: Layer, found: Floats, length: Floats) -> Floats:
        """When a coat can be put on whose window was found closed; infinite for never."""
        import numpy as np

        if layer.sands is None:
            return np.full_like(found, math.inf)
        person = layer.planned.person
        sands = np.full_like(found, layer.sands)
        after = np.maximum(found, self._sandable(lane, layer))
        sanded = self._take(person, after, sands)
        settled = sanded + 60.0 * self._studio.settings.settle_minutes
        return self._take(person, settled, length) - length

    def pack(self, work: Packing) -> None:
        """Pack a piece once it may go."""
        import numpy as np

        lane = self._lanes[work.piece]
        ready = np.full_like(lane.done, -math.inf)
        for position, product, stage in work.gates:
            ready = np.maximum(ready, lane.reached(position, product, stage))
        after = np.where(lane.lost, math.inf, self._may_pack(lane, work, ready))
        length = (work.end - work.start) * self.slower
        end = self._take(work.person, after, length)
        raw = np.isfinite(end) & (end - length < ready - SLACK_SECONDS)
        self.leaving.packed(work.piece, end, raw)

    def _may_pack(self, lane: Lane, work: Packing, ready: Floats) -> Floats:
        """From when on a piece is packed [s]: when it has cured, or when the plan says."""
        import numpy as np

        if self._world.tests:
            soonest = max(work.start - _PACKED_SOONER, self._begins)
            sooner = np.clip(ready, soonest, max(soonest, work.start)) + self.late
            return np.maximum(np.maximum(sooner, ready), lane.done)
        after = lane.done if work.told is None else lane.done + work.told
        return np.maximum(after, work.start + self.late)

    def _ready(self, lane: Lane, after: Floats, stage: Floats) -> Floats:
        """When to begin: after the latest coat, and after a stage for a maker who tests."""
        import numpy as np

        after = np.maximum(after, lane.done)
        if self._world.tests:
            after = np.maximum(after, stage)
        return np.where(lane.lost, math.inf, after)

    def _take(self, person: str, after: Floats, length: Floats) -> Floats:
        """Book the first free hands from `after` on; the end of the work [s]."""
        import numpy as np

        start = self.hours[person].earliest(after, length)
        end = start + length
        self.hours[person].book(start, end, np.isfinite(start))
        return end

    def _window(self, lane: Lane, layer: Layer) -> tuple[Floats, Floats]:
        """When the joint may be made in each week [s]: from, until."""
        import numpy as np

        opens = np.full_like(lane.done, -math.inf)
        closes = np.full_like(lane.done, math.inf)
        number = layer.planned.number
        if number in self._dusted:
            well = self._sanded_well[number]
            return np.where(well, self._dusted[number], math.inf), closes
        below = None if layer.below is None else lane.product(layer.below)
        if below is None or layer.below is None:
            return opens, closes
        if layer.opens is not None:
            opens = lane.reached(layer.below, below, layer.opens)
        if layer.closes is not None:
            closes = lane.reached(layer.below, below, layer.closes)
        return opens, closes

    def _sandable(self, lane: Lane, layer: Layer) -> Floats:
        import numpy as np

        below = None if layer.below is None else lane.product(layer.below)
        if below is None or layer.below is None:
            return np.full_like(lane.done, -math.inf)
        return lane.reached(layer.below, below, Stage.SANDABLE)

    def _needs(self, lane: Lane, layer: Layer, opens: Floats, lead: float) -> Floats:
        """From when on a coat can be put on [s]."""
        import numpy as np

        after = lane.done + lead
        if not self._world.tests:
            if layer.below is None or layer.told is None:
                return after
            return np.maximum(after, lane.ended(layer.below) + layer.told)
        after = np.maximum(after, opens)
        for position in layer.rests_on:
            after = np.maximum(after, lane.handled(position) + lead)
        piece, until = self._spots.get(layer.planned.spot, ("", after))
        return after if piece == layer.planned.piece else np.maximum(after, until)

    def _lay(self, layer: Layer, start: Floats, end: Floats) -> None:
        import numpy as np

        lane = self._lanes[layer.planned.piece]
        lane.lay(layer, start, end)
        for spot, (piece, until) in self._spots.items():
            if piece == layer.planned.piece:
                self._spots[spot] = piece, np.minimum(until, start)
        handled = lane.handled(layer.position)
        # A piece that is lost or never poured holds no spot.
        held = np.where(np.isfinite(start), handled, -math.inf)
        self._spots[layer.lies_on] = layer.planned.piece, held
