"""What a maker should know before weighing a mix."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind, RatioBy
from studio_planner.craft.tongue import figure, translate
from studio_planner.science.film_limits import ALL_COLOURANTS_CEILING, Colourant
from studio_planner.services.amount_words import grams_said
from studio_planner.services.colour_stuff import stuff_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.services.colour_stuff import ColourStuff

_ADDED = 1.005
"""From half a per cent on it is worth saying that a mix is larger than it has to be."""


def notes_on(
    studio: Studio, coat: Coat, needed: float, total: float, smallest: float = 0.0
) -> tuple[str, ...]:
    """Give the sentences on one mix: what is not weighed, the smallest mix, much colourant.

    `needed` is what the coats and the cups take, `total` what is weighed, `smallest` the mix
    from which on the scale is exact enough, all in grams.
    """
    if studio.product(coat.product).kind is ProductKind.LEAF:
        return (translate("mixing", "Leaf is laid, not weighed."),)
    colours = [stuff_of(colour, studio.pigments) for colour in coat.colours]
    notes = _ratio_notes(studio.product(coat.product))
    notes += [_ceiling_note(stuff) for stuff in colours if stuff.over_ceiling]
    share = _share(colours)
    high = any(stuff.over_ceiling for stuff in colours)
    if share > ALL_COLOURANTS_CEILING and not high:
        notes.append(
            translate(
                "mixing", "All colourants together are {share} % of the mix; that is much."
            ).format(share=figure(f"{100 * share:.1f}"))
        )
    if total * _ADDED < smallest:
        notes.append(
            translate(
                "mixing",
                "More than {total} must not be in one cup, and less than {smallest} cannot be "
                "weighed exactly enough on this scale: use a finer one.",
            ).format(
                total=grams_said(total, studio.units),
                smallest=grams_said(smallest, studio.units),
            )
        )
    elif total > needed * _ADDED and total - needed > 1.0:
        notes.append(
            translate(
                "mixing",
                "{needed} would do, but less than {total} cannot be weighed exactly enough "
                "on this scale.",
            ).format(
                needed=grams_said(needed, studio.units), total=grams_said(total, studio.units)
            )
        )
    return tuple(notes)


def _ratio_notes(product: Product) -> list[str]:
    if product.ratio is None or product.ratio.by is not RatioBy.ASSUMED:
        return []
    said = translate(
        "mixing",
        "Do not mix yet: the ratio of {product} is only assumed; enter the one on its sheet.",
    )
    return [said.format(product=product.name)]


def _share(colours: Sequence[ColourStuff]) -> float:
    # Glitter is meant to stand out of the film and has a ceiling of its own.
    return sum(
        stuff.colour.share_pct * stuff.colour.colourant_pct / 10_000.0
        for stuff in colours
        if stuff.kind is not Colourant.GLITTER
    )


def _ceiling_note(stuff: ColourStuff) -> str:
    colour = stuff.colour
    return translate(
        "mixing",
        "{colour}: {share} % of {colourant} is over the usual ceiling of {ceiling} % "
        "({reason}); ask the product's sheet.",
    ).format(
        colour=colour.name,
        share=figure(f"{colour.colourant_pct:g}"),
        colourant=colour.colourant,
        ceiling=figure(f"{stuff.ceiling_pct:g}"),
        reason=stuff.reason,
    )
