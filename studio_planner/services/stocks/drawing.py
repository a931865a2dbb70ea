"""Which bottle each planned pour is weighed from, so that nothing is counted twice.

Pours take in order of time. A mix comes from one bottle where one has enough, a set stays with
the bottle that it began with, and a bottle that is kept for an order serves no other one.
What is open, then what ends first, is used first; what is past its day only if nothing else is
there, and it is marked.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from studio_planner.services.stocks.levels import in_order_of_use

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import date

    from studio_planner.craft.stock import Lot, LotPart
    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.levels import Level
    from studio_planner.services.stocks.using import Share, Use

_CRUMB = 1e-9
"""Grams that are nothing."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Draw:
    """What of a planned use comes from one bottle for one piece; `stale`: past its day then."""

    use: Use
    share: Share
    lot: str
    grams: float
    stale: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Short:
    """What of a planned use no bottle has."""

    use: Use
    grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """Where everything that is planned comes from; draws and shorts add up to the uses."""

    draws: tuple[Draw, ...]
    shorts: tuple[Short, ...]

    def reserved_g(self, lot: str, order: str | None = None) -> float:
        """The grams of a bottle that are reserved, in all or for one order."""
        return sum(
            draw.grams
            for draw in self.draws
            if draw.lot == lot and order in {None, draw.share.order}
        )

    def lots_of(self, piece: str, product: str, part: LotPart) -> tuple[str, ...]:
        """The bottles that a piece's coats of a product's part come from, first use first."""
        found = (
            draw.lot
            for draw in self.draws
            if draw.share.piece == piece
            if (draw.use.product, draw.use.part) == (product, part)
        )
        return tuple(dict.fromkeys(found))


def drawn(studio: Studio, uses: Iterable[Use], levels: Iterable[Level]) -> Drawing:
    """Say which bottle each use is weighed from, and what is short."""
    shelf = _Shelf(studio, {level.lot.key: level.left_g for level in levels})
    draws: list[Draw] = []
    shorts: list[Short] = []
    for use in sorted(uses, key=lambda one: (one.at, one.number, one.part)):
        for one in shelf.take(use):
            if isinstance(one, Draw):
                draws.append(one)
            else:
                shorts.append(one)
    return Drawing(draws=tuple(draws), shorts=tuple(shorts))


@dataclass
class _Shelf:
    """The bottles while they are being drawn from."""

    studio: Studio
    left: dict[str, float]
    began: dict[tuple[str, str, LotPart], str] = field(default_factory=dict)
    opened: dict[str, date] = field(default_factory=dict)

    def take(self, use: Use) -> Iterator[Draw | Short]:
        rest = use.grams
        mixed: list[str] = []
        for share in use.shares:
            wanted = share.grams
            while wanted > _CRUMB:
                lot = self._best(use, share, rest, mixed)
                if lot is None:
                    yield Short(use=use, grams=wanted)
                    rest -= wanted
                    break
                grams = min(wanted, self.left[lot.key])
                yield self._draw(use, share, lot, grams)
                mixed.append(lot.key)
                wanted -= grams
                rest -= grams

    def _draw(self, use: Use, share: Share, lot: Lot, grams: float) -> Draw:
        day = self._day(use)
        stale = self._stale(lot, day)
        self.left[lot.key] -= grams
        self.opened.setdefault(lot.key, day)
        self.began.setdefault((share.piece, use.product, use.part), lot.key)
        return Draw(use=use, share=share, lot=lot.key, grams=grams, stale=stale)

    def _best(self, use: Use, share: Share, rest: float, mixed: list[str]) -> Lot | None:
        day = self._day(use)
        begun = self.began.get((share.piece, use.product, use.part))
        days = self.studio.stock.opened_days

        def rank(lot: Lot) -> tuple[object, ...]:
            return (
                self._stale(lot, day),
                lot.kept_for != share.order if lot.kept_for else True,
                lot.key not in mixed,
                lot.key != begun,
                self.left[lot.key] < rest - _CRUMB,
                lot.key not in self.opened,
                in_order_of_use(lot, days),
            )

        there = (lot for lot in self.studio.lots if self._serves(lot, use, share, day))
        return min(there, key=rank, default=None)

    def _serves(self, lot: Lot, use: Use, share: Share, day: date) -> bool:
        return (
            (lot.product, lot.part) == (use.product, use.part)
            and lot.received <= day
            and lot.kept_for in {"", share.order}
            and self.left[lot.key] > _CRUMB
        )

    def _stale(self, lot: Lot, day: date) -> bool:
        ends = lot.good_until(self.studio.stock.opened_days, self.opened.get(lot.key))
        return ends is not None and ends < day

    def _day(self, use: Use) -> date:
        return use.at.astimezone(self.studio.time_zone).date()
