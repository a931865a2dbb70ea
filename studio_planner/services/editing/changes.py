"""A change of a studio in words, and what it means for the kept plan."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.craft.orders import ContactClaim
from studio_planner.craft.prices import Prices
from studio_planner.craft.reminders import Reminding
from studio_planner.craft.settings import Units
from studio_planner.craft.stock import StockRules

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.hands import Person
    from studio_planner.craft.log import Poured
    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.places import Place
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio

_ANY_UNITS = Units()
_ANY_REMINDING = Reminding()
_ANY_STOCK = StockRules()
_ANY_PRICES = Prices()

_PRODUCTS = 256
"""As many products without what no plan asks are remembered: their laws take time to check."""

_BEARING = frozenset(EntryKind) - {
    EntryKind.POURED,
    EntryKind.WEIGHED,
    EntryKind.TOUCHED,
    EntryKind.TAPED,
    EntryKind.TRIMMED,
    EntryKind.WITHDRAWN,
}
"""What the log tells that a plan must know, beside what was poured, which it has anyway."""


@dataclass(frozen=True, slots=True)
class Change:
    """One thing that a maker does: what it is called, and the studio it makes of another.

    `words` finish the sentence "Undo: ..."; `make` raises InvalidEntry when a rule is broken.
    """

    words: str
    make: Callable[[Studio], Studio]


def made(change: Change, studio: Studio) -> Studio:
    """Make a change; the kept plan loses what it no longer fits and is marked as outdated.

    InvalidEntry with every broken rule when the studio would not be whole.
    """
    after = change.make(studio)
    if after.plan is not studio.plan or not bears_on_plan(studio, after):
        return after
    plan = after.plan
    return replace(
        after, plan=None if plan is None else fitting(plan, after), plan_outdated=True
    )


def bears_on_plan(before: Studio, after: Studio) -> bool:
    """Tell whether a plan of `before` may be another one for `after`."""
    if _bearing_facts(before) != _bearing_facts(after):
        return True
    return _as_planned(before) != _as_planned(after)


def _bearing_facts(studio: Studio) -> list[tuple[EntryKind, str, str, str, str]]:
    return [
        (entry.kind, entry.piece, entry.coat, entry.order, entry.spot)
        for entry in studio.standing
        if entry.kind in _BEARING
    ]


def _as_planned(studio: Studio) -> Studio:
    # What is blanked here was checked with the whole studio.
    return replace(
        studio,
        name="any",
        currency="EUR",
        units=_ANY_UNITS,
        patterns=(),
        reminding=_ANY_REMINDING,
        stock=_ANY_STOCK,
        prices=_ANY_PRICES,
        lots=(),
        pigments=(),
        log=(),
        mixes=(),
        gone=(),
        poured=tuple(_plain_pour(pour) for pour in studio.poured),
        products=tuple(_plain_product(product) for product in studio.products),
        settings=replace(studio.settings, tariff_per_kwh=0.0),
        places=tuple(_plain_place(place) for place in studio.places),
        people=tuple(_plain_person(person) for person in studio.people),
        pieces=tuple(_plain_piece(piece) for piece in studio.pieces),
        orders=tuple(_plain_order(order) for order in studio.orders),
        plan=None,
        plan_outdated=False,
    )


def _plain_person(person: Person) -> Person:
    away = tuple(replace(absence, why="") for absence in person.absences)
    return replace(person, name=person.key, absences=away)


def _plain_pour(pour: Poured) -> Poured:
    return pour if pour.batch is None else replace(pour, batch=None)


def _plain_place(place: Place) -> Place:
    plain = place.heat_loss_w_per_k is None
    return place if plain else replace(place, heat_loss_w_per_k=None)


@lru_cache(maxsize=_PRODUCTS)
def _plain_product(product: Product) -> Product:
    unplanned = (product.viscosity_mpas, product.leaf_mm, product.leaf_price)
    if unplanned == (None, None, 0.0):
        return product
    return replace(product, viscosity_mpas=None, leaf_mm=None, leaf_price=0.0)


def _plain_piece(piece: Piece) -> Piece:
    plain = not piece.note and not piece.photos and not piece.blank_price
    if plain and piece.name == piece.key:
        return piece
    return replace(piece, name=piece.key, note="", photos=(), blank_price=0.0)


def _plain_order(order: Order) -> Order:
    return replace(order, name=order.key, note="", price=None, contact=ContactClaim.DECORATIVE)


def fitting(plan: Plan, studio: Studio) -> Plan:
    """Give what is left of a plan in a studio that has lost pieces, coats, spots or people.

    A coat goes with all later coats of its piece, since each counts from the one before.
    """
    pieces = {piece.key: {coat.key for coat in piece.stack} for piece in studio.pieces}
    spots = {spot.key for spot in studio.spots}
    orders = {order.key for order in studio.orders}
    lost: set[str] = set()
    coats = []
    for coat in sorted(plan.coats, key=lambda coat: coat.start):
        if coat.coat not in pieces.get(coat.piece, ()) or coat.spot not in spots:
            lost.add(coat.piece)
        elif coat.piece not in lost:
            coats.append(coat)
    kept = {coat.number for coat in coats}
    steps = [
        step
        for step in plan.steps
        if step.piece in pieces and (step.coat is None or step.coat in pieces[step.piece])
    ]
    whole = pieces.keys() - lost
    return replace(
        plan,
        coats=tuple(coat for coat in plan.coats if coat.number in kept),
        steps=tuple(step for step in steps if step.piece in whole),
        ready=tuple(row for row in plan.ready if row.piece in whole),
        outcomes=tuple(row for row in plan.outcomes if row.order in orders),
        unplanned=tuple(row for row in plan.unplanned if row.piece in pieces),
    )
