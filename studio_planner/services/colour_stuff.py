"""What a colour of a coat is made of: kind, ceiling, grain and how heavy it is in the mix."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import marked, translate
from studio_planner.science.film_limits import COLOURANT_LIMITS, Colourant
from studio_planner.science.grains import GRAINS, Grain, Liquid, fall_speed

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.pieces import Colour
    from studio_planner.craft.pigments import Pigment

HEAVY_MM_PER_HOUR = 0.1
"""What sinks faster than this in a usual mix of 1 Pa·s counts as heavy (our choice)."""

_USUAL = Liquid(1.0, 1.10)


class Heaviness(StrEnum):
    """How a colour behaves in a cup: nothing to sink, too fine to sink, or sinking."""

    CLEAR = "clear"
    LIGHT = "light"
    HEAVY = "heavy"


_REASONS = {
    Colourant.PASTE: marked("mixing", "its carrier does not react"),
    Colourant.MICA: marked("mixing", "it thickens, settles and dulls the gloss"),
    Colourant.METAL_POWDER: marked("mixing", "it sinks; mind its dust"),
    Colourant.DRY_PIGMENT: marked("mixing", "it wets poorly and lumps"),
    Colourant.ALCOHOL_INK: marked("mixing", "trapped solvent leaves a soft film"),
    Colourant.ACRYLIC_PAINT: marked("mixing", "its water leaves a soft, cloudy film"),
    Colourant.GLITTER: marked("mixing", "it stands out of a thin film"),
    Colourant.SOLVENT_TINT: marked("mixing", "trapped solvent leaves a soft film"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourStuff:
    """What a colour is made of.

    `kind` is None where nothing in the studio is called like its colourant; `grain` is None
    where nothing in it is coarse enough to sink, or nobody knows.
    """

    colour: Colour
    kind: Colourant | None
    grain: Grain | None

    @property
    def ceiling_pct(self) -> float | None:
        """The usual ceiling of its kind in per cent of its part of the mix; None: unknown."""
        return None if self.kind is None else 100.0 * COLOURANT_LIMITS[self.kind].ceiling

    @property
    def over_ceiling(self) -> bool:
        """Whether more of it goes in than is usual at most."""
        ceiling = self.ceiling_pct
        return ceiling is not None and self.colour.colourant_pct > ceiling

    @property
    def reason(self) -> str:
        """Why its kind has a ceiling, in the maker's language."""
        return "" if self.kind is None else translate("mixing", _REASONS[self.kind])

    @property
    def heaviness(self) -> Heaviness:
        """How it behaves in a cup of a usual mix."""
        if self.grain is None or self.colour.colourant_pct <= 0.0:
            return Heaviness.CLEAR
        heavy = abs(fall_speed(self.grain, _USUAL)) > HEAVY_MM_PER_HOUR
        return Heaviness.HEAVY if heavy else Heaviness.LIGHT

    @property
    def sinks(self) -> float:
        """How fast it sinks in a usual mix [mm/h]; 0.0 where it does not."""
        if self.heaviness is Heaviness.CLEAR or self.grain is None:
            return 0.0
        return abs(fall_speed(self.grain, _USUAL))


def stuff_of(colour: Colour, pigments: Sequence[Pigment] = ()) -> ColourStuff:
    """What a colour is made of: a pigment of that key or name, else the kind of that name."""
    words = colour.colourant
    pigment = pigment_called(words, pigments)
    kind = kind_called(words) if pigment is None else pigment.kind
    return ColourStuff(colour=colour, kind=kind, grain=_grain(kind, pigment))


def pigment_called(words: str, pigments: Sequence[Pigment]) -> Pigment | None:
    """The pigment of that key or name; None when none is called so."""
    return next((one for one in pigments if one.called(words)), None)


def kind_called(words: str) -> Colourant | None:
    """The kind of colourant that is called so, in any case; None when none is."""
    kind = words.strip().casefold().replace(" ", "_")
    return Colourant(kind) if kind in set(Colourant) else None


def light_first(
    colours: Sequence[Colour], pigments: Sequence[Pigment] = ()
) -> tuple[Colour, ...]:
    """The colours in the order to pour them: what does not sink first, the heaviest last.

    Colours that sink alike stay in the maker's order.
    """
    return tuple(sorted(colours, key=lambda one: stuff_of(one, pigments).sinks))


def _grain(kind: Colourant | None, pigment: Pigment | None) -> Grain | None:
    usual = None if kind is None else GRAINS.get(kind)
    if usual is None or pigment is None:
        return usual
    return replace(
        usual,
        density=pigment.density or usual.density,
        diameter_um=pigment.diameter_um or usual.diameter_um,
    )
