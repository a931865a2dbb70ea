"""Pasted text as the rows of figures that are read from it."""

from __future__ import annotations

from studio_planner.services.data_sheets.figures import read_figures


def figures(text: str, celsius: float | None = None) -> list[tuple[object, ...]]:
    """The figures of a text as plain rows."""
    return [
        (p.stage, p.celsius, p.from_hours, p.to_hours, p.mass_g)
        for p in read_figures(text, celsius).points
    ]
