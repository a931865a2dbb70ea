"""The parts of a pour sheet: each portion of a mix, then what follows on all of them.

What is looked at with a cup in hand stays on one page: its number, pieces and spots, what to
weigh from which bottle, and its clock. A mix gets its number when it is weighed; until then
there is a tape to write it on, and the sheet calls it by the plan's number of its first coat,
by which it is found with `weigh` too. Boxes for what really happened are beside. What follows
after the pours is one list in order of time, with rows for touch tests under it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import timedelta
from functools import cached_property
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.plans import Trust
from studio_planner.craft.products import ProductKind
from studio_planner.craft.settings import TemperatureUnit
from studio_planner.craft.tongue import capital, counted, translate
from studio_planner.craft.touches import Touch
from studio_planner.services.costs.leaf_cost import leaves_for
from studio_planner.services.mix_run.bottles import lots_for
from studio_planner.services.mixing.mix_sheet import MixSheet, mix_sheet
from studio_planner.services.paper.after_pour import after_pour
from studio_planner.services.paper.batch_numbers import batch_numbers
from studio_planner.services.paper.cup_clock import cup_clock
from studio_planner.services.paper.pages import (
    Block,
    Column,
    Fields,
    Headline,
    LargeNumber,
    Part,
    Prose,
    Row,
    Table,
)
from studio_planner.services.paper.wall_words import local_day, moment_said, span_said
from studio_planner.services.paper.weigh_rows import weigh_table

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import date, datetime

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.stock import LotPart
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.mixing.cup_plan import PortionTime
    from studio_planner.services.paper.cup_clock import ClockTime

_TOUCHES, _MANY_TOUCHES = 3, 8
"""Rows for touch tests on the sheet of a mix, and on that of several (ours)."""


@dataclass(frozen=True, slots=True)
class _After:
    """A line of what follows on a mix, with the number that the plan has for the pour."""

    pour: int
    line: ClockTime


@dataclass
class MixParts:
    """Makes the parts of mixes of a view's plan."""

    view: DeskView
    plan: Plan

    @property
    def studio(self) -> Studio:
        """The studio that the plan is for."""
        return self.view.studio

    @cached_property
    def numbers(self) -> dict[int, tuple[int, ...]]:
        """The numbers of the portions of each mix that are weighed already."""
        return batch_numbers(self.studio, self.plan)

    def of(self, mixes: Iterable[int]) -> Iterator[Part]:
        """Give the parts of mixes, then what follows on all of them, in order of time.

        KeyError when the plan has none of such a number.
        """
        after: list[_After] = []
        pours: list[int] = []
        for mix in mixes:
            sheet = mix_sheet(self.studio, self.plan, mix)
            if sheet.product.kind is ProductKind.LEAF:
                yield self._leaf(sheet)
                continue
            yield from self._portions(sheet)
            pour = _pour(sheet)
            pours.append(pour)
            after += [_After(pour, line) for line in after_pour(self.view, sheet.coats)]
        running = _running(pours)
        if after:
            several = len({one.pour for one in after}) > 1
            yield Part(blocks=(self._after(after),), running=running, begins=several)
        if pours:
            rows = _TOUCHES if len(pours) == 1 else _MANY_TOUCHES
            yield Part(blocks=_touches(rows), running=running)

    def _portions(self, sheet: MixSheet) -> Iterator[Part]:
        """Each portion by itself; their set-ups share the block that is planned for them."""
        start = sheet.start
        share = int((sheet.end - sheet.start) / timedelta(minutes=1) / sheet.split.parts)
        for time in sheet.times:
            yield self._weighing(sheet, time, start)
            yield Part(blocks=self._really(sheet), running=_running((_pour(sheet),)))
            start += timedelta(minutes=max(share, math.ceil(time.poured_minute)))

    def _weighing(self, sheet: MixSheet, time: PortionTime, start: datetime) -> Part:
        """All that is looked at while a cup is in hand: it stays on one page."""
        first = time.portion.part == 1
        blocks: list[Block] = [self._number(sheet, time)]
        if first and len(sheet.coats) > 1:
            blocks.append(self._pieces(sheet.coats))
        warnings = (*sheet.warnings, *sheet.notes) if first else ()
        if warnings:
            blocks.append(Prose(title="", sentences=warnings, listed=True))
        blocks.append(weigh_table(self.studio, time.portion, self._lots(sheet)))
        lines = cup_clock(self.studio, time, start)
        if lines:
            blocks.append(self._cup(lines, local_day(self.studio, sheet.start)))
        return Part(blocks=tuple(blocks), running=_running((_pour(sheet),)), begins=True)

    def _lots(self, sheet: MixSheet) -> dict[LotPart, str]:
        return lots_for(self.studio, self.plan, sheet.mix, sheet.product)

    def _number(self, sheet: MixSheet, time: PortionTime) -> LargeNumber:
        day = local_day(self.studio, sheet.start)
        first = sheet.coats[0]
        coat = self.studio.piece(first.piece).coat(first.coat)
        when = span_said(self.studio, sheet.start, sheet.end, day)
        who = [self._person(first.person)] if first.person else []
        name = translate("paper", "Pour {number}: {coat}").format(
            number=_pour(sheet), coat=capital(kind_word(coat.kind))
        )
        lines = [name, ", ".join((sheet.product.name, when, *who))]
        if len(sheet.coats) == 1:
            lines.append(", ".join(self._piece(first).cells))
        if time.portion.parts > 1:
            said = translate("paper", "portion {part} of {parts}, one after the other")
            lines.append(said.format(part=time.portion.part, parts=time.portion.parts))
        weighed = self.numbers[sheet.mix][time.portion.part - 1 : time.portion.part]
        return LargeNumber(
            label=translate("paper", "Mix"), number=_joined(weighed), beside=tuple(lines)
        )

    def _person(self, key: str) -> str:
        return next((one.name for one in self.studio.people if one.key == key), key)

    def _pieces(self, coats: Iterable[PlannedCoat]) -> Table:
        return Table(
            title=translate("paper", "Pieces and spots"),
            columns=(
                Column(head=translate("paper", "piece"), share=0.44),
                Column(head=translate("paper", "spot"), share=0.26),
                Column(head=translate("paper", "joint"), share=0.30),
            ),
            rows=tuple(self._piece(coat) for coat in coats),
        )

    def _piece(self, coat: PlannedCoat) -> Row:
        piece = self.studio.piece(coat.piece)
        name = f"{piece.name} ×{piece.count}" if piece.count > 1 else piece.name  # noqa: RUF001
        spot = self.studio.spot(coat.spot).name
        joint = kind_word(coat.joint)
        if coat.window is not None and coat.window.trust is Trust.TEST_FIRST:
            joint = translate("paper", "{joint}, test first").format(joint=joint)
        return Row(cells=(name, spot, joint))

    def _cup(self, lines: tuple[ClockTime, ...], day: date) -> Table:
        rows = (
            Row(
                cells=(moment_said(self.studio, one.when, day), one.minute, one.words, ""),
                strong=one.strong,
            )
            for one in lines
        )
        return Table(
            title=translate("paper", "The cup's clock"),
            columns=(
                Column(head=translate("paper", "planned"), share=0.14),
                Column(head=translate("paper", "min"), share=0.07, right=True),
                Column(head="", share=0.63),
                Column(head=translate("paper", "really"), share=0.16, write=True),
            ),
            rows=tuple(rows),
        )

    def _after(self, after: list[_After]) -> Table:
        """What follows on the films of all mixes, each line with the number of its pour."""
        after.sort(key=lambda one: one.line.when)
        day = local_day(self.studio, after[0].line.when)
        return Table(
            title=translate("paper", "After the pour"),
            columns=(
                Column(head=translate("paper", "planned"), share=0.28),
                Column(head=translate("paper", "Pour"), share=0.10),
                Column(head="", share=0.51),
                Column(head=translate("paper", "really"), share=0.11, write=True),
            ),
            rows=tuple(
                Row(
                    cells=(moment_said(self.studio, one.line.when, day),
                           str(one.pour), one.line.words, ""),
                    strong=one.line.strong,
                )
                for one in after
            ),
        )  # fmt: skip

    def _really(self, sheet: MixSheet) -> tuple[Block, ...]:
        fahrenheit = self.studio.units.temperature is TemperatureUnit.FAHRENHEIT
        labels = [
            translate("paper", "room °F") if fahrenheit else translate("paper", "room °C"),
            translate("paper", "humidity %"),
            translate("paper", "grams left over"),
        ]
        two_part = sheet.product.kind is ProductKind.TWO_PART
        lots = self._lots(sheet)
        if two_part and len(lots) < 2:  # noqa: PLR2004 - else both stand in the list
            labels += [translate("paper", "lot of A"), translate("paper", "lot of B")]
        elif not lots:
            labels.append(translate("paper", "lot"))
        if not two_part:  # it has no clock of a cup to write beside
            labels[:0] = [translate("paper", "poured at")]
        return (Fields(title="", labels=tuple(labels), across=len(labels)),)

    def _leaf(self, sheet: MixSheet) -> Part:
        day = local_day(self.studio, sheet.start)
        when = span_said(self.studio, sheet.start, sheet.end, day)
        return Part(
            blocks=(
                Headline(
                    words=translate("paper", "Lay the leaf"), under=(sheet.product.name, when)
                ),
                self._pieces(sheet.coats),
                Prose(title="", sentences=(*sheet.notes, *self._leaves(sheet))),
            ),
            begins=True,
        )

    def _leaves(self, sheet: MixSheet) -> Iterator[str]:
        """How many leaves are laid out for it; nothing where their size is not known."""
        side = sheet.product.leaf_mm
        if side is not None:
            pieces = ((self.studio.piece(one.piece), one.coat) for one in sheet.coats)
            leaves = sum(
                leaves_for(self.studio, piece, piece.coat(coat), side) for piece, coat in pieces
            )
            yield counted(
                math.ceil(leaves),
                translate("paper", "Lay out {count} leaf: some of it overlaps or tears."),
                translate("paper", "Lay out {count} leaves: some of it overlaps or tears."),
            )


def _joined(numbers: Iterable[int]) -> str:
    return ", ".join(map(str, numbers))


def _pour(sheet: MixSheet) -> int:
    return min(coat.number for coat in sheet.coats)


def _running(pours: Iterable[int]) -> str:
    return translate("paper", "Pour {numbers}").format(numbers=_joined(pours))


def _touches(rows: int) -> tuple[Block, ...]:
    kinds = " / ".join(kind_word(touch) for touch in Touch)
    return (
        Table(
            title=translate("paper", "Touch: {kinds}").format(kinds=kinds),
            columns=(
                Column(head=translate("paper", "day and time"), share=0.26, write=True),
                Column(head=translate("paper", "piece"), share=0.28, write=True),
                Column(head=translate("paper", "which"), share=0.24, write=True),
                Column(head=translate("paper", "already / not yet"), share=0.22, write=True),
            ),
            rows=(Row(cells=("", "", "", "")),) * rows,
        ),
    )
