"""What was really weighed: the B for the A in the cup, what follows, and when to stop.

Nothing is scooped out: too much B asks for more A, and the mix grows. Limits are common
practice: 2 % of the hardener is aimed at (the studio's setting), from 5 % on it is not poured.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import ratio_by_weight
from studio_planner.craft.tongue import translate
from studio_planner.science.mix_ratio import MassError, Parts, a_to_add, hardener_error
from studio_planner.services.amount_words import grams_said, percent_said
from studio_planner.services.weighing import as_really_weighed
from studio_planner.services.whole_steps import on_steps

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.weighing import MixPortion

STOP_SHARE = 0.05
"""From this error of the hardener on a mix is not to be poured (common practice)."""

_CRUMB = 1e-9


class ScaleVerdict(StrEnum):
    """Whether to go on."""

    GO_ON = "go on"
    NOTE = "note it"
    STOP = "stop"


@dataclass(frozen=True, slots=True, kw_only=True)
class ReallyWeighed:
    """A portion as it really is, and what to do.

    `portion` has the A that is in the cup and the B that belongs to it, or that is in it too;
    `hardener_share` is by how much the B is too much (positive) or too little [-], 0.0 before
    any is weighed. `add_a_grams` or `add_b_grams` put the ratio right. `sentences` say why.
    """

    portion: MixPortion
    verdict: ScaleVerdict
    hardener_share: float
    add_a_grams: float
    add_b_grams: float
    sentences: tuple[str, ...]


def with_real_a(studio: Studio, portion: MixPortion, a_grams: float) -> ReallyWeighed:
    """What follows from the A that is really in the cup: B, total and cups.

    MassError where the portion is not mixed, or no A was weighed.
    """
    _check(portion, a_grams)
    step = studio.settings.scale_step_g
    b_grams = on_steps(ratio_by_weight(portion.product).b_for(a_grams), step)
    real = as_really_weighed(studio, portion, a_grams, b_grams)
    # Nothing has met yet: what is too much goes back, and is not divided.
    full = is_too_full(studio, real)
    sentences = [*_too_full(studio, real)[:1], *_too_small(studio, portion, real)]
    verdict = ScaleVerdict.NOTE if sentences else ScaleVerdict.GO_ON
    return ReallyWeighed(
        portion=real,
        verdict=ScaleVerdict.STOP if full else verdict,
        hardener_share=0.0,
        add_a_grams=0.0,
        add_b_grams=b_grams,
        sentences=tuple(sentences),
    )


def with_real_parts(
    studio: Studio, portion: MixPortion, a_grams: float, b_grams: float
) -> ReallyWeighed:
    """What follows from the A and the B that are really in the cup: total, cups, or stop.

    MassError where the portion is not mixed, or no A was weighed.
    """
    _check(portion, a_grams)
    step = studio.settings.scale_step_g
    ratio = ratio_by_weight(portion.product)
    weighed = Parts(a_grams, b_grams)
    error = hardener_error(ratio, weighed)
    real = as_really_weighed(studio, portion, a_grams, b_grams)
    aimed = studio.settings.ratio_tolerance_pct / 100.0
    off = abs(error) > aimed
    add_a = on_steps(a_to_add(ratio, weighed), step) if off else 0.0
    add_b = on_steps(max(0.0, ratio.b_for(a_grams) - b_grams), step) if off else 0.0
    sentences = [*_off(studio, error, add_a, add_b)] if off else []
    full = _too_full(studio, real)
    stop = bool(full) or abs(error) >= STOP_SHARE
    noted = ScaleVerdict.NOTE if off else ScaleVerdict.GO_ON
    return ReallyWeighed(
        portion=real,
        verdict=ScaleVerdict.STOP if stop else noted,
        hardener_share=error,
        add_a_grams=add_a,
        add_b_grams=add_b,
        sentences=(*sentences, *full),
    )


def _check(portion: MixPortion, a_grams: float) -> None:
    if portion.a_grams is None:
        message = translate("mixing", "{product} is not mixed from two parts.")
        raise MassError(message.format(product=portion.product.name))
    if a_grams <= 0.0:
        raise MassError(translate("mixing", "Nothing is in the cup yet; weigh part A first."))


def _off(studio: Studio, error: float, add_a: float, add_b: float) -> tuple[str, ...]:
    units = studio.units
    if error > 0.0:
        sentence = translate(
            "mixing", "{share} % too much B: add {grams} of A, and scoop nothing out."
        )
        return (sentence.format(share=percent_said(error), grams=grams_said(add_a, units)),)
    sentence = translate("mixing", "{share} % too little B: add {grams} of B.")
    return (sentence.format(share=percent_said(-error), grams=grams_said(add_b, units)),)


def is_too_full(studio: Studio, real: MixPortion) -> bool:
    """Whether there is more of it than may be in one cup."""
    return real.total_grams > real.product.cup_limit_g + studio.settings.scale_step_g / 2


def cups_for(real: MixPortion) -> int:
    """Over how many cups what is too much for one is divided."""
    return max(2, math.ceil(real.total_grams / real.product.cup_limit_g - _CRUMB))


def _too_full(studio: Studio, real: MixPortion) -> tuple[str, ...]:
    """That it is too much for one cup, and what to do then; empty where it isn't."""
    if not is_too_full(studio, real):
        return ()
    sentence = translate(
        "mixing",
        "Stop: {total} in one cup are more than the {limit} that {product} allows; it may heat "
        "itself.",
    )
    divide = translate("mixing", "Divide what is in it over {cups} cups first.")
    return (
        sentence.format(
            total=grams_said(real.total_grams, studio.units),
            limit=grams_said(real.product.cup_limit_g, studio.units),
            product=real.product.name,
        ),
        divide.format(cups=cups_for(real)),
    )


def _too_small(studio: Studio, planned: MixPortion, real: MixPortion) -> tuple[str, ...]:
    lacking = planned.spread_grams - real.total_grams
    if lacking <= studio.settings.scale_step_g:
        return ()
    sentence = translate(
        "mixing", "{lacking} less than the coats take: add A, or some of them stay thin."
    )
    return (sentence.format(lacking=grams_said(lacking, studio.units)),)
