"""One coat in the exact model: its start, block, spot, hands, and the lines that follow."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from itertools import chain as joined_lists
from typing import TYPE_CHECKING, TypeVar

from studio_planner.planning.exact.choices import AlikeHands, AlikeSpots, clipped
from studio_planner.planning.exact.grid import joined_slots
from studio_planner.planning.exact.lines import SCALE
from studio_planner.planning.exact.reaches import MINUTE, Part, Reach
from studio_planner.planning.spans import common

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.choices import Choices
    from studio_planner.planning.exact.reaches import Reaches
    from studio_planner.planning.problem import Task
    from studio_planner.planning.solver import Flag, Model, Quantity
    from studio_planner.planning.spans import Stretches


_Thing = TypeVar("_Thing")


@dataclass(slots=True)
class CoatUnknowns:
    """What the solver has to find for one coat; of a poured or settled one all is known.

    `start` in slots, `minutes` of the block; `on`, `by` and `lasting` are its spots, hands and
    lengths with the flag that chooses each (always set where there is but one).
    """

    task: Task
    start: Quantity
    minutes: Quantity
    on: list[tuple[AlikeSpots, Flag]]
    by: list[tuple[AlikeHands, Flag]] = field(default_factory=list)
    lasting: list[tuple[int, Flag]] = field(default_factory=list)
    parts: list[tuple[Part, Flag]] = field(default_factory=list)
    end: Quantity = 0
    end_parts: list[tuple[Part, Flag]] = field(default_factory=list)
    """The slot in which a block of several lengths is over, and the parts of such slots."""
    window: tuple[int, int] = (0, 0)
    """The slots in which it may start."""
    known_start: int | None = None
    """The second at which a coat of which all is known is started."""
    place: str = ""
    """What clocks are asked for as the place of such a coat."""
    since: Quantity = 0
    """The slot from which it is on its spot."""

    @property
    def alone(self) -> Flag:
        """Set when its block is as long as it is by itself."""
        return self.lasting[0][1]

    def slots(self, step: int, more: int = 0) -> Quantity:
        """The slots that its block, and some seconds more, reach into."""
        if len(self.lasting) == 1:
            return -(-(self.lasting[0][0] + more) // step)
        total: Quantity = 0
        for seconds, flag in self.lasting:
            total += -(-(seconds + more) // step) * flag
        return total


class CoatMaker:
    """Makes the unknowns of coats, and what follows from their starts."""

    def __init__(self, model: Model, choices: Choices, reaches: Reaches) -> None:
        """Add to a model."""
        self.model = model
        self._reaches = reaches
        self.grid = choices.grid
        self.yes = model.yes

    def known(
        self, task: Task, where: AlikeSpots, start: int, way: str, since: int
    ) -> CoatUnknowns:
        """A coat of which nothing is unknown: it is poured, or stays where it is planned.

        It was begun at `start`, is on its spot from `since` on [s], and cures along a `way`,
        which is the place of its spot if it was carried nowhere.
        """
        slot = self.grid.down(start)
        return CoatUnknowns(
            task=task,
            start=slot,
            minutes=task.block // MINUTE,
            on=[(where, self.yes)],
            lasting=[(task.block, self.yes)],
            window=(slot, slot),
            known_start=start,
            place=way,
            since=self.grid.down(since),
        )

    def free(
        self,
        task: Task,
        places: Sequence[AlikeSpots],
        starts: dict[tuple[str, AlikeHands, int], Stretches],
        asked: Sequence[tuple[str, Reach]],
        window: tuple[int, int],
    ) -> CoatUnknowns:
        """A coat to be placed within a window of slots; `starts` are all that it ever has."""
        full = joined_slots(joined_lists.from_iterable(starts.values()))
        starts = {key: clipped(found, *window) for key, found in starts.items()}
        whole = joined_slots(joined_lists.from_iterable(starts.values()))
        hands = list(dict.fromkeys(key[1] for key in starts))
        lengths = list(dict.fromkeys(key[2] for key in starts))
        if not whole:
            self.model.some([~self.yes])
        start = self.model.among(whole or [(0, 0)])
        coat = CoatUnknowns(
            task=task,
            start=start,
            minutes=0,
            on=self.one_of(places),
            by=self.one_of(hands),
            since=start,
            lasting=self.one_of(lengths),
            window=(whole[0][0], whole[-1][1]) if whole else (0, 0),
        )
        coat.minutes = sum(seconds // MINUTE * flag for seconds, flag in coat.lasting)
        if len(lengths) == 1:
            coat.minutes = lengths[0] // MINUTE
        self._bind_starts(coat, starts, whole)
        parts = self._parts_of(coat, asked, full, whole)
        coat.parts = self._bound(start, parts)
        if len(lengths) > 1 and whole:
            self._bind_end(coat, asked, full, whole)
        return coat

    def _bind_end(
        self,
        coat: CoatUnknowns,
        asked: Sequence[tuple[str, Reach]],
        full: Stretches,
        whole: Stretches,
    ) -> None:
        """What waits for longer blocks looks at the slot in which they end."""
        slots = [-(-seconds // self.grid.step) for seconds, _ in coat.lasting]
        shortest, longest = min(slots), max(slots)
        ends, left = (
            joined_slots((first + shortest, last + longest) for first, last in stretches)
            for stretches in (full, whole)
        )
        coat.end = self.model.among(left)
        self.model.equal(coat.end, coat.start + coat.slots(self.grid.step))
        mixed = [(place, replace(reach, mixed=True)) for place, reach in asked if reach.opens]
        coat.end_parts = self._bound(coat.end, self._parts_of(coat, mixed, ends, left))

    def one_of(self, things: Sequence[_Thing]) -> list[tuple[_Thing, Flag]]:
        """Things with the flag that chooses each; one of them is chosen."""
        if len(things) == 1:
            return [(things[0], self.yes)]
        rows: list[tuple[_Thing, Flag]] = [(thing, self.model.flag()) for thing in things]
        self.model.exactly_one(flag for _, flag in rows)
        return rows

    def _bind_starts(
        self,
        coat: CoatUnknowns,
        starts: dict[tuple[str, AlikeHands, int], Stretches],
        whole: Stretches,
    ) -> None:
        """Only starts that the chosen place, hands and length have."""
        for spots, on in coat.on:
            for hands, by in coat.by:
                for seconds, lasts in coat.lasting:
                    found = starts[spots.place, hands, seconds]
                    when = [flag for flag in (on, by, lasts) if flag is not self.yes]
                    if found == whole:
                        continue
                    if found:
                        self.model.inside(coat.start, found, when)
                    else:
                        self.model.some([~flag for flag in when])

    def _parts_of(
        self,
        coat: CoatUnknowns,
        asked: Sequence[tuple[str, Reach]],
        full: Stretches,
        whole: Stretches,
    ) -> list[Part]:
        """The parts of all stretches, cut back to the starts that are left."""
        lengths = [seconds for seconds, _ in coat.lasting]
        low, high = whole[0][0], whole[-1][1]
        parts = []
        for stretch in full:
            if stretch[1] < low or stretch[0] > high:
                continue
            for part in self._reaches.parts(coat.task.product, asked, lengths, stretch):
                left = common(whole, [(part.first, part.last)])
                if left:
                    parts.append(Part(left[0][0], left[-1][1], part.lines))
        return parts

    def _bound(self, slot: Quantity, parts: Sequence[Part]) -> list[tuple[Part, Flag]]:
        """Parts with the flag that says that a slot lies in them."""
        rows = self.one_of(parts)
        if len(parts) > 1:
            self.model.at_least(slot, sum(part.first * flag for part, flag in rows))
            self.model.at_least(sum(part.last * flag for part, flag in rows), slot)
        return rows

    # What follows from a coat

    def waits_for(
        self,
        later: Quantity,
        coat: CoatUnknowns,
        reach: Reach,
        when: Sequence[Flag] = (),
        never_before: int = -1,
    ) -> None:
        """`later` (a slot) is not before a reach of the coat, when all flags are set.

        It is known that `later` is never before some slot: what is earlier needs no saying.
        """
        if coat.known_start is not None:
            slot = self._slot(coat, reach, coat.known_start)
            self.model.at_least(later, slot, when)
            return
        alone = coat.lasting[0][0] // MINUTE
        end = self.grid_minutes(coat.start) + alone
        own = [] if coat.alone is self.yes else [coat.alone]
        self._after_lines(later, coat, reach, (end, alone, never_before), [*when, *own])
        if own:
            mixed = replace(reach, mixed=True)
            known = (coat.end, 0, never_before)
            self._after_lines(later, coat, mixed, known, [*when, ~coat.alone])

    def _after_lines(
        self,
        later: Quantity,
        coat: CoatUnknowns,
        reach: Reach,
        known: tuple[Quantity, int, int],
        when: Sequence[Flag],
    ) -> None:
        """Over the end of the block; known are its longest, and the first slot of `later`."""
        end, longest, never_before = known
        scaled = SCALE * later
        for spots, on in coat.on:
            for part, flag in coat.end_parts if reach.mixed else coat.parts:
                line = part.lines[spots.place, reach]
                last = part.last if reach.mixed else self.grid_minutes_of(part.last)
                if line.up(last + longest) <= never_before:
                    continue
                flags = [*when, *(one for one in (on, flag) if one is not self.yes)]
                self.model.at_least(scaled, line.rise * end + line.offset, flags)

    def in_time_for(
        self, later: Quantity, coat: CoatUnknowns, reach: Reach, when: Sequence[Flag] = ()
    ) -> None:
        """`later` (a slot) is not after a reach of the coat, when all flags are set."""
        if coat.known_start is not None:
            slot = self._slot(coat, reach, coat.known_start)
            self.model.at_least(slot, later, when)
            return
        begin = self.grid_minutes(coat.start)
        scaled = SCALE * later
        for spots, on in coat.on:
            for part, flag in coat.parts:
                line = part.lines[spots.place, reach]
                flags = [*when, *(one for one in (on, flag) if one is not self.yes)]
                self.model.at_least(line.rise * begin + line.offset, scaled, flags)

    def grid_minutes(self, slot: Quantity) -> Quantity:
        """A slot in minutes from the grid's origin."""
        return slot * (self.grid.step // MINUTE)

    def grid_minutes_of(self, slot: int) -> int:
        """The same of a known slot."""
        return slot * (self.grid.step // MINUTE)

    def _slot(self, coat: CoatUnknowns, reach: Reach, start: int) -> int:
        task = coat.task
        return self._reaches.slot(task.product, coat.place, reach, start, task.block)
