"""The sentence that ends everything shown about amounts, heat and health."""

from __future__ import annotations

DEFERRAL = (
    "The product's safety data sheet, its label, local rules and a qualified adviser decide."
)
