"""Where a piece is from when, by its plan and by the log: what all lanes know of it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import zip_longest
from operator import attrgetter
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_from, legs_of, legs_of_pours, rested
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.log_legs import CarriedPours, SpotLeg
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Leg, Timing
    from studio_planner.services.doorways import Hands


@dataclass(frozen=True)
class PlannedStudio:
    """What all lanes share: the studio, its plan, its clocks and its hands."""

    studio: Studio
    plan: Plan | None
    timing: Timing
    hands: Hands

    @cached_property
    def carried(self) -> CarriedPours:
        """Where the pieces of all pours were from when, by piece and coat."""
        return legs_of_pours(self.studio)


class Whereabouts:
    """A piece with its planned and poured coats, earliest first, and where it is meanwhile."""

    def __init__(
        self, whole: PlannedStudio, piece: Piece, coats: Iterable[PlannedCoat]
    ) -> None:
        """Follow one piece; `coats` are all that the plan has for it."""
        self._whole = whole
        self.studio = whole.studio
        self.timing = whole.timing
        self.piece = piece
        self.coats = tuple(sorted(coats, key=attrgetter("start")))

    @property
    def spots(self) -> tuple[str, ...]:
        """The names of the spots it stands on, in order, each once."""
        stands = (spot for coat in self.coats for spot, _ in self.stands(coat))
        return tuple(dict.fromkeys(self.studio.spot(spot).name for spot in stands))

    @cached_property
    def legs(self) -> tuple[Leg, ...]:
        """Where the piece is from when: on a spot until *handle*, then at rest."""
        legs: list[Leg] = []
        for coat, following in zip_longest(self.coats, self.coats[1:]):
            for place, since in self._legs_on(coat, following):
                if not legs or legs[-1][0] != place:
                    legs.append((place, since))
        return tuple(legs)

    def _legs_on(self, coat: PlannedCoat, following: PlannedCoat | None) -> list[Leg]:
        """Where the piece is from a coat on until the following one."""
        rest, place_of = self.studio.resting_place, self.studio.place_of_spot
        legs = [(place_of(spot).key, since) for spot, since in self.stands(coat)]
        if rest is None or all(place == rest.key for place, _ in legs):
            return legs
        product = self.studio.product(self.piece.coat(coat.coat).product)
        handled = self.timing.safe(product, Stage.HANDLE, legs_from(legs, coat.end))
        if handled is None or (following is not None and handled >= following.start):
            return legs
        return rested(legs, handled, rest.key)

    def stands(self, coat: PlannedCoat) -> tuple[SpotLeg, ...]:
        """The spots that the piece is on from a coat on: where it was carried, if it was."""
        (spot, _), *later = legs_of(self._whole.carried, coat)
        # A kept plan may not know yet that it was poured, and when.
        return ((spot, coat.start), *(leg for leg in later if leg[1] > coat.start))

    def lies_on(self, coat: PlannedCoat) -> str:
        """The spot (a key) that the piece is on last with a coat on."""
        return self.stands(coat)[-1][0]
