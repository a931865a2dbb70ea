"""A drag on a section: a film drawn thicker or thinner, or a coat taken to another place."""

from __future__ import annotations

from dataclasses import dataclass, field

from PySide6.QtCore import QPointF

_THINNEST_MM = 0.1
_DEEPEST_MM = 50.0


@dataclass(slots=True)
class Drag:
    """One drag. With a `scale` (pixels to a mm) the film is drawn, else the coat is taken.

    `film` is the film as it would be now [mm], `target` the coat to change places with.
    """

    key: str
    start: QPointF
    film_start: float
    scale: float = 0.0
    moved: bool = False
    film: float | None = None
    target: str = ""
    at: QPointF = field(default_factory=QPointF)


def dragged_film(drag: Drag, outward: QPointF, step: float) -> float:
    """The film that a drag has come to [mm], on whole steps, never under one."""
    way = QPointF.dotProduct(drag.at - drag.start, outward)
    film = drag.film_start + way / drag.scale
    return min(max(round(round(film / step) * step, 4), _THINNEST_MM), _DEEPEST_MM)
