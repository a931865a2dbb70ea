"""Small studios in which one rule stops a piece; everything else about them is easy.

One board with a seal and a flood, one spot, one person who works by day, a steady room. All
products and people are invented.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time
from typing import TYPE_CHECKING

from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import Coat, CoatKind, Joint, Material, Piece
from studio_planner.craft.places import PatternPoint, Place, Spot
from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

START = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)
"""A Monday, 8 o'clock in the studio."""

RESIN_HOURS = {
    Stage.WORKING_TIME: 1.0,
    Stage.TAPE_OPENS: 3.0,
    Stage.TAPE_CLOSES: 8.0,
    Stage.RECOAT_OPENS: 5.0,
    Stage.RECOAT_CLOSES: 30.0,
    Stage.SANDABLE: 16.0,
    Stage.HANDLE: 18.0,
    Stage.PRINT_FREE: 36.0,
    Stage.FULL_CURE: 100.0,
}


def sheet(hours: dict[Stage, float]) -> tuple[SheetPoint, ...]:
    """A data sheet with one figure for each stage, at 20 °C."""
    return tuple(
        SheetPoint(stage=stage, celsius=20.0, from_hours=count)
        for stage, count in hours.items()
    )


def resin(hours: dict[Stage, float] | None = None, **fields: object) -> Product:
    """A two-part mix."""
    return Product(
        key="resin",
        name="Clear",
        kind=ProductKind.TWO_PART,
        ratio=MixRatio(a=2, b=1),
        sheet=sheet(RESIN_HOURS if hours is None else hours),
        invented=True,
        **fields,  # type: ignore[arg-type]
    )


def coat(key: str, kind: CoatKind, **fields: object) -> Coat:
    """A thin coat of the mix, poured in 45 min."""
    return Coat(**({"key": key, "kind": kind, "product": "resin", "film_mm": 1.0} | fields))  # type: ignore[arg-type]


def board(stack: Sequence[Coat] = (), **fields: object) -> Piece:
    """A board of stone, which holds no air."""
    coats = tuple(stack) or (coat("seal", CoatKind.SEAL), coat("flood", CoatKind.FLOOD))
    plain = Piece(
        key="board",
        name="Board 3",
        shape=Rectangle(length_mm=300, width_mm=200),
        material=Material.STONE,
        body_mm=18.0,
        stack=coats,
    )
    return replace(plain, **fields)  # type: ignore[arg-type]


def room(*points: tuple[int, float, float | None]) -> Place:
    """A room by its hour, °C and % of humidity, with one spot."""
    return Place(
        key="room",
        name="Room",
        pattern=tuple(
            PatternPoint(at=time(hour), celsius=celsius, humidity_pct=damp)
            for hour, celsius, damp in points or ((0, 20.0, 45.0),)
        ),
        spots=(Spot(key="S1", name="Spot 1", length_mm=600, width_mm=400, height_mm=200),),
    )


def person(start: int = 8, end: int = 18, **fields: object) -> Person:
    """Somebody who works from one hour to another, every day."""
    hours = WorkHours(rule="FREQ=DAILY", start=time(start), end=time(end))
    return replace(Person(key="ada", name="Ada", work=(hours,)), **fields)  # type: ignore[arg-type]


def small_studio(
    piece: Piece | None = None,
    product: Product | None = None,
    place: Place | None = None,
    hands: Person | None = None,
    **fields: object,
) -> Studio:
    """The easy studio with some of its parts exchanged."""
    only = piece or board()
    order = Order(key="o1", name="Order 7", pieces=(only.key,), promised=START.date())
    plain = Studio(
        name="Small",
        zone="Europe/Berlin",
        places=(place or room(),),
        products=(product or resin(), primer(), size(), leaf()),
        people=(hands or person(),),
        pieces=(only,),
        orders=(order,),
    )
    return replace(plain, **fields)  # type: ignore[arg-type]


def beside(studio: Studio) -> Studio:
    """The studio with an easy second piece, so that there is a plan to explain."""
    easy = replace(board(), key="easy", name="Easy", stack=(coat("only", CoatKind.FLOOD),))
    return replace(studio, pieces=(*studio.pieces, easy))


def size(closes: float = 18.0) -> Product:
    """A size that leaf sticks to."""
    hours = {
        Stage.TACK_FREE: 0.5,
        Stage.RECOAT_OPENS: 1.0,
        Stage.RECOAT_CLOSES: closes,
        Stage.HANDLE: 20.0,
        Stage.PRINT_FREE: 40.0,
        Stage.FULL_CURE: 90.0,
    }
    return Product(
        key="size", name="Size", kind=ProductKind.SIZE, sheet=sheet(hours), invented=True
    )


def primer() -> Product:
    """A one-part primer that dries in an hour."""
    hours = {Stage.RECOAT_OPENS: 1.0, Stage.HANDLE: 2.0}
    return Product(
        key="primer", name="Primer", kind=ProductKind.PRIMER, sheet=sheet(hours), invented=True
    )


def leaf() -> Product:
    """Leaf, whose sheet says nothing."""
    return Product(key="leaf", name="Gold", kind=ProductKind.LEAF, sheet=(), invented=True)


def gilded() -> tuple[Coat, ...]:
    """Size, leaf and a lock coat over it."""
    return (
        coat("size", CoatKind.SIZE, product="size", joint=Joint.ON_DRY, sandable=False),
        coat(
            "leaf",
            CoatKind.LEAF,
            product="leaf",
            film_mm=0.0,
            joint=Joint.ON_DRY,
            sandable=False,
        ),
        coat("lock", CoatKind.LOCK, joint=Joint.ON_DRY),
    )
