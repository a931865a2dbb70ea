"""Where the coats of a freed lane may start: near where they are, or where they were before."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.worth import MOVED_SECONDS

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.planning.exact.draft import LaneUnknowns
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.solver import Model

_DAY = 86_400

Slots = tuple[int, int]


class Around:
    """The slots in which each coat of a placed lane may start; a lane without has all."""

    def __init__(
        self,
        frame: Frame,
        lane: Lane,
        days: float | None,
        *,
        back: bool,
        whole: WorkingDays | None = None,
    ) -> None:
        """Look so many days around each start, and `back` to where the plan before had it.

        Or all through the day of each, where `whole` ones are given.
        """
        self._slots: dict[int, list[Slots]] = {}
        if whole is not None and lane.placed is not None:
            self._slots = _days(frame, lane, whole)
            return
        if days is None or lane.placed is None:
            return
        around = int(days * _DAY // frame.grid.step)
        for at, start in enumerate(lane.placed.starts):
            slot = frame.grid.down(start)
            self._slots[at] = [(slot - around, slot + around)]
            if back:
                self._slots[at] += _before(frame, lane, at)

    @property
    def hull(self) -> Mapping[int, Slots]:
        """From the first to the last slot of each coat."""
        return {
            at: (min(first for first, _ in slots), max(last for _, last in slots))
            for at, slots in self._slots.items()
        }

    def keep(self, model: Model, lane: LaneUnknowns) -> None:
        """Keep the coats of a lane in a model out of what lies between their stretches."""
        for at, slots in self._slots.items():
            coat = lane.coats[at]
            if len(slots) > 1 and coat.known_start is None and at not in lane.room.settled:
                model.inside(coat.start, slots)


def _days(frame: Frame, lane: Lane, whole: WorkingDays) -> dict[int, list[Slots]]:
    """The slots of the day of each new coat of a placed lane."""
    assert lane.placed is not None  # noqa: S101 - asked only for such
    found = {}
    for at, start in list(enumerate(lane.placed.starts))[lane.chain.first :]:
        first, last = whole.starts(whole.of(start))
        found[at] = [(frame.grid.up(first), frame.grid.down(last))]
    return found


def _before(frame: Frame, lane: Lane, at: int) -> list[Slots]:
    """The slots in which a coat counts as where the plan before had it."""
    coat, allowed = lane.chain.tasks[at].coat.key, MOVED_SECONDS // frame.grid.step
    known = [frame.before.get((piece.key, coat)) for piece in lane.chain.pieces]
    slots = [frame.grid.down(start) for start in known if start is not None]
    return [(slot - allowed, slot + allowed) for slot in slots]
