"""The sentence that ends everything shown about amounts, heat and health."""

from __future__ import annotations

from studio_planner.craft.tongue import marked, translate

DEFERRAL = marked(
    "caution",
    "The product's safety data sheet, its label, local rules and a qualified adviser decide.",
)


def deferral() -> str:
    """The sentence in the language that is spoken."""
    return translate("caution", DEFERRAL)
