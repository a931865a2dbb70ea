"""What the expected air does to a pour of tonight, in one sentence for each product."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.desktop.words import Wall
    from studio_planner.services.air_effects import PourTonight


def effect_words(pour: PourTonight, wall: Wall) -> str:
    """The window of one product poured tonight, and when it can be handled."""
    parts = [_window(pour, wall)]
    if pour.handle is not None:
        parts.append(
            translate("room", "handle {when}").format(when=words.moment(pour.handle, wall))
        )
    if pour.too_cold:
        parts.insert(0, translate("room", "colder than its sheet allows at the pour"))
    if pour.too_warm:
        parts.insert(0, translate("room", "warmer than its sheet allows at the pour"))
    return f"{pour.product.name}: {'; '.join(parts)}"


def _window(pour: PourTonight, wall: Wall) -> str:
    if not pour.has_opening:
        return translate("room", "its sheet has no figure for when recoat opens")
    if pour.opens is None:
        return translate("room", "recoat does not open within ten days")
    opens = words.moment(pour.opens, wall)
    if not pour.has_closing:
        return translate(
            "room", "recoat opens {opens}; its sheet does not say when it closes"
        ).format(opens=opens)
    if pour.closes is None:
        return translate("room", "recoat opens {opens}, still open after ten days").format(
            opens=opens
        )
    closes = words.moment(pour.closes, wall)
    if pour.shut:
        return translate(
            "room",
            "no sure window: it may close {closes}, before it is sure to be open, {opens}",
        ).format(closes=closes, opens=opens)
    hours = (pour.closes - pour.opens).total_seconds() / 3600.0
    return translate("room", "recoat {opens} to {closes}, {length} long").format(
        opens=opens, closes=closes, length=words.length_of_time(hours)
    )
