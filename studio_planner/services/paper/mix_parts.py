"""The parts of a pour sheet that belong to one mix, as they are printed one after the other.

Its number, its pieces and spots, what to weigh, boxes for what really happened, the clock of
its cup, what follows after the pour, and rows for touch tests.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from functools import cached_property
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.plans import Trust
from studio_planner.craft.products import ProductKind
from studio_planner.craft.settings import TemperatureUnit
from studio_planner.craft.tongue import capital, translate
from studio_planner.craft.touches import Touch
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
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.mixing.cup_plan import PortionTime
    from studio_planner.services.paper.cup_clock import ClockTime

_TOUCH_ROWS = 3
"""Rows for touch tests on the sheet: as many as fit beneath the rest of most mixes (ours)."""


@dataclass
class MixParts:
    """Makes the parts of the mixes of a view's plan, a mix at a time."""

    view: DeskView
    plan: Plan

    @property
    def studio(self) -> Studio:
        """The studio that the plan is for."""
        return self.view.studio

    @cached_property
    def numbers(self) -> dict[int, tuple[int, ...]]:
        """The batch numbers that the portions of each mix will have."""
        return batch_numbers(self.studio, self.plan)

    def of(self, mix: int) -> Iterator[Part]:
        """Give the parts of one mix; KeyError when the plan has none of that number."""
        sheet = mix_sheet(self.studio, self.plan, mix)
        if sheet.product.kind is ProductKind.LEAF:
            yield self._leaf(sheet)
            return
        numbers = self.numbers[mix]
        start = sheet.start
        for number, time in zip(numbers, sheet.times, strict=True):
            yield self._weighing(sheet, time, number)
            yield Part(blocks=self._really(sheet), running=_running((number,)))
            yield self._cup(sheet, time, number, start)
            start += timedelta(minutes=int(time.poured_minute))
        running = _running(numbers)
        yield self._after(sheet, running)
        yield Part(blocks=_touches(), running=running)

    def _weighing(self, sheet: MixSheet, time: PortionTime, number: int) -> Part:
        blocks: list[Block] = [self._number(sheet, time, number)]
        if time.portion.part == 1:
            blocks.append(self._pieces(sheet.coats))
        blocks.append(weigh_table(self.studio, time.portion))
        warnings = (*sheet.warnings, *sheet.notes) if time.portion.part == 1 else ()
        if warnings:
            blocks.append(Prose(title="", sentences=warnings, listed=True))
        return Part(blocks=tuple(blocks), running=_running((number,)), begins=True)

    def _number(self, sheet: MixSheet, time: PortionTime, number: int) -> LargeNumber:
        day = local_day(self.studio, sheet.start)
        first = sheet.coats[0]
        coat = self.studio.piece(first.piece).coat(first.coat)
        lines = [
            capital(kind_word(coat.kind)),
            sheet.product.name,
            span_said(self.studio, sheet.start, sheet.end, day),
        ]
        if first.person:
            lines.append(self._person(first.person))
        if time.portion.parts > 1:
            said = translate("paper", "portion {part} of {parts}, one after the other")
            lines.append(said.format(part=time.portion.part, parts=time.portion.parts))
        return LargeNumber(
            label=translate("paper", "Mix"), number=str(number), beside=tuple(lines)
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

    def _cup(self, sheet: MixSheet, time: PortionTime, number: int, start: datetime) -> Part:
        lines = cup_clock(self.studio, time, start)
        title = translate("paper", "The cup's clock")
        day = local_day(self.studio, sheet.start)
        table = () if not lines else (self._clock(title, lines, day, minutes=True),)
        return Part(blocks=table, running=_running((number,)))

    def _after(self, sheet: MixSheet, running: str) -> Part:
        lines = after_pour(self.view, sheet.coats)
        title = translate("paper", "After the pour")
        day = local_day(self.studio, sheet.start)
        table = () if not lines else (self._clock(title, lines, day, minutes=False),)
        return Part(blocks=table, running=running)

    def _clock(
        self, title: str, lines: tuple[ClockTime, ...], day: date, *, minutes: bool
    ) -> Table:
        rows = []
        for line in lines:
            clock = moment_said(self.studio, line.when, day)
            cells = (clock, line.minute, line.words) if minutes else (clock, line.words)
            rows.append(Row(cells=(*cells, ""), strong=line.strong))
        write = Column(head=translate("paper", "really"), share=0.16, write=True)
        words = Column(head="", share=0.57)
        minute = Column(head=translate("paper", "min"), share=0.08, right=True)
        head = translate("paper", "planned")
        columns = (
            (Column(head=head, share=0.16), minute, words, write)
            if minutes
            else (Column(head=head, share=0.31), words, write)
        )
        return Table(title=title, columns=columns, rows=tuple(rows))

    def _really(self, sheet: MixSheet) -> tuple[Block, ...]:
        fahrenheit = self.studio.units.temperature is TemperatureUnit.FAHRENHEIT
        labels = [
            translate("paper", "A met B at"),
            translate("paper", "cup empty at"),
            translate("paper", "covered at"),
            translate("paper", "room °F") if fahrenheit else translate("paper", "room °C"),
            translate("paper", "humidity %"),
        ]
        if sheet.product.kind is ProductKind.TWO_PART:
            labels += [translate("paper", "lot of A"), translate("paper", "lot of B")]
        else:
            labels.append(translate("paper", "lot"))
        labels.append(translate("paper", "grams left over"))
        title = translate("paper", "What really happened")
        return (Fields(title=title, labels=tuple(labels), across=4),)

    def _leaf(self, sheet: MixSheet) -> Part:
        day = local_day(self.studio, sheet.start)
        when = span_said(self.studio, sheet.start, sheet.end, day)
        return Part(
            blocks=(
                Headline(
                    words=translate("paper", "Lay the leaf"), under=(sheet.product.name, when)
                ),
                self._pieces(sheet.coats),
                Prose(title="", sentences=sheet.notes),
            ),
            begins=True,
        )


def _running(numbers: tuple[int, ...]) -> str:
    return translate("paper", "Mix {numbers}").format(numbers=", ".join(map(str, numbers)))


def _touches() -> tuple[Block, ...]:
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
            rows=(Row(cells=("", "", "", "")),) * _TOUCH_ROWS,
        ),
    )
