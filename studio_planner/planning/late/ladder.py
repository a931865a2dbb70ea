"""What makes an order late: one thing after another is taken from it, until it comes late.

First it is alone with hands day and night and a spot for each of its pieces; then it has the
real working hours; then the spots that the plan's other pieces leave; then the hands that they
leave; then the air between their wet coats and their sanding. The first that turns it late is
the reason, given the places that the plan gave the others.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import TYPE_CHECKING

from studio_planner.planning.late import what_if
from studio_planner.planning.late.booked import EVERYTHING, Takes
from studio_planner.planning.late.fitting import Fitter

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.clocks.clockwork import Clockworks
    from studio_planner.planning.late.fitting import Fit


class Rung(IntEnum):
    """What has been taken from an order, each with all that stands above it here."""

    CURE = 0
    HOURS = 1
    SPOTS = 2
    HANDS = 3
    DUST = 4
    NOTHING = 5
    """All is taken, and the order still is in time between the others as they stand."""


_TAKEN = {
    Rung.CURE: Takes(0),
    Rung.HOURS: Takes(0),
    Rung.SPOTS: Takes.SPOTS,
    Rung.HANDS: Takes.SPOTS | Takes.HANDS,
    Rung.DUST: EVERYTHING,
}


@dataclass(frozen=True, slots=True)
class Climb:
    """The rung that turns an order late, how it went there, and on the rung before."""

    rung: Rung
    fit: Fit
    before: Fit | None


class Ladder:
    """The rungs of one plan; what they share is made once for all orders."""

    def __init__(self, studio: Studio, plan: Plan, clockworks: Clockworks) -> None:
        """Ask about a plan of a studio."""
        self.studio = studio
        self.plan = plan
        self._clockworks = clockworks
        self._fitters = {"as it is": Fitter(studio, plan, clockworks)}

    def order(self, key: str) -> Order:
        """The order called `key`."""
        return next(order for order in self.studio.orders if order.key == key)

    def climb(self, order: Order) -> Climb:
        """Find the first rung that turns an order late.

        Looked for from the last rung down: what is in time with less is in time with more, so
        the first rung that is in time ends the search.
        """
        above: Fit | None = None
        for rung in sorted(_TAKEN, reverse=True):
            fit = self.fitter(rung).fit(order, _TAKEN[rung])
            if fit.late == 0:
                return Climb(Rung(rung + 1), above or fit, fit)
            above = fit
        assert above is not None  # noqa: S101 - there is at least one rung
        return Climb(Rung.CURE, above, None)

    def warm(self, order: Order) -> Fit:
        """How an order goes with hands day and night, all spots free and a warm room."""
        return self._fitter("warm").fit(order, Takes(0))

    def fitter(self, rung: Rung) -> Fitter:
        """The studio of a rung."""
        names = {Rung.CURE: "tireless", Rung.HOURS: "roomy"}
        return self._fitter(names.get(rung, "as it is"))

    def _fitter(self, name: str) -> Fitter:
        if name not in self._fitters:
            studio = self._studio(name)
            stacks = self._fitters["as it is"].stacks
            self._fitters[name] = Fitter(studio, self.plan, self._clockworks, stacks)
        return self._fitters[name]

    def _studio(self, name: str) -> Studio:
        most = max((len(order.pieces) for order in self.studio.orders), default=1)
        roomy = what_if.with_spots(self.studio, most)
        if name == "roomy":
            return roomy
        tireless = what_if.with_tireless_hands(roomy)
        return tireless if name == "tireless" else what_if.with_warm_room(tireless)
