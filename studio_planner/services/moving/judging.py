"""What it would mean to pour a mix at another time: every rule it would break, in words.

A `Judge` is made when a pour is taken in hand and asked for one time after another. What stays
where it is, and all clocks, are kept between the times, so that a pointer can be followed.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.grid import GRID_SECONDS
from studio_planner.craft.plans import Air
from studio_planner.craft.sheet_stages import gate_coats, gate_stage
from studio_planner.services.doorways import Hands
from studio_planner.services.moving.air_then import AirThen
from studio_planner.services.moving.around import Around
from studio_planner.services.moving.breaks import Break, Rule
from studio_planner.services.moving.going import going_then, others_then, others_there
from studio_planner.services.moving.hands_then import hands_then
from studio_planner.services.moving.held import Goes, Held, kept_steps, ribbons_of
from studio_planner.services.moving.joint_then import Met, faces_then, joint_then
from studio_planner.services.moving.scuffed_then import Scuffing, replaced_sandings
from studio_planner.services.moving.spot_then import dust_then, spot_then, steps_then, tape_then
from studio_planner.services.questions.sentences import Moment, said
from studio_planner.services.ribbons import Lane, PlannedStudio, StepMark

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from studio_planner.craft.pieces import Joint
    from studio_planner.craft.plans import PlannedCoat, PlannedStep, Window
    from studio_planner.science.stages import Stage
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Ribbon

_NEAR = timedelta(hours=36)
"""How far from a forbidden time an allowed one is looked for."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """What a pour at `start` means.

    `coats` are those of its mix as they would be planned, with window, person and spot;
    `after` are the later coats of its pieces with the windows that they would stand in (None:
    in none), `along` the earlier ones that go to another spot with it. `steps` are the steps
    that go with it, `lanes` are drawn while it is held there.
    """

    start: datetime
    end: datetime
    breaks: tuple[Break, ...]
    coats: tuple[PlannedCoat, ...]
    after: tuple[PlannedCoat, ...]
    steps: tuple[PlannedStep, ...]
    lanes: tuple[Lane, ...]
    along: tuple[PlannedCoat, ...] = ()

    @property
    def allowed(self) -> bool:
        """Whether it may be dropped there."""
        return not self.hard

    @property
    def hard(self) -> tuple[Break, ...]:
        """What forbids it."""
        return tuple(one for one in self.breaks if one.hard)


class Judge:
    """Judges one mix of the kept plan at any start."""

    def __init__(self, view: DeskView, coat: PlannedCoat) -> None:
        """Take the mix of `coat` in hand; ValueError when it is poured already."""
        plan = view.plan
        if plan is None or coat.poured:
            message = "Only a pour to come can be moved."
            raise ValueError(message)
        self.view = view
        mixed = (c for c in plan.coats if c.mix == coat.mix and not c.poured)
        self.mix = tuple(sorted(mixed, key=lambda c: (c.piece, c.coat) != _key(coat)))
        self._around = Around(view, self.mix)
        hands = view.lanes[0].hands if view.lanes else Hands(())
        self._whole = PlannedStudio(view.studio, plan, view.timing, hands)
        self._air = AirThen(view.timing)
        self._scuffing = Scuffing(self._around)

    def at(self, start: datetime, goes: Goes | None = None) -> Verdict:
        """Judge a start (aware, on whole five minutes), and another spot for the piece."""
        held = Held(self._whole, self.mix, start, goes)
        person, breaks = hands_then(self._around, held)
        found = [*self._past(held), *breaks]
        coats: list[PlannedCoat] = []
        steps: list[PlannedStep] = list(held.turns)
        spots: set[str] = {coat.spot for coat in held.coats}
        mets = [self._joint(held, bar, steps) for bar in held.bars]
        unsanded = replaced_sandings(mets, held.coats, steps)
        for bar, met in zip(held.bars, mets, strict=True):
            found += met.breaks
            settled = goes is not None and bar is held.bars[0]
            spot = bar.planned.spot if settled else self._spot(bar, spots, found)
            spots.add(spot)
            self._one(bar, found, steps, unsanded)
            coats.append(self._planned(bar, met, spot, person))
        after: list[PlannedCoat] = []
        others = [] if goes is None else others_there(held.lanes[0], goes, self.mix[0].coat)
        if goes is not None:
            found += going_then(self._around, held.lanes[0], goes, held.lanes[1:])
            found += others_then(held.bars[0], self._air, others)
        for lane in held.lanes:
            found += self._later(lane, after)
            found += self._promise(lane)
        return Verdict(
            start=start,
            end=held.end,
            breaks=_each_once(found),
            coats=tuple(coats),
            after=tuple(after),
            steps=tuple(steps),
            lanes=held.lanes,
            along=tuple(bar.planned for bar in others if bar.position < held.bars[0].position),
        )

    def _joint(self, held: Held, bar: Ribbon, steps: list[PlannedStep]) -> Met:
        """How one coat of the mix meets the one below; adds its sanding to `steps`."""
        met = joint_then(bar.lane, bar)
        return self._scuffing.instead(held, bar, met, steps) if met.too_late else met

    def _one(
        self,
        bar: Ribbon,
        found: list[Break],
        steps: list[PlannedStep],
        unsanded: frozenset[tuple[str, str]],
    ) -> None:
        """Judge one coat of the mix; adds to `found` and `steps`."""
        found += faces_then(bar.lane, bar)
        found += [*self._air.breaks(bar), *dust_then(self._around, bar, unsanded)]
        taped, breaks = tape_then(self._around, bar)
        steps += taped
        found += [*breaks, *steps_then(self._around, bar)]

    def _spot(self, bar: Ribbon, spots: set[str], found: list[Break]) -> str:
        """The spot that a coat of the mix takes; adds to `found` what is wrong with it."""
        spot, breaks = spot_then(self._around, bar, spots)
        found += breaks
        return spot

    def _planned(self, bar: Ribbon, met: Met, spot: str, person: str | None) -> PlannedCoat:
        air = Air.UNKNOWN if self._air.unknown(bar) else Air.KEPT
        planned = bar.planned
        return replace(
            planned,
            spot=spot,
            joint=met.joint,
            window=met.window,
            air=air,
            held=None,
            wrong_first=None,
            person=planned.person if person is None else person,
        )

    def _past(self, held: Held) -> Iterator[Break]:
        plan = self.view.plan
        first = min([held.start, *(turn.start for turn in held.turns)])
        if first < self.view.now or (plan is not None and first < plan.start):
            yield Break(rule=Rule.PAST, words=said("That time has passed."))

    def _later(self, lane: Lane, after: list[PlannedCoat]) -> Iterator[Break]:
        """Later coats of a piece that would miss their windows; a pinned one forbids it.

        All of them are added to `after`.
        """
        moved = {(coat.piece, coat.coat) for coat in self.mix}
        key = lane.piece.key
        first = min(lane.piece.position(coat) for piece, coat in moved if piece == key)
        for bar in ribbons_of(lane).values():
            if bar.position <= first or (key, bar.coat.key) in moved:
                continue
            met = joint_then(lane, bar)
            after.append(replace(bar.planned, window=met.window))
            breaks = [*faces_then(lane, bar), *met.breaks]
            if any(one.hard for one in breaks):
                yield _missed(lane, bar)

    def _promise(self, lane: Lane) -> Iterator[Break]:
        order = lane.studio.order_of(lane.piece.key)
        ready = None if order is None else ready_at(lane, order.gate.stage)
        if order is None or ready is None:
            return
        zone = lane.studio.time_zone
        leaves = order.leaves(zone, ready + timedelta(minutes=order.packing_minutes))
        if leaves > order.due(zone) and not self._late_already(order.key):
            text = "The promise {order} would be late: it leaves {leaves} at the soonest."
            words = said(text, order=order.name, leaves=Moment(leaves))
            yield Break(rule=Rule.PROMISE, words=words, hard=False)

    def _late_already(self, order: str) -> bool:
        rows = self.view.plan.outcomes if self.view.plan else ()
        return any(row.order == order and row.late_hours != 0.0 for row in rows)

    def shown(self, verdict: Verdict) -> tuple[Lane, ...]:
        """The lanes of a verdict with the windows that hold in it, to be drawn."""
        windows = {_key(c): c.window for c in (*verdict.coats, *verdict.after)}
        joints = {_key(c): c.joint for c in verdict.coats}
        return tuple(self._shown(lane, windows, joints, verdict) for lane in verdict.lanes)

    def _shown(
        self,
        lane: Lane,
        windows: Mapping[tuple[str, str], Window | None],
        joints: Mapping[tuple[str, str], Joint],
        verdict: Verdict,
    ) -> Lane:
        coats = [
            replace(
                c,
                window=windows.get(_key(c), c.window),
                joint=joints.get(_key(c), c.joint),
            )
            for c in lane.coats
        ]
        planned = [bar.planned for bar in lane.bars if isinstance(bar, StepMark)]
        mine = [step for step in verdict.steps if step.piece == lane.piece.key]
        return Lane(
            self._whole, lane.piece, coats, [*kept_steps(planned, verdict.coats, mine), *mine]
        )

    def nearest(self, start: datetime, goes: Goes | None = None) -> Verdict | None:
        """The allowed start nearest to a forbidden one; None where there is none near it."""
        step = timedelta(seconds=GRID_SECONDS)
        for count in range(1, _NEAR // step):
            for near in (start - count * step, start + count * step):
                if self._may_serve(near):
                    verdict = self.at(near, goes)
                    if verdict.allowed:
                        return verdict
        return None

    def _may_serve(self, start: datetime) -> bool:
        """Whether hands are there at all, found without a clock."""
        if start < self.view.now:
            return False
        return hands_then(self._around, Held(self._whole, self.mix, start))[0] is not None


def ready_at(lane: Lane, gate: Stage) -> datetime | None:
    """When every coat of a piece has reached a gate for sure; None where that is not known."""
    bars = ribbons_of(lane)
    found: list[datetime] = []
    for coat in gate_coats(lane.studio, lane.piece, gate):
        bar = bars.get(coat.key)
        stage = None if bar is None else gate_stage(bar.product, gate)
        when = None if bar is None or stage is None else bar.film.safe(stage)
        if when is None:
            return None
        found.append(when)
    return max(found, default=None)


def _missed(lane: Lane, bar: Ribbon) -> Break:
    name = lane.piece.coat_name(bar.coat.key)
    if lane.studio.pinned(lane.piece.key, bar.coat.key) is not None:
        text = "The {coat} after it is pinned and would not hold; let it go first."
        return Break(rule=Rule.LATER, words=said(text, coat=name))
    text = "The {coat} after it no longer fits and will be moved."
    return Break(rule=Rule.LATER, words=said(text, coat=name), hard=False)


def _key(coat: PlannedCoat) -> tuple[str, str]:
    return coat.piece, coat.coat


def _each_once(breaks: list[Break]) -> tuple[Break, ...]:
    """Every sentence once, what forbids the move first."""
    each = {(one.rule, one.words.text, str(one.words.facts)): one for one in breaks}
    return tuple(sorted(each.values(), key=lambda one: not one.hard))
