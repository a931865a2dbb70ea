"""The parts of an exact model while it is built: unknowns of lanes, and what they take."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from studio_planner.planning.exact.reaches import MINUTE
from studio_planner.planning.exact.started import StartedModel
from studio_planner.planning.exact.unknowns import CoatMaker

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.choices import AlikeHands, AlikeSpots
    from studio_planner.planning.exact.coat_unknowns import CoatUnknowns
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.exact.rooms import LaneRoom
    from studio_planner.planning.exact.sharing import Coat
    from studio_planner.planning.solver import Flag, Quantity, Span, Unknown


@dataclass(frozen=True, slots=True)
class HoursUnknowns:
    """Somebody's hours in which work may begin, from one slot to another, with their flag."""

    hands: AlikeHands
    first: int
    last: int
    chosen: Flag


@dataclass(slots=True)
class WorkUnknowns:
    """Sanding or packing: its slot, its length in slots, and the hours that it may begin in."""

    start: Quantity
    slots: int
    hours: list[HoursUnknowns]


@dataclass(frozen=True, slots=True)
class MixUnknowns:
    """What the solver has to find for one mix: whether it is made, when, and who is poured.

    `start`, `slots` and `end` of its block on the grid, and its `minutes`; `lasting` are its
    lengths [s], the shortest first, and `by` its hands with the flag that chooses each; `first`
    is the first slot for the shortest.
    """

    used: Flag
    start: Unknown
    minutes: Quantity
    slots: Quantity
    end: Quantity
    first: int
    lasting: Sequence[tuple[int, Flag]]
    by: Sequence[tuple[AlikeHands, Flag]]
    poured: dict[Coat, Flag]


@dataclass(slots=True)
class JointUnknowns:
    """How a coat meets the one below: the flag of each way, and the sanding if scuffed."""

    safe: Flag | None = None
    tested: Flag | None = None
    scuffed: Flag | None = None
    sanding: WorkUnknowns | None = None


@dataclass(slots=True)
class LaneUnknowns:
    """A lane in the model: its coats, joints, and packing."""

    room: LaneRoom
    coats: list[CoatUnknowns]
    joints: dict[int, JointUnknowns] = field(default_factory=dict)
    packs: list[WorkUnknowns] = field(default_factory=list)


@dataclass(slots=True)
class Goals:
    """Each goal as a quantity to be made small; times in seconds, ends in minutes."""

    late: Quantity = 0
    scuffed: Quantity = 0
    tested: Quantity = 0
    moved: Quantity = 0
    spare: Quantity = 0
    mixes: Quantity = 0
    ends: Quantity = 0


@dataclass(frozen=True, slots=True)
class Busy:
    """Work of some hands: never begun before the slot `first`, always over by `until`."""

    span: Span
    first: int
    until: int


@dataclass(slots=True)
class Lying:
    """Poured work that is on its spot from one slot until another.

    It is a fact even where other poured work is. Where the flag `stays` is set the next coat
    goes on there, and needs the spot for itself from its start on.
    """

    since: int
    until: Quantity
    stays: Flag | None = None
    goes_on: Quantity = 0


class Draft:
    """A model in the making."""

    def __init__(self, frame: Frame, *, to_the_minute: bool = False) -> None:
        """Start with nothing; longer blocks end `to_the_minute`, or are taken to the slot.

        To the slot there are fewer lines, and all that the model holds for possible is so; but
        what it holds for best may be a slot worse than the best.
        """
        self.frame = frame
        self.grid = frame.grid
        self.model = StartedModel()
        unit = MINUTE if to_the_minute else frame.grid.step
        self.maker = CoatMaker(self.model, frame.choices, frame.reaches, unit)
        self.yes = self.maker.yes
        self.goals = Goals()
        self.lanes: list[LaneUnknowns] = []
        self.together: dict[tuple[Coat, Coat], Flag] = {}
        """Who leads and who follows from the same mix, with the flag that says so."""
        self.in_turn: list[MixUnknowns] = []
        """The mixes that coats are poured from, where they are unknowns of their own."""
        self.busy: dict[AlikeHands, list[Busy]] = {one: [] for one in frame.choices.hands}
        self.held: dict[AlikeSpots, list[tuple[Span, int]]] = {
            one: [] for one in frame.choices.spots
        }
        self.lying: dict[str, list[Lying]] = defaultdict(list)
        """What is poured of the lanes, by the spot that it is on."""
        self.wet: list[Span] = []
        self.sandings: list[Span] = []

    def coat(self, coat: Coat) -> CoatUnknowns:
        """A coat by its position."""
        return self.lanes[coat[0]].coats[coat[1]]

    def flags(self, *flags: Flag) -> list[Flag]:
        """Those of some flags that are not always set."""
        return self.maker.flags(*flags)

    def span(self, start: Quantity, slots: Quantity, *when: Flag) -> Span:
        """A stretch of time of known or unknown length, there when all the flags are set."""
        if isinstance(slots, int):
            return self._there(start, slots, start + slots, when)
        length = self.model.between(0, self.frame.reaches.far)
        end = self.model.between(0, 2 * self.frame.reaches.far)
        self.model.equal(length, slots)
        return self._there(start, length, end, when)

    def span_until(self, start: Quantity, until: Quantity, *when: Flag) -> Span:
        """A stretch of time from one slot to another, there when all the flags are set."""
        length = self.model.between(0, 3 * self.frame.reaches.far)
        return self._there(start, length, until, when)

    def _there(
        self, start: Quantity, slots: Quantity, end: Quantity, when: tuple[Flag, ...]
    ) -> Span:
        there = self.flags(*when)
        if not there:
            return self.model.span(start, slots, end)
        return self.model.span(start, slots, end, self.all_of(there))

    def all_of(self, flags: list[Flag]) -> Flag:
        """A flag that is set when all of some are."""
        if len(flags) == 1:
            return flags[0]
        both = self.model.flag()
        for flag in flags:
            self.model.some([flag], [both])
        self.model.some([both, *(~flag for flag in flags)])
        return both

    def never(self) -> None:
        """Say that the model has no answer."""
        self.model.some([~self.yes])
