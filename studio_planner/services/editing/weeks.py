"""A week of working hours as blocks that can be painted, over the rules that a person keeps.

A weekly rule with its days (RFC 5545, FREQ=WEEKLY;BYDAY=...) is blocks on those days. Any other
rule, such as every second Saturday, stays beside the painted week as it is.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.hands import WorkHours
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

DAY_MINUTES = 24 * 60
WEEKDAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
_WORK_DAYS = range(5)
_PARTS = {"FREQ", "BYDAY", "INTERVAL", "WKST"}
_MOST_WEEKS = 52
_WEEK_BEGINS = "MO"  # RFC 5545: the default, from which weeks are counted


@dataclass(frozen=True, slots=True, order=True)
class Block:
    """A stretch of work on one weekday (0 Monday): minutes from that day's midnight.

    `end` is later than `start` by up to a day, and so may lie on the next day.
    """

    day: int
    start: int
    end: int

    def __post_init__(self) -> None:
        """Check that it is a stretch of at most a day that begins on its day."""
        whole = 0 <= self.day < len(WEEKDAYS) and 0 <= self.start < DAY_MINUTES
        if not (whole and self.start < self.end <= self.start + DAY_MINUTES):
            message = f"no stretch of a day: {self}"
            raise ValueError(message)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekRule:
    """Hours on some days of every week, or of every second or third one from a date on."""

    days: frozenset[int]
    start: time
    end: time
    every: int = 1
    first: date | None = None

    @property
    def painted(self) -> bool:
        """Whether it belongs to every week, without a beginning."""
        return self.every == 1 and self.first is None


def week_rule(hours: WorkHours) -> WeekRule | None:
    """The days and weeks of working hours; None where their rule says more than that."""
    parts = dict(part.split("=", 1) for part in hours.rule.upper().split(";"))
    every, begins = int(parts.get("INTERVAL", "1")), parts.get("WKST", _WEEK_BEGINS)
    weekly = parts.get("FREQ") == "WEEKLY" and parts.keys() <= _PARTS
    if not weekly or (every > 1 and (begins != _WEEK_BEGINS or hours.first is None)):
        return None
    named = parts["BYDAY"].split(",") if "BYDAY" in parts else []
    if named:
        days = frozenset(WEEKDAYS.index(day) for day in named)
    elif hours.first is not None:
        days = frozenset({hours.first.weekday()})
    else:
        return None
    return WeekRule(days=days, start=hours.start, end=hours.end, every=every, first=hours.first)


def hours_of(rule: WeekRule) -> WorkHours:
    """Working hours by days and weeks; InvalidEntry when there is no day or no stretch."""
    rules = Rulebook(translate("nouns", "working hours"))
    rules.require(bool(rule.days), "days", translate("rules", "tick at least one day."))
    rules.between(rule.every, 1, _MOST_WEEKS, "every")
    rules.require(
        rule.every == 1 or rule.first is not None,
        "first",
        translate("rules", "give the first date."),
    )
    rules.close()
    days = ",".join(WEEKDAYS[day] for day in sorted(rule.days))
    parts = ["FREQ=WEEKLY"]
    parts += [f"INTERVAL={rule.every}"] if rule.every > 1 else []
    parts += [f"BYDAY={days}"]
    return WorkHours(rule=";".join(parts), start=rule.start, end=rule.end, first=rule.first)


def painted_week(work: Iterable[WorkHours]) -> tuple[Block, ...]:
    """The blocks of every week, in order; those that touch on one day are one."""
    blocks = [block for hours in work for block in _blocks(hours)]
    return joined(blocks)


def _blocks(hours: WorkHours) -> list[Block]:
    rule = week_rule(hours)
    if rule is None or not rule.painted:
        return []
    start, end = minutes(hours.start), minutes(hours.end)
    end += 0 if end > start else DAY_MINUTES
    return [Block(day, start, end) for day in rule.days]


def joined(blocks: Iterable[Block]) -> tuple[Block, ...]:
    """Blocks in order, those of one day that touch or overlap joined.

    What would be longer than a day goes on as a block of the next one.
    """
    found, spilled = _joined_once(blocks)
    while spilled:
        # Each time round a day begins earlier or nothing is left over, so this ends.
        found, spilled = _joined_once([*found, *spilled])
    return tuple(found)


def on_work_days(blocks: Iterable[Block], block: Block) -> tuple[Block, ...]:
    """A week in which the hours of `block` are those of Monday to Friday too."""
    return joined([*blocks, *(replace(block, day=day) for day in _WORK_DAYS)])


def _joined_once(blocks: Iterable[Block]) -> tuple[list[Block], list[Block]]:
    result: list[Block] = []
    spilled: list[Block] = []
    for block in sorted(blocks):
        last = result[-1] if result else None
        if last is None or last.day != block.day or block.start > last.end:
            result.append(block)
            continue
        longest = last.start + DAY_MINUTES
        end = max(last.end, block.end)
        result[-1] = replace(last, end=min(end, longest))
        if end > longest:
            spilled.append(Block(_next(last.day), last.start, end - DAY_MINUTES))
    return result, spilled


def _next(day: int) -> int:
    return (day + 1) % len(WEEKDAYS)


def with_week(work: Iterable[WorkHours], blocks: Iterable[Block]) -> tuple[WorkHours, ...]:
    """Working hours with another painted week; rules that say more than a week stay."""
    days: dict[tuple[int, int], set[int]] = {}
    for block in joined(blocks):
        for part in _sayable(block):
            days.setdefault((part.start, part.end), set()).add(part.day)
    weekly = [
        hours_of(WeekRule(days=frozenset(on), start=wall_time(start), end=wall_time(end)))
        for (start, end), on in sorted(days.items(), key=lambda item: (min(item[1]), item[0]))
    ]
    others = []
    for hours in work:
        rule = week_rule(hours)
        if rule is None or not rule.painted:
            others.append(hours)
    return (*weekly, *others)


def _sayable(block: Block) -> list[Block]:
    """A block as stretches that a rule can say: a whole day has the same time at both ends."""
    if block.end - block.start < DAY_MINUTES:
        return [block]
    half = DAY_MINUTES // 2
    middle = block.start + half
    later = block.day if middle < DAY_MINUTES else _next(block.day)
    begins = middle % DAY_MINUTES
    return [replace(block, end=middle), Block(later, begins, begins + half)]


def minutes(at: time) -> int:
    """Minutes from midnight to a time of day."""
    return at.hour * 60 + at.minute


def wall_time(minute: int) -> time:
    """The time of day that many minutes after a midnight."""
    whole = timedelta(minutes=minute % DAY_MINUTES)
    return time(whole.seconds // 3600, whole.seconds % 3600 // 60)
