"""Which sheets there are to choose from: days that pour, weeks, orders, the stock."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import counted, translate
from studio_planner.services.paper.order_slip import order_slip
from studio_planner.services.paper.pour_sheet import pour_days, pour_sheet_of_day, pours_on
from studio_planner.services.paper.stock_list import stock_list
from studio_planner.services.paper.wall_words import date_said, local_day
from studio_planner.services.paper.week_sheet import DAYS, first_day_of_week, week_sheet

if TYPE_CHECKING:
    from studio_planner.services.desk import DeskView
    from studio_planner.services.paper.pages import Sheet


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
            return _days(view)
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


def _weeks(view: DeskView) -> tuple[Choice, ...]:
    """The present week and those after it, as far as something is planned."""
    first = first_day_of_week(view.studio, local_day(view.studio, view.now))
    last = max((*pour_days(view), first))
    count = (last - first).days // DAYS + 1
    weeks = [first + timedelta(days=DAYS * number) for number in range(max(count, 2))]
    return tuple(
        Choice(
            key=week.isoformat(),
            words=translate("paper", "from {day}").format(day=date_said(week)),
        )
        for week in weeks
    )
