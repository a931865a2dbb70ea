"""A piece on its way through simulated weeks: its coats, and where it is meanwhile."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from studio_planner.planning.rehearsal.films import Leg

if TYPE_CHECKING:
    from studio_planner.craft.products import Product
    from studio_planner.planning.rehearsal.arrays import Flags, Floats
    from studio_planner.planning.rehearsal.films import Films
    from studio_planner.planning.rehearsal.work import Layer
    from studio_planner.science.stages import Stage


class Lane:
    """One piece in all weeks; every array is (weeks,), infinite where a coat is never put on.

    It stands where its coat's spot is, or where it was carried since; once that coat can be
    handled it rests in the first room until its next coat starts, or it is carried on.
    """

    def __init__(self, films: Films, rest: str, weeks: int) -> None:
        """Begin with a bare piece."""
        import numpy as np

        self._films = films
        self._rest = rest
        self._layers: dict[int, tuple[Layer, Floats, Floats]] = {}
        self._own_leg: dict[int, int] = {}
        self._legs: list[Leg] = []
        self._handled: dict[int, Floats] = {}
        self.lost: Flags = np.zeros(weeks, dtype=np.bool_)
        """Weeks in which it was given up, or found no hands any more."""
        self.done: Floats = np.full(weeks, -math.inf)
        """When the block of its latest coat ended [s]."""

    def lay(self, layer: Layer, start: Floats, end: Floats) -> None:
        """Put on a coat from `start` to `end` [s]."""
        import numpy as np

        if self._legs:
            place, since = self._legs[-1]
            self._legs[-1] = Leg(place, np.minimum(since, start))
        if not self._legs or self._legs[-1].place != layer.place:
            self._legs.append(Leg(layer.place, start))
        self._layers[layer.position] = layer, start, end
        self._own_leg[layer.position] = len(self._legs) - 1
        self.done = end
        handled = self._handle_in_place(layer, end)
        self._handled[layer.position] = handled
        self._go_on(layer, start, np.maximum(handled, start))

    def _go_on(self, layer: Layer, start: Floats, handled: Floats) -> None:
        """Rest once it can be handled; what was carried later is there until it goes on."""
        import numpy as np

        place, since = layer.place, start
        for brought, second in (*layer.carried, (None, math.inf)):
            until = np.full_like(start, second)
            if place != self._rest:
                leaves = np.where(handled >= since, np.minimum(handled, until), until)
                self._legs.append(Leg(self._rest, leaves))
            if brought is not None:
                place, since = brought, until
                self._legs.append(Leg(place, since))

    def _carried(self, layer: Layer, since: Floats) -> list[Leg]:
        """Where a piece that was carried about was from when, not before some instants."""
        import numpy as np

        return [Leg(place, np.maximum(second, since)) for place, second in layer.carried]

    def _handle_in_place(self, layer: Layer, end: Floats) -> Floats:
        import numpy as np

        if layer.handle is None:
            return end if layer.leaf else np.full_like(end, math.inf)
        legs = [Leg(layer.place, end), *self._carried(layer, end)]
        return self._films.reached(layer.product, layer.handle, legs)

    def handled(self, position: int) -> Floats:
        """When a coat can be handled [s]; at once where it is not in the plan."""
        import numpy as np

        return self._handled.get(position, np.full_like(self.done, -math.inf))

    def reached(self, position: int, product: Product, stage: Stage) -> Floats:
        """When a coat reaches a stage along the piece's way [s].

        What must not happen before a stage counts from the block's end, what must not happen
        after one from its start. Infinite where the coat is not in the plan.
        """
        import numpy as np

        if position not in self._layers:
            return np.full_like(self.done, math.inf)
        layer, start, end = self._layers[position]
        own = self._own_leg[position]
        first = Leg(layer.place, end if stage.not_before else start)
        later = self._legs[own + 1 :]
        if layer.carried:
            later = [Leg(place, np.maximum(since, first.since)) for place, since in later]
        return self._films.reached(product, stage, [first, *later])

    def ended(self, position: int) -> Floats:
        """When the block of a coat ended [s]; long ago where it is not in the plan."""
        import numpy as np

        found = self._layers.get(position)
        return np.full_like(self.done, -math.inf) if found is None else found[2]

    def product(self, position: int) -> Product | None:
        """The product of a coat that is on; None where it is not in the plan."""
        found = self._layers.get(position)
        return None if found is None else found[0].product
