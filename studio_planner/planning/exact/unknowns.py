"""Makes the unknowns of one coat in the exact model, and the lines that follow from them."""

from __future__ import annotations

from dataclasses import replace
from itertools import chain as joined_lists
from typing import TYPE_CHECKING, TypeVar

from studio_planner.planning.exact.choices import clipped
from studio_planner.planning.exact.coat_unknowns import CoatUnknowns
from studio_planner.planning.exact.grid import joined_slots
from studio_planner.planning.exact.in_hours import InHours
from studio_planner.planning.exact.lines import SCALE
from studio_planner.planning.exact.reaches import MINUTE, Part, Reach
from studio_planner.planning.spans import common

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.choices import AlikeHands, AlikeSpots, Choices
    from studio_planner.planning.exact.in_hours import StretchUnknowns
    from studio_planner.planning.exact.reaches import Reaches
    from studio_planner.planning.problem import Task
    from studio_planner.planning.solver import Flag, Model, Quantity, Unknown
    from studio_planner.planning.spans import Stretches


_Thing = TypeVar("_Thing")


class CoatMaker:
    """Makes the unknowns of coats, and what follows from their starts."""

    def __init__(self, model: Model, choices: Choices, reaches: Reaches, unit: int) -> None:
        """Add to a model; ends of blocks of several lengths are counted in units [s]."""
        self.model = model
        self._reaches = reaches
        self.grid = choices.grid
        self.unit = unit
        self.of_slot = self.grid.step // unit
        self.yes = model.yes
        self.in_hours = InHours(model, choices.grid)

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
        parts = self._parts_of(coat, asked, full, whole)
        coat.parts, coat.stretches = self._bound(start, parts)
        if len(lengths) > 1 and whole:
            self._bind_end(coat, asked, full, whole)
        self._bind_starts(coat, start, starts, whole)
        return coat

    def _bind_end(
        self,
        coat: CoatUnknowns,
        asked: Sequence[tuple[str, Reach]],
        full: Stretches,
        whole: Stretches,
    ) -> None:
        """What waits for longer blocks looks at when they end."""
        units = [-(-seconds // self.unit) for seconds, _ in coat.lasting]
        shortest, longest, of_slot = min(units), max(units), self.of_slot
        ends, left = (
            joined_slots((of_slot * a + shortest, of_slot * b + longest) for a, b in stretches)
            for stretches in (full, whole)
        )
        end = self.model.among(left)
        self.model.equal(end, of_slot * coat.start + coat.slots(self.unit))
        mixed = [(place, replace(reach, mixed=True)) for place, reach in asked if reach.opens]
        coat.end, parts = end, self._parts_of(coat, mixed, ends, left)
        coat.end_parts, coat.end_stretches = self._bound(end, parts)

    def one_of(self, things: Sequence[_Thing]) -> list[tuple[_Thing, Flag]]:
        """Things with the flag that chooses each; one of them is chosen."""
        if len(things) == 1:
            return [(things[0], self.yes)]
        rows: list[tuple[_Thing, Flag]] = [(thing, self.model.flag()) for thing in things]
        self.model.exactly_one(flag for _, flag in rows)
        return rows

    def flags(self, *flags: Flag) -> list[Flag]:
        """Those of some flags that are not always set."""
        return [flag for flag in flags if flag is not self.yes]

    def _bind_starts(
        self,
        coat: CoatUnknowns,
        start: Unknown,
        starts: dict[tuple[str, AlikeHands, int], Stretches],
        whole: Stretches,
    ) -> None:
        """Only starts that the chosen place, hands and length have."""
        for spots, on in coat.on:
            for hands, by in coat.by:
                there = self.flags(on, by)
                by_length = {one: starts[spots.place, hands, one] for one, _ in coat.lasting}
                lasting = coat.lasting
                if coat.end_parts and self.in_hours.keep(
                    start, coat.end, by_length, there, self.of_slot
                ):
                    lasting = [(min(by_length), self.yes)]
                for seconds, lasts in lasting:
                    found = by_length[seconds]
                    when = self.flags(*there, lasts)
                    if found == whole:
                        continue
                    if found:
                        self.model.inside(start, found, when)
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
            for part in self._reaches.parts(
                coat.task.product, asked, lengths, stretch, self.unit
            ):
                left = common(whole, [(part.first, part.last)])
                if left:
                    parts.append(Part(left[0][0], left[-1][1], part.lines))
        return parts

    def _bound(
        self, slot: Unknown, parts: Sequence[Part]
    ) -> tuple[list[tuple[Part, Flag]], list[StretchUnknowns]]:
        """Parts with the flag that says that a slot lies in them, and their stretches."""
        rows = self.one_of(parts)
        if len(parts) > 1:
            self.model.at_least(slot, sum(part.first * flag for part, flag in rows))
            self.model.at_least(sum(part.last * flag for part, flag in rows), slot)
        return rows, self.in_hours.stretches(slot, parts)

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

        def ends(slot: int) -> int:
            return longest + (slot if reach.mixed else self.grid_minutes_of(slot))

        for spots, on in coat.on:
            there = self.flags(*when, on)
            for part, flag in coat.end_parts if reach.mixed else coat.parts:
                line = part.lines[spots.place, reach]
                if line.up(ends(part.last)) <= never_before:
                    continue
                flags = self.flags(*there, flag)
                self.model.at_least(scaled, line.rise * end + line.offset, flags)
            for stretch in coat.end_stretches if reach.mixed else coat.stretches:
                first = stretch.first
                slot = first.lines[spots.place, reach].up(ends(first.first))
                if slot > never_before:
                    self.model.at_least(later, slot, [*there, *stretch.begun])

    def in_time_for(
        self, later: Quantity, coat: CoatUnknowns, reach: Reach, when: Sequence[Flag] = ()
    ) -> None:
        """`later` (a slot, or an end) is not after a coat's reach, when all flags are set."""
        if coat.known_start is not None:
            slot = self._slot(coat, reach, coat.known_start)
            self.model.at_least(slot, later, when)
            return
        begin = self.grid_minutes(coat.start)
        scaled = SCALE * later
        for spots, on in coat.on:
            there = self.flags(*when, on)
            for part, flag in coat.parts:
                line = part.lines[spots.place, reach]
                flags = self.flags(*there, flag)
                self.model.at_least(line.rise * begin + line.offset, scaled, flags)
            for stretch in coat.stretches:
                line = stretch.last.lines[spots.place, reach]
                slot = line.down(self.grid_minutes_of(stretch.last.last))
                self.model.at_least(slot, later, [*there, *stretch.not_over])

    def end_minute(self, coat: CoatUnknowns) -> Quantity:
        """The minute in which the block of a coat is over."""
        if coat.known_start is not None:
            return -((self.grid.origin - coat.known_start - coat.task.block) // MINUTE)
        return self.grid_minutes(coat.start) + coat.minutes

    def over(
        self, by: Quantity, coat: CoatUnknowns, more: int, when: Sequence[Flag] = ()
    ) -> None:
        """A coat's block, and some seconds more, are over by a slot, when all flags are set."""
        if coat.known_start is not None:
            slot = self.grid.up(coat.known_start + coat.task.block + more)
            self.model.at_least(by, slot, when)
        elif coat.end_parts and more % self.unit == 0:
            self.model.at_least(self.of_slot * by, coat.end + more // self.unit, when)
        else:
            self.model.at_least(by, coat.start + coat.slots(self.grid.step, more), when)

    def grid_minutes(self, slot: Quantity) -> Quantity:
        """A slot in minutes from the grid's origin."""
        return slot * (self.grid.step // MINUTE)

    def grid_minutes_of(self, slot: int) -> int:
        """The same of a known slot."""
        return slot * (self.grid.step // MINUTE)

    def _slot(self, coat: CoatUnknowns, reach: Reach, start: int) -> int:
        task = coat.task
        return self._reaches.slot(
            task.product, coat.place, reach, (start, task.block), self.unit
        )
