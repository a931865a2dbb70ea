"""A studio at one constant temperature, said in plain lags: the same problem for any scheduler.

At one temperature every clock is a fixed length, so a window is two lags. What plain lags don't
say is taken out of the studio on both sides: no joint may be scuffed or tested first, every
piece has colours of its own (so no two share a mix), and blocks last whole five minutes.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Promise
from studio_planner.craft.pieces import Colour
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import StepKind
from studio_planner.craft.timing import Timing
from studio_planner.planning.clocks.edges import Edges
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.problem import build_chains, gate_coats, gate_stage
from studio_planner.planning.spans import GRID
from tests.benchmarks.plain_studio import Bound, PlainCoat, PlainOrder, PlainPiece, PlainStudio

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.problem import Chain, Task
    from tests.benchmarks.plain_studio import Slots, Starts

CELSIUS = 20.0
_AFTER = timedelta(weeks=8)
_FIVE = 5


def steady(studio: Studio) -> Studio:
    """The studio with a constant room and without what plain lags can't say."""
    point = PatternPoint(at=time(0), celsius=CELSIUS, humidity_pct=45.0)
    return replace(
        studio,
        places=tuple(replace(place, pattern=(point,)) for place in studio.places),
        pieces=tuple(_plain_stack(piece) for piece in studio.pieces),
    )


def _plain_stack(piece: Piece) -> Piece:
    own = (Colour(name=f"of {piece.key}"),)
    stack = []
    for coat in piece.stack:
        minutes = coat.setup_minutes + coat.piece_minutes * piece.count
        setup = coat.setup_minutes + -minutes % _FIVE
        changed = replace(
            coat, colours=own, sandable=False, test_first=False, setup_minutes=setup
        )
        stack.append(changed)
    return replace(piece, stack=tuple(stack))


def plain(studio: Studio, now: datetime) -> PlainStudio:
    """Say a steady studio in lags.

    Raises
    ------
    ValueError
        When it holds something that this form can't say.
    """
    return _Plain(studio, now).whole()


class _Plain:
    def __init__(self, studio: Studio, now: datetime) -> None:
        self._studio = studio
        self._start = int(now.timestamp())
        dues = [order.due(studio.time_zone) for order in studio.orders]
        self._end = max([now, *dues]) + _AFTER
        self._now = now
        self._place = studio.places[0].key
        self._edges = Edges(Timing(studio, now - timedelta(days=1), self._end + _AFTER))

    def whole(self) -> PlainStudio:
        chains, unplanned = build_chains(self._studio, twins=False)
        hours = {self._hours(index) for index in range(len(self._studio.people))}
        strange = [
            unplanned,
            self._start % GRID,
            len(hours) != 1,
            len(self._studio.places) != 1,
            self._studio.poured,
            any(c.taped or c.trimmed for piece in self._studio.pieces for c in piece.stack),
            any(task.stays for chain in chains for task in chain.tasks),
        ]
        if any(strange):
            raise ValueError("This studio can't be said in plain lags; make it with `steady`.")
        keys = [order.key for order in self._studio.orders]
        return PlainStudio(
            pieces=tuple(self._piece(chain, keys) for chain in chains),
            orders=tuple(self._order(order) for order in self._studio.orders),
            people=len(self._studio.people),
            hours=hours.pop(),
            spots=len(self._studio.spots),
            end=self._slot(self._end),
        )

    def _slot(self, instant: datetime) -> int:
        return (int(instant.timestamp()) - self._start) // GRID

    def _hours(self, person: int) -> tuple[Slots, ...]:
        zone = self._studio.time_zone
        spans = self._studio.people[person].working(zone, self._now, self._end)
        return tuple((self._slot(first), self._slot(last)) for first, last in spans)

    def _order(self, order: Order) -> PlainOrder:
        if order.weight != int(order.weight):
            raise ValueError(f"{order.name}: the weight has to be a whole number here.")
        pick_ups = None
        if order.promise is not Promise.MARKET:
            pick_ups = tuple(self._pick_ups(order))
        due = self._slot(order.due(self._studio.time_zone))
        return PlainOrder(order.key, due, int(order.weight), pick_ups)

    def _pick_ups(self, order: Order) -> Iterator[int]:
        when = self._now
        while when <= self._end:
            when = order.courier.next_pick_up(self._studio.time_zone, when)
            yield self._slot(when)
            when += timedelta(minutes=1)

    def _piece(self, chain: Chain, keys: list[str]) -> PlainPiece:
        order, piece = chain.order, chain.pieces[0]
        if order is None:
            raise ValueError(f"{piece.name}: every piece needs an order here.")
        gates = {coat.key for coat in gate_coats(self._studio, piece, order.gate.stage)}
        coats = tuple(
            self._coat(chain, index, order if task.coat.key in gates else None)
            for index, task in enumerate(chain.tasks)
        )
        return PlainPiece(
            piece.key, keys.index(order.key), coats, -(-order.packing_minutes // 5)
        )

    def _coat(self, chain: Chain, index: int, order: Order | None) -> PlainCoat:
        task = chain.tasks[index]
        stage = None if order is None else gate_stage(task.product, order.gate.stage)
        clock = (
            None if stage is None else self._edges.not_before(task.product, self._place, stage)
        )
        cured = None if clock is None else clock.at(self._start + task.block)
        gate = task.block if cured is None else cured - self._start
        return PlainCoat(
            key=task.coat.key,
            turning=_up(task.lead),
            block=_up(task.block),
            handle=self._handle(task),
            bounds=tuple(self._bounds(chain, index)),
            gate=_up(gate),
        )

    def _handle(self, task: Task) -> int:
        handled = self._edges.handle(task.product, self._place).at(self._start + task.block)
        if handled is None:
            raise ValueError(f"{task.product.name} never reaches handle at {CELSIUS:g} °C.")
        return _up(handled - self._start)

    def _bounds(self, chain: Chain, index: int) -> Iterator[Bound]:
        task = chain.tasks[index]
        if index:
            before = chain.tasks[index - 1]
            yield Bound(index - 1, _up(before.block + task.lead))
        for other in task.rests_on:
            yield Bound(other, self._handle(chain.tasks[other]) + _up(task.lead))
        if task.below is not None:
            yield self._window(chain.tasks[task.below], task, task.below)

    def _window(self, lower: Task, task: Task, below: int) -> Bound:
        opens, closes = lower.block, ALWAYS
        if task.sheet_opens is not None:
            clock = self._edges.not_before(lower.product, self._place, task.sheet_opens)
            reached = None if clock is None else clock.at(self._start + lower.block)
            opens = opens if reached is None else reached - self._start
        if task.sheet_closes is not None:
            shut = self._edges.not_after(lower.product, self._place, task.sheet_closes)
            closes = ALWAYS if shut is None else shut.at(self._start) - self._start
        most = None if closes >= ALWAYS - self._start else (closes - task.block) // GRID
        return Bound(below, _up(opens), most)


def _up(seconds: int) -> int:
    return -(-seconds // GRID)


def starts_of_plan(plan: Plan, now: datetime) -> Starts:
    """Where a plan puts the coats and the packing, in slots."""
    starts = {(coat.piece, coat.coat): _since(coat.start, now) for coat in plan.coats}
    starts |= {
        (step.piece, ""): _since(step.start, now)
        for step in plan.steps
        if step.kind is StepKind.PACK
    }
    return starts


def _since(when: datetime, now: datetime) -> int:
    return int((when.astimezone(UTC) - now).total_seconds()) // GRID
