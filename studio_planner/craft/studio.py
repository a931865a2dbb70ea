"""The studio: everything that a plan is made from, checked as a whole."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING, TypeVar

from studio_planner.craft.errors import InvalidEntry, Rulebook
from studio_planner.craft.hands import Person
from studio_planner.craft.local_time import zone_named
from studio_planner.craft.log import Gone, LogEntry, Poured, standing_of
from studio_planner.craft.log_rules import check_log
from studio_planner.craft.mixes import WeighedMix  # noqa: TC001 - the exchange format reads it
from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import Piece, StackPattern
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.pins import Pin  # noqa: TC001 - likewise
from studio_planner.craft.places import Place, PlaceKind, Spot
from studio_planner.craft.plans import Plan  # noqa: TC001 - likewise
from studio_planner.craft.prices import Prices
from studio_planner.craft.products import Product
from studio_planner.craft.reminders import Reminding
from studio_planner.craft.settings import Settings, Units
from studio_planner.craft.stack_rules import check_stacks
from studio_planner.craft.stock import Lot, StockRules
from studio_planner.craft.stock_rules import check_stock
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable
    from zoneinfo import ZoneInfo

_Keyed = TypeVar(
    "_Keyed", Person, Order, Piece, Place, Spot, Product, StackPattern, Lot, Pigment
)

_KEYED_FIELDS = (
    "places", "products", "lots", "pigments", "people", "patterns", "pieces", "orders",
)  # fmt: skip


@dataclass(frozen=True, kw_only=True)
class Studio:
    """A studio: places, products, hands, pieces, orders, what happened, and the kept plan.

    `poured` is what is on the pieces now; `log` all that was written down, `mixes` what was
    weighed, corrected or not, and `gone` what was taken out but is spoken of there.
    `pins` are pours that the maker has put at a time; `plan_outdated` says that something was
    changed since the plan was made.

    The first place of kind *room* is where pieces rest when they need no spot. No place, piece
    or person is needed to open an empty studio; planning says what is missing.
    """

    name: str
    zone: str = "UTC"
    currency: str = "EUR"
    units: Units = field(default_factory=Units)
    settings: Settings = field(default_factory=Settings)
    reminding: Reminding = field(default_factory=Reminding)
    stock: StockRules = field(default_factory=StockRules)
    prices: Prices = field(default_factory=Prices)
    places: tuple[Place, ...] = ()
    products: tuple[Product, ...] = ()
    lots: tuple[Lot, ...] = ()
    pigments: tuple[Pigment, ...] = ()
    people: tuple[Person, ...] = ()
    patterns: tuple[StackPattern, ...] = ()
    pieces: tuple[Piece, ...] = ()
    orders: tuple[Order, ...] = ()
    poured: tuple[Poured, ...] = ()
    log: tuple[LogEntry, ...] = ()
    mixes: tuple[WeighedMix, ...] = ()
    gone: tuple[Gone, ...] = ()
    pins: tuple[Pin, ...] = ()
    plan_outdated: bool = False
    plan: Plan | None = None

    def __post_init__(self) -> None:
        """Check every reference between the parts; report all that is broken."""
        rules = Rulebook(translate("nouns", "studio {name}").format(name=self.name))
        rules.named(self.name)
        self._check_zone(rules)
        letters = self.currency.isascii() and self.currency.isalpha()
        money = letters and len(self.currency) == 3  # noqa: PLR2004 - ISO 4217
        rules.require(money, "currency", translate("rules", "use three letters, such as EUR."))
        for noun in _KEYED_FIELDS:
            _check_unique(noun, getattr(self, noun), rules)
        _check_unique("spots", self.spots, rules)
        check_stacks(self, rules)
        self._check_orders(rules)
        self._check_poured(rules)
        self._check_pins(rules)
        check_log(self, rules)
        check_stock(self, rules)
        rules.close()

    def _check_zone(self, rules: Rulebook) -> None:
        try:
            zone_named(self.zone)
        except InvalidEntry as error:
            for rule in error.broken:
                rules.require(False, rule.field, rule.sentence)  # noqa: FBT003

    def _check_pins(self, rules: Rulebook) -> None:
        pinned: set[tuple[str, str]] = set()
        for pin in self.pins:
            piece = self._piece_by_key.get(pin.piece)
            known = piece is not None and any(coat.key == pin.coat for coat in piece.stack)
            where = f"pin of {pin.piece}, {pin.coat}"
            rules.require(known, where, translate("rules", "there is no such coat."))
            rules.require(
                (pin.piece, pin.coat) not in pinned,
                where,
                translate("rules", "it is pinned twice."),
            )
            pinned.add((pin.piece, pin.coat))

    def _check_orders(self, rules: Rulebook) -> None:
        owners: dict[str, Order] = {}
        for order in self.orders:
            for key in order.pieces:
                field = f"order {order.name}, pieces"
                rules.require(
                    key in self._piece_by_key,
                    field,
                    translate("rules", "there is no piece “{key}”.").format(key=key),
                )
                taken = owners.setdefault(key, order)
                rules.require(
                    taken is order,
                    field,
                    translate("rules", "piece “{key}” is already promised to {taken}.").format(
                        key=key, taken=taken.name
                    ),
                )

    def _check_poured(self, rules: Rulebook) -> None:
        done: dict[str, list[Poured]] = {}
        for pour in self.poured:
            done.setdefault(pour.piece, []).append(pour)
            rules.require(
                pour.spot in self._spot_by_key,
                f"pour of {pour.piece}, {pour.coat}",
                translate("rules", "there is no spot “{spot}”.").format(spot=pour.spot),
            )
        for key, pours in done.items():
            piece = self._piece_by_key.get(key)
            pours.sort(key=lambda pour: pour.start.timestamp())
            names = [pour.coat for pour in pours]
            expected = [coat.key for coat in piece.stack[: len(pours)]] if piece else []
            rules.require(
                names == expected,
                f"pours of {key}",
                translate("rules", "poured {names}, but the stack is {what}.").format(
                    names=", ".join(names), what=", ".join(expected) or "-"
                ),
            )

    @cached_property
    def time_zone(self) -> ZoneInfo:
        """The studio's time zone."""
        return zone_named(self.zone)

    @cached_property
    def spots(self) -> tuple[Spot, ...]:
        """All spots of all places, in order."""
        return tuple(spot for place in self.places for spot in place.spots)

    @cached_property
    def standing(self) -> tuple[LogEntry, ...]:
        """What the log says as it stands, in the order in which it happened."""
        return standing_of(self.log)

    @cached_property
    def standing_mixes(self) -> tuple[WeighedMix, ...]:
        """The mixes as they stand, none that was corrected or withdrawn."""
        entries = {entry.number for entry in self.standing}
        return tuple(mix for mix in self.mixes if mix.entry in entries)

    @cached_property
    def poured_keys(self) -> frozenset[tuple[str, str]]:
        """Piece and coat of everything that is on the pieces now."""
        return frozenset((pour.piece, pour.coat) for pour in self.poured)

    @cached_property
    def _piece_by_key(self) -> dict[str, Piece]:
        return {piece.key: piece for piece in self.pieces}

    @cached_property
    def _product_by_key(self) -> dict[str, Product]:
        return {product.key: product for product in self.products}

    @cached_property
    def _spot_by_key(self) -> dict[str, Spot]:
        return {spot.key: spot for spot in self.spots}

    @cached_property
    def _place_by_spot(self) -> dict[str, Place]:
        return {spot.key: place for place in self.places for spot in place.spots}

    @cached_property
    def _order_by_piece(self) -> dict[str, Order]:
        return {key: order for order in self.orders for key in order.pieces}

    def piece(self, key: str) -> Piece:
        """The piece called `key`; KeyError when there is none."""
        return self._piece_by_key[key]

    def product(self, key: str) -> Product:
        """The product called `key`; KeyError when there is none."""
        return self._product_by_key[key]

    def spot(self, key: str) -> Spot:
        """The spot called `key`; KeyError when there is none."""
        return self._spot_by_key[key]

    def place_of_spot(self, spot: str) -> Place:
        """The place that a spot belongs to; KeyError when there is no such spot."""
        return self._place_by_spot[spot]

    def pinned(self, piece: str, coat: str) -> Pin | None:
        """The pin of a coat, or None."""
        return next((p for p in self.pins if (p.piece, p.coat) == (piece, coat)), None)

    def order_of(self, piece: str) -> Order | None:
        """The order a piece is promised to, or None."""
        return self._order_by_piece.get(piece)

    @property
    def resting_place(self) -> Place | None:
        """Where a piece is when it needs no spot: the first room."""
        return next((place for place in self.places if place.kind is PlaceKind.ROOM), None)

    def pours_of(self, piece: str) -> tuple[Poured, ...]:
        """What has been poured of a piece, first coat first."""
        pours = (pour for pour in self.poured if pour.piece == piece)
        return tuple(sorted(pours, key=lambda pour: pour.start.timestamp()))


def _check_unique(noun: str, things: Iterable[_Keyed], rules: Rulebook) -> None:
    seen: set[str] = set()
    for thing in things:
        rules.require(
            thing.key not in seen,
            noun,
            translate("rules", "the key “{key}” is used twice.").format(key=thing.key),
        )
        seen.add(thing.key)
