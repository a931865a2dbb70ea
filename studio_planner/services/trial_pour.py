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
    from studio_planner.craft.places import Place
    from studio_planner.craft.products import Product

_BLOCK = timedelta(minutes=30)
_BEFORE = timedelta(hours=6)
_AFTER = timedelta(days=35)
_USUAL_FILM_MM = 0.5


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
        """The lane with its one ribbon."""
        studio = self._studio
        timing = Timing(studio, self.start - _BEFORE, self.start + _AFTER)
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
        bar = self.lane.bars[0]
        assert isinstance(bar, Ribbon)  # noqa: S101 - the lane was made with one coat
        if bar.doorway is not None:
            bar.doorway = replace(bar.doorway, used=True)
        return bar

    @cached_property
    def moments(self) -> tuple[StageMoment, ...]:
        """Every stage of the sheet but the cup's, in the order it is likely reached."""
        film = self.ribbon.film
        known = {point.stage for point in self.product.sheet} - {Stage.CUP_LIFE}
        rows = [
            StageMoment(stage, *(film.reached(stage, edge) for edge in Edge))
            for stage in Stage
            if stage in known
        ]
        never = self.start + 10 * _AFTER
        return tuple(sorted(rows, key=lambda row: row.likely or never))

    def celsius(self) -> tuple[float, float]:
        """The coldest and warmest likely temperature [°C] of the first day after the pour."""
        history = self.lane.timing.history(self.place.key)
        first = self.start.timestamp()
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
