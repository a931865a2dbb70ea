"""The window over a film that lies there, by the clocks of its own air."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.plans import Trust, Window
from studio_planner.craft.sheet_stages import window_stages
from studio_planner.science.stages import Edge, safe_edge

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.science.stages import Stage
    from studio_planner.services.ribbons import Ribbon


def window_now(bar: Ribbon, below: Ribbon, trust: Trust) -> Window | None:
    """The window of a coat over the film `below` it at a trust; None where it never opens."""
    opens, closes = window_stages(bar.lane.studio, bar.lane.piece, bar.position)
    since = below.planned.end if opens is None else _reached(below, opens, trust)
    if since is None:
        return None
    until = None if closes is None else _reached(below, closes, trust)
    return Window(opens=since, closes=until, trust=trust)


def _reached(below: Ribbon, stage: Stage, trust: Trust) -> datetime | None:
    return below.film.reached(stage, safe_edge(stage) if trust is Trust.SAFE else Edge.LIKELY)
