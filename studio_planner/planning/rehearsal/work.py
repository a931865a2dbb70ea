"""The work of a plan in the order it begins: sanding, pours and packing, with their facts."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, TypeAlias

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind
from studio_planner.craft.products import ProductKind
from studio_planner.planning.problem import gate_coats, gate_stage, handle_stage
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from datetime import datetime

    from studio_planner.craft.log_legs import SpotLeg
    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan, PlannedCoat, PlannedStep
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class Layer:
    """A coat of the plan with what it waits for.

    `position` and `below` are positions in the stack (`below` is None on a bare face);
    `opens` and `closes` are stages of the coat below (None: no such edge), `handle` the stage
    of this coat at which the piece may leave its spot. `sands` says how many seconds it takes
    to sand the coat below, None when it can't be sanded. `told` are the seconds that the plan
    lets pass between the block below and the window, None without a window. `carried` are the
    places that the piece of a poured coat was brought to since, from when on [s], and
    `lies_on` is the spot that it is on last.
    """

    planned: PlannedCoat
    product: Product
    place: str
    position: int
    below: int | None
    rests_on: tuple[int, ...]
    opens: Stage | None
    closes: Stage | None
    handle: Stage | None
    sands: float | None
    told: float | None
    lies_on: str
    carried: tuple[tuple[str, float], ...] = ()

    @property
    def leaf(self) -> bool:
        """Whether it is leaf, which has no film to wait for."""
        return self.product.kind is ProductKind.LEAF


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """Coats that are put on from one mix; `lead` [s] of turning comes before `start` [s]."""

    start: float
    end: float
    lead: float
    person: str
    layers: tuple[Layer, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Sanding:
    """The coat below a layer is sanded from `start` to `end` [s]."""

    start: float
    end: float
    person: str
    layer: Layer


@dataclass(frozen=True, slots=True, kw_only=True)
class Packing:
    """A piece is packed once its coats have reached the gate of its order.

    `gates` are (position of the coat, product, stage). `told` are the seconds that the plan
    lets pass between the latest block and the gate, None where it does not say.
    """

    start: float
    end: float
    person: str
    piece: str
    gates: tuple[tuple[int, Product, Stage], ...]
    told: float | None


Work: TypeAlias = Block | Sanding | Packing


def work_of(studio: Studio, plan: Plan) -> list[Work]:
    """What is left to do of a plan, in the order of its starts."""
    ends = {(coat.piece, coat.coat): coat.end for coat in plan.coats}
    layers = [layer_of(studio, coat, ends) for coat in plan.coats if not coat.poured]
    steps: _Steps = {}
    for step in plan.steps:
        steps.setdefault((step.kind, step.piece, step.coat), []).append(step)
    work: list[Work] = [
        *_blocks(steps, layers),
        *_sandings(steps, layers),
        *_packings(studio, plan),
    ]
    return sorted(work, key=lambda one: (one.start, one.end))


def layer_of(
    studio: Studio, planned: PlannedCoat, ends: Mapping[tuple[str, str], datetime]
) -> Layer:
    """The facts of one coat of the plan; `ends` tells when each of its blocks ends."""
    piece = studio.piece(planned.piece)
    position = piece.position(planned.coat)
    below = piece.below(position)
    product = studio.product(piece.stack[position].product)
    lower = None if below is None else studio.product(piece.stack[below].product)
    opens, closes = (None, None) if lower is None else _window(planned.joint, lower)
    sands = told = None
    if below is not None and planned.window is not None:
        done = ends.get((piece.key, piece.stack[below].key), planned.window.opens)
        told = (planned.window.opens - done).total_seconds()
    if below is not None and lower is not None and piece.stack[below].sandable:
        seconds = 60.0 * studio.settings.sand_minutes * piece.count
        sands = seconds if lower.figures(Stage.SANDABLE) else None
    return Layer(
        planned=planned,
        product=product,
        place=studio.place_of_spot(planned.spot).key,
        position=position,
        below=below,
        rests_on=piece.rests_on(position),
        opens=opens,
        closes=closes,
        handle=handle_stage(product),
        sands=sands,
        told=told,
        lies_on=planned.spot,
    )


def poured_layer(
    studio: Studio,
    planned: PlannedCoat,
    ends: Mapping[tuple[str, str], datetime],
    legs: Sequence[SpotLeg],
) -> Layer:
    """As `layer_of`, for a coat that is poured; `legs` tell where its piece was since."""
    first, *later = [(studio.place_of_spot(spot).key, at.timestamp()) for spot, at in legs]
    layer = layer_of(studio, planned, ends)
    return replace(layer, place=first[0], carried=tuple(later), lies_on=legs[-1][0])


def _window(joint: Joint, below: Product) -> tuple[Stage | None, Stage | None]:
    """The stages between which a joint to the coat below is made, as far as its sheet tells."""

    def told(*stages: Stage) -> Stage | None:
        return next((stage for stage in stages if below.figures(stage)), None)

    if joint is Joint.WET_IN_WET:
        return None, told(Stage.WORKING_TIME)
    if joint is Joint.IN_WINDOW:
        return told(Stage.RECOAT_OPENS), told(Stage.RECOAT_CLOSES)
    if joint is Joint.ON_DRY:
        return told(Stage.RECOAT_OPENS, Stage.TACK_FREE), told(Stage.RECOAT_CLOSES)
    return None, None


_Steps: TypeAlias = "dict[tuple[StepKind, str, str | None], list[PlannedStep]]"


def _blocks(steps: _Steps, layers: list[Layer]) -> list[Block]:
    mixes: dict[tuple[int, float, str], list[Layer]] = {}
    for layer in layers:
        coat = layer.planned
        key = coat.mix, coat.start.timestamp(), coat.person
        mixes.setdefault(key, []).append(layer)
    return [
        Block(
            start=start,
            end=max(layer.planned.end.timestamp() for layer in mixed),
            lead=max(_lead(steps, layer) for layer in mixed),
            person=person,
            layers=tuple(mixed),
        )
        for (_, start, person), mixed in mixes.items()
    ]


def _lead(steps: _Steps, layer: Layer) -> float:
    """Seconds of turning before a pour; a piece that is to be sanded is turned for that."""
    if _steps_of(steps, StepKind.SAND, layer):
        return 0.0
    starts = [step.start for step in _steps_of(steps, StepKind.TURN, layer)]
    return (layer.planned.start - min(starts)).total_seconds() if starts else 0.0


def _sandings(steps: _Steps, layers: list[Layer]) -> list[Sanding]:
    found = []
    for layer in layers:
        turns = [step.start for step in _steps_of(steps, StepKind.TURN, layer)]
        for step in _steps_of(steps, StepKind.SAND, layer):
            start = min([step.start, *turns])
            found.append(
                Sanding(
                    start=start.timestamp(),
                    end=step.end.timestamp(),
                    person=step.person,
                    layer=layer,
                )
            )
    return found


def _steps_of(steps: _Steps, kind: StepKind, layer: Layer) -> list[PlannedStep]:
    return steps.get((kind, layer.planned.piece, layer.planned.coat), [])


def _packings(studio: Studio, plan: Plan) -> list[Packing]:
    found = []
    ends: dict[str, datetime] = {}
    for coat in plan.coats:
        ends[coat.piece] = max(coat.end, ends.get(coat.piece, coat.end))
    safe = {(row.piece, row.stage): row.safe for row in plan.ready}
    for step in plan.steps:
        order = studio.order_of(step.piece)
        if step.kind is StepKind.PACK and order is not None:
            ready = safe.get((step.piece, order.gate.stage))
            done = ends.get(step.piece, step.start)
            found.append(
                Packing(
                    start=step.start.timestamp(),
                    end=step.end.timestamp(),
                    person=step.person,
                    piece=step.piece,
                    gates=_gates(studio, order, step.piece),
                    told=None if ready is None else (ready - done).total_seconds(),
                )
            )
    return found


def _gates(studio: Studio, order: Order, key: str) -> tuple[tuple[int, Product, Stage], ...]:
    piece = studio.piece(key)
    gates = []
    for coat in gate_coats(studio, piece, order.gate.stage):
        product = studio.product(coat.product)
        stage = gate_stage(product, order.gate.stage)
        if stage is not None:
            gates.append((piece.position(coat.key), product, stage))
    return tuple(gates)
