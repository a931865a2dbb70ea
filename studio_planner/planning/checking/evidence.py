"""What a check works with: the plan's coats beside the studio's nouns, and the clocks."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.products import ProductKind
from studio_planner.planning.checking.film import FilmRates
from studio_planner.science.stages import Edge, Stage, safe_edge

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.places import Place, Spot
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw

SLACK_SECONDS = 2.0
"""How far two exact clocks may differ and still agree."""

_NOTHING = 1e-6
"""A share of a stage too small to wait for: a piece that leaves its spot on the very second it
can be handled has reached that stage, even if the air it comes into would stop the cure."""

Leg = tuple[str, float]
"""A place's key, and the second from which a piece is there."""


def moment(second: float) -> datetime:
    """Give a second since 1970 as an aware UTC datetime."""
    return datetime(1970, 1, 1, tzinfo=UTC) + timedelta(seconds=second)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Laid:
    """A coat of the plan with all it refers to; `start` and `end` of its block in s."""

    planned: PlannedCoat
    piece: Piece
    coat: Coat
    product: Product
    index: int
    spot: Spot
    place: Place
    start: float
    end: float

    @property
    def name(self) -> str:
        """What the coat is called among those of its piece."""
        return self.piece.coat_name(self.coat.key)

    @property
    def leaf(self) -> bool:
        """Whether it is leaf, which is laid dry and has no film of its own."""
        return self.product.kind is ProductKind.LEAF


class Clocks:
    """The air and the film clocks of a studio over one record, made when first asked for."""

    def __init__(self, studio: Studio, start: datetime, end: datetime) -> None:
        """Cover `start` to `end` (aware)."""
        self._studio = studio
        self._span = start, end
        self._places = {place.key: place for place in studio.places}
        self._histories: dict[str, History] = {}
        self._laws: dict[tuple[str, Stage], StageLaw | None] = {}
        self._rates: dict[tuple[str, Stage, Edge, str], FilmRates] = {}

    def history(self, place: str) -> History:
        """The air of a place over the record."""
        if place not in self._histories:
            zone = self._studio.time_zone
            self._histories[place] = self._places[place].history(zone, *self._span)
        return self._histories[place]

    def law(self, product: Product, stage: Stage) -> StageLaw | None:
        """The law of a stage, or None when the sheet says nothing about it."""
        key = product.key, stage
        if key not in self._laws:
            self._laws[key] = product.law(stage)
        return self._laws[key]

    def reached(
        self, product: Product, stage: Stage, edge: Edge, legs: list[Leg], since: float
    ) -> float | None:
        """When a film that began at `since` reaches a stage while the piece moves along `legs`.

        None when it does not within the record, or when the sheet lacks the stage.
        """
        law = self.law(product, stage)
        if law is None:
            return None
        missing = 1.0
        ends = [start for _, start in legs[1:]] + [math.inf]
        for (place, start), end in zip(legs, ends, strict=True):
            rates = self._rates_of(product, law, edge, place)
            found, missing = rates.walk(max(start, since), end, missing)
            if found is not None:
                return found
            if missing <= _NOTHING < end < math.inf:
                return end
        return None

    def _rates_of(self, product: Product, law: StageLaw, edge: Edge, place: str) -> FilmRates:
        key = product.key, law.stage, edge, place
        if key not in self._rates:
            history = self.history(place)
            self._rates[key] = FilmRates(law, history, edge, product.minimum_celsius)
        return self._rates[key]


class Stand(NamedTuple):
    """A spot in its place, and the second from which a piece stands there."""

    spot: Spot
    place: Place
    since: float


class Lane:
    """The coats of one piece that are planned or poured, and where the piece is meanwhile.

    From a block's start the piece is where the coat's spot is, or where it was carried since.
    When that coat can be handled (late edge, where it stood till then) and no later coat has
    started, it rests in the resting place; what is carried later than that stays there.
    """

    def __init__(
        self,
        piece: Piece,
        laid: list[Laid],
        clocks: Clocks,
        rest: str | None,
        carried: Mapping[int, Sequence[Stand]],
    ) -> None:
        """Order the coats by their place in the stack; at most one for each.

        `carried` are the stands of poured coats at a position, where the log tells them.
        """
        self.piece = piece
        self.laid = sorted(laid, key=lambda coat: coat.index)
        self._by_index = {coat.index: coat for coat in self.laid}
        self._clocks = clocks
        self._reached: dict[tuple[int, Stage, Edge], float | None] = {}
        self._next: dict[int, Laid | None] = {}
        self.freed: dict[int, float | None] = {}
        self.stands: dict[int, list[Stand]] = {}
        self._carried = carried
        self._legs: list[Leg] = []
        self._follow(rest)

    def _follow(self, rest: str | None) -> None:
        in_time = sorted(self.laid, key=lambda coat: (coat.start, coat.index))
        for coat, after in zip(in_time, [*in_time[1:], None], strict=True):
            self._next[coat.index] = after
            stands = self._stands(coat, math.inf if after is None else after.start)
            freed = self._handle_in_place(coat, stands)
            self.stands[coat.index], self.freed[coat.index] = stands, freed
            legs = [(stand.place.key, stand.since) for stand in stands]
            over = freed is not None and (after is None or freed < after.start)
            if freed is not None and over and rest is not None:
                legs.append((rest, max(freed, coat.start)))
            # Whoever is carried at that very second is carried after it.
            self._legs += sorted(legs, key=lambda leg: leg[1])

    def _stands(self, coat: Laid, until: float) -> list[Stand]:
        own = Stand(coat.spot, coat.place, coat.start)
        first, *later = self._carried.get(coat.index, (own,))
        since = [stand for stand in later if coat.start < stand.since < until]
        return [first._replace(since=coat.start), *since]

    def _handle_in_place(self, coat: Laid, stands: list[Stand]) -> float | None:
        stage = self.stage_on_sheet(coat.product, Stage.HANDLE)
        if stage is None:
            return coat.end if coat.leaf else None
        legs = [(stand.place.key, stand.since) for stand in stands]
        return self._clocks.reached(coat.product, stage, Edge.LATE, legs, coat.end)

    def coat(self, index: int) -> Laid | None:
        """The coat at a position of the stack; None when it is not in the plan."""
        return self._by_index.get(index)

    def next_in_time(self, coat: Laid) -> Laid | None:
        """The coat that is poured next on the piece; None after the last."""
        return self._next[coat.index]

    def has(self, product: Product, stage: Stage) -> bool:
        """Whether the product's sheet tells about a stage."""
        return self._clocks.law(product, stage) is not None

    def stage_on_sheet(self, product: Product, stage: Stage) -> Stage | None:
        """The stage, or the next later one of handle, print-free, full cure on the sheet."""
        later = _CURE[_CURE.index(stage) :]
        return next((found for found in later if self.has(product, found)), None)

    def reached(self, coat: Laid, stage: Stage, edge: Edge | None = None) -> float | None:
        """When a coat reaches a stage along the piece's way; the safe edge when none is given.

        What must not happen before a stage counts from the block's end, what must not happen
        after one from its start.
        """
        side = edge or safe_edge(stage)
        key = coat.index, stage, side
        if key not in self._reached:
            since = coat.end if stage.not_before else coat.start
            self._reached[key] = self._clocks.reached(
                coat.product, stage, side, self._legs_from(since), since
            )
        return self._reached[key]

    def _legs_from(self, since: float) -> list[Leg]:
        passed = [index for index, (_, start) in enumerate(self._legs) if start <= since]
        return self._legs[passed[-1] :]


_CURE = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)
