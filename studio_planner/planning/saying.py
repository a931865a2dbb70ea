"""Moments, lengths and names in words, for the sentences that planning gives a maker."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import month_word, short_weekday_word
from studio_planner.craft.local_time import readings_of
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable
    from zoneinfo import ZoneInfo

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio

_MOST_NAMED = 3
_A_DAY = 24 * 60


def moment_said(zone: ZoneInfo, second: float) -> str:
    """The local day and time of an instant in seconds, such as Tue 3 Mar 23:10."""
    local = datetime.fromtimestamp(second, UTC).astimezone(zone)
    words = translate("saying", "{weekday} {day} {month} {time}").format(
        weekday=short_weekday_word(local.weekday()),
        day=local.day,
        month=month_word(local.month),
        time=f"{local.hour:02}:{local.minute:02}",
    )
    twice = len(readings_of(zone, local.replace(tzinfo=None))) > 1
    return f"{words} ({local.tzname()})" if twice else words


def length_said(seconds: float) -> str:
    """A length of time, such as 45 min, 6 h 40 min or 3 d 4 h."""
    minutes = round(seconds / 60.0)
    if minutes < 60:  # noqa: PLR2004 - minutes in an hour
        return f"{minutes} min"
    if minutes < 2 * _A_DAY:
        return f"{minutes // 60} h {minutes % 60:02} min"
    hours = round(seconds / 3600.0)
    return translate("words", "{days} d {hours} h").format(days=hours // 24, hours=hours % 24)


def listed(names: Iterable[str]) -> str:
    """Names one after another: A, B and C; of many only the first few and a count."""
    all_names = list(dict.fromkeys(names))
    shown = all_names[:_MOST_NAMED]
    left = len(all_names) - len(shown)
    if left:
        shown = [*shown, translate("lists", "{count} more").format(count=left)]
    if len(shown) == 1:
        return shown[0]
    both = translate("lists", "{first} and {last}")
    return both.format(first=", ".join(shown[:-1]), last=shown[-1])


def coat_said(piece: Piece, coat: str) -> str:
    """A coat with its piece, such as: the flood 2 on Board 3."""
    said = translate("saying", "the {coat} on {piece}")
    return said.format(coat=piece.coat_name(coat), piece=piece.name)


def owner_said(studio: Studio, piece: str) -> str:
    """The order that a piece belongs to, or the piece itself when nobody ordered it."""
    order = studio.order_of(piece)
    return studio.piece(piece).name if order is None else order.name
