"""Pieces with stacks of every kind, drawn by whoever draws. All are invented."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.pieces import (
    EDGE,
    TOP,
    UNDERSIDE,
    Coat,
    CoatKind,
    Colour,
    Joint,
    Material,
    Piece,
)
from studio_planner.craft.products import ProductKind
from studio_planner.craft.shapes import Rectangle, Round, Shape

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.products import Product
    from tests.planning.picking import Pick

_Stack = list[Coat]


def drawn_piece(pick: Pick, number: int, products: Sequence[Product], most_coats: int) -> Piece:
    resins = [product.key for product in products if product.kind is ProductKind.TWO_PART]
    resin = pick.one_of(*resins)
    make = pick.one_of(_floods, _glitter, _primed, _gilded, _both_sides, _veiled, _taped)
    stack = make(pick, resin, pick.one_of(*resins))[: max(1, most_coats)]
    # Leaf is never left on the outside.
    stack = stack[:-1] if stack[-1].kind is CoatKind.LEAF and len(stack) > 1 else stack
    shapes: tuple[Shape, ...] = (Rectangle(length_mm=300, width_mm=200), Round(diameter_mm=95))
    shape = pick.one_of(*shapes)
    return Piece(
        key=f"P{number}",
        name=f"Piece {number}",
        shape=shape,
        material=pick.one_of(*Material),
        body_mm=pick.one_of(18.0, 5.0, 90.0) if pick.rarely() else 18.0,
        stack=tuple(stack),
        count=pick.one_of(1, 4) if isinstance(shape, Round) else 1,
        rim_mm=pick.one_of(0.0, 4.0),
    )


def _coat(pick: Pick, key: str, kind: CoatKind, product: str, **fields: object) -> Coat:
    film = 0.0 if kind is CoatKind.LEAF else pick.one_of(1.0, 0.4, 2.0)
    return Coat(
        key=key,
        kind=kind,
        product=product,
        film_mm=film,
        setup_minutes=pick.one_of(20, 10),
        piece_minutes=pick.one_of(15, 25),
        **fields,  # type: ignore[arg-type]
    )


def _floods(pick: Pick, resin: str, other: str) -> _Stack:
    kinds = (CoatKind.SEAL, CoatKind.FLOOD, CoatKind.FLOOD, CoatKind.TOP_COAT)
    count = pick.one_of(3, 1, 2, 4)
    return [
        _coat(
            pick,
            f"c{position}",
            kinds[position],
            resin if position % 2 else other,
            faces=frozenset({TOP, EDGE}) if pick.sometimes() else frozenset({TOP}),
            trimmed=pick.rarely(),
        )
        for position in range(count)
    ]


def _glitter(pick: Pick, resin: str, other: str) -> _Stack:
    return [
        _coat(pick, "flood", CoatKind.FLOOD, resin),
        _coat(
            pick,
            "glitter",
            CoatKind.GLITTER,
            other,
            sandable=False,
            test_first=pick.sometimes(),
        ),
        _coat(pick, "lock", CoatKind.LOCK, resin),
        _coat(pick, "top", CoatKind.TOP_COAT, other),
    ]


def _primed(pick: Pick, resin: str, other: str) -> _Stack:
    return [
        _coat(pick, "prime", CoatKind.PRIME, "primer"),
        _coat(pick, "flood", CoatKind.FLOOD, resin, joint=Joint.ON_DRY),
        _coat(pick, "top", CoatKind.TOP_COAT, other),
    ]


def _gilded(pick: Pick, resin: str, other: str) -> _Stack:
    first = [_coat(pick, "flood", CoatKind.FLOOD, other)] if pick.sometimes() else []
    return [
        *first,
        _coat(pick, "size", CoatKind.SIZE, "size", joint=Joint.ON_DRY, sandable=False),
        _coat(pick, "leaf", CoatKind.LEAF, "leaf", joint=Joint.ON_DRY, sandable=False),
        _coat(pick, "lock", CoatKind.LOCK, resin, joint=Joint.ON_DRY),
    ]


def _both_sides(pick: Pick, resin: str, other: str) -> _Stack:
    under = frozenset({UNDERSIDE})
    return [
        _coat(pick, "top", CoatKind.FLOOD, resin),
        _coat(pick, "under", CoatKind.SEAL, other, faces=under),
        _coat(pick, "gloss", CoatKind.TOP_COAT, resin),
    ][pick.one_of(0, 0, 1) :]


def _veiled(pick: Pick, resin: str, _: str) -> _Stack:
    blue = Colour(name="Blue", share_pct=70)
    white = Colour(name="White", share_pct=30, colourant="paste", colourant_pct=3)
    return [
        _coat(pick, "base", CoatKind.COLOUR, resin, colours=(blue, white)),
        _coat(
            pick, "veil", CoatKind.COLOUR, resin, joint=Joint.WET_IN_WET, colours=(blue, white)
        ),
        _coat(pick, "lock", CoatKind.LOCK, resin),
    ]


def _taped(pick: Pick, resin: str, other: str) -> _Stack:
    areas = pick.one_of(frozenset({TOP}), frozenset({"left half"}))
    return [
        _coat(pick, "field", CoatKind.COLOUR, resin, taped=True, faces=areas),
        _coat(pick, "lock", CoatKind.LOCK, other, trimmed=pick.sometimes()),
    ]
