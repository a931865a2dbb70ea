"""Mixes whose A and B do not go together: by how much, and what to do about it.

What follows from a wrong ratio is common practice, as at the scale: a little is watched, from
5 % of the hardener on a mix is not poured. What was poured all the same stays in the log.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.amounts import ratio_by_weight
from studio_planner.craft.products import RatioBy
from studio_planner.science.mix_ratio import Parts, a_to_add, hardener_error
from studio_planner.services.amount_words import grams_said, percent_said
from studio_planner.services.mixing.at_the_scale import STOP_SHARE
from studio_planner.services.questions.sentences import Sentence, said

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio


def hardener_off(studio: Studio, mix: WeighedMix) -> float | None:
    """By what share the B of a mix is too much (positive) or too little [-].

    None where it is right within the studio's tolerance or one step of its scale, and where
    nobody knows: no two-part product, one that is gone, one whose ratio is only assumed.
    """
    product = _mixed(studio, mix)
    if product is None or mix.a_grams <= 0.0:
        return None
    ratio = ratio_by_weight(product)
    lacking = abs(mix.b_grams - ratio.b_for(mix.a_grams))
    error = hardener_error(ratio, Parts(mix.a_grams, mix.b_grams))
    rules = studio.settings
    wrong = abs(error) > rules.ratio_tolerance_pct / 100.0 and lacking > rules.scale_step_g
    return error if wrong else None


def is_badly_off(studio: Studio, mix: WeighedMix) -> bool:
    """Whether a mix is so far from its ratio that it may never cure."""
    error = hardener_off(studio, mix)
    return error is not None and abs(error) >= STOP_SHARE


def fault_of(studio: Studio, mix: WeighedMix) -> Sentence | None:
    """What is wrong with the ratio of a mix; None where nothing is, or nobody knows."""
    error = hardener_off(studio, mix)
    if error is None:
        return None
    text = (
        "Mix {batch} has {share} % too much B for {product}."
        if error > 0.0
        else "Mix {batch} has {share} % too little B for {product}."
    )
    name = studio.product(mix.product).name
    return said(text, batch=mix.batch, share=percent_said(abs(error)), product=name)


def bad_mix_of(studio: Studio, piece: str, coat: str) -> Sentence | None:
    """What is wrong with the mix of a coat that may never cure; None where that is not so."""
    pours = (pour for pour in studio.poured if (pour.piece, pour.coat) == (piece, coat))
    batches = {pour.batch for pour in pours}
    bad = (m for m in studio.standing_mixes if m.batch in batches and is_badly_off(studio, m))
    return next((fault_of(studio, mix) for mix in bad), None)


def fault_and_remedy(studio: Studio, mix: WeighedMix) -> Iterable[Sentence]:
    """What is wrong with a mix's ratio and what to do; nothing where nothing is wrong."""
    fault = fault_of(studio, mix)
    if fault is None:
        return
    yield fault
    if not is_badly_off(studio, mix):
        yield said("Watch how it cures.")
    elif any(pour.batch == mix.batch for pour in studio.poured):
        yield said(
            "It is poured and may never cure: touch-test it before anything goes on it, and "
            "strip what stays soft."
        )
    else:
        yield _to_add(studio, mix)
    yield said("If only the note is wrong, correct entry {number}.", number=mix.entry)


def _to_add(studio: Studio, mix: WeighedMix) -> Sentence:
    """What mends a mix in the cup, where the cup may hold that much."""
    product = studio.product(mix.product)
    ratio = ratio_by_weight(product)
    add_a = a_to_add(ratio, Parts(mix.a_grams, mix.b_grams))
    add_b = max(0.0, ratio.b_for(mix.a_grams) - mix.b_grams)
    if mix.grams + add_a + add_b > product.cup_limit_g:
        return said("Do not pour it so, it may never cure: weigh a new one.")
    text = (
        "Do not pour it so, it may never cure: while it is thin add {grams} of A, or weigh a "
        "new one."
        if add_a > 0.0
        else "Do not pour it so, it may never cure: while it is thin add {grams} of B, or "
        "weigh a new one."
    )
    return said(text, grams=grams_said(add_a or add_b, studio.units))


def _mixed(studio: Studio, mix: WeighedMix) -> Product | None:
    product = next((one for one in studio.products if one.key == mix.product), None)
    if product is None or product.ratio is None or product.ratio.by is RatioBy.ASSUMED:
        return None
    return product
