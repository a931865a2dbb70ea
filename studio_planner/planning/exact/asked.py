"""Which stage times a coat is asked for by what follows it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.planning.exact.reaches import Reach, not_after, not_before
from studio_planner.planning.placing.chain_times import narrow_windows
from studio_planner.planning.problem import cover_stage, gate_coats, gate_stage
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Allow
    from studio_planner.planning.problem import Chain, Task


@dataclass(frozen=True, slots=True)
class Joining:
    """The edges of one window that a joint may stand in.

    `closes` is for the start of a block by itself; `closes_mixed` for the end of a longer one.
    """

    opens: Reach | None
    closes: Reach | None
    closes_mixed: Reach | None

    @property
    def reaches(self) -> list[Reach]:
        """All that there are."""
        found = (self.opens, self.closes, self.closes_mixed)
        return [reach for reach in found if reach is not None]


def joining(task: Task, lengths: Sequence[int], *, likely: bool) -> Joining:
    """The safe window of a joint, or the likely one; `lengths` [s] are those of its block."""
    opening = Edge.LIKELY if likely else Edge.LATE
    closing = Edge.LIKELY if likely else Edge.EARLY
    opens = None if task.sheet_opens is None else not_before(task.sheet_opens, opening)
    stage, mixed = task.sheet_closes, len(lengths) > 1
    if stage is None:
        return Joining(opens, None, None)
    return Joining(
        opens,
        not_after(stage, closing, lengths[0]),
        replace(not_after(stage, closing), mixed=True) if mixed else None,
    )


def gates_of(studio: Studio, chain: Chain) -> dict[int, Stage]:
    """The coats that hold a chain's gate closed, each with the stage that it waits for."""
    if chain.order is None:
        return {}
    piece, wished = chain.pieces[0], chain.order.gate.stage
    found = {}
    for coat in gate_coats(studio, piece, wished):
        index = piece.position(coat.key)
        stage = gate_stage(chain.tasks[index].product, wished)
        if stage is not None:
            found[index] = stage
    return found


class Asked:
    """What is asked of each coat of a chain, given which joints are allowed."""

    def __init__(self, studio: Studio, chain: Chain, allow: Allow, tape_seconds: int) -> None:
        """Look at one chain."""
        self.chain = chain
        self.gates = gates_of(studio, chain)
        self._allow = allow
        self._tape_seconds = tape_seconds

    def tests(self, task: Task) -> bool:
        """Whether a joint may rely on a touch test."""
        return self._allow.test_first and task.may_test

    def scuffs(self, task: Task) -> bool:
        """Whether a joint may be scuffed."""
        return self._allow.scuff and task.may_scuff

    def joinings(self, task: Task, lengths: Sequence[int]) -> Iterator[tuple[bool, Joining]]:
        """The windows that a joint may stand in; True for those to be tested first."""
        if task.below is not None and task.has_window:
            yield False, joining(task, lengths, likely=False)
            if self.tests(task):
                yield True, joining(task, lengths, likely=True)

    def of(self, index: int, lengths: Mapping[int, Sequence[int]]) -> list[Reach]:
        """All reaches of a coat; `lengths` are the blocks [s] that each coat may have."""
        product = self.chain.tasks[index].product
        found = [not_before(Stage.HANDLE)]
        cover = cover_stage(product)
        if cover is not None:
            found.append(not_before(cover))
        if index in self.gates:
            found.append(not_before(self.gates[index]))
        for opens, closes in narrow_windows(self.chain.tasks[index]):
            found += [not_before(opens), not_after(closes, extra=self._tape_seconds)]
        for later in range(index + 1, len(self.chain.tasks)):
            found += self._by_later(index, later, lengths[later])
        return list(dict.fromkeys(found))

    def _by_later(self, index: int, later: int, lengths: Sequence[int]) -> Iterator[Reach]:
        task = self.chain.tasks[later]
        if index in task.rests_on or later == self.chain.first:
            yield not_before(Stage.HANDLE, extra=task.lead)
        if task.below != index:
            return
        for _, window in self.joinings(task, lengths):
            yield from window.reaches
        if self.scuffs(task):
            yield not_before(Stage.SANDABLE)
