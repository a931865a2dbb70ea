"""What each need of a plan is called, why it matters, and where it is met."""

from __future__ import annotations

from studio_planner.desktop.page_keys import ORDERS, PIECES, PRODUCTS, STUDIO
from studio_planner.desktop.tongue import translate
from studio_planner.services.needs import Need

PLACES: dict[Need, tuple[str, str]] = {
    Need.HANDS: (STUDIO, "hands"),
    Need.ROOM: (STUDIO, "room"),
    Need.SPOT: (STUDIO, "room"),
    Need.PRODUCT: (PRODUCTS, ""),
    Need.PIECE: (PIECES, ""),
    Need.ORDER: (ORDERS, ""),
}
"""The page where each need is met, and the thing on it."""


def titles() -> dict[Need, str]:
    """What each need is called."""
    return {
        Need.HANDS: translate("set-up", "Hands and their hours"),
        Need.ROOM: translate("set-up", "The room's temperature"),
        Need.SPOT: translate("set-up", "A level spot"),
        Need.PRODUCT: translate("set-up", "A product with its data sheet"),
        Need.PIECE: translate("set-up", "A piece with its coats"),
        Need.ORDER: translate("set-up", "An order"),
    }


def whys() -> dict[Need, str]:
    """Why each need matters."""
    return {
        Need.HANDS: translate(
            "set-up",
            "A pour takes an hour or more of somebody's hands, and a window is of use only "
            "when somebody is there and awake.",
        ),
        Need.ROOM: translate(
            "set-up",
            "The room's temperature sets how fast every coat cures; its humidity says when a "
            "surface is too damp to be coated.",
        ),
        Need.SPOT: translate(
            "set-up",
            "A wet piece lies level on its spot until it can be handled. Spots decide how many "
            "pieces can be under way at once.",
        ),
        Need.PRODUCT: translate(
            "set-up",
            "From the sheet come the hours after which the next coat goes on, the piece can be "
            "handled, and packed.",
        ),
        Need.PIECE: translate(
            "set-up", "A plan is made of coats: which product, how thick, on which face."
        ),
        Need.ORDER: translate(
            "set-up",
            "With a promised date the plan knows what has to be ready first.",
        ),
    }


def verbs() -> dict[Need, str]:
    """The verb that leads to where a need is met."""
    return {
        Need.HANDS: translate("set-up", "Enter hands"),
        Need.ROOM: translate("set-up", "Enter the room"),
        Need.SPOT: translate("set-up", "Enter spots"),
        Need.PRODUCT: translate("set-up", "Enter products"),
        Need.PIECE: translate("set-up", "Enter pieces"),
        Need.ORDER: translate("set-up", "Enter orders"),
    }
