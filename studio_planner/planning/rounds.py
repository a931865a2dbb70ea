"""Rounds over all chains: most urgent first, then whatever came late once more in front."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_of_pours
from studio_planner.planning.keeping.repairing import Aim, Repair
from studio_planner.planning.keeping.replanning import KeepingRound
from studio_planner.planning.placing.chain_times import Means
from studio_planner.planning.placing.late_sanding import sanded_late
from studio_planner.planning.placing.placements import Placement, hold_poured
from studio_planner.planning.placing.placer import Placer, Stuck
from studio_planner.planning.placing.workshop import Workshop
from studio_planner.planning.sanded import dust_until
from studio_planner.planning.spans import grid_up
from studio_planner.planning.stuck.why_stuck import why_stuck
from studio_planner.planning.worth import Worth, goals_of, hours_late, pieces_of, worth_of
from studio_planner.planning.writing import written_plan
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.plans import Plan, Unplanned
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Timing
    from studio_planner.planning.clocks.clockwork import Clockworks
    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.keeping.repairing import Kept
    from studio_planner.planning.placing.workshop import Taken
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.worth import Starts

_A_WEEK = 7 * 86_400.0
_BEFORE = timedelta(days=1)
_AFTER = timedelta(days=28)

_MOST_KNOWN = 2000
"""Placements of which is kept what they take; then all are forgotten."""


@dataclass(frozen=True, slots=True)
class Pass:
    """One round over all chains."""

    placed: tuple[Placement, ...]
    stuck: tuple[Stuck, ...]
    worth: Worth


class Rounds:
    """Clocks, edges and the empty workshop of one plan, made once for all rounds."""

    def __init__(  # noqa: PLR0913 - each is one plain question
        self,
        studio: Studio,
        now: datetime,
        until: datetime | None,
        chains: list[Chain],
        clockworks: Clockworks,
        *,
        patience: float = 1.0,
        before: Starts | None = None,
    ) -> None:
        """Look at a studio from `now` on; new pours start before `until`.

        With more `patience` the record goes on for longer. `before` are the starts of the plan
        that is kept so far, against which moved pours are counted.
        """
        self.studio = studio
        self.now = now
        self._before: Starts = before or {}
        start = min([now, *(pour.start for pour in studio.poured)]) - _BEFORE
        self._clockwork = clockworks.over(
            studio, start, _record_end(studio, now, chains, patience, self._before)
        )
        self.timing = self._clockwork.timing
        end = self.timing.end
        last = end if until is None else min(until, end)
        self._until = int(last.timestamp())
        self._end = int(end.timestamp())
        self._takings: dict[int, tuple[Placement, Taken]] = {}
        hold = shortest_hold(self.timing)
        self._carried = legs_of_pours(studio)
        self._shop = Workshop(studio, int(now.timestamp()), self._end, hold)
        for piece in studio.pieces:
            hold_poured(studio, self._means(self._shop), piece)

    def _means(self, shop: Workshop) -> Means:
        settings = self.studio.settings
        return Means(
            shop=shop,
            edges=self._clockwork.edges,
            air=self._clockwork.air,
            place_of_spot={s.key: p.key for p in self.studio.places for s in p.spots},
            carried=self._carried,
            now=grid_up(self.now.timestamp()),
            until=self._until,
            end=self._end,
            sand_seconds=settings.sand_minutes * 60,
            tape_seconds=settings.tape_minutes * 60,
            dust_until=dust_until(self.studio),
        )

    def placer(self, placed: Iterable[Placement] = ()) -> Placer:
        """A placer on a fresh copy of the workshop, with some placements booked."""
        placer = Placer(self.studio, self._means(self._shop.copy()))
        placer.means.shop.take_all(self._taken(placer, one) for one in placed)
        return placer

    def _taken(self, placer: Placer, placement: Placement) -> Taken:
        """What a placement takes, worked out once for each."""
        known = self._takings.get(id(placement))
        if known is None:
            if len(self._takings) > _MOST_KNOWN:
                self._takings.clear()
            known = self._takings[id(placement)] = placement, placer.finisher.taken(placement)
        return known[1]

    def best(
        self, chains: list[Chain], first: Sequence[str], passes: int, strides: int = 1
    ) -> Pass:
        """The best of several rounds; each moves what came late forward by as much.

        Where that leaves all in the same order it is moved on, each time twice as far, in so
        many `strides` at the most.
        """
        ahead: dict[str, float] = {}
        best: Pass | None = None
        queue = self._queue(chains, first, ahead)
        for _ in range(max(1, passes)):
            found = self._round(queue)
            best = found if best is None or found.worth < best.worth else best
            last, late = queue, _lateness(found)
            for stride in range(strides if late else 0):
                for key, seconds in late.items():
                    ahead[key] = ahead.get(key, 0.0) + 2.0**stride * seconds
                queue = self._queue(chains, first, ahead)
                if queue != last:
                    break
            if queue == last:
                break
        return best or self.weighed([], [])

    def _queue(
        self, chains: list[Chain], first: Sequence[str], ahead: dict[str, float]
    ) -> list[Chain]:
        return sorted(chains, key=lambda chain: self._urgency(chain, first, ahead))

    def keeping(self, chains: list[Chain], kept: KeptPlan) -> Kept:
        """The round in which only what must moves from where a kept plan has it."""
        return KeepingRound(
            self.studio,
            kept,
            chains,
            self.placer,
            lambda chain: self._urgency(chain, (), {}),
        ).made()

    def repaired(self, found: Kept, kept: KeptPlan, other: Pass) -> Kept:
        """A keeping round; orders that were less late before, or are in `other`, are let go."""
        late = hours_late(other.placed)
        aim = Aim(
            worth=other.worth,
            late={
                order.key: min(kept.late(order), late.get(order.key, 0.0))
                for order in self.studio.orders
            },
        )
        repair = Repair(self.studio, kept, self.placer, lambda *made: self.weighed(*made).worth)
        return repair.repaired(found, aim)

    def passed(self, found: Kept, kept: KeptPlan) -> Pass:
        """A keeping round, in the order of the kept plan."""
        placed = sorted(found.placed, key=lambda one: kept.rank(one.chain))
        return self.weighed(placed, found.stuck)

    def _urgency(
        self, chain: Chain, first: Sequence[str], ahead: dict[str, float]
    ) -> tuple[bool, bool, float, float]:
        """Asked-for orders first, begun pieces next, then the least slack before the date.

        `ahead` are seconds by which orders are moved forward.
        """
        if chain.order is None:
            return (True, True, math.inf, -chain.hands)
        due = chain.order.due(self.studio.time_zone).timestamp()
        days = 86_400.0 * len(chain.tasks[chain.first :])
        slack = due - days - ahead.get(chain.order.key, 0.0)
        return (chain.order.key not in first, chain.first == 0, slack, -chain.order.weight)

    def _round(self, queue: list[Chain]) -> Pass:
        return self.weighed(*self.placer().place_all(queue))

    def weighed(self, placed: Sequence[Placement], stuck: Sequence[Stuck]) -> Pass:
        """Placements and what is stuck, with what they are worth."""
        worth = worth_of(placed, pieces_of(stuck), int(self.now.timestamp()), self._before)
        return Pass(tuple(placed), tuple(stuck), worth)

    def written(self, found: Pass, unplanned: Sequence[Unplanned]) -> Plan:
        """The round as a plan of the craft, each joint sanded as late as can be."""
        reasons = [row for one in found.stuck for row in why_stuck(self.placer(), one)]
        chains = [one.chain for one in found.stuck]
        place = {piece.key: place for place, piece in enumerate(self.studio.pieces)}
        rows = sorted((*unplanned, *reasons), key=lambda row: place[row.piece])
        placed = sanded_late(self.placer(), found.placed)
        plan = written_plan(self.placer(), self.now, placed, chains, rows)
        return replace(plan, goals=goals_of(found.worth, {}))


def _lateness(found: Pass) -> dict[str, float]:
    """The seconds by which orders came late, weighted; a week for what found no place."""
    late = {key: 3600.0 * hours for key, hours in hours_late(found.placed).items() if hours > 0}
    for one in found.stuck:
        if one.chain.order is not None:
            late[one.chain.order.key] = _A_WEEK
    return late


def shortest_hold(timing: Timing) -> int:
    """Seconds that the quickest coat keeps a spot in the warmest hour of any place."""
    warmest = max(max(timing.history(place.key).celsius) for place in timing.studio.places)
    hours = [
        law.hours(warmest, Edge.LATE)
        for product in timing.studio.products
        if (law := product.law(Stage.HANDLE)) is not None
    ]
    return int(3600 * min(hours, default=0))


def _record_end(
    studio: Studio, now: datetime, chains: list[Chain], patience: float, before: Starts
) -> datetime:
    """Late enough for every promise, for all hands that are asked for, and for full cure.

    And for all starts of the plan before.
    """
    dues = [order.due(studio.time_zone) for order in studio.orders]
    dues += [datetime.fromtimestamp(start, UTC) for start in before.values()]
    week = now + timedelta(days=7)
    a_week = sum(
        (end - start).total_seconds()
        for person in studio.people
        for start, end in person.working(studio.time_zone, now, week)
    )
    asked = sum(chain.hands for chain in chains)
    weeks = 1.0 + min(60.0, 1.5 * asked / max(a_week, 3600.0))
    return max([now + timedelta(weeks=weeks), *dues]) + patience * _AFTER
