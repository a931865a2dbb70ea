"""The quick plan: one chain after another at its best place, then late orders first again."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.timing import Timing
from studio_planner.planning.air_times import AirTimes
from studio_planner.planning.chain_search import Means
from studio_planner.planning.edges import Edges
from studio_planner.planning.placing import Placement, Placer, Stuck, hold_poured
from studio_planner.planning.problem import build_chains
from studio_planner.planning.spans import grid_up
from studio_planner.planning.why_stuck import why_stuck
from studio_planner.planning.writing import written_plan
from studio_planner.planning.workshop import Workshop

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from studio_planner.craft.plans import Plan, Unplanned
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.problem import Chain

_PASSES = 4
_BIG = 60
"""Chains from which on fewer passes are made, so that a plan stays a matter of seconds."""

_BEFORE = timedelta(days=1)
_AFTER = timedelta(days=42)

Worth = tuple[int, float, int, int, float, int, float]
"""The goals in their order: pieces left out, weighted hours late, scuffed joints, joints to test
first, hours of spare lacking, mixes, and the sum of the ends."""


@dataclass(frozen=True, slots=True)
class Pass:
    """One round over all chains."""

    placed: tuple[Placement, ...]
    stuck: tuple[Stuck, ...]
    worth: Worth


def quick_plan(
    studio: Studio,
    now: datetime,
    until: datetime | None = None,
    *,
    first: Sequence[str] = (),
    passes: int = _PASSES,
) -> Plan:
    """Make a plan from `now` on that keeps every hard rule.

    Parameters
    ----------
    studio
        The studio; what it has poured stays as it is.
    now
        Aware instant; nothing new starts before it.
    until
        Pours start before it; None lets everything be planned to its end.
    first
        Keys of orders that go before all others.
    passes
        Rounds of putting late orders first, at the most.

    Raises
    ------
    NoPlanPossible
        When there is nothing to plan with (no piece, no spot, no hands, no room), or when no
        piece at all can be planned.
    """
    _require_means(studio)
    chains, unplanned = build_chains(studio, twins=True)
    desk = _Desk(studio, now, until, chains)
    best = desk.best(chains, first, passes)
    apart, _ = build_chains(studio, twins=False)
    if len(apart) > len(chains) and (best.worth[0] or best.worth[1] > 0):
        best = min(best, desk.best(apart, first, 1), key=lambda found: found.worth)
    plan = desk.written(best, unplanned)
    if not plan.coats:
        raise NoPlanPossible(row.reason for row in plan.unplanned)
    return plan


def _require_means(studio: Studio) -> None:
    missing = [
        (studio.pieces, "There is no piece yet: add a piece with its stack of coats."),
        (studio.people, "There are no hands yet: say who can work when."),
        (studio.spots, "There is no spot yet: add a level place on the shelf."),
        (studio.resting_place, "There is no room yet: add one with its temperature."),
    ]
    reasons = [words for thing, words in missing if not thing]
    if reasons:
        raise NoPlanPossible(reasons)


class _Desk:
    """Clocks, edges and the empty workshop, made once for all rounds."""

    def __init__(
        self, studio: Studio, now: datetime, until: datetime | None, chains: list[Chain]
    ) -> None:
        self.studio = studio
        self.now = now
        start = min([now, *(pour.start for pour in studio.poured)]) - _BEFORE
        end = _record_end(studio, now, chains)
        self.timing = Timing(studio, start, end)
        self._edges = Edges(self.timing)
        self._air = AirTimes(self.timing)
        last = end if until is None else min(until, end)
        self._until = int(last.timestamp())
        self._end = int(end.timestamp())
        self._shop = Workshop(studio, int(now.timestamp()), self._end)
        for piece in studio.pieces:
            hold_poured(studio, self._means(self._shop), piece)

    def _means(self, shop: Workshop) -> Means:
        settings = self.studio.settings
        return Means(
            shop=shop,
            edges=self._edges,
            air=self._air,
            place_of_spot={s.key: p.key for p in self.studio.places for s in p.spots},
            now=grid_up(self.now.timestamp()),
            until=self._until,
            end=self._end,
            sand_seconds=settings.sand_minutes * 60,
            tape_seconds=settings.tape_minutes * 60,
        )

    def placer(self) -> Placer:
        """A placer on a fresh copy of the workshop."""
        return Placer(self.studio, self.timing, self._means(self._shop.copy()))

    def best(self, chains: list[Chain], first: Sequence[str], passes: int) -> Pass:
        """The best of several rounds; each puts the orders that came late one step forward."""
        queue = sorted(chains, key=lambda chain: self._urgency(chain, first))
        best = self._round(queue)
        latest = best
        for _ in range(min(passes, 2 if len(chains) > _BIG else passes) - 1):
            queue = self._late_first(queue, latest)
            if latest.worth[0] == 0 and latest.worth[1] <= 0:
                break
            latest = self._round(queue)
            if latest.worth >= best.worth:
                break
            best = latest
        return best

    def _urgency(self, chain: Chain, first: Sequence[str]) -> tuple[bool, bool, float, float]:
        """Asked-for orders first, begun pieces next, then the least slack before the due date."""
        if chain.order is None:
            return (True, chain.first == 0, 1e12, -chain.hands)
        due = chain.order.due(self.studio.time_zone).timestamp()
        asked = chain.order.key in first
        days = 86_400.0 * len(chain.tasks[chain.first :])
        return (not asked, chain.first == 0, (due - days) / chain.order.weight**0.01, due)

    def _late_first(self, queue: list[Chain], found: Pass) -> list[Chain]:
        late = {
            placement.chain.order.key
            for placement in found.placed
            if placement.chain.order is not None and placement.score[0] > 0
        }
        stuck = {id(one.chain) for one in found.stuck}
        return sorted(
            queue,
            key=lambda chain: not (
                id(chain) in stuck or (chain.order is not None and chain.order.key in late)
            ),
        )

    def _round(self, queue: list[Chain]) -> Pass:
        placer = self.placer()
        placed: list[Placement] = []
        stuck: list[Stuck] = []
        for chain in queue:
            found = placer.place(chain)
            if isinstance(found, Placement):
                placer.book(found)
                placed.append(found)
            else:
                stuck.append(found)
        return Pass(tuple(placed), tuple(stuck), _worth(placed, stuck))

    def written(self, found: Pass, unplanned: Sequence[Unplanned]) -> Plan:
        """The round as a plan of the craft."""
        reasons = [row for one in found.stuck for row in why_stuck(self.placer(), one)]
        return written_plan(self.placer(), self.now, found.placed, [*unplanned, *reasons])


def _record_end(studio: Studio, now: datetime, chains: list[Chain]) -> datetime:
    """Late enough for every promise, for all hands that are asked for, and for full cure."""
    dues = [order.due(studio.time_zone) for order in studio.orders]
    week = now + timedelta(days=7)
    a_week = sum(
        (end - start).total_seconds()
        for person in studio.people
        for start, end in person.working(studio.time_zone, now, week)
    )
    asked = sum(chain.hands for chain in chains)
    weeks = 2.0 + min(60.0, 2.0 * asked / max(a_week, 3600.0))
    return max([now + timedelta(weeks=weeks), *dues]) + _AFTER


def _worth(placed: list[Placement], stuck: list[Stuck]) -> Worth:
    late: dict[str, float] = {}
    spare: dict[str, float] = {}
    for one in placed:
        key = one.chain.order.key if one.chain.order is not None else ""
        late[key] = max(late.get(key, 0.0), one.score[0])
        spare[key] = max(spare.get(key, 0.0), one.score[3])
    return (
        sum(len(one.chain.pieces) for one in stuck),
        round(sum(late.values()), 6),
        sum(one.score[1] for one in placed),
        sum(one.score[2] for one in placed),
        round(sum(spare.values()), 6),
        sum(len(one.chain.tasks) - one.chain.first for one in placed),
        sum(one.score[4] for one in placed),
    )

