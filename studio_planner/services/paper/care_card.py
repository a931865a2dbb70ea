"""The care card that goes with an order: how to keep a piece, and what is not claimed of it.

What it says about care is common practice; about food it says one of three things, which the
maker has chosen for the order, and never more.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.orders import ContactClaim
from studio_planner.craft.tongue import translate
from studio_planner.science.stages import Stage
from studio_planner.services.paper.mix_numbers import mix_numbers
from studio_planner.services.paper.pages import Fields, Headline, Part, Prose
from studio_planner.services.paper.wall_words import local_day, long_date_said

if TYPE_CHECKING:
    from datetime import date, datetime

    from studio_planner.craft.orders import Order
    from studio_planner.services.desk import DeskView


def care_card(view: DeskView, order: Order) -> Part:
    """The card of an order, on a page of its own."""
    studio = view.studio
    names = [studio.piece(key).name for key in order.pieces]
    pours = (pour for key in order.pieces for pour in studio.pours_of(key))
    numbers = mix_numbers(studio, pours)
    under = [", ".join(names)]
    if numbers:
        said = (
            translate("paper", "from mix {numbers}")
            if len(numbers) == 1
            else translate("paper", "from mixes {numbers}")
        )
        under.append(said.format(numbers=", ".join(map(str, numbers))))
    return Part(
        blocks=(
            Headline(words=translate("paper", "How to keep it"), under=tuple(under)),
            Prose(title="", sentences=_care(view, order), listed=True, large=True),
            Prose(
                title=translate("paper", "Food"),
                sentences=(contact_words(order.contact),),
                large=True,
            ),
            Fields(
                title=translate("paper", "Questions, or something wrong? Name the mix."),
                labels=(
                    translate("paper", "maker and address"),
                    translate("paper", "mix"),
                ),
                across=2,
            ),
        ),
        begins=True,
    )


def contact_words(contact: ContactClaim) -> str:
    """What is said about food: one of the three states, and nothing more."""
    match contact:
        case ContactClaim.DECORATIVE:
            return translate("paper", "Decorative; not for food.")
        case ContactClaim.DECLARED:
            return translate(
                "paper",
                "Intended for contact with food as a declaration says that the maker keeps on "
                "file; ask for it, and keep to what it says.",
            )
        case ContactClaim.OWN_USE:
            return translate(
                "paper",
                "Made for the customer's own use; the maker claims nothing about contact with "
                "food.",
            )


def _care(view: DeskView, order: Order) -> tuple[str, ...]:
    cured = _cured(view, order)
    first = (
        translate(
            "paper",
            "It goes on curing for weeks: until it is hard all through put no load, heat or "
            "water on it.",
        )
        if cured is None
        else translate(
            "paper", "It goes on curing until {date}: before, put no load, heat or water on it."
        ).format(date=long_date_said(cured))
    )
    return (
        first,
        translate("paper", "Put nothing hot on it; use a mat. It softens when it gets hot."),
        translate(
            "paper", "Wipe it with a soft, damp cloth. No soaking, no dishwasher, no solvents."
        ),
        translate("paper", "Keep it out of direct sun; epoxy yellows with the years."),
        translate("paper", "Put pads under what stands on it; hard edges scratch it."),
    )


def _cured(view: DeskView, order: Order) -> date | None:
    """The day by which the last piece is fully cured for sure; None where nobody knows."""
    ready: dict[str, datetime | None] = {}
    if view.plan is not None:
        ready = {
            row.piece: row.safe
            for row in view.plan.ready
            if row.stage is Stage.FULL_CURE and row.piece in order.pieces
        }
    known = [when for when in ready.values() if when is not None]
    if len(known) < len(order.pieces):
        return None
    return local_day(view.studio, max(known))
