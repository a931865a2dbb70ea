"""The chains that a model places, one lane each, and what is settled around them."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from studio_planner.planning.placing.chain_times import Ground
from studio_planner.planning.placing.placements import Laid, Placement
from studio_planner.planning.worth import mix_label

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.planning.problem import Chain, Kind

Spans = list[tuple[int, int]]
"""Seconds from..to."""


Pour = tuple["Kind", int]
"""What a coat is poured from, and when [s]."""


@dataclass(frozen=True, slots=True)
class Lane:
    """A chain, and its coats as they are placed so far; None: not yet."""

    chain: Chain
    placed: Placement | None

    @property
    def key(self) -> str:
        """The key of its first piece: no two lanes have the same."""
        return self.chain.key

    @property
    def new_coats(self) -> int:
        """How many of its coats are still to be poured."""
        return len(self.chain.tasks) - self.chain.first

    @property
    def pours(self) -> list[Pour]:
        """Its coats that are still to be poured, where they are placed."""
        if self.placed is None:
            return []
        rows = list(zip(self.chain.tasks, self.placed.starts, strict=True))
        return [(task.kind, start) for task, start in rows[self.chain.first :]]


@dataclass(slots=True)
class Settled:
    """What other lanes take and a model cannot change, in seconds.

    `hands` by person, `spots` by spot; `wet` uncovered work and `sanding`. What is poured is
    `lying` on its spot (by spot), perhaps with other poured work: that breaks no rule.
    """

    hands: dict[str, Spans] = field(default_factory=dict)
    spots: dict[str, Spans] = field(default_factory=dict)
    lying: dict[str, Spans] = field(default_factory=dict)
    wet: Spans = field(default_factory=list)
    sanding: Spans = field(default_factory=list)


def lanes_of(
    placed: Iterable[Placement], left_out: Iterable[Chain], alone: Sequence[Chain]
) -> list[Lane]:
    """A lane for each piece; twins that were placed together share their mixes by name.

    Twins that are turned or sanded together stay one lane. `left_out` are chains that found no
    place, `alone` the chains of all single pieces.
    """
    single = {chain.key: chain for chain in alone}
    lanes = [lane for placement in placed for lane in _apart(placement, single)]
    lanes += [Lane(single[p.key], None) for chain in left_out for p in chain.pieces]
    position = {key: at for at, key in enumerate(single)}
    return sorted(lanes, key=lambda lane: position[lane.key])


def _apart(placement: Placement, single: dict[str, Chain]) -> list[Lane]:
    chain = placement.chain
    if len(chain.pieces) == 1:
        return [Lane(single[chain.key], placement)]
    turned = any(task.lead for task in chain.tasks[chain.first :])
    if turned or any(joint.sand for joint in placement.laid.joints):
        return [Lane(chain, placement)]
    return [
        _one_twin(placement, index, single[piece.key])
        for index, piece in enumerate(chain.pieces)
    ]


def _one_twin(placement: Placement, index: int, single: Chain) -> Lane:
    """One of several twins as a piece of its own, in the blocks that it shares with them."""
    laid = placement.laid
    tasks = tuple(
        replace(own, block=shared.block)
        for own, shared in zip(single.tasks, laid.chain.tasks, strict=True)
    )
    own = Laid(
        chain=replace(single, tasks=tasks),
        grounds=tuple(Ground(g.place, g.spots[index : index + 1]) for g in laid.grounds),
        starts=laid.starts,
        joints=laid.joints,
        mixes=tuple(mix_label(placement, at) for at in range(len(laid.starts))),
    )
    packed = placement.packed[index : index + 1]
    last = packed[-1].end if packed else placement.score[4]
    score = (*placement.score[:4], last)
    return Lane(single, replace(placement, laid=own, packed=packed, score=score))
