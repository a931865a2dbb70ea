"""Sets from one lot: which would not match, and whether pieces can all come from one bottle."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.services.stocks.drawing import drawn

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.stock import Lot, LotPart
    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.drawing import Drawing
    from studio_planner.services.stocks.levels import Level
    from studio_planner.services.stocks.using import Use

_CRUMB = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class OddSet:
    """Pieces that belong together and would come from several bottles of a product's part."""

    pieces: tuple[str, ...]
    product: str
    part: LotPart
    lots: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class OneLot:
    """Whether pieces can all come from one bottle of a product's part.

    `lot` is the bottle that has enough for all of them after what others take before and
    after; None when none has.
    """

    product: str
    part: LotPart
    needed_g: float
    lot: str | None


def odd_sets(studio: Studio, drawing: Drawing) -> tuple[OddSet, ...]:
    """Every set whose single pieces would come from more than one bottle, in order of pieces.

    A set is a piece of which there are several, that stay together.
    """
    found = []
    for piece in studio.pieces:
        if piece.count > 1:
            keys = dict.fromkeys(
                (draw.use.product, draw.use.part)
                for draw in drawing.draws
                if draw.share.piece == piece.key
            )
            for product, part in keys:
                lots = drawing.lots_of(piece.key, product, part)
                if len(lots) > 1:
                    found.append(
                        OddSet(pieces=(piece.key,), product=product, part=part, lots=lots)
                    )
    return tuple(found)


def one_lot(
    studio: Studio, uses: Iterable[Use], levels: Iterable[Level], pieces: Iterable[str]
) -> tuple[OneLot, ...]:
    """Whether these pieces can all come from one bottle, for each product and part they take.

    What the other pieces of the plan take is taken out first.
    """
    wanted = frozenset(pieces)
    planned, stock = tuple(uses), tuple(levels)
    others = drawn(studio, _without(planned, wanted), stock)
    left = {level.lot.key: level.left_g - others.reserved_g(level.lot.key) for level in stock}
    keys = dict.fromkeys(
        (use.product, use.part)
        for use in planned
        if any(share.piece in wanted for share in use.shares)
    )
    return tuple(_one_lot(studio, planned, wanted, left, key) for key in keys)


def _without(uses: tuple[Use, ...], pieces: frozenset[str]) -> list[Use]:
    found = []
    for use in uses:
        shares = tuple(share for share in use.shares if share.piece not in pieces)
        if shares:
            found.append(replace(use, shares=shares, grams=sum(s.grams for s in shares)))
    return found


def _one_lot(
    studio: Studio,
    uses: tuple[Use, ...],
    pieces: frozenset[str],
    left: dict[str, float],
    key: tuple[str, LotPart],
) -> OneLot:
    shares = [
        share
        for use in uses
        if (use.product, use.part) == key
        for share in use.shares
        if share.piece in pieces
    ]
    needed = sum(share.grams for share in shares)
    orders = {share.order for share in shares}
    fullest = max(
        (lot for lot in studio.lots if (lot.product, lot.part) == key if _serves(lot, orders)),
        key=lambda lot: left[lot.key],
        default=None,
    )
    held = 0.0 if fullest is None else left[fullest.key]
    enough = fullest is not None and held >= needed - _CRUMB
    return OneLot(
        product=key[0],
        part=key[1],
        needed_g=needed,
        lot=fullest.key if fullest is not None and enough else None,
    )


def _serves(lot: Lot, orders: set[str]) -> bool:
    return not lot.kept_for or orders == {lot.kept_for}
