"""A missed pour finds another evening; what stands where it has to goes to another spot."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import Poured
from studio_planner.craft.orders import Order, Promise
from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.pins import Pin
from studio_planner.craft.places import Spot
from studio_planner.craft.shapes import Rectangle
from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from studio_planner.science.stages import Stage
from tests.planning.impossible_studios import (
    RESIN_HOURS,
    START,
    board,
    coat,
    person,
    resin,
    room,
    small_studio,
)

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

_MARKETS = {"tray": 6, "oak": 4, "ash": 4, "elm": 5, "fir": 6}
"""The days after the start at whose evening each board has to be at a market."""

_SPOTS = {"tray": "left", "oak": "left", "ash": "right", "elm": "right", "fir": "left"}

Where = dict[tuple[str, str], tuple[datetime, str]]


def _evening(day: int, minutes: int = 0) -> datetime:
    """So many minutes after six o'clock of a day after the start."""
    return datetime(2026, 3, 2 + day, 17, 0, tzinfo=UTC) + timedelta(minutes=minutes)


_AT = {
    ("tray", "seal"): _evening(0),
    ("tray", "flood"): _evening(1),
    ("oak", "flood"): _evening(2),
    ("ash", "flood"): _evening(2, 45),
    ("elm", "flood"): _evening(3),
    ("fir", "flood"): _evening(4),
}


def _spot(key: str) -> Spot:
    return Spot(key=key, name=key, length_mm=600, width_mm=400, height_mm=200)


def _two_spots() -> Studio:
    """Two pours fit into an evening, and each board keeps its spot until the next afternoon.

    The tray has two coats a day apart. On Wednesday both pours are taken, on Thursday the right
    spot is, on Friday the left one.
    """
    flood = coat("flood", CoatKind.FLOOD, sandable=False)
    seal = coat("seal", CoatKind.SEAL, sandable=False)
    stacks = dict.fromkeys(_MARKETS, (flood,)) | {"tray": (seal, flood)}
    orders = tuple(
        Order(
            key=key,
            name=key,
            pieces=(key,),
            promised=START.date() + timedelta(days=days),
            promise=Promise.MARKET,
            opens=time(20, 30),
        )
        for key, days in _MARKETS.items()
    )
    studio = small_studio(
        place=replace(room(), spots=(_spot("left"), _spot("right"))),
        hands=person(18, 20),
        pieces=tuple(board(stack, key=key, name=key) for key, stack in stacks.items()),
        orders=orders,
    )
    pins = tuple(
        Pin(piece=piece, coat=coat, start=start) for (piece, coat), start in _AT.items()
    )
    plan = quick_plan(replace(studio, pins=pins), START)
    coats = tuple(replace(coat, spot=_SPOTS[coat.piece]) for coat in plan.coats)
    return replace(studio, plan=replace(plan, coats=coats))


def _begun(studio: Studio) -> Studio:
    """The tray is primed, and on a third spot lies what hardly cures."""
    prime = coat("prime", CoatKind.PRIME, product="primer", film_mm=0.1, sandable=False)
    seal = coat("seal", CoatKind.SEAL, sandable=False, joint=Joint.ON_DRY)
    slow = replace(resin(RESIN_HOURS | {Stage.HANDLE: 400.0}), key="slow", name="Slow")
    stone = board((coat("flood", CoatKind.FLOOD, product="slow"),), key="stone", name="stone")
    pieces = tuple(
        replace(piece, stack=(prime, seal, *piece.stack[1:])) if piece.key == "tray" else piece
        for piece in studio.pieces
    )
    place = studio.places[0]
    return replace(
        studio,
        products=(*studio.products, slow),
        places=(replace(place, spots=(*place.spots, _spot("low"))),),
        pieces=(*pieces, stone),
        poured=(_poured("tray", "prime", "left"), _poured("stone", "flood", "low")),
    )


def _poured(piece: str, coat: str, spot: str) -> Poured:
    end = START + timedelta(minutes=45)
    return Poured(piece=piece, coat=coat, start=START, end=end, spot=spot, joint=Joint.BARE)


def _kept(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


def _where(plan: Plan) -> Where:
    return {
        (coat.piece, coat.coat): (coat.start, coat.spot)
        for coat in plan.coats
        if not coat.poured
    }


@pytest.mark.parametrize("begun", [False, True])
def test_a_missed_piece_takes_a_spot_whose_piece_goes_to_another_at_its_own_time(
    *, begun: bool
) -> None:
    studio = _begun(_two_spots()) if begun else _two_spots()
    again = quick_plan(studio, _evening(0, 90))
    before, after = _where(_kept(studio)), _where(again)
    moved = {key for key, (start, _) in after.items() if start != before[key][0]}
    assert moved == {("tray", "seal"), ("tray", "flood")}
    assert {key for key in after if after[key] != before[key]} - moved == {("fir", "flood")}
    assert after["tray", "seal"] == (_evening(3, 75), "left")
    assert after["fir", "flood"] == (_evening(4), "right")
    assert not any(outcome.late_hours for outcome in again.outcomes)
    assert not check_plan(studio, again).broken


def test_where_no_other_spot_fits_it_waits_and_nothing_else_moves() -> None:
    studio = _two_spots()
    # Only the left spot is large enough for the board that would have to go.
    wide = Rectangle(length_mm=500, width_mm=200)
    pieces = tuple(
        replace(piece, shape=wide) if piece.key == "fir" else piece for piece in studio.pieces
    )
    place = studio.places[0]
    spots = (place.spots[0], replace(place.spots[1], length_mm=400))
    studio = replace(studio, pieces=pieces, places=(replace(place, spots=spots),))
    again = quick_plan(studio, _evening(0, 90))
    assert _where(again)["fir", "flood"] == _where(_kept(studio))["fir", "flood"]
    assert not check_plan(studio, again).broken
