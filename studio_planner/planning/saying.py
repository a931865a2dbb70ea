"""Moments, lengths and names in words, for the sentences that planning gives a maker."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import month_said, short_weekday_said
from studio_planner.craft.local_time import readings_of
from studio_planner.craft.saying import Saying, joined, saying
from studio_planner.craft.tongue import marked

if TYPE_CHECKING:
    from collections.abc import Iterable
    from zoneinfo import ZoneInfo

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.saying import Fact
    from studio_planner.craft.studio import Studio

_MOST_NAMED = 3
_A_DAY = 24 * 60
_OF_PIECE = ("{piece}: ", "{piece}, ")
"""How a reason begins that says of which piece it is, and could be of several."""


def moment_said(zone: ZoneInfo, second: float) -> Saying:
    """The local day and time of an instant in seconds, such as Tue 3 Mar 23:10."""
    local = datetime.fromtimestamp(second, UTC).astimezone(zone)
    words = saying(
        "saying",
        "{weekday} {day} {month} {time}",
        weekday=short_weekday_said(local.weekday()),
        day=local.day,
        month=month_said(local.month),
        time=f"{local.hour:02}:{local.minute:02}",
    )
    twice = len(readings_of(zone, local.replace(tzinfo=None))) > 1
    return joined(words, f"({local.tzname()})" if twice else "")


def length_said(seconds: float) -> Saying:
    """A length of time, such as 45 min, 6 h 40 min or 3 d 4 h."""
    minutes = round(seconds / 60.0)
    if minutes < 60:  # noqa: PLR2004 - minutes in an hour
        return Saying(f"{minutes} min")
    if minutes < 2 * _A_DAY:
        return Saying(f"{minutes // 60} h {minutes % 60:02} min")
    hours = round(seconds / 3600.0)
    return saying("words", "{days} d {hours} h", days=hours // 24, hours=hours % 24)


def listed(names: Iterable[Saying | str], most: int = _MOST_NAMED) -> Saying:
    """Names one after another: A, B and C; of more than `most` only those and a count."""
    all_names = list(dict.fromkeys(names))
    shown = all_names[:most]
    left = len(all_names) - len(shown)
    if left:
        shown = [*shown, saying("lists", "{count} more", count=left)]
    *others, last = shown
    if not others:
        return joined(last)
    first = joined(*others, between=", ")
    return saying("lists", "{first} and {last}", first=first, last=last)


def said_once(reasons: Iterable[Saying]) -> list[Saying]:
    """What holds of several pieces in one sentence that names them; the rest as it is."""
    pieces: dict[Saying, list[Saying | str]] = {}
    for reason in reasons:
        named = reason.text.startswith(_OF_PIECE)
        names = [str(fact) for name, fact in reason.facts if named and name == "piece"]
        rule = _with_piece(reason, "") if named else reason
        pieces.setdefault(rule, []).extend(names)
    return [
        _with_piece(rule, listed(names)) if names else rule for rule, names in pieces.items()
    ]


def _with_piece(reason: Saying, piece: Fact) -> Saying:
    facts = ((name, piece if name == "piece" else fact) for name, fact in reason.facts)
    return replace(reason, facts=tuple(facts))


def coat_said(piece: Piece, coat: str, *, first: bool = False) -> Saying:
    """A coat with its piece, such as: the flood 2 on Board 3; `first` in a sentence or not."""
    text = (
        marked("saying", "The {coat} on {piece}")
        if first
        else marked("saying", "the {coat} on {piece}")
    )
    return saying("saying", text, coat=piece.coat_name_said(coat), piece=piece.name)


def owner_said(studio: Studio, piece: str) -> str:
    """The order that a piece belongs to, or the piece itself when nobody ordered it."""
    order = studio.order_of(piece)
    return studio.piece(piece).name if order is None else order.name
