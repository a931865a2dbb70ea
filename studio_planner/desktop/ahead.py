"""What will be needed is loaded while nobody waits for it, one module at a time."""

from __future__ import annotations

from importlib import import_module
from pkgutil import iter_modules
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

_PACKAGES = (
    "timeline_work",
    "forms",
    "order_pages",
    "piece_pages",
    "product_pages",
    "studio_pages",
    "room_pages",
    "question_pages",
    "log_pages",
    "stock_pages",
    "pages",
    "bench",
)
"""In the order in which a maker is likely to come to them."""


def load_ahead() -> Iterator[None]:
    """Load the modules of every page, one in each part; those that are loaded cost nothing."""
    for name in _PACKAGES:
        package = import_module(f"studio_planner.desktop.{name}")
        for module in iter_modules(package.__path__):
            import_module(f"{package.__name__}.{module.name}")
            yield
