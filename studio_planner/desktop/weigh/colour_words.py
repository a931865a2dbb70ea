"""What is said of the colourant that really went into the cups of a portion."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import figure
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.weigh_words import reading
from studio_planner.services.colour_stuff import stuff_of

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Colour
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.stand import PortionRun
    from studio_planner.services.weighing import Cup

_CRUMB = 1e-6
_OTHER_SHADE, _STEPS = 0.2, 2.0
"""From this share of the recipe, and so many steps of the scale, on a shade is another one
(our choice)."""


def colour_lines(studio: Studio, now: PortionRun) -> list[str]:
    """Cups with more colourant than is usual at most or than their recipe, in sentences."""
    planned, lines = now.portion.coats[0], list[str]()
    colours = {one.name: one for one in studio.piece(planned.piece).coat(planned.coat).colours}
    for cup in now.portion.cups:
        grams, colour = now.colours.get(cup.number), colours.get(cup.colour)
        mix = _mix_grams(now, cup)
        if grams is None or colour is None or not mix:
            continue
        lines += _over_ceiling(studio, colour, 100.0 * grams / mix) or _other_shade(
            studio, colour, grams, mix
        )
    return lines


def _mix_grams(now: PortionRun, cup: Cup) -> float:
    return now.mixes.get(cup.number, cup.mix_grams)


def _over_ceiling(studio: Studio, colour: Colour, share_pct: float) -> list[str]:
    most = stuff_of(colour, studio.pigments).ceiling_pct
    if most is None or share_pct <= most + _CRUMB:
        return []
    said = translate(
        "weigh",
        "{colour}: {share} % of {colourant} is in it, usually {most} % at most: ask the "
        "product's sheet.",
    )
    return [
        said.format(
            colour=colour.name,
            share=figure(f"{share_pct:.1f}"),
            colourant=colour.colourant,
            most=figure(f"{most:g}"),
        )
    ]


def _other_shade(studio: Studio, colour: Colour, grams: float, mix: float) -> list[str]:
    recipe = mix * colour.colourant_pct / 100.0
    off = abs(grams - recipe)
    if off <= max(_OTHER_SHADE * recipe, _STEPS * studio.settings.scale_step_g):
        return []
    said = translate(
        "weigh",
        "{colour}: {grams} of {colourant} instead of {recipe}: it becomes another shade; weigh "
        "what has to match it in the same way.",
    )
    return [
        said.format(
            colour=colour.name,
            grams=reading(grams, studio),
            colourant=colour.colourant,
            recipe=reading(recipe, studio),
        )
    ]
