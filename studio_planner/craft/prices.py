"""Money: what the studio's hours and things cost, and how a price is made from them."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import translate

_MOST = 100_000


class PriceRule(StrEnum):
    """What the maker's margin is a share of."""

    ON_COST = "on cost"
    OF_PRICE = "of the price"


@dataclass(frozen=True, slots=True, kw_only=True)
class Prices:
    """What a studio reckons with, in its currency and in per cent; 0 where nobody entered it.

    `consumables_per_mix` are gloves, cups and sticks of each mix, `consumables_per_piece` tape,
    abrasive and packing of each single piece. `leaf_waste_pct` of leaf goes on top where leaves
    overlap and tear: 10 to 30 % (common practice). `overhead_pct` goes on materials or on
    hours, whichever are dearer. `scrap_pct` of the pieces do not pass: 1 in 8 to 1 in 5 need
    one more coat, fewer are lost (common practice). `fees_pct` of the price go to whoever
    sells it. `margin_pct` is on top of the cost or a share of the price. `rush_wage_pct` goes
    on top of the wage of hours that are put in to be quick, and `rush_freight` on the parcel.
    A price is rounded up to `round_to`.
    """

    hourly_wage: float = 0.0
    consumables_per_mix: float = 0.0
    consumables_per_piece: float = 0.0
    overhead_pct: float = 0.0
    scrap_pct: float = 5.0
    fees_pct: float = 0.0
    rule: PriceRule = PriceRule.ON_COST
    margin_pct: float = 50.0
    rush_wage_pct: float = 50.0
    rush_freight: float = 0.0
    round_to: float = 0.5
    leaf_waste_pct: float = 20.0

    def __post_init__(self) -> None:
        """Check the ranges, and that a share of the price leaves something of it."""
        rules = Rulebook(translate("nouns", "prices"))
        for name in (
            "hourly_wage",
            "consumables_per_mix",
            "consumables_per_piece",
            "rush_freight",
        ):
            rules.between(getattr(self, name), 0, _MOST, name)
        rules.between(self.leaf_waste_pct, 0, 500, "leaf_waste_pct")
        rules.between(self.overhead_pct, 0, 500, "overhead_pct")
        rules.between(self.scrap_pct, 0, 90, "scrap_pct")
        rules.between(self.fees_pct, 0, 90, "fees_pct")
        rules.between(self.margin_pct, 0, 1000, "margin_pct")
        rules.between(self.rush_wage_pct, 0, 500, "rush_wage_pct")
        rules.between(self.round_to, 0.01, 1000, "round_to")
        of_price = self.margin_pct if self.rule is PriceRule.OF_PRICE else 0.0
        rules.require(
            of_price + self.fees_pct <= _MOST_OF_A_PRICE,
            "margin_pct",
            translate("rules", "margin and fees together leave nothing of the price."),
        )
        rules.close()

    def wage(self, minutes: float) -> float:
        """Give what so many attended minutes cost."""
        return self.hourly_wage * minutes / 60.0


_MOST_OF_A_PRICE = 95
"""What margin and fees may be together, in per cent of the price."""
