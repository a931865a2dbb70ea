"""Which coats can meet, whatever time there is: leaf, wet in wet, and what dries or cures."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta

import pytest

from studio_planner.craft.joint_rules import WISHED, clash_at, clashes, possible_joints
from studio_planner.craft.log import Poured
from studio_planner.craft.pieces import EDGE, UNDERSIDE, Coat, CoatKind, Joint
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.products import Product, ProductKind, SheetPoint
from studio_planner.craft.sheet_stages import may_scuff
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage
from tests.craft.nouns import coat, piece, place, resin, utc

PRIMER, SIZE, LEAF = (
    Product(key=str(kind), name=str(kind).title(), kind=kind, sheet=())
    for kind in (ProductKind.PRIMER, ProductKind.SIZE, ProductKind.LEAF)
)
PRODUCTS = (resin(), PRIMER, SIZE, LEAF)
KINDS = {
    ProductKind.TWO_PART: CoatKind.FLOOD,
    ProductKind.PRIMER: CoatKind.PRIME,
    ProductKind.SIZE: CoatKind.SIZE,
    ProductKind.LEAF: CoatKind.LEAF,
}
MIX, PRIME, SIZED, GILT = KINDS
POSSIBLE = {
    # What lies on a mix: mixes and primer in the window, size on what has cured too, leaf on
    # its tack; only mixes meet wet in wet.
    (MIX, MIX): {Joint.IN_WINDOW, Joint.WET_IN_WET},
    (MIX, PRIME): {Joint.IN_WINDOW},
    (MIX, SIZED): {Joint.IN_WINDOW, Joint.ON_DRY},
    (MIX, GILT): {Joint.IN_WINDOW},
    # What dries is waited for; leaf needs the tack of size.
    (PRIME, MIX): {Joint.IN_WINDOW, Joint.ON_DRY},
    (PRIME, PRIME): {Joint.IN_WINDOW, Joint.ON_DRY},
    (PRIME, SIZED): {Joint.IN_WINDOW, Joint.ON_DRY},
    (PRIME, GILT): set(),
    (SIZED, MIX): {Joint.IN_WINDOW, Joint.ON_DRY},
    (SIZED, PRIME): {Joint.IN_WINDOW, Joint.ON_DRY},
    (SIZED, SIZED): {Joint.IN_WINDOW, Joint.ON_DRY},
    (SIZED, GILT): {Joint.IN_WINDOW, Joint.ON_DRY},
    (GILT, MIX): {Joint.IN_WINDOW, Joint.ON_DRY},
    (GILT, PRIME): {Joint.IN_WINDOW, Joint.ON_DRY},
    (GILT, SIZED): {Joint.IN_WINDOW, Joint.ON_DRY},
    (GILT, GILT): set(),
}
"""For each kind of product below and above: the joints that can be (common practice)."""


def made_of(kind: ProductKind, key: str, joint: Joint = Joint.IN_WINDOW) -> Coat:
    made = next(one for one in PRODUCTS if one.kind is kind)
    return coat(key, kind=KINDS[kind], product=made.key, film_mm=0.1, joint=joint)


def studio_of(*stack: Coat) -> Studio:
    return Studio(
        name="S",
        places=(place(PatternPoint(at=time(0), celsius=20.0)),),
        products=PRODUCTS,
        pieces=(piece(*stack),),
    )


@pytest.mark.parametrize("pair", POSSIBLE)
@pytest.mark.parametrize("joint", WISHED)
def test_only_what_can_be_is_let_through(
    pair: tuple[ProductKind, ProductKind], joint: Joint
) -> None:
    below, above = pair
    # Nobody lays leaf on the bare piece.
    base = [made_of(SIZED, "base")] if below is GILT else []
    studio = studio_of(*base, made_of(below, "below"), made_of(above, "above", joint))
    stack = studio.pieces[0].stack
    clash = clash_at(studio, stack, len(base) + 1)
    assert possible_joints(studio, stack, len(base) + 1) == tuple(
        one for one in WISHED if one in POSSIBLE[pair]
    )
    assert (clash is None) == (joint in POSSIBLE[pair])
    if clash is not None:
        assert clash.coat == "above"
        assert "; " in str(clash.sentence)


def test_on_a_bare_face_no_joint_is_asked() -> None:
    under = coat("under", joint=Joint.WET_IN_WET, faces=frozenset({UNDERSIDE}))
    first = coat("first", joint=Joint.ON_DRY)
    studio = studio_of(first, under)
    assert list(clashes(studio, studio.pieces[0])) == []
    assert possible_joints(studio, studio.pieces[0].stack, 0) is None


def test_leaf_on_a_primer_is_told_to_have_a_size_between() -> None:
    studio = studio_of(made_of(PRIME, "prime"), made_of(GILT, "leaf"))
    (clash,) = clashes(studio, studio.pieces[0])
    assert (clash.coat, clash.field) == ("leaf", "kind")
    assert str(clash.sentence) == "leaf does not stick to the prime; put a size between them."


def test_wet_in_wet_on_a_primer_is_told_to_wait_for_it_to_dry() -> None:
    studio = studio_of(made_of(PRIME, "prime"), made_of(MIX, "flood", Joint.WET_IN_WET))
    (clash,) = clashes(studio, studio.pieces[0])
    assert (clash.coat, clash.field) == ("flood", "joint")
    assert "the prime below is none; choose on dry." in str(clash.sentence)


def test_a_mix_holds_on_what_is_sanded_and_leaf_does_not() -> None:
    sheet = (SheetPoint(stage=Stage.SANDABLE, celsius=20, from_hours=16),)
    stack = (coat("flood"), made_of(GILT, "leaf"))
    studio = replace(studio_of(*stack), products=(resin(sheet=sheet), *PRODUCTS[1:]))
    gilded = studio.pieces[0]
    assert not may_scuff(studio, gilded, 1)
    gloss = replace(gilded, stack=(coat("flood"), coat("gloss")))
    assert may_scuff(studio, gloss, 1)
    wet = replace(gilded, stack=(coat("flood"), coat("veil", joint=Joint.WET_IN_WET)))
    assert not may_scuff(studio, wet, 1)


def test_what_is_poured_already_is_a_fact_and_not_judged() -> None:
    studio = studio_of(
        coat("prime"),
        coat("flood", joint=Joint.ON_DRY),
        coat("edge", joint=Joint.ON_DRY, faces=frozenset({EDGE})),
        coat("top", joint=Joint.ON_DRY),
    )
    start = utc(2026, 1, 5, 9)
    poured = tuple(
        Poured(
            piece="coaster",
            coat=key,
            start=start + timedelta(hours=6 * number),
            end=start + timedelta(hours=6 * number, minutes=30),
            spot=studio.spots[0].key,
        )
        for number, key in enumerate(("prime", "flood"))
    )
    assert [one.coat for one in clashes(studio, studio.pieces[0])] == ["flood", "top"]
    studio = replace(studio, poured=poured)
    assert [one.coat for one in clashes(studio, studio.pieces[0])] == ["top"]
