"""Which sheets there are to choose from: days that pour, weeks, orders, the stock."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.tongue import counted, listed, translate
from studio_planner.services.paper.order_slip import order_slip
from studio_planner.services.paper.pour_sheet import (
    pour_days,
    pour_sheet_of_day,
    pour_sheet_of_mix,
    pours_on,
)
from studio_planner.services.paper.stock_list import stock_list
from studio_planner.services.paper.wall_words import date_said, local_day, moment_said
from studio_planner.services.paper.week_sheet import planned_weeks, week_sheet

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.paper.pages import Sheet


_MIX = "mix-"


class SheetKind(StrEnum):
    """The four sheets."""

    POURS = "pours"
    WEEK = "week"
    ORDER = "order"
    STOCK = "stock"


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One sheet that can be made: its key among those of its kind, and what it is called."""

    key: str
    words: str


def choices(view: DeskView, kind: SheetKind) -> tuple[Choice, ...]:
    """The sheets of a kind that there are, the one that is mostly wanted first."""
    match kind:
        case SheetKind.POURS:
            return (*_days(view), *_mixes(view))
        case SheetKind.WEEK:
            return _weeks(view)
        case SheetKind.ORDER:
            orders = sorted(view.studio.orders, key=lambda one: (one.promised, one.name))
            return tuple(Choice(key=one.key, words=one.name) for one in orders)
        case SheetKind.STOCK:
            return (Choice(key="", words=translate("paper", "everything")),)


def sheet_of(view: DeskView, kind: SheetKind, key: str) -> Sheet:
    """Make the sheet of a choice; NothingForPaper when there is nothing on it any more."""
    match kind:
        case SheetKind.POURS:
            if key.startswith(_MIX):
                return pour_sheet_of_mix(view, int(key.removeprefix(_MIX)))
            return pour_sheet_of_day(view, date.fromisoformat(key))
        case SheetKind.WEEK:
            return week_sheet(view, date.fromisoformat(key))
        case SheetKind.ORDER:
            return order_slip(view, key)
        case SheetKind.STOCK:
            return stock_list(view)


def _days(view: DeskView) -> tuple[Choice, ...]:
    """The days that pour, from today on first; those that were missed come last."""
    today = local_day(view.studio, view.now)
    days = sorted(pour_days(view), key=lambda day: (day < today, day))
    return tuple(Choice(key=day.isoformat(), words=_day_words(view, day)) for day in days)


def _day_words(view: DeskView, day: date) -> str:
    mixes = counted(
        len({coat.mix for coat in pours_on(view, day)}),
        translate("paper", "{count} mix"),
        translate("paper", "{count} mixes"),
    )
    return translate("paper", "{day}: {mixes}").format(day=date_said(day), mixes=mixes)


def _mixes(view: DeskView) -> tuple[Choice, ...]:
    """Each mix by itself, in order of time."""
    mixes: dict[int, list[PlannedCoat]] = {}
    for day in pour_days(view):
        for coat in pours_on(view, day):
            mixes.setdefault(coat.mix, []).append(coat)
    found = sorted(mixes.values(), key=lambda coats: (coats[0].start, coats[0].mix))
    return tuple(
        Choice(key=mix_key(coats[0].mix), words=_mix_words(view.studio, coats))
        for coats in found
    )


def mix_key(mix: int) -> str:
    """The key of the pour sheet of one mix of the plan."""
    return f"{_MIX}{mix}"


def _mix_words(studio: Studio, coats: list[PlannedCoat]) -> str:
    first = studio.piece(coats[0].piece)
    return translate("paper", "{moment}: {coat}, {pieces}").format(
        moment=moment_said(studio, coats[0].start),
        coat=kind_word(first.coat(coats[0].coat).kind),
        pieces=listed(studio.piece(coat.piece).name for coat in coats),
    )


def _weeks(view: DeskView) -> tuple[Choice, ...]:
    """The present week and those after it in which something is planned."""
    first = view.studio.units.first_of_week(local_day(view.studio, view.now))
    weeks = [week for week in planned_weeks(view) if week >= first] or [first]
    return tuple(
        Choice(
            key=week.isoformat(),
            words=translate("paper", "from {day}").format(day=date_said(week)),
        )
        for week in weeks
    )
