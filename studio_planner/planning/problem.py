"""The problem that a plan solves: chains of coats, with block lengths and joints worked out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.amounts import attended_minutes, coat_grams, portion_room
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Unplanned
from studio_planner.craft.products import ProductKind
from studio_planner.craft.saying import saying
from studio_planner.craft.sheet_stages import (
    cover_stage,
    gate_coats,
    gate_stage,
    handle_stage,
    may_scuff,
    window_stages,
    window_unknown,
)
from studio_planner.craft.standing import done_steps, is_spoiled, lives_of, sanded_for
from studio_planner.planning.cannot_meet import cannot_meet
from studio_planner.planning.missing_figures import missing_figures
from studio_planner.planning.sanded import scuffed_at

if TYPE_CHECKING:
    from collections.abc import Collection, Iterator, Mapping
    from datetime import datetime

    from studio_planner.craft.log import Poured
    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.products import Product
    from studio_planner.craft.standing import Life, Step
    from studio_planner.craft.studio import Studio
    from studio_planner.science.stages import Stage

__all__ = [
    "Chain",
    "Task",
    "build_chains",
    "coat_mass",
    "cover_stage",
    "gate_coats",
    "gate_stage",
    "handle_stage",
    "missing_figures",
]


Kind = tuple[str, tuple[str, ...]]
"""The product and the colours of a coat: what coats of one mix have in common."""


@dataclass(frozen=True, slots=True)
class Task:
    """One coat of a chain: seconds of hands, and what it must wait for.

    `below` and `rests_on` are positions in the chain; `sheet_opens` and `sheet_closes` are the
    stages of the coat below that make this joint's window (None: no such edge). `has_window` is
    False where the sheet does not say when it closes; then only a scuffed joint is left.
    `stays` marks size whose sheet knows no handle: it keeps its spot until the next coat.
    `pinned` is the start that the maker wants for it, `sanded` when its joint was scuffed
    already [s since 1970 UTC]: such a joint waits for nothing but the dust. `done` is what was
    done to a poured coat since.
    """

    coat: Coat
    product: Product
    block: int
    lead: int
    turned: bool
    below: int | None
    rests_on: tuple[int, ...]
    sheet_opens: Stage | None
    sheet_closes: Stage | None
    has_window: bool
    may_scuff: bool
    may_test: bool
    bare_porous: bool
    stays: bool
    fixed: Poured | None
    pinned: int | None = None
    sanded: int | None = None
    done: frozenset[StepKind] = frozenset()

    def pinned_from(self, now: int) -> int | None:
        """When the maker wants it poured; a pin that has passed by `now` binds nobody."""
        return None if self.pinned is None or self.pinned < now else self.pinned

    @property
    def kind(self) -> Kind:
        """What it has in common with the coats that may share its mix."""
        return self.product.key, self.coat.colour_names

    @property
    def joint(self) -> Joint:
        """The joint as wished; bare where nothing lies below, scuffed where it was sanded."""
        if self.sanded is not None:
            return Joint.SCUFFED
        return Joint.BARE if self.below is None else self.coat.joint


@dataclass(frozen=True, slots=True)
class Chain:
    """A piece, or twins of one order that are coated together, with its tasks in order."""

    pieces: tuple[Piece, ...]
    tasks: tuple[Task, ...]
    order: Order | None
    first: int
    """The position of the first coat that is not poured yet."""

    @property
    def key(self) -> str:
        """The key of its first piece: no two chains have the same."""
        return self.pieces[0].key

    @property
    def hands(self) -> int:
        """Seconds of hands that are still to be given."""
        return sum(task.block + task.lead for task in self.tasks[self.first :])


def build_chains(studio: Studio, *, twins: bool) -> tuple[list[Chain], list[Unplanned]]:
    """Make the chains of a studio, and say which pieces cannot be planned as they are.

    With `twins`, pieces of one order whose stacks are alike go through the week together when
    each of their coats fits one mix.
    """
    chains: list[Chain] = []
    unplanned: list[Unplanned] = []
    lives = lives_of(studio)
    happenings = _Happened(done_steps(studio), sanded_for(studio))
    happened = {key for key, life in lives.items() if life}
    for group in _groups(studio, happened, twins=twins):
        faults = [*_spoiled(group, lives)] or [
            fault
            for piece in group
            for fault in (*cannot_meet(studio, piece), *missing_figures(studio, piece))
        ]
        if faults:
            unplanned += faults
        else:
            chains.append(_chain(studio, group, happenings))
    return chains, unplanned


def _spoiled(group: tuple[Piece, ...], lives: Mapping[str, Life]) -> Iterator[Unplanned]:
    """What was spoiled waits until the maker says what becomes of it."""
    for piece in group:
        if is_spoiled(lives.get(piece.key, ())):
            words = saying(
                "missing",
                "{piece} is spoiled; strip it in the log, or take it out.",
                piece=piece.name,
            )
            yield Unplanned(piece=piece.key, coat=None, reason=words)


def _groups(studio: Studio, alone: Collection[str], *, twins: bool) -> list[tuple[Piece, ...]]:
    """Pieces that go together; those that something has happened to go `alone`."""
    groups: list[list[Piece]] = []
    for piece in studio.pieces:
        together = twins and piece.key not in alone
        home = next((g for g in groups if together and _joins(studio, g, piece, alone)), None)
        if home is None:
            groups.append([piece])
        else:
            home.append(piece)
    return [tuple(group) for group in groups]


def _joins(studio: Studio, group: list[Piece], piece: Piece, alone: Collection[str]) -> bool:
    first = group[0]
    order = studio.order_of(piece.key)
    pinned = {pin.piece for pin in studio.pins}
    return (
        order is not None
        and first.key not in alone
        and pinned.isdisjoint({first.key, piece.key})
        and studio.order_of(first.key) is order
        and (piece.stack, piece.material) == (first.stack, first.material)
        and not studio.pours_of(piece.key)
        and not studio.pours_of(first.key)
        and len(group) < len(studio.spots)
        and all(
            sum(coat_mass(studio, p, coat) for p in (*group, piece)) <= mix_room(studio, coat)
            for coat in piece.stack
        )
    )


def coat_mass(studio: Studio, piece: Piece, coat: Coat) -> float:
    """The mixed mass of a coat in grams."""
    return coat_grams(piece, coat, studio.product(coat.product), studio.settings)


def mix_room(studio: Studio, coat: Coat) -> float:
    """The grams of a coat that are mixed at once: what coats that share a mix take at most."""
    return portion_room(coat, studio.product(coat.product), studio.settings)


class _Happened(NamedTuple):
    """Steps that were done, and when a piece was last sanded for a coat (both keys)."""

    steps: Collection[Step]
    sandings: Mapping[tuple[str, str], datetime]


def _chain(studio: Studio, group: tuple[Piece, ...], happened: _Happened) -> Chain:
    first = group[0]
    pours = {pour.coat: pour for pour in studio.pours_of(first.key)}
    tasks = tuple(
        _task(studio, group, index, pours.get(coat.key), happened)
        for index, coat in enumerate(first.stack)
    )
    return Chain(group, tasks, studio.order_of(first.key), len(pours))


def _task(
    studio: Studio,
    group: tuple[Piece, ...],
    index: int,
    fixed: Poured | None,
    happened: _Happened,
) -> Task:
    piece = group[0]
    coat = piece.stack[index]
    done = _done_for(piece, coat, happened)
    turned = piece.turned_before(index) and StepKind.TURN not in done
    sanded = scuffed_at(studio, piece, index, happened.sandings)
    product = studio.product(coat.product)
    count = sum(p.count for p in group)
    below = piece.below(index)
    waits = sanded is None
    opens, closes = window_stages(studio, piece, index) if waits else (None, None)
    lower = None if below is None else piece.stack[below]
    return Task(
        coat=coat,
        product=product,
        block=_block_seconds(studio, group, coat) if fixed is None else _length(fixed),
        lead=studio.settings.turn_minutes * count * 60 if turned else 0,
        turned=turned,
        below=below,
        rests_on=piece.rests_on(index),
        sheet_opens=opens,
        sheet_closes=closes,
        has_window=not waits or not window_unknown(studio, piece, index),
        may_scuff=waits and may_scuff(studio, piece, index),
        may_test=waits and _may_test(coat, lower),
        bare_porous=below is None and piece.material.porous,
        stays=handle_stage(product) is None and product.kind is not ProductKind.LEAF,
        fixed=fixed,
        pinned=_pinned(studio, piece, coat),
        sanded=sanded,
        done=done if fixed is not None else frozenset(),
    )


def _done_for(piece: Piece, coat: Coat, happened: _Happened) -> frozenset[StepKind]:
    return frozenset(kind for kind in StepKind if (kind, piece.key, coat.key) in happened.steps)


def _pinned(studio: Studio, piece: Piece, coat: Coat) -> int | None:
    pin = studio.pinned(piece.key, coat.key)
    return None if pin is None else round(pin.start.timestamp())


def _may_test(coat: Coat, lower: Coat | None) -> bool:
    return (
        lower is not None
        and coat.joint is not Joint.WET_IN_WET
        and (lower.sandable or lower.test_first)
    )


def _length(pour: Poured) -> int:
    return round((pour.end - pour.start).total_seconds())


def _block_seconds(studio: Studio, group: tuple[Piece, ...], coat: Coat) -> int:
    product = studio.product(coat.product)
    return 60 * attended_minutes([(piece, coat) for piece in group], product, studio.settings)
