"""A set of coasters and a tray on a steady bench of 20 °C; every figure is invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from functools import cache
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import (
    EDGE,
    TOP,
    Coat,
    CoatKind,
    Colour,
    Joint,
    Material,
    Piece,
)
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.plans import Plan, PlannedCoat
from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.craft.settings import Settings
from studio_planner.craft.shapes import Round
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage
from studio_planner.services.sample import sample_studio
from studio_planner.services.weighing import MixPortion, weigh_mix
from tests.services.small_studios import DAY

if TYPE_CHECKING:
    from studio_planner.craft.hands import Person

START = datetime(2026, 2, 2, 18, 0, tzinfo=UTC)

THREE = (
    Colour(name="gold", share_pct=20, colourant="metal powder", colourant_pct=4),
    Colour(name="white", share_pct=50, colourant="paste", colourant_pct=3),
    Colour(name="pearl", share_pct=30, colourant="mica", colourant_pct=3),
)

FLOOD = Product(
    key="flood",
    name="Invented flood",
    kind=ProductKind.TWO_PART,
    ratio=MixRatio(a=100, b=44),
    sheet=(
        SheetPoint(stage=Stage.CUP_LIFE, celsius=20, from_hours=0.75, mass_g=100),
        SheetPoint(stage=Stage.CUP_LIFE, celsius=20, from_hours=0.5, mass_g=300),
        SheetPoint(stage=Stage.WORKING_TIME, celsius=20, from_hours=0.75),
        SheetPoint(stage=Stage.HANDLE, celsius=20, from_hours=20.0),
    ),
    cup_limit_g=600,
    invented=True,
)


def flood_coat(colours: tuple[Colour, ...] = (), **entries: float) -> Coat:
    plain = Coat(
        key="flood", kind=CoatKind.FLOOD, product="flood", film_mm=2.0, colours=colours,
        faces=frozenset({TOP, EDGE}), setup_minutes=20, piece_minutes=10,
    )  # fmt: skip
    return replace(plain, **entries)  # type: ignore[arg-type]


def coasters(key: str = "set", count: int = 6, *stack: Coat) -> Piece:
    return Piece(
        key=key, name=key.title(), shape=Round(diameter_mm=100), material=Material.SLATE,
        body_mm=8, stack=stack or (flood_coat(THREE),), count=count,
    )  # fmt: skip


@cache
def _people() -> tuple[Person, ...]:
    return sample_studio(DAY).people


def bench(*pieces: Piece, product: Product = FLOOD, settings: Settings | None = None) -> Studio:
    spots = tuple(
        Spot(key=f"s{n}", name=f"Spot {n}", length_mm=900, width_mm=900, height_mm=500)
        for n in range(1, 5)
    )
    room = Place(
        key="room", name="Room", kind=PlaceKind.ROOM, spots=spots, band_celsius=0.0,
        pattern=(PatternPoint(at=time(0), celsius=20.0),),
    )  # fmt: skip
    return Studio(
        name="Bench", settings=settings or Settings(reserve_pct=0, drip_loss_pct=20),
        places=(room,), products=(product,), people=_people(), pieces=pieces or (coasters(),),
    )  # fmt: skip


def poured(number: int, piece: str = "set", mix: int = 1, **entries: object) -> PlannedCoat:
    plain = PlannedCoat(
        number=number, piece=piece, coat="flood", start=START,
        end=START + timedelta(minutes=80), spot=f"s{number}", joint=Joint.BARE, mix=mix,
        person="ilka",
    )  # fmt: skip
    return replace(plain, **entries)  # type: ignore[arg-type]


def plan_of(*coats: PlannedCoat) -> Plan:
    return Plan(made=START - timedelta(hours=1), start=START - timedelta(hours=1), coats=coats)


def portions(studio: Studio, *coats: PlannedCoat, parts: int = 1) -> tuple[MixPortion, ...]:
    return weigh_mix(studio, coats or (poured(1),), parts)
