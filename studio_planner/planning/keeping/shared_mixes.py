"""Mixes that coats of several chains of a kept plan share, and the blocks they make."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import attended_minutes, portions_for
from studio_planner.planning.problem import coat_mass, mix_room

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.problem import Chain, Task


@dataclass(frozen=True, slots=True)
class SharedMix:
    """One mix of several chains: its name, the seconds of its block, and whose coats it is for.

    `members` are the key of each chain's first piece and the position of its coat.
    """

    label: str
    block: int
    members: tuple[tuple[str, int], ...]


def shared_mixes(
    studio: Studio, kept: KeptPlan, chains: Sequence[Chain]
) -> tuple[SharedMix, ...]:
    """The mixes that chains share in a kept plan, and that may still be shared."""
    poured_from: dict[int, list[tuple[Chain, int]]] = defaultdict(list)
    for chain in chains:
        for index in range(chain.first, len(chain.tasks)):
            row = kept.coat(chain, index)
            if row is not None:
                poured_from[row.mix].append((chain, index))
    return tuple(
        SharedMix(
            label=f"mix {number}",
            block=_block(studio, rows),
            members=tuple((chain.key, index) for chain, index in rows),
        )
        for number, rows in poured_from.items()
        if len(rows) > 1 and _one_mix(studio, kept, rows)
    )


def _one_mix(studio: Studio, kept: KeptPlan, rows: list[tuple[Chain, int]]) -> bool:
    """Tell whether coats that were planned together can still come out of one mix."""
    tasks = [chain.tasks[index] for chain, index in rows]
    planned = [kept.coat(chain, index) for chain, index in rows]
    alike = {
        (task.kind, row.start if row else None)
        for task, row in zip(tasks, planned, strict=True)
    }
    room = mix_room(studio, tasks[0].coat)
    return len(alike) == 1 and portions_for(_grams(studio, rows), room) == 1


def _grams(studio: Studio, rows: Iterable[tuple[Chain, int]]) -> float:
    return sum(
        coat_mass(studio, piece, chain.tasks[index].coat)
        for chain, index in rows
        for piece in chain.pieces
    )


def _block(studio: Studio, rows: list[tuple[Chain, int]]) -> int:
    coats = [
        (piece, chain.tasks[index].coat) for chain, index in rows for piece in chain.pieces
    ]
    product = studio.product(coats[0][1].product)
    return 60 * attended_minutes(coats, product, studio.settings)


def labels_of(chain: Chain, mixes: Iterable[SharedMix]) -> tuple[str, ...]:
    """The names of the mixes that a chain's coats share; empty when it shares none."""
    key = chain.key
    shared = {i: mix.label for mix in mixes for piece, i in mix.members if piece == key}
    return tuple(shared.get(i, "") for i in range(len(chain.tasks))) if shared else ()


def with_shared_blocks(chain: Chain, mixes: Iterable[SharedMix]) -> Chain:
    """The chain with the blocks of the mixes that its coats share."""
    key = chain.key
    blocks = {i: mix.block for mix in mixes for piece, i in mix.members if piece == key}
    if not blocks:
        return chain
    return replace(
        chain,
        tasks=tuple(
            _lasting(task, blocks[i]) if i in blocks else task
            for i, task in enumerate(chain.tasks)
        ),
    )


def _lasting(task: Task, block: int) -> Task:
    return replace(task, block=block)
