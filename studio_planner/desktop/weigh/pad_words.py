"""Whether a number on the pad can be, and what is said where it can't."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.weigh_words import reading
from studio_planner.services.mix_run.taps import TapKind
from studio_planner.services.mix_run.walk import least_reading

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.stand import Stand

_CRUMB = 1e-6


def can_be(stand: Stand, asks: TapKind | None, grams: float | None) -> bool:
    """Whether the display can read so much, or so much can be left in the cup."""
    if grams is None or grams <= 0.0:
        return False
    if asks is TapKind.READS:
        return grams > least_reading(stand) + _CRUMB
    most = _most_left(stand)
    return most is None or grams <= most + _CRUMB


def doubt_said(
    studio: Studio, stand: Stand, asks: TapKind | None, grams: float | None
) -> list[str]:
    """Why a number that was typed is not taken, and what to type; empty where it is."""
    if asks is None or grams is None or grams <= 0.0 or can_be(stand, asks, grams):
        return []
    if asks is TapKind.LEFT:
        said = translate("weigh", "Only {grams} were in this cup.")
        return [said.format(grams=reading(_most_left(stand) or 0.0, studio))]
    before = least_reading(stand)
    said = translate(
        "weigh",
        "{before} are in the cup already, so the display reads more. Was it set to zero in "
        "between? Then type {together}.",
    )
    return [
        said.format(before=reading(before, studio), together=reading(before + grams, studio))
    ]


def limit_said(studio: Studio, stand: Stand, asks: TapKind | None) -> str:
    """Between which bounds a number has to be, in a few words for a button."""
    if asks is TapKind.LEFT:
        most = translate("weigh", "At most {grams}")
        return most.format(grams=reading(_most_left(stand) or 0.0, studio))
    more = translate("weigh", "More than {grams}")
    return more.format(grams=reading(least_reading(stand), studio))


def _most_left(stand: Stand) -> float | None:
    """All that was in the cup that is poured [g]; None at any other step."""
    cup, now = stand.step.cup, stand.now
    if cup is None:
        return None
    only = len(now.portion.cups) == 1
    mix = now.portion.total_grams if only else now.mixes.get(cup.number, cup.mix_grams)
    return mix + now.colours.get(cup.number, cup.colourant_grams)
