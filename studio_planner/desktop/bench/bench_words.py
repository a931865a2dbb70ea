"""What stands on the bench view, in as few words as can be."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.orders import Gate
from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate
from studio_planner.services.hands_items import HandsKind
from studio_planner.services.step_words import packing_words

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.bench import Bench, BenchTask

_MINUTES = 60
_MOST_LINES = 3


@dataclass(frozen=True, slots=True)
class Number:
    """The one large number: how much, of what unit, and what it counts to."""

    amount: str
    unit: str
    meaning: str

    @property
    def spoken(self) -> str:
        """The number in one breath."""
        return f"{self.amount} {self.unit} {self.meaning}".strip()


def verb(studio: Studio, task: BenchTask) -> str:
    """What to do."""
    if task.item.kind is HandsKind.PACK:
        return capital(packing_words(studio, task.item.piece))
    return capital(kind_word(task.item.kind))


def about(studio: Studio, task: BenchTask) -> str:
    """What to do it to: the coat, and every piece of the mix."""
    names = " + ".join(words.piece_name(studio.piece(key)) for key in task.pieces)
    coat = task.item.coat
    if coat is None:
        return names
    return f"{studio.piece(task.item.piece).coat_name(coat)}, {names}"


def number(task: BenchTask, now: datetime) -> Number:
    """How long until it begins, or how long is left for it."""
    minutes = round((task.counts_to - now).total_seconds() / _MINUTES)
    meaning = (
        translate("bench", "left") if task.begun else translate("bench", "until it begins")
    )
    if minutes < 0:
        return Number(str(-minutes), translate("bench", "min"), translate("bench", "overdue"))
    if minutes < 2 * _MINUTES:
        return Number(str(minutes), translate("bench", "min"), meaning)
    hours = words.length_of_time(minutes / _MINUTES)
    return Number(hours, "", meaning)


def counted_up(since: datetime, now: datetime, *, mixed: bool) -> Number:
    """How long ago A met B, or a coat that is not mixed was begun."""
    minutes = max(0, int((now - since).total_seconds() // _MINUTES))
    meaning = (
        translate("bench", "since A met B") if mixed else translate("bench", "since you began")
    )
    return Number(str(minutes), translate("bench", "min"), meaning)


def if_left(task: BenchTask) -> str:
    """What happens if it is not done in time."""
    left = task.item.if_left
    return translate("bench", "Else: {what}").format(what=left) if left else ""


def next_lines(studio: Studio, bench: Bench, skip: int) -> list[str]:
    """What comes after the task that is shown."""
    wall = words.wall_of(studio)
    return [
        f"{words.clock_time(task.item.start, wall)}  {verb(studio, task)}, "
        f"{about(studio, task)}"
        for position, task in enumerate(bench.tasks)
        if position != skip
    ][:_MOST_LINES]


def closing_lines(studio: Studio, bench: Bench, now: datetime) -> list[str]:
    """Windows that close soon, and whether sanding could save the joint."""
    lines = []
    for row in bench.closing[:_MOST_LINES]:
        piece = studio.piece(row.piece)
        saved = (
            translate("bench", "else sand")
            if row.saved_by_sanding
            else translate("bench", "cannot be saved later")
        )
        left = words.until_words(row.closes, now)
        closes = words.clock_time(row.closes, words.wall_of(studio))
        lines.append(
            translate("bench", "{closes}  {piece}, {coat}: closes {left}, {saved}").format(
                closes=closes,
                piece=piece.name,
                coat=piece.coat_name(row.coat),
                left=left,
                saved=saved,
            )
        )
    return lines


def ready_lines(studio: Studio, bench: Bench) -> list[str]:
    """Pieces that may be shown, packed or used now."""
    may = {
        Gate.DISPLAY: translate("bench", "may be displayed"),
        Gate.PACK: translate("bench", "may be packed"),
        Gate.FULL: translate("bench", "fully cured"),
    }
    return [
        f"{words.piece_name(studio.piece(row.piece))}: {may[row.gate]}" for row in bench.ready
    ][:_MOST_LINES]
