"""The sentences beside the rules of the stock and the figures that prices are made of."""

from __future__ import annotations

from dataclasses import dataclass

from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.tongue import translate


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure: the craft's name of it, its title, what it does, and its unit."""

    name: str
    title: str
    sentence: str
    quantity: Quantity = Quantity.PLAIN
    money: bool = False


def stock_figures() -> tuple[Figure, ...]:
    """The rules of the stock."""
    return (
        Figure(
            "lead_days",
            translate("prices", "Days until bottles are here"),
            translate(
                "prices",
                "From your order until they can be used: delivery, and a day in the warm room.",
            ),
            Quantity.COUNT,
        ),
        Figure(
            "opened_days",
            translate("prices", "Days that an opened bottle keeps"),
            translate(
                "prices",
                "Where its label says nothing earlier; six to twelve months are common "
                "practice.",
            ),
            Quantity.COUNT,
        ),
        Figure(
            "reserve_g",
            translate("prices", "Reserve of each part"),
            translate("prices", "So much is to be left for what nobody has planned."),
            Quantity.MASS,
        ),
    )


def cost_figures() -> tuple[Figure, ...]:
    """What a piece's cost is made of."""
    return (
        Figure(
            "hourly_wage",
            translate("prices", "An hour of your hands"),
            translate("prices", "Attended minutes count; days of curing do not."),
            money=True,
        ),
        Figure(
            "consumables_per_mix",
            translate("prices", "Consumables of a mix"),
            translate("prices", "Gloves, cups and sticks of each mix, shared as it is."),
            money=True,
        ),
        Figure(
            "consumables_per_piece",
            translate("prices", "Consumables of a piece"),
            translate("prices", "Tape, abrasive and packing of each single piece."),
            money=True,
        ),
        Figure(
            "leaf_waste_pct",
            translate("prices", "Leaf that overlaps or tears"),
            translate(
                "prices",
                "On top of the area that is laid; ten to thirty per cent are common practice.",
            ),
            Quantity.PER_CENT,
        ),
        Figure(
            "overhead_pct",
            translate("prices", "Overhead"),
            translate("prices", "On materials or on hours, whichever cost more."),
            Quantity.PER_CENT,
        ),
        Figure(
            "scrap_pct",
            translate("prices", "Pieces that do not pass"),
            translate("prices", "Those that pass bear their cost."),
            Quantity.PER_CENT,
        ),
    )


def price_figures() -> tuple[Figure, ...]:
    """How a price follows from a cost."""
    return (
        Figure(
            "margin_pct",
            translate("prices", "Margin"),
            translate("prices", "On top of the cost, or as a share of the price."),
            Quantity.PER_CENT,
        ),
        Figure(
            "fees_pct",
            translate("prices", "Fees of whoever sells it"),
            translate("prices", "A share of the price that never reaches you."),
            Quantity.PER_CENT,
        ),
        Figure(
            "round_to",
            translate("prices", "Prices are rounded up to"),
            translate("prices", "The step of your price tags."),
            money=True,
        ),
        Figure(
            "rush_wage_pct",
            translate("prices", "More for hours of a rush"),
            translate("prices", "What an evening that is put in to be quick costs on top."),
            Quantity.PER_CENT,
        ),
        Figure(
            "rush_freight",
            translate("prices", "More for a quick parcel"),
            translate("prices", "What sending it quickly adds."),
            money=True,
        ),
    )
