"""Orders and markets: who was promised what, and what *ready* means for it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.local_time import instant
from studio_planner.craft.tongue import translate
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo


MOST_WEIGHT = 1000
"""More than this the lateness of one order never counts, where 1 is usual."""


class Promise(StrEnum):
    """What was promised for the date."""

    ARRIVE_BY = "arrive by"
    SHIP_BY = "ship by"
    MARKET = "market"


class Gate(StrEnum):
    """How far the cure must be before a piece may go."""

    DISPLAY = "display"
    PACK = "pack"
    FULL = "full cure"

    @property
    def stage(self) -> Stage:
        """The stage that opens the gate (common practice; the data sheet decides)."""
        return {
            Gate.DISPLAY: Stage.HANDLE,
            Gate.PACK: Stage.PRINT_FREE,
            Gate.FULL: Stage.FULL_CURE,
        }[self]


@dataclass(frozen=True, slots=True, kw_only=True)
class Courier:
    """How parcels go: weekdays (0 Monday), the cut-off on those days, and days under way.

    Days under way are counted in courier days: shipped on a Friday with one day is Monday.
    """

    days: frozenset[int] = frozenset({0, 1, 2, 3, 4})
    cut_off: time = time(16, 0)
    transit_days: int = 2

    def __post_init__(self) -> None:
        """Check the weekdays and the days under way."""
        rules = Rulebook(translate("nouns", "courier"))
        rules.require(
            bool(self.days) and self.days <= set(range(7)),
            "days",
            translate("rules", "name at least one day, 0 (Monday) to 6 (Sunday)."),
        )
        rules.wall_clock(self.cut_off, "cut_off")
        rules.between(self.transit_days, 0, 60, "transit_days")
        rules.close()

    def next_pick_up(self, zone: ZoneInfo, after: datetime) -> datetime:
        """The first cut-off that is not before `after`."""
        day = after.astimezone(zone).date()
        while True:
            pick_up = instant(zone, day, self.cut_off)
            if day.weekday() in self.days and pick_up >= after:
                return pick_up
            day += timedelta(days=1)

    def arrives(self, shipped: date) -> date:
        """The date on which a parcel shipped on `shipped` arrives."""
        day, left = shipped, self.transit_days
        while left or day.weekday() not in self.days:
            day += timedelta(days=1)
            if day.weekday() in self.days:
                left = max(0, left - 1)
        return day

    def last_ship_day(self, arrive_by: date) -> date:
        """The last courier day on which a parcel can go and still arrive by `arrive_by`."""
        day = arrive_by
        while day.weekday() not in self.days or self.arrives(day) > arrive_by:
            day -= timedelta(days=1)
        return day


class ContactClaim(StrEnum):
    """What may be said of an order and food: nothing, unless a declaration is on file."""

    DECORATIVE = "decorative, not for food"
    DECLARED = "declaration on file"
    OWN_USE = "customer's own use, no claim"


@dataclass(frozen=True, slots=True, kw_only=True)
class Order:
    """An order or a market: its pieces, and the promise that was given.

    `weight` says how much its lateness counts against others. `packing_minutes` are attended,
    for each piece or set. A market needs `opens`, the time it opens on `promised`. `price` is
    what was agreed, in the studio's currency; None where nothing was. `contact` is what may be
    said of it and food.
    """

    key: str
    name: str
    pieces: tuple[str, ...]
    promised: date
    promise: Promise = Promise.SHIP_BY
    gate: Gate = Gate.PACK
    courier: Courier = Courier()
    packing_minutes: int = 15
    opens: time = time(9, 0)
    weight: float = 1.0
    note: str = ""
    price: float | None = None
    contact: ContactClaim = ContactClaim.DECORATIVE

    def __post_init__(self) -> None:
        """Check names, pieces and figures."""
        rules = Rulebook(translate("nouns", "order {name}").format(name=self.name or self.key))
        rules.named(self.key, "key")
        rules.named(self.name)
        rules.require(
            bool(self.pieces),
            "pieces",
            translate("rules", "an order needs at least one piece."),
        )
        rules.require(
            len(set(self.pieces)) == len(self.pieces),
            "pieces",
            translate("rules", "a piece is named twice."),
        )
        rules.between(self.packing_minutes, 1, 24 * 60, "packing_minutes")
        rules.wall_clock(self.opens, "opens")
        rules.between(self.weight, 0.01, MOST_WEIGHT, "weight")
        if self.price is not None:
            rules.between(self.price, 0, 1_000_000, "price")
        rules.close()

    def due(self, zone: ZoneInfo) -> datetime:
        """The UTC instant by which it must be shipped, or stand at the market."""
        if self.promise is Promise.MARKET:
            return instant(zone, self.promised, self.opens)
        day = self.promised
        if self.promise is Promise.ARRIVE_BY:
            day = self.courier.last_ship_day(self.promised)
        else:
            while day.weekday() not in self.courier.days:
                day -= timedelta(days=1)
        return instant(zone, day, self.courier.cut_off)

    def leaves(self, zone: ZoneInfo, packed: datetime) -> datetime:
        """The UTC instant at which it leaves when the last piece is packed at `packed`."""
        if self.promise is Promise.MARKET:
            return packed
        return self.courier.next_pick_up(zone, packed)
