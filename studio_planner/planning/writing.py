"""Writes placements down as a plan of the craft: numbers, mixes, steps, ready times."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.plans import (
    Air,
    Outcome,
    Plan,
    PlannedCoat,
    PlannedStep,
    Readiness,
    StepKind,
    Window,
    pours_as_planned,
)
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.placing.chain_times import (
    Allow,
    ChainTimes,
    Ground,
    narrow_windows,
    standing,
)
from studio_planner.planning.problem import gate_coats, gate_stage
from studio_planner.planning.worth import mix_label
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Unplanned
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.clocks.air_times import AirTimes
    from studio_planner.planning.clocks.edges import Edges
    from studio_planner.planning.placing.chain_times import PlacedJoint
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain, Task

_READY = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)
_TAPE = {Stage.TAPE_OPENS: StepKind.TAPE, Stage.TRIM_OPENS: StepKind.TRIM}


def written_plan(
    placer: Placer,
    now: datetime,
    placed: Sequence[Placement],
    stuck: Sequence[Chain],
    unplanned: Sequence[Unplanned],
) -> Plan:
    """The plan of all placements; order reasons are left to whoever explains it.

    What is poured of stuck chains stays in the plan, with its tape and drips.
    """
    coats: list[_Labelled] = []
    steps: list[PlannedStep] = []
    ready: list[Readiness] = []
    for placement in placed:
        coats += _coats(placer, placement)
        steps += _steps(placer, placement)
        for piece in placement.chain.pieces:
            ready += _readiness(placer, placement, piece)
    for chain in stuck:
        steps += _steps_of_poured(placer, chain)
    coats += _poured_of_unplanned(placer.studio, coats)
    packs = {step.piece: step.end for step in steps if step.kind is StepKind.PACK}
    return Plan(
        made=now,
        start=now,
        coats=_numbered(coats),
        steps=tuple(sorted(steps, key=lambda step: (step.start, step.piece))),
        ready=tuple(ready),
        outcomes=tuple(_outcome(placer.studio, order, packs) for order in placer.studio.orders),
        unplanned=tuple(unplanned),
    )


_Labelled = tuple[str, PlannedCoat]
"""A coat, and the name of the mix that it is poured from."""


def _coats(placer: Placer, placement: Placement) -> list[_Labelled]:
    rows, means = [], placer.means
    for index, task in enumerate(placement.chain.tasks):
        start = placement.starts[index]
        end = start + task.block
        label = mix_label(placement, index)
        ground = placement.laid.grounds[index]
        legs = [(ground.place, start)] if task.fixed is None else means.places(task.fixed)
        air = _air(means.air, task, legs, end)
        for piece, free in zip(placement.chain.pieces, ground.spots, strict=True):
            spot = free if task.fixed is None else task.fixed.spot
            coat = PlannedCoat(
                number=0,
                piece=piece.key,
                coat=task.coat.key,
                start=_moment(start) if task.fixed is None else task.fixed.start,
                end=_moment(end) if task.fixed is None else task.fixed.end,
                spot=spot,
                joint=placement.laid.joints[index].joint,
                mix=0,
                person=placement.people[index],
                window=_window(placement.laid.joints[index]),
                air=air,
                poured=task.fixed is not None,
            )
            rows.append((label, coat))
    return rows


def _air(air: AirTimes, task: Task, legs: Sequence[tuple[str, int]], end: int) -> Air:
    known = task.coat.kind is CoatKind.LEAF or air.known(legs, end)
    return Air.KEPT if known else Air.UNKNOWN


def _window(joint: PlacedJoint) -> Window | None:
    if joint.trust is None or joint.opens is None:
        return None
    closes = None if joint.closes is None else _moment(joint.closes)
    return Window(opens=_moment(joint.opens), closes=closes, trust=joint.trust)


def _poured_of_unplanned(studio: Studio, coats: Iterable[_Labelled]) -> list[_Labelled]:
    """What was poured of pieces that found no place stays on their spots all the same."""
    there = {coat.piece for _, coat in coats}
    pours = (pour for pour in studio.poured if pour.piece not in there)
    return [("", coat) for coat in pours_as_planned(pours)]


def _numbered(coats: list[_Labelled]) -> tuple[PlannedCoat, ...]:
    """Numbers in the order of starts; coats of one mix share its number."""
    mixes: dict[str | int, int] = {}
    rows = []
    ordered = sorted(coats, key=lambda row: (row[1].start, row[1].piece))
    for number, (label, coat) in enumerate(ordered, start=1):
        mix = mixes.setdefault(number if coat.poured else label, len(mixes) + 1)
        rows.append(replace(coat, number=number, mix=mix))
    return tuple(rows)


def _steps(placer: Placer, placement: Placement) -> list[PlannedStep]:
    steps: list[PlannedStep] = []
    for index, piece in enumerate(placement.chain.pieces):
        for position in range(len(placement.chain.tasks)):
            steps += _sand_and_turn(placement, piece, position)
            steps += _awake_steps(placer, placement, piece, position)
        steps += [
            PlannedStep(
                kind=StepKind.PACK,
                piece=piece.key,
                start=_moment(pack.start),
                end=_moment(pack.end),
                person=pack.person,
            )
            for pack in placement.packed[index : index + 1]
        ]
    return steps


def _share(placement: Placement, piece: Piece, start: int, end: int) -> tuple[int, int]:
    """The part of work on twins that belongs to one of them, one after the other."""
    total = sum(twin.count for twin in placement.chain.pieces)
    at = placement.chain.pieces.index(piece)
    before = sum(twin.count for twin in placement.chain.pieces[:at])
    each = (end - start) // total
    return start + each * before, start + each * (before + piece.count)


def _sand_and_turn(placement: Placement, piece: Piece, position: int) -> list[PlannedStep]:
    task = placement.chain.tasks[position]
    if task.fixed is not None:
        return []
    steps = []
    start, person = placement.starts[position], placement.people[position]
    sand, sander = placement.laid.joints[position].sand, placement.sanders[position]
    if sand is not None and sander is not None:
        # A piece that has to be turned for this coat is turned to be sanded.
        turned = sand[0] + task.lead
        steps.append((StepKind.SAND, _share(placement, piece, turned, sand[1]), sander))
        start, person = turned, sander
    if task.turned:
        span = _share(placement, piece, start - task.lead, start)
        steps.append((StepKind.TURN, span, person))
    return [
        PlannedStep(
            kind=kind,
            piece=piece.key,
            start=_moment(span[0]),
            end=_moment(span[1]),
            person=person,
            coat=task.coat.key,
        )
        for kind, span, person in steps
    ]


def _awake_steps(
    placer: Placer, placement: Placement, piece: Piece, position: int
) -> list[PlannedStep]:
    chain, starts = placement.chain, placement.starts
    last = position + 1 == len(chain.tasks)
    before = ALWAYS if last else starts[position + 1] - chain.tasks[position + 1].lead
    times = placer.finisher.times(placement.laid)
    return _tape_and_trim(times, piece, position, starts[position], before)


def _steps_of_poured(placer: Placer, chain: Chain) -> list[PlannedStep]:
    times = ChainTimes(placer.means, chain, standing(chain, Ground("", ())), Allow())
    steps = []
    for position, task in enumerate(chain.tasks):
        if task.fixed is not None:
            start = int(task.fixed.start.timestamp())
            steps += _tape_and_trim(times, chain.pieces[0], position, start, ALWAYS)
    return steps


def _tape_and_trim(
    times: ChainTimes, piece: Piece, position: int, start: int, before: int
) -> list[PlannedStep]:
    task = times.task(position)
    steps = []
    for opens, closes in narrow_windows(task):
        found = times.awake_step(position, start, opens, closes, before)
        if found is not None:
            window = times.awake_window(position, start, opens, closes)
            steps.append(
                PlannedStep(
                    kind=_TAPE[opens],
                    piece=piece.key,
                    start=_moment(found[0]),
                    end=_moment(found[0] + times.tape_seconds),
                    person=found[1],
                    coat=task.coat.key,
                    opens=_moment(window[0]),
                    closes=None if window[1] >= ALWAYS else _moment(window[1]),
                )
            )
    return steps


def _readiness(placer: Placer, placement: Placement, piece: Piece) -> list[Readiness]:
    edges = placer.means.edges
    rows = []
    for stage in _READY:
        gates = _gates(placer, placement, piece, stage)
        likely, safe = (_reached(edges, gates, edge) for edge in (Edge.LIKELY, Edge.LATE))
        rows.append(Readiness(piece=piece.key, stage=stage, likely=likely, safe=safe))
    return rows


_Gate = tuple["Product", Stage | None, list[tuple[str, float]]]
"""The product of a coat, the stage that it has to reach (None: never), and where it is."""


def _gates(placer: Placer, placement: Placement, piece: Piece, wished: Stage) -> list[_Gate]:
    """What every coat of a piece has to reach: a stage, or the next later one on its sheet."""
    gates = []
    times, starts = placer.finisher.times(placement.laid), placement.starts
    for coat in gate_coats(placer.studio, piece, wished):
        index = piece.position(coat.key)
        task = placement.chain.tasks[index]
        legs = times.itinerary(starts, index, starts[index] + task.block)
        gates.append((task.product, gate_stage(task.product, wished), legs))
    return gates


def _reached(edges: Edges, gates: Iterable[_Gate], edge: Edge) -> datetime | None:
    """When all of them are reached; None when one never is."""
    latest = 0.0
    for product, stage, legs in gates:
        when = None if stage is None else edges.along(product, stage, edge, legs)
        if when is None:
            return None
        latest = max(latest, when)
    return _moment(latest)


def _outcome(studio: Studio, order: Order, packs: dict[str, datetime]) -> Outcome:
    due = order.due(studio.time_zone)
    if not all(key in packs for key in order.pieces):
        return Outcome(order=order.key, due=due, leaves=None)
    last = max(packs[key] for key in order.pieces)
    return Outcome(order=order.key, due=due, leaves=order.leaves(studio.time_zone, last))


def _moment(second: float) -> datetime:
    return datetime.fromtimestamp(second, UTC)
