"""Stock: the bottles and pots a studio has, what is left in them, when a new one is needed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable

_MOST_GRAMS = 1_000_000


class LotPart(StrEnum):
    """What is in it: one of two parts, the whole of what is not mixed, or a pigment."""

    A = "A"
    B = "B"
    WHOLE = "whole"
    COLOURANT = "colourant"


@dataclass(frozen=True, slots=True, kw_only=True)
class LotCount:
    """A bottle put on the scale: `left_g` were in it at an instant, whatever was written."""

    at: datetime
    left_g: float
    words: str = ""

    def __post_init__(self) -> None:
        """Check the instant and the mass."""
        rules = Rulebook(translate("nouns", "count of a bottle"))
        rules.require(
            self.at.utcoffset() is not None,
            "at",
            translate("rules", "give the time with a zone."),
        )
        rules.between(self.left_g, 0, _MOST_GRAMS, "left_g")
        rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class Lot:
    """A bottle of one lot: its product and part, and the number that is on the label.

    In a pot of a colourant `product` is the key of a pigment, and no opening ends its days.
    `new_g` were in it when it was received, `price` is what the whole of it cost, in the
    studio's currency. What is left is what it held at the last of its `counts` (or when new)
    less what was weighed from it since. `best_before` is printed on the label; `opened` is the
    day of its first use. A bottle that is `kept_for` an order is used for no other one.
    """

    key: str
    product: str
    part: LotPart
    label: str
    received: date
    new_g: float
    price: float = 0.0
    opened: date | None = None
    best_before: date | None = None
    kept_for: str = ""
    note: str = ""
    counts: tuple[LotCount, ...] = ()

    def __post_init__(self) -> None:
        """Check names, masses and the order of its days."""
        rules = Rulebook(translate("nouns", "lot {label}").format(label=self.label or self.key))
        rules.named(self.key, "key")
        rules.named(self.product, "product")
        rules.named(self.label, "label")
        rules.between(self.new_g, 0.1, _MOST_GRAMS, "new_g")
        rules.between(self.price, 0, 1_000_000, "price")
        rules.require(
            self.opened is None or self.received <= self.opened,
            "opened",
            translate("rules", "it cannot be opened before it was received."),
        )
        rules.require(
            all(count.left_g <= self.new_g for count in self.counts),
            "counts",
            translate(
                "rules", "more cannot be left than {new_g:g} g, which were in it."
            ).format(new_g=self.new_g),
        )
        instants = [count.at.timestamp() for count in self.counts]
        rules.require(
            instants == sorted(set(instants)),
            "counts",
            translate("rules", "enter the counts in order of time, each at its own."),
        )
        rules.close()

    @property
    def price_per_g(self) -> float:
        """What a gram of it cost; 0.0 where nobody entered a price."""
        return self.price / self.new_g

    def left_g(self, weighed: Iterable[tuple[datetime, float]]) -> float:
        """Give the grams left after what was weighed from it, each at its instant.

        Less than nothing when more was weighed than it held: the bottle has to be counted.

        Examples
        --------
        >>> from datetime import UTC
        >>> noon = datetime(2026, 3, 2, 12, tzinfo=UTC)
        >>> later = noon + timedelta(hours=1)
        >>> bottle = Lot(key="a", product="p", part=LotPart.A, label="L1", new_g=1000,
        ...              received=date(2026, 3, 1), counts=(LotCount(at=noon, left_g=800),))
        >>> bottle.left_g([(noon, 150.0), (later, 50.0)])
        750.0
        """
        last = self.counts[-1] if self.counts else None
        held = self.new_g if last is None else last.left_g
        since = None if last is None else last.at
        return held - sum(grams for at, grams in weighed if since is None or at > since)

    def good_until(self, opened_days: int, opened: date | None = None) -> date | None:
        """Give the last day on which it is good; None when neither label nor opening tells.

        `opened_days` is how long an opened bottle keeps; `opened` stands in for the day of its
        first use where it has none yet.
        """
        first_use = None if self.part is LotPart.COLOURANT else self.opened or opened
        ends = [] if self.best_before is None else [self.best_before]
        if first_use is not None:
            ends.append(first_use + timedelta(days=opened_days))
        return min(ends, default=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class StockRules:
    """The studio's rules for its stock.

    `lead_days` are the days from an order to a supplier until its bottles can be used (common
    practice: they stand in the warm room for a day). `opened_days` is how long an opened bottle
    keeps where its label says nothing: 6 to 12 months (common practice), so the shorter.
    `reserve_g` of each part is to be left for what nobody planned; of colourants none is.
    """

    lead_days: int = 7
    opened_days: int = 180
    reserve_g: float = 0.0

    def __post_init__(self) -> None:
        """Check the ranges."""
        rules = Rulebook(translate("nouns", "rules for the stock"))
        rules.between(self.lead_days, 0, 365, "lead_days")
        rules.between(self.opened_days, 1, 3650, "opened_days")
        rules.between(self.reserve_g, 0, _MOST_GRAMS, "reserve_g")
        rules.close()
