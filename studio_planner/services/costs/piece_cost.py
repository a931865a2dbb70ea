"""What a piece costs: grams, colourants, leaf, blank, consumables, hours, overhead, scrap.

    cost = (materials + consumables + wages + overhead) / (1 - scrap)

with overhead as a share of materials or of wages, whichever are dearer (a published formula
sets it at a third: craftlabrador.com, pricing workshop), and the pieces that do not pass borne
by those that do. Elapsed days cost nothing; attended minutes do.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.services.costs.coat_shares import CoatShare, shares_of
from studio_planner.services.costs.gram_prices import GramPrices
from studio_planner.services.costs.leaf_cost import leaf_coats, leaf_price

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.stock import LotPart
    from studio_planner.craft.studio import Studio


class CostKind(StrEnum):
    """What a piece's cost is made of."""

    MIX = "mix"
    COLOURANTS = "colourants"
    LEAF = "leaf"
    BLANK = "blank"
    CONSUMABLES = "consumables"
    WAGES = "wages"
    OVERHEAD = "overhead"
    SCRAP = "scrap"


class HandsOn(StrEnum):
    """What attended minutes are spent on."""

    MIXING = "mixing"
    POURING = "pouring"
    SANDING = "washing and sanding"
    TURNING = "turning"
    TRIMMING = "tape and drips"
    PACKING = "packing"


class Lacking(StrEnum):
    """What nobody has entered, so that it is not in the cost."""

    PART_PRICE = "price of a part"
    COLOURANT_PRICE = "price of a colourant"
    WAGE = "wage"
    LEAF = "leaf"


@dataclass(frozen=True, slots=True, order=True)
class Missing:
    """One thing that is not in a cost: what, of which product or colourant ("" for none)."""

    what: Lacking
    name: str = ""
    part: LotPart | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Way:
    """How a piece is made, where it is not as planned.

    In a hurry its hours cost `rush_pct` more and its mixes are shared with pieces of its own
    order only; None: no hurry. `scuffed` are the coats that the one below is scuffed for; None:
    those of the plan.
    """

    rush_pct: float | None = None
    scuffed: frozenset[str] | None = None


AS_PLANNED = Way()


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceCost:
    """What one whole piece or set costs, in the studio's currency.

    `amounts` add up to `total`; `minutes` are attended, `grams` those of all mixes.
    """

    piece: str
    amounts: Mapping[CostKind, float]
    minutes: Mapping[HandsOn, float]
    grams: float
    missing: tuple[Missing, ...]

    @property
    def total(self) -> float:
        """All of it."""
        return sum(self.amounts.values())

    @property
    def attended_minutes(self) -> float:
        """All minutes that somebody's hands are on it."""
        return sum(self.minutes.values())


def piece_cost(
    studio: Studio,
    plan: Plan | None,
    piece: Piece,
    prices: GramPrices | None = None,
    way: Way = AS_PLANNED,
) -> PieceCost:
    """Give what a piece costs, by the kept plan where it is in it.

    Parameters
    ----------
    studio, plan, piece
        The plan tells which mixes are shared and which joints are scuffed; None: none.
    prices
        Read before, where many pieces are asked for.
    way
        How it is made, where not as planned.
    """
    gram_prices = prices or GramPrices(studio)
    shares = shares_of(studio, plan, piece, _sharing(studio, piece, way))
    missing = {Missing(Lacking.WAGE)} if studio.prices.hourly_wage <= 0.0 else set()
    mix = sum(_mix_price(share, gram_prices, missing) for share in shares)
    colourants = sum(_colour_price(share, gram_prices, missing) for share in shares)
    leaf = _leaf_price(studio, piece, missing)
    scuffed = scuffed_coats(plan, piece.key) if way.scuffed is None else way.scuffed
    minutes = _minutes(studio, piece, shares, len(scuffed))
    wages = studio.prices.wage(sum(minutes.values())) * (1.0 + (way.rush_pct or 0.0) / 100.0)
    amounts = {
        CostKind.MIX: mix,
        CostKind.COLOURANTS: colourants,
        CostKind.LEAF: leaf,
        CostKind.BLANK: piece.blank_price * piece.count,
        CostKind.CONSUMABLES: _consumables(studio, piece, shares),
        CostKind.WAGES: wages,
    }
    return PieceCost(
        piece=piece.key,
        amounts=_with_overhead_and_scrap(studio, amounts),
        minutes=minutes,
        grams=sum(grams for share in shares for grams in share.grams.values()),
        missing=tuple(sorted(missing, key=lambda one: (one.what, one.name, one.part or ""))),
    )


def _sharing(studio: Studio, piece: Piece, way: Way) -> frozenset[str] | None:
    if way.rush_pct is None:
        return None
    order = studio.order_of(piece.key)
    return frozenset({piece.key} if order is None else order.pieces)


def scuffed_coats(plan: Plan | None, piece: str) -> frozenset[str]:
    """The coats of a piece that the plan scuffs the one below for."""
    rows = () if plan is None else plan.coats
    return frozenset(r.coat for r in rows if r.piece == piece and r.joint is Joint.SCUFFED)


def _minutes(
    studio: Studio, piece: Piece, shares: tuple[CoatShare, ...], scuffed: int
) -> dict[HandsOn, float]:
    settings = studio.settings
    turns = sum(piece.turned_before(index) for index in range(len(piece.stack)))
    trims = sum(coat.taped + coat.trimmed for coat in piece.stack)
    order = studio.order_of(piece.key)
    return {
        HandsOn.MIXING: sum(share.set_up_minutes for share in shares),
        HandsOn.POURING: float(sum(coat.piece_minutes for coat in piece.stack) * piece.count),
        HandsOn.SANDING: float(settings.sand_minutes * piece.count * scuffed),
        HandsOn.TURNING: float(settings.turn_minutes * piece.count * turns),
        HandsOn.TRIMMING: float(settings.tape_minutes * trims),
        HandsOn.PACKING: 0.0 if order is None else float(order.packing_minutes),
    }


def _mix_price(share: CoatShare, prices: GramPrices, missing: set[Missing]) -> float:
    total = 0.0
    for part, grams in share.grams.items():
        price = prices.of_part(share.product, part)
        if price is not None:
            total += grams * price
        elif grams > 0.0:
            missing.add(Missing(Lacking.PART_PRICE, share.product, part))
    return total


def _colour_price(share: CoatShare, prices: GramPrices, missing: set[Missing]) -> float:
    total = 0.0
    for colourant, grams in share.colourants.items():
        price = prices.of_colourant(colourant)
        if price is None:
            missing.add(Missing(Lacking.COLOURANT_PRICE, colourant))
        else:
            total += grams * price
    return total


def _leaf_price(studio: Studio, piece: Piece, missing: set[Missing]) -> float:
    total = 0.0
    for coat in leaf_coats(studio, piece):
        price = leaf_price(studio, piece, coat)
        if price is None:
            missing.add(Missing(Lacking.LEAF, coat.product))
        else:
            total += price
    return total


def _consumables(studio: Studio, piece: Piece, shares: tuple[CoatShare, ...]) -> float:
    rules = studio.prices
    mixes = sum(share.mixes for share in shares)
    return rules.consumables_per_mix * mixes + rules.consumables_per_piece * piece.count


def _with_overhead_and_scrap(
    studio: Studio, amounts: dict[CostKind, float]
) -> dict[CostKind, float]:
    rules = studio.prices
    wages = amounts[CostKind.WAGES]
    materials = sum(amounts.values()) - wages
    overhead = max(materials, wages) * rules.overhead_pct / 100.0
    passed = 1.0 - rules.scrap_pct / 100.0
    before = materials + wages + overhead
    return amounts | {CostKind.OVERHEAD: overhead, CostKind.SCRAP: before / passed - before}
