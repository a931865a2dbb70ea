"""What the side of the desk lists, in words: hands next, promises, and the plan's worth."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.fragile import fragile_of
from studio_planner.services.hands_items import HandsKind
from studio_planner.services.how_sure import in_doubt, sure_words
from studio_planner.services.next_hands import asking_ahead, first_after, next_hands
from studio_planner.services.plan_worth import worth_of
from studio_planner.services.promises import promises_of
from studio_planner.services.step_words import packing_words
from studio_planner.services.still_to_do import nothing_left

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.hands_items import HandsItem
    from studio_planner.services.promises import PromiseKept

CUP_HOURS = 4.0
"""A full cup stands for this many hours left; it drains as the deadline comes."""

_MOST_ROWS = 6


class Standing(Enum):
    """How a promise stands, drawn as a square: full, half, broken or empty."""

    KEPT = "kept"
    TIGHT = "kept, little spare or in doubt"
    BROKEN = "late"
    OPEN = "not planned"


@dataclass(frozen=True, slots=True)
class HandsRow:
    """One thing to do: its clock time, what, until when, and how full its cup still is."""

    piece: str
    clock: str
    title: str
    detail: str
    left: str
    cup: float

    @property
    def spoken(self) -> str:
        """The row for a screen reader."""
        return f"{self.clock}, {self.title}, {self.left}. {self.detail}"


@dataclass(frozen=True, slots=True)
class PromiseRow:
    """One order: when it leaves, what was promised, and how that stands."""

    piece: str
    title: str
    dates: str
    standing: Standing
    word: str
    why: str
    sure: str = ""

    @property
    def spoken(self) -> str:
        """The row for a screen reader."""
        why = f" {self.why}" if self.why else ""
        sure = f" {self.sure}." if self.sure else ""
        return f"{self.title}, {self.word}. {self.dates}.{sure}{why}"


@dataclass(frozen=True, slots=True)
class WorthRow:
    """One goal of the plan, how it was made, or what there is to know of a mix.

    `piece` is empty where it is about all; `minds` is True for what has to be put right.
    """

    title: str
    detail: str
    piece: str = ""
    minds: bool = False

    @property
    def spoken(self) -> str:
        """The row for a screen reader."""
        return f"{self.title}. {self.detail}" if self.detail else f"{self.title}."


def asking_of(view: DeskView) -> Iterator[None]:
    """Ask the clocks that the rows of hands ask, a few in each part."""
    if view.plan is not None:
        yield from asking_ahead(view.studio, view.plan, view.now, view.timing)


def hands_rows(view: DeskView) -> tuple[HandsRow, ...]:
    """What needs hands in the next hours, earliest first; else the first thing after them."""
    plan = view.plan
    if plan is None:
        return ()
    items = next_hands(view.studio, plan, view.now, timing=view.timing)
    if not items:
        later = first_after(view.studio, plan, view.now, view.timing)
        items = () if later is None else (later,)
    groups: dict[tuple[object, ...], list[HandsItem]] = {}
    for item in sorted(items, key=_comes):
        groups.setdefault(
            (_verb(view.studio, item), item.start, item.end, _coat_kind(view.studio, item)), []
        ).append(item)
    return tuple(_hands_row(view, group) for group in list(groups.values())[:_MOST_ROWS])


def _comes(item: HandsItem) -> tuple[datetime, datetime]:
    """What can still be made good comes in the order of its deadline, the rest as planned."""
    return (item.deadline if item.missed else item.start, item.deadline)


def _verb(studio: Studio, item: HandsItem) -> str:
    packs = item.kind is HandsKind.PACK
    return capital(packing_words(studio, item.piece) if packs else kind_word(item.kind))


def _coat_kind(studio: Studio, item: HandsItem) -> str:
    return "" if item.coat is None else kind_word(studio.piece(item.piece).coat(item.coat).kind)


def _hands_row(view: DeskView, group: list[HandsItem]) -> HandsRow:
    studio, now, item = view.studio, view.now, group[0]
    zone, wall = studio.time_zone, words.wall_of(studio)
    pieces = " + ".join(words.piece_name(studio.piece(one.piece)) for one in group)
    deadline = min(one.deadline for one in group)
    about = _coat_kind(studio, item)
    verb = _verb(studio, item)
    title = f"{verb}: {about}" if about and item.kind is HandsKind.POUR else verb
    today = item.start.astimezone(zone).date() == now.astimezone(zone).date()
    clock = words.clock_time(item.start, wall)
    hours = (max(deadline, item.end) - now).total_seconds() / 3600.0
    return HandsRow(
        piece=item.piece,
        clock=clock if today else f"{words.day_name(item.start, wall, month=False)} {clock}",
        title=title,
        detail=_detail(pieces, item, deadline, view),
        left=_left(group[0], deadline, now),
        cup=min(max(hours / CUP_HOURS, 0.0), 1.0),
    )


def _detail(pieces: str, item: HandsItem, deadline: datetime, view: DeskView) -> str:
    if deadline <= item.start:
        return pieces
    zone, wall = view.studio.time_zone, words.wall_of(view.studio)
    same = deadline.astimezone(zone).date() == view.now.astimezone(zone).date()
    last = words.clock_time(deadline, wall)
    if not same:
        last = f"{words.day_name(deadline, wall, month=False)} {last}"
    if not item.missed:
        return translate("side", "{pieces}, by {last}").format(pieces=pieces, last=last)
    today = item.start.astimezone(zone).date() == view.now.astimezone(zone).date()
    day = "" if today else f"{words.day_name(item.start, wall, month=False)} "
    hours = f"{words.clock_time(item.start, wall)}{words.TO}{words.clock_time(item.end, wall)}"
    said = translate(
        "side", "{pieces}, planned {when}: not recorded as poured; still possible until {last}"
    )
    return said.format(pieces=pieces, when=f"{day}{hours}", last=last)


def _left(item: HandsItem, deadline: datetime, now: datetime) -> str:
    if item.start > now:
        return words.until_words(item.start, now)
    if now < item.end:
        return translate("side", "under way")
    if item.missed:
        return translate("side", "not recorded")
    hours = (deadline - now).total_seconds() / 3600.0
    if hours <= 0:
        return translate("side", "overdue")
    return translate("side", "{time} left").format(time=words.length_of_time(hours))


def promise_rows(view: DeskView) -> tuple[PromiseRow, ...]:
    """Every order, most pressing first; without a plan, as not planned."""
    studio, plan = view.studio, view.plan
    if plan is None:
        return ()
    return tuple(_promise_row(studio, plan, kept) for kept in promises_of(studio, plan))


def worth_rows(view: DeskView) -> tuple[WorthRow, ...]:
    """A row for each goal that matters, the most fragile pour, and the time of looking."""
    studio, plan = view.studio, view.plan
    if plan is None:
        return ()
    if nothing_left(studio):
        return (
            WorthRow(
                translate("side", "Nothing to plan"),
                translate("side", "Everything is packed or has left."),
            ),
        )
    worth = worth_of(studio, plan)
    rows = [
        WorthRow(
            f"{line.title}: {line.amount}", _sentence(line.verdict) if line.verdict else ""
        )
        for line in worth.goals
    ]
    fragile = fragile_of(studio, plan)
    if fragile is not None:
        # Right after the first goal, where it is seen without scrolling.
        voice = DeskVoice(studio)
        title = fragile.title.words(voice)
        rows.insert(1, WorthRow(title, fragile.detail(voice), fragile.piece))
    return (
        (*rows, WorthRow(translate("side", "How it was made"), worth.effort))
        if worth.effort
        else tuple(rows)
    )


def _promise_row(studio: Studio, plan: Plan, kept: PromiseKept) -> PromiseRow:
    order, outcome, wall = kept.order, kept.outcome, words.wall_of(studio)
    due = order.due(wall.zone)
    leaves = outcome.leaves if outcome else None
    if leaves is None:
        leaving = translate("side", "no date")
    else:
        gone = kept.shipped is not None
        said = translate("side", "left {when}") if gone else translate("side", "leaves {when}")
        leaving = said.format(when=words.moment(leaves, wall))
    same = leaves is not None and words.day_name(leaves, wall) == words.day_name(due, wall)
    return PromiseRow(
        piece=order.pieces[0],
        title=order.name,
        dates=translate("side", "{leaving}, the day it is due").format(leaving=leaving)
        if same
        else translate("side", "{leaving}, due {day}").format(
            leaving=leaving, day=words.day_name(due, wall)
        ),
        standing=standing_of(studio, outcome, kept.shipped),
        word=words.promise_word(outcome, studio.settings, kept.shipped),
        why=_why(kept, studio),
        sure=sure_words(outcome, plan),
    )


def standing_of(
    studio: Studio, outcome: Outcome | None, shipped: datetime | None = None
) -> Standing:
    """How a promise stands by what the plan means for it; kept or late once it is shipped."""
    if outcome is None or outcome.late_hours is None or outcome.spare_hours is None:
        return Standing.OPEN
    if outcome.late_hours > 0:
        return Standing.BROKEN
    tight = outcome.spare_hours < studio.settings.spare_hours or in_doubt(outcome)
    return Standing.TIGHT if tight and shipped is None else Standing.KEPT


def _why(kept: PromiseKept, studio: Studio) -> str:
    outcome = kept.outcome
    if outcome is None or not outcome.reason:
        return ""
    text = _sentence(str(outcome.reason))
    keeps = next((change for change in outcome.changes if change.keeps_promise), None)
    if keeps is not None:
        return translate("side", "{why} Would keep it: {change}.").format(
            why=text, change=keeps.words
        )
    best = min(
        (change for change in outcome.changes if change.leaves is not None),
        key=lambda change: change.leaves or kept.order.due(studio.time_zone),
        default=None,
    )
    if best is not None and best.leaves is not None:
        soonest = words.moment(best.leaves, words.wall_of(studio))
        said = translate(
            "side", "{why} No change that was tried keeps it. Soonest {when}: {change}."
        )
        return said.format(why=text, when=soonest, change=best.words)
    return text


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:] + ("" if text.endswith(".") else ".")
