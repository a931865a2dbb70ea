"""One pour of a product in the studio's own room, as if nothing else were planned."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, time, timedelta
from functools import cached_property
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.craft.pieces import Coat, CoatKind, Joint, Material, Piece
from studio_planner.craft.places import Spot
from studio_planner.craft.plans import PlannedCoat
from studio_planner.craft.products import ProductKind
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.studio import Studio
from studio_planner.craft.timing import Timing
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.backdrop import Backdrop
from studio_planner.services.doorways import Hands
from studio_planner.services.ribbons import Lane, PlannedStudio, Ribbon

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.places import Place
    from studio_planner.craft.products import Product

_BLOCK = timedelta(minutes=30)
_BEFORE = timedelta(hours=6)
_LONGEST = timedelta(days=35)
_SHORTEST = timedelta(days=3)
_SPARE = 1.6
"""A cool week lengthens a cure against its first day's air by no more, as a rule (ours)."""
_USUAL_FILM_MM = 0.5
"""The film of a trial, a thin flood coat (our choice); no stage depends on how thick it is."""


@dataclass(frozen=True, slots=True)
class StageMoment:
    """When a pour reaches a stage; None where it does not within the record."""

    stage: Stage
    early: datetime | None
    likely: datetime | None
    late: datetime | None


class TrialPour:
    """A pour of a product in a place, from an instant on, alone on a lane."""

    def __init__(self, studio: Studio, product: Product, place: Place, start: datetime) -> None:
        """Pour at `start` (aware); its hands-on block is half an hour."""
        self.product = product
        self.place = place
        self.start = start.astimezone(UTC)
        self.end = self.start + _BLOCK
        self._studio = _alone(studio, product, place)

    @cached_property
    def lane(self) -> Lane:
        """The lane with its one ribbon, on a record that is long enough for its last stage.

        A clock costs as much as its record is long, and a sheet is looked at after each figure.
        """
        lane = self._first_lane
        last = lane.bars[0]
        assert isinstance(last, Ribbon)  # noqa: S101 - the lane was made with one coat
        late = (last.film.reached(stage, Edge.LATE) for stage in self._stages)
        return lane if all(late) else self._lane(_LONGEST)

    @cached_property
    def _first_lane(self) -> Lane:
        return self._lane(self._expected)

    def asking(self) -> Iterator[None]:
        """Ask the clocks of `moments` and of the ribbon, one in each part."""
        first = self._first_lane.bars[0]
        assert isinstance(first, Ribbon)  # noqa: S101 - the lane was made with one coat
        yield
        for stage in self._stages:
            first.film.reached(stage, Edge.LATE)
            yield
        film = self.ribbon.film
        for stage in self._stages:
            for edge in Edge:
                film.reached(stage, edge)
                yield
        yield from self.ribbon.asking(fine=True)

    @property
    def _stages(self) -> list[Stage]:
        known = {point.stage for point in self.product.sheet} - {Stage.CUP_LIFE}
        return [stage for stage in Stage if stage in known]

    @property
    def _expected(self) -> timedelta:
        """How long its last stage takes in the first day's coldest air, with some to spare."""
        coldest, _ = self.celsius()
        laws = [self.product.law(stage) for stage in self._stages]
        hours = [law.hours(coldest, Edge.LATE) for law in laws if law is not None]
        wanted = _SHORTEST + timedelta(hours=_SPARE * min(max(hours, default=0.0), 1000.0))
        return min(wanted, _LONGEST)

    def _lane(self, after: timedelta) -> Lane:
        studio = self._studio
        timing = Timing(studio, self.start - _BEFORE, self.start + after)
        hands = Hands(Backdrop(studio, timing).working)
        piece = studio.pieces[0]
        planned = PlannedCoat(
            number=1,
            piece=piece.key,
            coat=piece.stack[0].key,
            start=self.start,
            end=self.end,
            spot=studio.spots[0].key,
            mix=1,
            person="",
            joint=Joint.BARE,
        )
        return Lane(PlannedStudio(studio, None, timing, hands), piece, [planned], [])

    @cached_property
    def ribbon(self) -> Ribbon:
        """The pour, with its window as one that a coat could stand in."""
        (bar,) = self.lane.ribbons
        if bar.doorway is not None:
            bar.doorway = replace(bar.doorway, used=True)
        return bar

    @cached_property
    def moments(self) -> tuple[StageMoment, ...]:
        """Every stage of the sheet but the cup's, in the order it is likely reached."""
        film = self.ribbon.film
        rows = [
            StageMoment(stage, *(film.reached(stage, edge) for edge in Edge))
            for stage in self._stages
        ]
        never = self.start + 10 * _LONGEST
        return tuple(sorted(rows, key=lambda row: row.likely or never))

    def same_as(self, other: TrialPour) -> bool:
        """Tell whether another pour goes just as this one."""
        mine, theirs = self._studio, other._studio
        return self.start == other.start and mine == theirs

    def celsius(self) -> tuple[float, float]:
        """The coldest and warmest likely temperature [°C] of the first day after the pour."""
        zone, first = self._studio.time_zone, self.start.timestamp()
        day = timedelta(days=1)
        history = self.place.history(zone, self.start - _BEFORE, self.start + day + _BEFORE)
        at = [history.celsius_at(first + 1800.0 * step) for step in range(49)]
        known = [celsius for celsius in at if celsius is not None]
        return min(known), max(known)


def evening_pour(studio: Studio, product: Product, now: datetime) -> TrialPour | None:
    """Pour today at 20:00 on the studio's wall clock in its first room; None without a room."""
    place = studio.resting_place or next(iter(studio.places), None)
    if place is None:
        return None
    today = now.astimezone(studio.time_zone).date()
    return TrialPour(studio, product, place, instant(studio.time_zone, today, time(20)))


def _alone(studio: Studio, product: Product, place: Place) -> Studio:
    """A studio of one place, one product and a piece with two coats of it."""
    limits = [_USUAL_FILM_MM, studio.settings.film_refuse_mm]
    limits += [] if product.depth_limit_mm is None else [product.depth_limit_mm]
    if product.kind is ProductKind.LEAF:
        # Leaf lies on something else; what its sheet says is read as for a film.
        product = replace(product, kind=ProductKind.SIZE)
    first = Coat(
        key="first",
        kind=CoatKind.FLOOD,
        product=product.key,
        film_mm=min(limits),
    )
    over = replace(first, key="over", joint=Joint.IN_WINDOW)
    piece = Piece(
        key="trial",
        name=product.name,
        shape=Rectangle(length_mm=200, width_mm=100),
        material=Material.TIMBER,
        body_mm=18,
        stack=(first, over),
    )
    spot = Spot(key="trial", name="trial", length_mm=300, width_mm=200, height_mm=100)
    return Studio(
        name=studio.name,
        zone=studio.zone,
        units=studio.units,
        settings=studio.settings,
        people=studio.people,
        places=(replace(place, spots=(spot,)),),
        products=(product,),
        pieces=(piece,),
    )
