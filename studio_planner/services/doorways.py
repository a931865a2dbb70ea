"""The window over a film as an opening, and the hours in it in which nobody can work."""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import clipped, without
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust, Window
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from studio_planner.craft.local_time import Span
    from studio_planner.services.film_shades import Film


@dataclass(frozen=True, slots=True, kw_only=True)
class Doorway:
    """The window to recoat a film: when it opens and closes, and where nobody can work in it.

    `used` tells whether the next coat stands in it; a scuffed coat comes after it instead.
    """

    opens: datetime
    closes: datetime | None
    trust: Trust
    used: bool
    nobody: tuple[Span, ...]


class Hands:
    """All spans in which somebody can work, searched quickly."""

    def __init__(self, spans: Sequence[Span]) -> None:
        """Take merged spans in order of time."""
        self.spans = tuple(spans)
        self._ends = [end for _, end in self.spans]

    def missing(self, start: datetime, end: datetime) -> tuple[Span, ...]:
        """The parts from `start` to `end` in which nobody can work."""
        working = self.spans[bisect_left(self._ends, start) :]
        near = [span for span in working[: bisect_left(working, (end, end))] if span[0] < end]
        return without([(start, end)], clipped(near, start, end))


def safe_window(film: Film, joint: Joint) -> Window | None:
    """The window to recoat a film at its safe edges; None where there is none to stand in."""
    opens, closes = film.safe(Stage.RECOAT_OPENS), film.safe(Stage.RECOAT_CLOSES)
    if opens is None or joint is not Joint.IN_WINDOW:
        return None
    if closes is None or opens < closes:
        return Window(opens=opens, closes=closes, trust=Trust.SAFE)
    return None


def doorway_for(window: Window, until: datetime, hands: Hands, *, used: bool) -> Doorway:
    """The opening of a window over a film that is drawn `until` an instant."""
    last = window.closes or until
    nobody = hands.missing(window.opens, last) if window.opens < last else ()
    return Doorway(
        opens=window.opens, closes=window.closes, trust=window.trust, used=used, nobody=nobody
    )
