"""The orders as a maker reads them: promised, last pick-up, and how each one stands."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.length_words import lateness, length_of_time
from studio_planner.craft.orders import Promise
from studio_planner.services.how_sure import in_doubt
from studio_planner.terminal.writing import (
    date_words,
    moment_words,
    say,
    say_table,
    say_wrapped,
)

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.plans import Change
    from studio_planner.craft.studio import Studio
    from studio_planner.services.promises import PromiseKept

_HEADS = ("Order", "Promised", "Leave by", "Leaves", "How it stands")
_LEAVE_BY = "Leave by: the last pick-up that keeps the promise; for a market, when it opens."

_IN_DOUBT = "In doubt: it comes true in less than half of the rehearsed weeks."


def print_orders(studio: Studio, promises: Iterable[PromiseKept]) -> None:
    """Print orders with their dates; for late ones the reason and the tried changes."""
    listed = list(promises)
    if not listed:
        return
    say()
    say_table(_HEADS, [_cells(studio, kept) for kept in listed])
    say_wrapped(_LEAVE_BY)
    if any(in_doubt(kept.outcome) for kept in listed):
        say_wrapped(_IN_DOUBT)
    for kept in listed:
        _print_reason(studio, kept)


def _cells(studio: Studio, kept: PromiseKept) -> tuple[str, ...]:
    zone, order = studio.time_zone, kept.order
    # A market stands on its day; only parcels are promised by a day.
    word = "market" if order.promise is Promise.MARKET else order.promise
    return (
        order.name,
        f"{word} {date_words(order.promised)}",
        moment_words(zone, order.due(zone)),
        moment_words(zone, None if kept.outcome is None else kept.outcome.leaves),
        _state_words(kept),
    )


def _state_words(kept: PromiseKept) -> str:
    outcome = kept.outcome
    if outcome is None or outcome.late_hours is None:
        return kept.word
    if kept.shipped is not None:
        late = f", late by {lateness(outcome.late_hours)}" if outcome.late_hours else ""
        return f"{kept.word}{late}"
    # What may be cut off in a narrow column stands at its end.
    doubt = "in doubt, " if in_doubt(outcome) else ""
    if kept.word == "late":
        return f"{doubt}late by {lateness(outcome.late_hours)}{' or more' if doubt else ''}"
    return f"{doubt}{length_of_time(outcome.spare_hours or 0.0)} to spare"


def _print_reason(studio: Studio, kept: PromiseKept) -> None:
    outcome = kept.outcome
    if outcome is None or not outcome.reason:
        return
    say()
    say_wrapped(f"{kept.order.name}: {outcome.reason}")
    for change in outcome.changes:
        say_wrapped(f"Tried: {change.words} - {_result_words(studio, change)}.", "  ")


def _result_words(studio: Studio, change: Change) -> str:
    if change.leaves is None:
        return "even then it cannot be planned"
    keeps = "keeps the promise" if change.keeps_promise else "is still late"
    return f"leaves {moment_words(studio.time_zone, change.leaves)}, {keeps}"
