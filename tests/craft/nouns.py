"""Small valid nouns to start a test from; every figure in them is invented."""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import TYPE_CHECKING, Any

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import Coat, CoatKind, Material, Piece
from studio_planner.craft.places import PatternPoint, Place, Spot
from studio_planner.craft.products import MixRatio, Product, ProductKind
from studio_planner.craft.shapes import Round

if TYPE_CHECKING:
    from collections.abc import Callable


def broken(make: Callable[..., object], **entries: object) -> dict[str, str]:
    """The fields that `make` refuses, each with its sentence."""
    rules = refusal(make, **entries)
    assert rules, "nothing was refused"
    return {rule.field: rule.sentence for rule in rules}


def refusal(make: Callable[..., object], **entries: object) -> tuple[BrokenRule, ...]:
    """The rules that an entry breaks; none when it is accepted."""
    try:
        make(**entries)
    except InvalidEntry as error:
        return error.broken
    return ()


def utc(*when: int) -> datetime:
    return datetime(*when, tzinfo=UTC)  # type: ignore[arg-type, misc]


def coat(key: str = "flood", **entries: object) -> Coat:
    given: dict[str, Any] = {
        "kind": CoatKind.FLOOD,
        "product": "resin",
        "film_mm": 2.0,
    } | entries
    return Coat(key=key, **given)


def piece(*stack: Coat, **entries: object) -> Piece:
    given: dict[str, Any] = {
        "key": "coaster",
        "name": "Coaster",
        "shape": Round(diameter_mm=100),
        "material": Material.SLATE,
        "body_mm": 6.0,
        "stack": stack or (coat(),),
    }
    return Piece(**(given | entries))


def resin(**entries: object) -> Product:
    given: dict[str, Any] = {
        "key": "resin",
        "name": "Invented resin",
        "kind": ProductKind.TWO_PART,
        "sheet": (),
        "ratio": MixRatio(a=2, b=1),
    }
    return Product(**(given | entries))


def spot(key: str = "shelf 1", **entries: object) -> Spot:
    sizes: dict[str, Any] = {"length_mm": 400, "width_mm": 300, "height_mm": 200}
    return Spot(**({"key": key, "name": key} | sizes | entries))


def place(*pattern: PatternPoint, **entries: object) -> Place:
    given: dict[str, Any] = {
        "key": "room",
        "name": "Room",
        "pattern": pattern,
        "spots": (spot(),),
    }
    return Place(**(given | entries))


def order(**entries: object) -> Order:
    given: dict[str, Any] = {
        "key": "o1",
        "name": "First order",
        "pieces": ("coaster",),
        "promised": date(2026, 11, 13),
    }
    return Order(**(given | entries))
