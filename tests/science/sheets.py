"""Data sheets of any accepted shape, drawn by hypothesis."""

from __future__ import annotations

from hypothesis import strategies as st

from studio_planner.science.laws import SheetFigure, StageLaw, stage_law
from studio_planner.science.stages import Stage


@st.composite
def laws(draw: st.DrawFn) -> StageLaw:
    """Draw a law from any accepted sheet: one to five figures, some of them ranges."""
    stage = draw(st.sampled_from(list(Stage)))
    temperatures = draw(
        st.lists(st.integers(-5, 45), min_size=1, max_size=5, unique=True).map(sorted)
    )
    hours = draw(st.floats(0.1, 400.0))
    figures: list[SheetFigure] = []
    for celsius in reversed(temperatures):
        spread = draw(st.sampled_from([1.0, 1.0, 1.2, 1.5]))
        floor = max((f.long_hours for f in figures), default=hours)
        short = floor * draw(st.sampled_from([1.0, 1.3, 2.0, 6.0]))
        long = None if spread == 1.0 else short * spread
        figures.append(SheetFigure(float(celsius), short, long))
    return stage_law(stage, figures)
