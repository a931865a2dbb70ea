"""How hot a mix gets that stays in its cup, and how deep a coat may be poured."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import EDGE, UNDERSIDE
from studio_planner.craft.products import CUP_SHEET_GRAMS
from studio_planner.science.exotherm import Exotherm, exotherm, rate_of
from studio_planner.science.heat_bodies import HeatError, cup_body
from studio_planner.science.pour_depth import (
    DepthLimit,
    deepest_cool_mm,
    deepest_film,
    deepest_pour,
)
from studio_planner.science.stages import Stage
from studio_planner.services.cup_times import air_at

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.products import Product, SheetPoint
    from studio_planner.craft.studio import Studio
    from studio_planner.services.weighing import MixPortion


@dataclass(frozen=True, slots=True, kw_only=True)
class Depth:
    """How deep a coat may be poured, and the film [mm] as it is entered."""

    limit: DepthLimit
    film_mm: float

    @property
    def too_deep(self) -> bool:
        """Whether the film as entered is deeper than that."""
        return self.film_mm > self.limit.film_mm + 1e-9


def cure_rate(product: Product, celsius: float, grams: float) -> float | None:
    """The rate of a product's cure at 25 °C [1/h], from its own cup life.

    From the figure on its sheet that is nearest in temperature, then in mass. None where it has
    none, or is not mixed.
    """
    points = product.figures(Stage.CUP_LIFE)
    if not points or product.ratio is None:
        return None

    def far(point: SheetPoint) -> tuple[float, float]:
        return abs(point.celsius - celsius), abs((point.mass_g or CUP_SHEET_GRAMS) - grams)

    nearest = min(points, key=far)
    body = cup_body(nearest.mass_g or CUP_SHEET_GRAMS, product.density)
    return rate_of(nearest.figure.middle_hours, body, nearest.celsius)


def heat_in_cup(studio: Studio, portion: MixPortion) -> Exotherm | None:
    """How hot the fullest cup of a portion gets that is left, in the warmest likely air."""
    fullest = max((cup.mix_grams for cup in portion.cups), default=0.0)
    first = portion.coats[0]
    celsius, band = air_at(studio, first.spot, first.start)
    rate = cure_rate(portion.product, celsius, fullest)
    if rate is None or fullest <= 0.0:
        return None
    return exotherm(rate, cup_body(fullest, portion.product.density), celsius + band)


def depth_of(studio: Studio, piece: Piece, coat: Coat, celsius: float) -> Depth:
    """How deep a coat may be poured on its piece in a room of so many °C.

    What an edge without a rim holds is the studio's own setting; a rim stands around the top.
    A sheet that says how deep a pour may be has the last word on it; else its heat limits it.
    """
    product = studio.product(coat.product)
    inside = bool(coat.faces - {UNDERSIDE, EDGE})
    held = deepest_film(
        rim_mm=piece.rim_mm if inside else 0.0,
        sheet_mm=product.depth_limit_mm,
        edge_mm=studio.settings.film_refuse_mm,
    )
    rate = cure_rate(product, celsius, CUP_SHEET_GRAMS)
    cool = None
    if rate is not None and product.depth_limit_mm is None:
        cool = _cool_mm(rate, celsius, product)
    limit = deepest_pour(held, cool)
    return Depth(limit=limit, film_mm=coat.film_mm)


def _cool_mm(rate: float, celsius: float, product: Product) -> float | None:
    try:
        return deepest_cool_mm(rate, celsius, product.density)
    except HeatError:
        # A cup life of seconds is a figure for something else: it says nothing of a film.
        return None
