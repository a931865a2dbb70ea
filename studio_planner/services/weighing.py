"""What to weigh for the mixes of a plan: A, B, cups and colours, as the scale shows them.

Everything on the scale is a whole number of its steps. A mix is never weighed so small that
the step would spoil its ratio; the cups of a mix add up to the mix.
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
    """One cup of a mix: what goes in of the mix and of colourant, in grams.

    `reads_grams` is what the scale shows, tared with the empty cup, when both are in.
    """

    colour: str
    mix_grams: float
    colourant: str
    colourant_grams: float
    reads_grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighedMix:
    """One mix on the scale.

    A plan's mix that is larger than its product allows is weighed in `parts` equal mixes, one
    after another. `a_grams` and `b_grams` are None for a product that is not mixed; the scale,
    tared with the empty cup, shows `a_grams` and then `total_grams`.
    `out_of_cup_minutes` counts from when A meets B; None when the sheet has no cup life.
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
    cups: tuple[Cup, ...]
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
    parts = max(1, math.ceil(sum(grams) / product.mix_limit_g - 1e-9))
    one = _one_mix(studio, product, entered[0], sum(grams) / parts, coats)
    return tuple(
        WeighedMix(mix=mix, part=part + 1, parts=parts, product=product, coats=coats, **one)
        for part in range(parts)
    )


def _one_mix(
    studio: Studio, product: Product, coat: Coat, spread: float, coats: tuple[PlannedCoat, ...]
) -> _Amounts:
    settings = studio.settings
    colours = coat.colours or (_WITHOUT_COLOUR,)
    counts = [_cup_count(spread * c.share_pct / 100.0, product, settings) for c in colours]
    needed = spread + sum(counts) * settings.cup_loss_g if spread > 0.0 else 0.0
    a_grams, b_grams, total = _on_the_scale(product, needed, settings)
    cups = _cups(colours, counts, total, settings.scale_step_g) if total else ()
    largest = max((cup.mix_grams for cup in cups), default=0.0)
    return {
        "spread_grams": spread,
        "total_grams": total,
        "a_grams": a_grams,
        "b_grams": b_grams,
        "cups": cups,
        "out_of_cup_minutes": out_of_cup_minutes(studio, product, largest, coats[0]),
        "notes": notes_on(product, coat, needed, total),
    }


def _cup_count(grams: float, product: Product, settings: Settings) -> int:
    # What stays in a cup takes room in it too.
    room = max(product.cup_limit_g - settings.cup_loss_g, 1.0)
    return max(1, math.ceil(grams / room - 1e-9))


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
    colours: tuple[Colour, ...], counts: list[int], total: float, step: float
) -> tuple[Cup, ...]:
    shares = [
        (colour, colour.share_pct / count)
        for colour, count in zip(colours, counts, strict=True)
        for _ in range(count)
    ]
    whole = sum(share for _, share in shares)
    cups, filled, left = [], 0.0, total
    for colour, share in shares:
        filled += share
        # The rest goes on: rounding never lets the cups differ from the mix.
        mix_grams = _steps(left - total * (1.0 - filled / whole), step)
        left = _steps(left - mix_grams, step)
        cups.append(_cup(colour, mix_grams, step))
    return tuple(cups)


def _cup(colour: Colour, mix_grams: float, step: float) -> Cup:
    colourant = _steps(mix_grams * colour.colourant_pct / 100.0, step)
    return Cup(
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
