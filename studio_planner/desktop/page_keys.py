"""What the pages of the desk are called among themselves."""

from __future__ import annotations

PLAN, ORDERS, PIECES, PRODUCTS, STUDIO, QUESTIONS, LOG, STOCK = (
    "plan",
    "orders",
    "pieces",
    "products",
    "studio",
    "questions",
    "log",
    "stock",
)
"""The keys of the pages."""

SET_UP = "set-up"
"""The thing on the page of the studio that a new studio opens on."""

REMINDERS = "reminders"
"""The thing on the page of the studio that says how it reminds."""

AIR_FORM = "another-temperature"
"""The thing in its section of rooms that is the form for another temperature."""

ANOTHER_AIR = f"room/{AIR_FORM}"
"""The same, from anywhere on the page of the studio."""
