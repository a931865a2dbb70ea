"""What an order costs, the price that follows by the maker's own rule, and what is left of it.

    floor  = cost / (1 - fees)
    price  = cost (1 + margin) / (1 - fees)      margin on the cost
    price  = cost / (1 - margin - fees)          margin as a share of the price

A price is rounded up to the maker's step; the floor price leaves nothing but the wages.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.prices import PriceRule
from studio_planner.services.costs.gram_prices import GramPrices
from studio_planner.services.costs.piece_cost import (
    AS_PLANNED,
    Missing,
    PieceCost,
    Way,
    piece_cost,
)

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.prices import Prices
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class Price:
    """What follows from a cost by the maker's rule, in the studio's currency.

    `floor` covers the cost and the fees and no more, `asked` is the price, rounded up, and
    `margin` what is left of it after both.
    """

    cost: float
    floor: float
    asked: float
    margin: float

    @property
    def margin_share(self) -> float:
        """What is left as a share of the price [-]; 0.0 for a price of nothing."""
        return self.margin / self.asked if self.asked > 0.0 else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderCost:
    """What the pieces of an order cost, and its price.

    `agreed` is the price that was agreed on, None where none was; `agreed_margin` what is left
    of it after fees and cost. All are in the studio's currency.
    """

    pieces: tuple[PieceCost, ...]
    price: Price
    agreed: float | None
    agreed_margin: float | None

    @property
    def total(self) -> float:
        """All that it costs."""
        return self.price.cost

    @property
    def attended_minutes(self) -> float:
        """All minutes that somebody's hands are on it."""
        return sum(piece.attended_minutes for piece in self.pieces)

    @property
    def missing(self) -> tuple[Missing, ...]:
        """What is not in it, each once."""
        return tuple(dict.fromkeys(one for piece in self.pieces for one in piece.missing))

    @property
    def under_floor(self) -> bool:
        """Whether less was agreed on than the floor price."""
        return self.agreed is not None and self.agreed < self.price.floor - 1e-9


def price_for(rules: Prices, cost: float) -> Price:
    """The price of something that costs so much, by the maker's rule.

    Examples
    --------
    Half on top of 40, nothing to whoever sells it; half of the price, a tenth in fees:

    >>> from studio_planner.craft.prices import PriceRule, Prices
    >>> price_for(Prices(margin_pct=50), 40.0).asked
    60.0
    >>> halves = Prices(rule=PriceRule.OF_PRICE, margin_pct=50, fees_pct=10)
    >>> price_for(halves, 40.0).asked, round(price_for(halves, 40.0).floor, 2)
    (100.0, 44.44)
    """
    kept = 1.0 - rules.fees_pct / 100.0
    margin = rules.margin_pct / 100.0
    if rules.rule is PriceRule.ON_COST:
        asked = cost * (1.0 + margin) / kept
    else:
        asked = cost / (kept - margin)
    asked = _rounded_up(asked, rules.round_to)
    return Price(cost=cost, floor=cost / kept, asked=asked, margin=left_of(rules, asked, cost))


def left_of(rules: Prices, price: float, cost: float) -> float:
    """What is left of a price after fees and cost; below nothing where it does not cover them.

    Examples
    --------
    >>> from studio_planner.craft.prices import Prices
    >>> left_of(Prices(fees_pct=10), 100.0, 60.0)
    30.0
    """
    return price * (1.0 - rules.fees_pct / 100.0) - cost


def order_cost(
    studio: Studio, plan: Plan | None, order: Order, *, hurry: bool = False
) -> OrderCost:
    """Give what an order costs by the kept plan; with `hurry` made for itself and sent quickly.

    In a hurry no mix is shared with other orders, every hour costs the wage of a rush, and the
    parcel costs more.
    """
    rules = studio.prices
    prices = GramPrices(studio)
    way = Way(rush_pct=rules.rush_wage_pct) if hurry else AS_PLANNED
    pieces = tuple(
        piece_cost(studio, plan, studio.piece(key), prices, way) for key in order.pieces
    )
    freight = rules.rush_freight if hurry else 0.0
    price = price_for(rules, sum(piece.total for piece in pieces) + freight)
    agreed = order.price
    return OrderCost(
        pieces=pieces,
        price=price,
        agreed=agreed,
        agreed_margin=None if agreed is None else left_of(rules, agreed, price.cost),
    )


def _rounded_up(price: float, step: float) -> float:
    # A price that is a whole number of steps but for rounding is not taken a step further.
    return round(math.ceil(price / step - 1e-9) * step, 2)
