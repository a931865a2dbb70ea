"""What to weigh for the mixes of a plan: A, B, cups and colours, as the scale shows them.

A heats itself and B in one vessel, so a mix larger than its product's largest cup is weighed
and mixed in equal portions, each by itself. Everything on the scale is a whole number of its
steps. A portion is so large that the step does not spoil its ratio, as far as one cup may hold
that much: it never holds more. Its cups add up to it.
Its cups come in the order to pour them: what does not sink first, the heaviest last.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, TypedDict

from studio_planner.craft.amounts import (
    coat_grams,
    portion_room,
    portions_for,
    ratio_by_weight,
)
from studio_planner.craft.pieces import Colour
from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import LotPart
from studio_planner.services.colour_stuff import light_first
from studio_planner.services.cup_times import out_of_cup_minutes
from studio_planner.services.mix_notes import notes_on
from studio_planner.services.naming import UnknownName
from studio_planner.services.whole_steps import on_steps, steps_down, steps_up

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.pieces import Coat, Piece
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
class MixPortion:
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
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class MixAmounts:
    """What coats take that are poured from one mix: all of its portions together, in grams.

    `spread_grams` are by coat; `total_grams` is all that is weighed, with what stays in the
    cups and what the smallest mix asks for. `a_grams` and `b_grams` are None for what is not
    mixed. `colourants` are by their words, as the scale shows them.
    """

    parts: int
    spread_grams: tuple[float, ...]
    total_grams: float
    a_grams: float | None
    b_grams: float | None
    colourants: tuple[tuple[str, float], ...]

    @property
    def by_part(self) -> tuple[tuple[LotPart, float], ...]:
        """The grams of each part: of A and of B, or of the whole where nothing is mixed."""
        if self.a_grams is None or self.b_grams is None:
            return ((LotPart.WHOLE, self.total_grams),)
        return ((LotPart.A, self.a_grams), (LotPart.B, self.b_grams))


def weigh(studio: Studio, plan: Plan, numbers: Iterable[int]) -> tuple[MixPortion, ...]:
    """Give the mixes of the coats with these numbers, whole; UnknownName for other numbers."""
    mixes = {}
    for number in numbers:
        coat = plan.coat(number)
        if coat is None:
            last = max((c.number for c in plan.coats), default=0)
            message = f"There is no coat {number} in the kept plan; it has 1 to {last}."
            raise UnknownName(message)
        mixes[coat.mix] = tuple(c for c in plan.coats if c.mix == coat.mix)
    return tuple(weighed for mix in sorted(mixes) for weighed in weigh_mix(studio, mixes[mix]))


def weigh_mix(
    studio: Studio, coats: tuple[PlannedCoat, ...], least_parts: int = 1
) -> tuple[MixPortion, ...]:
    """Give the portions of the mix that these coats of a plan are poured from.

    It is divided into `least_parts` portions at least, into more where the mass needs them.
    """
    whole = _Whole.of(studio, [_entered(studio, coat) for coat in coats], least_parts)
    portion = whole.portion()
    total = portion["total_grams"]
    minutes = out_of_cup_minutes(studio, whole.product, total, coats[0])
    return tuple(
        MixPortion(
            mix=coats[0].mix,
            part=part + 1,
            parts=whole.parts,
            product=whole.product,
            coats=coats,
            cups=_cups(whole.colours, total, studio.settings, part),
            out_of_cup_minutes=minutes,
            **portion,
        )
        for part in range(whole.parts)
    )


def as_really_weighed(
    studio: Studio, portion: MixPortion, a_grams: float, b_grams: float
) -> MixPortion:
    """Give a portion with the A and B that are really in its cup: total and cups follow.

    The cups add up to what is there, and the colourants go by what is in each.
    """
    coat = _entered(studio, portion.coats[0])[1]
    colours = light_first(coat.colours, studio.pigments) or (_WITHOUT_COLOUR,)
    total = on_steps(a_grams + b_grams, studio.settings.scale_step_g)
    return replace(
        portion,
        a_grams=a_grams,
        b_grams=b_grams,
        total_grams=total,
        cups=_cups(colours, total, studio.settings, portion.part - 1),
        out_of_cup_minutes=out_of_cup_minutes(studio, portion.product, total, portion.coats[0]),
    )


def amounts_of(studio: Studio, coats: Sequence[tuple[Piece, Coat]]) -> MixAmounts:
    """Give what coats take that are poured from one mix, planned or not, as the first says."""
    whole = _Whole.of(studio, coats)
    portion = whole.portion()
    a_grams, b_grams = portion["a_grams"], portion["b_grams"]
    cups = _cups(whole.colours, portion["total_grams"], studio.settings, 0)
    return MixAmounts(
        parts=whole.parts,
        spread_grams=whole.grams,
        total_grams=whole.parts * portion["total_grams"],
        a_grams=None if a_grams is None else whole.parts * a_grams,
        b_grams=None if b_grams is None else whole.parts * b_grams,
        colourants=tuple(
            (cup.colourant, whole.parts * cup.colourant_grams)
            for cup in cups
            if cup.colourant_grams > 0.0
        ),
    )


def _entered(studio: Studio, planned: PlannedCoat) -> tuple[Piece, Coat]:
    piece = studio.piece(planned.piece)
    return piece, piece.coat(planned.coat)


@dataclass(frozen=True, slots=True)
class _Whole:
    """One mix before it is divided: what goes into it and how many portions it needs."""

    studio: Studio
    product: Product
    coat: Coat
    colours: tuple[Colour, ...]
    grams: tuple[float, ...]
    parts: int

    @staticmethod
    def of(studio: Studio, coats: Sequence[tuple[Piece, Coat]], least_parts: int = 1) -> _Whole:
        first = coats[0][1]
        product = studio.product(first.product)
        grams = tuple(
            coat_grams(piece, coat, product, studio.settings) for piece, coat in coats
        )
        colours = light_first(first.colours, studio.pigments) or (_WITHOUT_COLOUR,)
        room = portion_room(first, product, studio.settings)
        parts = max(least_parts, portions_for(sum(grams), room))
        return _Whole(studio, product, first, colours, grams, parts)

    def portion(self) -> _Amounts:
        settings = self.studio.settings
        spread = sum(self.grams) / self.parts
        needed = spread + len(self.colours) * settings.cup_loss_g if spread > 0.0 else 0.0
        smallest = smallest_mix_grams(self.studio, self.product)
        wanted = max(needed, smallest) if needed > 0.0 else 0.0
        a_grams, b_grams, total = _on_the_scale(self.product, wanted, settings.scale_step_g)
        return {
            "spread_grams": spread,
            "total_grams": total,
            "a_grams": a_grams,
            "b_grams": b_grams,
            "notes": notes_on(self.studio, self.coat, needed, total, smallest),
        }


def smallest_mix_grams(studio: Studio, product: Product) -> float:
    """The smallest mix [g] that the studio's scale weighs within the ratio's tolerance.

    A product that is not mixed can be weighed from one step of the scale on.
    """
    settings = studio.settings
    if product.kind is not ProductKind.TWO_PART:
        return settings.scale_step_g
    return ratio_by_weight(product).smallest_mix(
        settings.scale_step_g, settings.ratio_tolerance_pct / 100.0
    )


def _on_the_scale(
    product: Product, needed: float, step: float
) -> tuple[float | None, float | None, float]:
    if product.kind is not ProductKind.TWO_PART or needed <= 0.0:
        return None, None, steps_up(needed, step)
    ratio = ratio_by_weight(product)
    # Heat counts more than a coarse scale: no rounding takes a cup over what it may hold.
    most = max(steps_down(ratio.parts(product.cup_limit_g).a_grams, step), step)
    a_grams = min(steps_up(ratio.parts(needed).a_grams, step), most)
    b_grams = on_steps(ratio.b_for(a_grams), step)
    return a_grams, b_grams, on_steps(a_grams + b_grams, step)


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
        mix_grams = on_steps(left - total * (1.0 - filled / whole), step)
        left = on_steps(left - mix_grams, step)
        cups.append(_cup(number, colour, mix_grams, step))
    return tuple(cups)


def _cup(number: int, colour: Colour, mix_grams: float, step: float) -> Cup:
    colourant = on_steps(mix_grams * colour.colourant_pct / 100.0, step)
    return Cup(
        number=number,
        colour=colour.name,
        mix_grams=mix_grams,
        colourant=colour.colourant,
        colourant_grams=colourant,
        reads_grams=on_steps(mix_grams + colourant, step),
    )
