"""What goes into the cups of a coat, in grams for the pour that it is entered for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.piece_pages.colourants import colourant_words
from studio_planner.desktop.tongue import translate
from studio_planner.services.mixing.recipes import recipe_of

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.recipes import RecipeLine


def cups_words(studio: Studio, coat: Coat, mixed: float) -> str:
    """A line for each colour of a coat, of so many grams of mix; empty for a clear coat."""
    return "\n".join(_line(studio, one) for one in recipe_of(studio, coat, mixed))


def _line(studio: Studio, line: RecipeLine) -> str:
    colour = line.stuff.colour
    mix = words.mass(line.mix_grams, studio.units)
    if not colour.colourant_pct:
        return translate("pieces", "{colour}: {mix} of mix as it is").format(
            colour=colour.name, mix=mix
        )
    return translate("pieces", "{colour}: {grams} of {colourant} into {mix} of mix").format(
        colour=colour.name,
        grams=words.mass(line.colourant_grams, studio.units),
        colourant=colourant_words(colour.colourant) or translate("pieces", "colourant"),
        mix=mix,
    )
