"""Puts a written plan back into a workshop, so that one order can be placed among the rest."""

from __future__ import annotations

from enum import Flag, auto
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.plans import StepKind
from studio_planner.craft.products import ProductKind
from studio_planner.planning.problem import handle_stage

if TYPE_CHECKING:
    from collections.abc import Collection

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Means

_WITHOUT_HANDS = {StepKind.TAPE, StepKind.TRIM}
"""Steps that need somebody awake, whatever else that person does."""


class Takes(Flag):
    """What planned work may take from others: spots, hands, and air without dust."""

    SPOTS = auto()
    HANDS = auto()
    DUST = auto()


EVERYTHING = Takes.SPOTS | Takes.HANDS | Takes.DUST


def book_plan(
    studio: Studio,
    means: Means,
    plan: Plan,
    *,
    without: Collection[str] = (),
    takes: Takes = EVERYTHING,
) -> None:
    """Book what a plan's coats and steps take into the workshop of `means`.

    Parameters
    ----------
    studio
        The studio that the plan was made for, or one that has more.
    means
        Its workshop holds what is poured already; nothing of the plan is in it yet.
    plan
        The plan.
    without
        Keys of pieces whose work is left out.
    takes
        What is taken; the rest stays free.
    """
    coats = [coat for coat in plan.coats if not coat.poured and coat.piece not in without]
    following: dict[str, PlannedCoat] = {}
    for coat in sorted(coats, key=lambda one: one.start, reverse=True):
        _book_coat(studio, means, coat, following.get(coat.piece), takes)
        following[coat.piece] = coat
    for step in plan.steps:
        if step.piece in without or step.kind in _WITHOUT_HANDS:
            continue
        span = int(step.start.timestamp()), int(step.end.timestamp())
        if Takes.HANDS in takes:
            means.shop.take_hands(step.person, *span)
        if Takes.DUST in takes and step.kind is StepKind.SAND:
            means.shop.add_sanding(*span)


def _book_coat(
    studio: Studio, means: Means, coat: PlannedCoat, after: PlannedCoat | None, takes: Takes
) -> None:
    start, end = int(coat.start.timestamp()), int(coat.end.timestamp())
    product = studio.product(studio.piece(coat.piece).coat(coat.coat).product)
    kind = studio.piece(coat.piece).coat(coat.coat).kind
    if Takes.HANDS in takes:
        means.shop.take_hands(coat.person, start, end)
    if Takes.SPOTS in takes:
        means.shop.take_spot(coat.spot, start, spot_freed(means, product, coat, after))
    if Takes.DUST in takes and kind is not CoatKind.LEAF:
        means.shop.add_wet(start, _covered(means, product, means.place_of_spot[coat.spot], end))


def spot_freed(
    means: Means, product: Product, coat: PlannedCoat, after: PlannedCoat | None
) -> int:
    """The second at which a planned coat sets its spot free.

    That is its handle; size that knows no handle keeps the spot until the coat `after` it.
    """
    stays = handle_stage(product) is None and product.kind is not ProductKind.LEAF
    if stays and after is not None:
        return int(after.start.timestamp())
    clock = means.edges.handle(product, means.place_of(coat))
    handled = clock.at(int(coat.end.timestamp()))
    return means.end if handled is None else handled


def _covered(means: Means, product: Product, place: str, end: int) -> int:
    clock = means.edges.cover(product, place)
    if clock is None:
        return end
    reached = clock.at(end)
    return means.end if reached is None else max(end, reached)
