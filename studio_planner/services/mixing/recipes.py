"""Colours by share of a mix, in grams for this pour; and what was really used on a piece."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.services.colour_stuff import ColourStuff, light_first, stuff_of
from studio_planner.services.whole_steps import on_steps

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class RecipeLine:
    """One colour of a coat for so much mix: grams of mix and of colourant."""

    stuff: ColourStuff
    mix_grams: float
    colourant_grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class UsedColour:
    """A colourant as it was weighed into a batch: grams, and per cent of the mix it went into.

    The per cent are of the whole batch, since the cups are not written down.
    """

    batch: int
    at: datetime
    name: str
    grams: float
    of_mix_pct: float


def recipe_of(studio: Studio, coat: Coat, mix_grams: float) -> tuple[RecipeLine, ...]:
    """The colours of a coat for so many grams of mix, in the order to pour them.

    The shares of mix add up to all of it, on whole steps of the scale.
    """
    step = studio.settings.scale_step_g
    colours = light_first(coat.colours, studio.pigments)
    whole = sum(colour.share_pct for colour in colours)
    lines, filled, before = [], 0.0, 0.0
    for colour in colours:
        filled += colour.share_pct
        until = on_steps(mix_grams * filled / whole, step)
        grams = until - before
        lines.append(
            RecipeLine(
                stuff=stuff_of(colour, studio.pigments),
                mix_grams=on_steps(grams, step),
                colourant_grams=on_steps(grams * colour.colourant_pct / 100.0, step),
            )
        )
        before = until
    return tuple(lines)


def really_used(studio: Studio, piece: str, coat: str) -> tuple[UsedColour, ...]:
    """What was really weighed into the mixes of a coat, as the log stands; the latest last."""
    found = []
    for mix in sorted(studio.standing_mixes, key=lambda one: one.at):
        if any((one.piece, one.coat) == (piece, coat) for one in mix.coats):
            mixed = mix.a_grams + mix.b_grams
            found += [
                UsedColour(
                    batch=mix.batch,
                    at=mix.at,
                    name=used.name,
                    grams=used.grams,
                    of_mix_pct=100.0 * used.grams / mixed if mixed else 0.0,
                )
                for used in mix.colourants
            ]
    return tuple(found)
