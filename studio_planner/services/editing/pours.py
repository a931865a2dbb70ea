"""Writing down what was poured: the coats of one mix, and what was poured before them."""

from __future__ import annotations

from studio_planner.services.log_book.pours import mix_of, with_pour

__all__ = ["mix_of", "with_pour"]
