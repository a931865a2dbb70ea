"""What to weigh for the mixes of a plan: A, B, cups and colours, as the scale shows them.

A heats itself and B in one vessel, so a mix larger than its product's largest cup is weighed
and mixed in equal portions, each by itself. Everything on the scale is a whole number of its
steps. A portion is never so small that the step would spoil its ratio; its cups add up to it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypedDict

from studio_planner.craft.amounts import coat_grams, ratio_by_weight
from studio_planner.craft.pieces import Colour
from studio_planner.craft.products import ProductKind
from studio_planner.services.cup_times import out_of_cup_minutes
from studio_planner.services.mix_notes import notes_on
from studio_planner.services.naming import UnknownName

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Settings
    from studio_planner.craft.studio import Studio

_WITHOUT_COLOUR = Colour(name="clear")


@dataclass(frozen=True, slots=True, kw_only=True)
class Cup:
    """One cup of a colour: what goes in of the mix and of colourant, in grams.

    `number` counts the cups of a whole mix from 1. `reads_grams` is what the scale shows, tared
    with the empty cup, when both are in.
    """

    number: int
    colour: str
    mix_grams: float
    colourant: str
    colourant_grams: float
    reads_grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighedMix:
    """One mix on the scale, or one portion of it.

    A plan's mix that is larger than its product's largest cup or mix is weighed in `parts`
    equal portions, one after another; all grams are those of one portion. `a_grams` and
    `b_grams` are None for a product that is not mixed; the scale, tared with the empty cup,
    shows `a_grams` and then `total_grams`. With one colour the portion stays in its cup; of
    several each is in a cup of its own. `out_of_cup_minutes` counts from when A meets B, for
    the whole portion in one cup; None when the sheet has no cup life.
    """

    mix: int
    part: int
    parts: int
    product: Product
    coats: tuple[PlannedCoat, ...]
    spread_grams: float
    total_grams: float
    a_grams: float | None
    b_grams: float | None
    cups: tuple[Cup, ...]
    out_of_cup_minutes: float | None
    notes: tuple[str, ...]


class _Amounts(TypedDict):
    spread_grams: float
    total_grams: float
    a_grams: float | None
    b_grams: float | None
    out_of_cup_minutes: float | None
    notes: tuple[str, ...]


def weigh(studio: Studio, plan: Plan, numbers: Iterable[int]) -> tuple[WeighedMix, ...]:
    """Give the mixes that the coats with these numbers are poured from, whole, in order.

    Raises UnknownName for a number that is not in the plan.
    """
    mixes = {}
    for number in numbers:
        coat = plan.coat(number)
        if coat is None:
            known = f"1 to {max((c.number for c in plan.coats), default=0)}"
            message = f"There is no coat {number} in the kept plan; it has {known}."
            raise UnknownName(message)
        mixes[coat.mix] = tuple(c for c in plan.coats if c.mix == coat.mix)
    return tuple(
        weighed for mix in sorted(mixes) for weighed in _weighed(studio, mix, mixes[mix])
    )


def _weighed(
    studio: Studio, mix: int, coats: tuple[PlannedCoat, ...]
) -> tuple[WeighedMix, ...]:
    entered = [studio.piece(c.piece).coat(c.coat) for c in coats]
    product = studio.product(entered[0].product)
    grams = [
        coat_grams(studio.piece(planned.piece), coat, product, studio.settings)
        for planned, coat in zip(coats, entered, strict=True)
    ]
    colours = entered[0].colours or (_WITHOUT_COLOUR,)
    lost = len(colours) * studio.settings.cup_loss_g
    parts = _portions(product, sum(grams), lost)
    portion = _portion(studio, product, entered[0], sum(grams) / parts, coats)
    return tuple(
        WeighedMix(
            mix=mix,
            part=part + 1,
            parts=parts,
            product=product,
            coats=coats,
            cups=_cups(colours, portion["total_grams"], studio.settings, part),
            **portion,
        )
        for part in range(parts)
    )


def _portions(product: Product, spread: float, lost: float) -> int:
    # What stays in the cups takes room too.
    room = max(min(product.mix_limit_g, product.cup_limit_g - lost), 1.0)
    return max(1, math.ceil(spread / room - 1e-9))


def _portion(
    studio: Studio, product: Product, coat: Coat, spread: float, coats: tuple[PlannedCoat, ...]
) -> _Amounts:
    settings = studio.settings
    cups = max(1, len(coat.colours))
    needed = spread + cups * settings.cup_loss_g if spread > 0.0 else 0.0
    a_grams, b_grams, total = _on_the_scale(product, needed, settings)
    return {
        "spread_grams": spread,
        "total_grams": total,
        "a_grams": a_grams,
        "b_grams": b_grams,
        "out_of_cup_minutes": out_of_cup_minutes(studio, product, total, coats[0]),
        "notes": notes_on(product, coat, needed, total),
    }


def _on_the_scale(
    product: Product, needed: float, settings: Settings
) -> tuple[float | None, float | None, float]:
    step = settings.scale_step_g
    if product.kind is not ProductKind.TWO_PART or needed <= 0.0:
        return None, None, _steps_up(needed, step)
    ratio = ratio_by_weight(product)
    smallest = ratio.smallest_mix(step, settings.ratio_tolerance_pct / 100.0)
    a_grams = _steps_up(ratio.parts(max(needed, smallest)).a_grams, step)
    b_grams = _steps(ratio.b_for(a_grams), step)
    return a_grams, b_grams, _steps(a_grams + b_grams, step)


def _cups(
    colours: tuple[Colour, ...], total: float, settings: Settings, part: int
) -> tuple[Cup, ...]:
    """The cups of a portion: one for each colour, or none when nothing is weighed."""
    if not total:
        return ()
    step = settings.scale_step_g
    whole = sum(colour.share_pct for colour in colours)
    cups, filled, left = [], 0.0, total
    for number, colour in enumerate(colours, start=1 + part * len(colours)):
        filled += colour.share_pct
        # The rest goes on: rounding never lets the cups differ from the portion.
        mix_grams = _steps(left - total * (1.0 - filled / whole), step)
        left = _steps(left - mix_grams, step)
        cups.append(_cup(number, colour, mix_grams, step))
    return tuple(cups)


def _cup(number: int, colour: Colour, mix_grams: float, step: float) -> Cup:
    colourant = _steps(mix_grams * colour.colourant_pct / 100.0, step)
    return Cup(
        number=number,
        colour=colour.name,
        mix_grams=mix_grams,
        colourant=colour.colourant,
        colourant_grams=colourant,
        reads_grams=_steps(mix_grams + colourant, step),
    )


def _steps(grams: float, step: float) -> float:
    return round(round(grams / step) * step, 6)


def _steps_up(grams: float, step: float) -> float:
    return round(math.ceil(grams / step - 1e-9) * step, 6)
