"""What kinds of colourant are called, and what is usual of them."""

from __future__ import annotations

from studio_planner.desktop.quantities import number_words
from studio_planner.desktop.tongue import translate
from studio_planner.science.film_limits import COLOURANT_LIMITS, Colourant
from studio_planner.science.grains import GRAINS


def kind_name(kind: Colourant) -> str:
    """What a kind of colourant is called."""
    return {
        Colourant.PASTE: translate("pigments", "paste"),
        Colourant.MICA: translate("pigments", "mica"),
        Colourant.METAL_POWDER: translate("pigments", "metal powder"),
        Colourant.DRY_PIGMENT: translate("pigments", "dry pigment"),
        Colourant.ALCOHOL_INK: translate("pigments", "alcohol ink"),
        Colourant.ACRYLIC_PAINT: translate("pigments", "acrylic paint"),
        Colourant.GLITTER: translate("pigments", "glitter"),
        Colourant.SOLVENT_TINT: translate("pigments", "tint in solvent"),
    }[kind]


def usual_line(kind: Colourant) -> str:
    """The usual share of a kind in a mix, its ceiling, and the grain that is assumed."""
    limit = COLOURANT_LIMITS[kind]
    said = translate(
        "pigments",
        "Usual in a mix: {low} to {high} %, at most {ceiling} % (common practice; the data "
        "sheets of mix and colourant go before it).",
    ).format(
        low=number_words(100.0 * limit.working_from),
        high=number_words(100.0 * limit.working_to),
        ceiling=number_words(100.0 * limit.ceiling),
    )
    grain = GRAINS.get(kind)
    if grain is None:
        return said
    assumed = translate(
        "pigments", "Where density and size are empty: {density} g/cm³ and {size} µm."
    ).format(density=number_words(grain.density), size=number_words(grain.diameter_um))
    return f"{said} {assumed}"
