"""What there is to say about a mix before A meets B."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.degree_words import degrees_said
from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.products import ProductKind
from studio_planner.craft.tongue import translate
from studio_planner.science.exotherm import HeatVerdict
from studio_planner.science.heat_figures import WARN_CELSIUS
from studio_planner.services.amount_words import film_said, minutes_said

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.studio import Studio
    from studio_planner.science.exotherm import Exotherm
    from studio_planner.services.mixing.cup_plan import CupTime
    from studio_planner.services.mixing.splitting import Split

_NEAR = 1.25
"""A cup that gets warm this many times later than it is empty is worth a word (our choice)."""

_SEEN = 0.2
"""What sinks by more than this share of its film is seen to be gone (our choice)."""


def mix_warnings(studio: Studio, split: Split, heat: Exotherm | None) -> tuple[str, ...]:
    """Every warning about a mix: too slow for its cups, too hot, colours that sink."""
    return (*_cup_life(split), *_heat(studio, split, heat), *_sinking(studio, split))


def heat_words(studio: Studio, heat: Exotherm) -> str:
    """How hot a mix gets that is left in its cup, in a sentence; empty where it stays cool.

    The peak itself is not said: it is reckoned on the hot side.
    """
    if heat.warm_minutes is None:
        return ""
    sentence = translate(
        "mixing",
        "Left in its cup it passes {warm} after about {minutes} minutes: spread it before.",
    )
    if heat.verdict is HeatVerdict.TOO_HOT:
        sentence = translate(
            "mixing",
            "Left in its cup it passes {warm} after about {minutes} minutes and may get hot "
            "enough to smoke: spread it before, or put it outdoors on stone.",
        )
    return sentence.format(
        warm=degrees_said(WARN_CELSIUS, studio.units), minutes=minutes_said(heat.warm_minutes)
    )


def _cup_life(split: Split) -> Iterator[str]:
    first = split.times[0]
    mixed = first.portion.product.kind is ProductKind.TWO_PART
    if mixed and first.in_time is None and first.cups:
        yield translate(
            "mixing",
            "The sheet of {product} has no cup life: nobody knows by when its cups have to be "
            "empty.",
        ).format(product=first.portion.product.name)
    if split.fits:
        return
    late = max(time.late_minutes for time in split.times)
    if split.needed_parts is None:
        sentence = translate(
            "mixing",
            "The last cup is empty {late} minutes too late, and more mixes of the same kind do "
            "not help: take fewer pieces, fewer colours or a slower mix.",
        )
        yield sentence.format(late=minutes_said(late))
        return
    yield translate(
        "mixing",
        "The last cup is empty {late} minutes too late: weigh it in {parts} mixes, one after "
        "the other.",
    ).format(late=minutes_said(late), parts=split.needed_parts)


def _heat(studio: Studio, split: Split, heat: Exotherm | None) -> Iterator[str]:
    if heat is None or heat.warm_minutes is None:
        return
    poured = max(time.poured_minute for time in split.times)
    if heat.warm_minutes <= _NEAR * poured:
        yield heat_words(studio, heat)


def _sinking(studio: Studio, split: Split) -> Iterator[str]:
    coat = _coat(studio, split)
    if coat.kind is CoatKind.GLITTER:
        return  # flakes are to lie flat beneath the clear coats that bury them
    # Every portion has the same cups: one is enough.
    for cup in split.times[0].cups:
        if cup.sinks_mm is not None and cup.sinks_mm > _SEEN * coat.film_mm:
            yield _sinks(studio, cup, coat.film_mm)


def _sinks(studio: Studio, cup: CupTime, film_mm: float) -> str:
    sentence = translate(
        "mixing",
        "{colour} poured at minute {minute} sinks about {depth} of {film}; it would stay from "
        "minute {stays} on.",
    )
    if cup.out_by_minute is not None and (cup.stays_from_minute or 0.0) > cup.out_by_minute:
        sentence = translate(
            "mixing",
            "{colour} poured at minute {minute} sinks about {depth} of {film}; it would stay "
            "from minute {stays} on, but its cup has to be empty before.",
        )
    return sentence.format(
        colour=cup.stuff.colour.name,
        minute=minutes_said(cup.pour_minute),
        depth=film_said(cup.sinks_mm or 0.0, studio.units),
        film=film_said(film_mm, studio.units),
        stays=minutes_said(cup.stays_from_minute or 0.0),
    )


def _coat(studio: Studio, split: Split) -> Coat:
    planned = split.times[0].portion.coats[0]
    return studio.piece(planned.piece).coat(planned.coat)
