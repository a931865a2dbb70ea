"""The clock of a portion on paper: from A meets B to the empty cup, minute by minute."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.services.amount_words import minutes_said
from studio_planner.services.cup_times import out_of_cup_minutes

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.cup_plan import CupTime, PortionTime


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockTime:
    """A line of the clock: when as planned, the minute after A met B ("" later on), what."""

    when: datetime
    minute: str
    words: str
    strong: bool = False


def cup_clock(studio: Studio, time: PortionTime, start: datetime) -> tuple[ClockTime, ...]:
    """The lines of a portion whose A meets B at `start`, in order.

    A product that is not mixed has no such clock.
    """
    if time.portion.a_grams is None:
        return ()
    lines = [_line(start, 0.0, translate("paper", "A meets B"), strong=True)]
    if len(time.cups) > 1:
        words = translate("paper", "stirred: divide, stir the colours in")
        lines.append(_line(start, time.stirred_minute, words))
    lines += [_line(start, cup.pour_minute, _pour_words(time, cup)) for cup in time.cups]
    lines += _limits(studio, time, start)
    return tuple(sorted(lines, key=lambda line: line.when))


def gone_minute(studio: Studio, time: PortionTime, cup: CupTime) -> float | None:
    """The minute at which what is left in a cup is gone; None without a cup life.

    The portion's life in one vessel is used up until it is divided, that of the smaller cup
    after it.
    """
    portion = time.portion
    coat, product = portion.coats[0], portion.product
    whole = portion.out_of_cup_minutes
    own = out_of_cup_minutes(studio, product, cup.cup.mix_grams, coat)
    if whole is None or own is None:
        return None
    if len(time.cups) == 1:
        return whole / SHARE_TO_USE
    used = time.split_minute * SHARE_TO_USE / whole
    return time.split_minute + max(0.0, 1.0 - used) * own / SHARE_TO_USE


def _limits(studio: Studio, time: PortionTime, start: datetime) -> list[ClockTime]:
    """By when the cup that is emptied last has to be empty, and when it is gone."""
    if not time.cups or time.cups[-1].out_by_minute is None:
        return []
    last = time.cups[-1]
    by = last.out_by_minute or 0.0
    words = translate("paper", "pour by: the last cup is empty")
    lines = [_line(start, by, words, strong=True)]
    gone = gone_minute(studio, time, last)
    if gone is not None:
        words = translate("paper", "gone: pour no more of it")
        lines.append(_line(start, gone, words, strong=True))
    return lines


def _pour_words(time: PortionTime, cup: CupTime) -> str:
    if len(time.cups) == 1:
        return translate("paper", "pour")
    words = translate("paper", "pour cup {number}, {colour}").format(
        number=cup.cup.number, colour=cup.cup.colour
    )
    if cup.out_by_minute is None or cup is time.cups[-1]:
        return words
    return translate("paper", "{words} (empty by {minute})").format(
        words=words, minute=minutes_said(int(cup.out_by_minute))
    )


def _line(start: datetime, minute: float, words: str, *, strong: bool = False) -> ClockTime:
    # A limit is never rounded up.
    whole = int(minute)
    return ClockTime(
        when=start + timedelta(minutes=whole),
        minute=str(whole),
        words=words,
        strong=strong,
    )
