"""A coat that is new, or that becomes one of another kind, with sensible figures.

All figures are common practice; the product's data sheet wins.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.joint_rules import clash_at
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE, Coat, CoatKind, Joint, coat_below
from studio_planner.craft.products import Product, ProductKind
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import free_key

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.craft.studio import Studio

_DRY_BELOW = {ProductKind.PRIMER, ProductKind.SIZE, ProductKind.LEAF}
"""What a coat lies on that dries by itself: the joint over it is *on dry*."""


@dataclass(frozen=True, slots=True)
class Usual:
    """What a kind of coat usually is: mm of film, minutes, whether it can be sanded."""

    film_mm: float
    setup_minutes: int
    piece_minutes: int
    sandable: bool = True
    edge: bool = False
    product: ProductKind = ProductKind.TWO_PART


USUAL: Mapping[CoatKind, Usual] = MappingProxyType(
    {
        # Films: common practice. A brush coat is 0.1 to 0.3 mm, a flood 2 mm, a colour pour 1.5
        # to 2 mm; glitter lies in 0.3 to 0.5 mm. Minutes: common practice for one small board.
        CoatKind.PRIME: Usual(0.12, 10, 15, edge=True, product=ProductKind.PRIMER),
        CoatKind.SEAL: Usual(0.1, 15, 15, edge=True),
        CoatKind.FLOOD: Usual(2.0, 20, 25),
        CoatKind.COLOUR: Usual(1.5, 25, 30),
        CoatKind.GLITTER: Usual(0.4, 20, 20, sandable=False),
        CoatKind.SIZE: Usual(0.05, 10, 20, product=ProductKind.SIZE),
        CoatKind.LEAF: Usual(0.0, 5, 30, sandable=False, product=ProductKind.LEAF),
        CoatKind.LOCK: Usual(0.3, 15, 15),
        CoatKind.TOP_COAT: Usual(1.5, 20, 25),
    }
)
"""The usual figures of every kind of coat (common practice)."""


def usual_product(studio: Studio, kind: CoatKind) -> Product | None:
    """The product that the studio would take for a kind of coat; None where it has none.

    The one that was taken for that kind last, else the first of the usual kind of product.
    """
    last = [
        coat.product for piece in studio.pieces for coat in piece.stack if coat.kind is kind
    ]
    if last:
        return studio.product(last[-1])
    wished = USUAL[kind].product
    found = [product for product in studio.products if product.kind is wished]
    if not found and kind is not CoatKind.LEAF:
        found = [product for product in studio.products if product.kind is not ProductKind.LEAF]
    return found[0] if found else None


def new_coat(studio: Studio, kind: CoatKind, stack: Sequence[Coat], at: int) -> Coat:
    """A coat of that kind as it is usually put on, to lie at a position of a stack.

    It covers the faces of the coat under it; InvalidEntry when no product serves.
    """
    usual, product = USUAL[kind], usual_product(studio, kind)
    if product is None:
        sentence = (
            translate("stacks", "there is no leaf to lay; add a leaf under Products first.")
            if kind is CoatKind.LEAF
            else translate(
                "stacks", "there is nothing to make it of; add a product under Products first."
            )
        )
        raise InvalidEntry(
            translate("nouns", "new {kind}").format(kind=kind_word(kind)),
            [BrokenRule("product", sentence)],
        )
    faces = _faces(usual, stack[at - 1] if at else None)
    coat = Coat(
        key=free_key((one.key for one in stack), str(kind)),
        kind=kind,
        product=product.key,
        film_mm=usual.film_mm,
        faces=faces,
        sandable=usual.sandable,
        setup_minutes=usual.setup_minutes,
        piece_minutes=usual.piece_minutes,
    )
    return replace(coat, joint=_joint(studio, coat, stack[:at]))


def of_kind(studio: Studio, coat: Coat, kind: CoatKind) -> Coat:
    """The coat as another kind: usual film, minutes, product and whether it can be sanded."""
    if kind is coat.kind:
        return coat
    usual, product = USUAL[kind], studio.product(coat.product)
    fits = product.kind is usual.product
    other = product if fits else (usual_product(studio, kind) or product)
    return replace(
        coat,
        kind=kind,
        product=other.key,
        film_mm=usual.film_mm,
        sandable=usual.sandable,
        setup_minutes=usual.setup_minutes,
        piece_minutes=usual.piece_minutes,
    )


def _faces(usual: Usual, below: Coat | None) -> frozenset[str]:
    if below is None:
        return frozenset({TOP, EDGE}) if usual.edge else frozenset({TOP})
    faces = below.faces - {EDGE} or frozenset({TOP})
    # What lies on an area is closed over by the next coat, unless it is laid in the same place.
    in_place = usual.product in {ProductKind.LEAF, ProductKind.SIZE}
    return faces if UNDERSIDE in faces or in_place else frozenset({TOP})


def refitted(studio: Studio, before: Sequence[Coat], after: Sequence[Coat]) -> tuple[Coat, ...]:
    """A stack in which what came to lie on something else meets it in a way that can be.

    Where neither what a coat is made of nor what is below it became another kind of product,
    its joint is the maker's own and stays, even where it cannot be.
    """
    met = {coat.key: _meeting(studio, before, at) for at, coat in enumerate(before)}
    stack = tuple(after)
    for at, coat in enumerate(stack):
        if met.get(coat.key) != _meeting(studio, stack, at) and clash_at(studio, stack, at):
            usual = replace(coat, joint=_joint(studio, coat, stack[:at]))
            stack = (*stack[:at], usual, *stack[at + 1 :])
    return stack


def _meeting(
    studio: Studio, stack: Sequence[Coat], at: int
) -> tuple[ProductKind, ProductKind | None]:
    """The kinds of product of a coat and of the one below it; None on a bare face."""
    below = coat_below(stack, at)
    under = None if below is None else studio.product(stack[below].product).kind
    return studio.product(stack[at].product).kind, under


def _joint(studio: Studio, coat: Coat, below: Sequence[Coat]) -> Joint:
    under = next((one for one in reversed(below) if coat.touches(one)), None)
    dry = under is not None and studio.product(under.product).kind in _DRY_BELOW
    return Joint.ON_DRY if dry else Joint.IN_WINDOW
