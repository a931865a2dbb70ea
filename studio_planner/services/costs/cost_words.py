"""What there is to say about costs and prices, in sentences and short names."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import marked, translate
from studio_planner.services.amount_words import money_said
from studio_planner.services.costs.piece_cost import CostKind, HandsOn, Lacking, Missing
from studio_planner.services.stocks.stock_words import stuff_said

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.studio import Studio
    from studio_planner.services.costs.order_cost import OrderCost

_KINDS = {
    CostKind.MIX: marked("costs", "mix"),
    CostKind.COLOURANTS: marked("costs", "colourants"),
    CostKind.LEAF: marked("costs", "leaf"),
    CostKind.BLANK: marked("costs", "blank"),
    CostKind.CONSUMABLES: marked("costs", "consumables"),
    CostKind.WAGES: marked("costs", "attended time"),
    CostKind.OVERHEAD: marked("costs", "overhead"),
    CostKind.SCRAP: marked("costs", "scrap share"),
}

_HANDS = {
    HandsOn.MIXING: marked("costs", "mixing"),
    HandsOn.POURING: marked("costs", "pouring"),
    HandsOn.SANDING: marked("costs", "washing and sanding"),
    HandsOn.TURNING: marked("costs", "turning"),
    HandsOn.TRIMMING: marked("costs", "tape and drips"),
    HandsOn.PACKING: marked("costs", "packing"),
}


def cost_word(kind: CostKind) -> str:
    """What a part of a cost is called."""
    return translate("costs", _KINDS[kind])


def hands_word(kind: HandsOn) -> str:
    """What attended minutes are spent on."""
    return translate("costs", _HANDS[kind])


def missing_said(studio: Studio, missing: Iterable[Missing]) -> tuple[str, ...]:
    """What is not in a cost because nobody has entered it, a sentence for each."""
    return tuple(_missing_said(studio, one) for one in missing)


def price_warnings(studio: Studio, cost: OrderCost) -> tuple[str, ...]:
    """What to say of an agreed price that is under the floor price."""
    if not cost.under_floor or cost.agreed is None:
        return ()
    return (
        translate(
            "costs", "{agreed} were agreed on, {lacking} less than what the order costs."
        ).format(
            agreed=money_said(cost.agreed, studio.currency),
            lacking=money_said(cost.price.floor - cost.agreed, studio.currency),
        ),
    )


def _missing_said(studio: Studio, missing: Missing) -> str:
    if missing.what is Lacking.WAGE:
        return translate("costs", "Attended time is not in it: enter what an hour costs.")
    if missing.what is Lacking.COLOURANT_PRICE:
        return translate(
            "costs", "{name} is not in it: enter it as a pigment with its price."
        ).format(name=missing.name)
    if missing.what is Lacking.LEAF or missing.part is None:
        return translate(
            "costs",
            "{name} is not in it: enter the side and the price of one leaf under Products.",
        ).format(name=studio.product(missing.name).name)
    return translate("costs", "{stuff} is not in it: enter a bottle with its price.").format(
        stuff=stuff_said(studio, missing.name, missing.part)
    )
