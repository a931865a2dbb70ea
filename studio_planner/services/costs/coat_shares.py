"""What of its mixes each coat of a piece has to bear: grams, colourants, mixes, minutes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.services.weighing import amounts_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.stock import LotPart
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatShare:
    """What one coat of a whole piece or set takes of the mixes that it is poured from.

    `grams` are those of each part, with its share of what stays in the cups; `colourants` those
    of each colourant by its name; `mixes` is how much of a mix it bears, `set_up_minutes` its
    share of their set-ups.
    """

    product: str
    grams: Mapping[LotPart, float]
    colourants: Mapping[str, float]
    mixes: float
    set_up_minutes: float


def shares_of(
    studio: Studio, plan: Plan | None, piece: Piece, only: frozenset[str] | None = None
) -> tuple[CoatShare, ...]:
    """What the coats of a piece bear, first coat first.

    A planned coat bears its share of the mix that it is planned in; one that is not planned is
    taken as a mix by itself. With `only` its mixes are shared with these pieces and no others.
    """
    return tuple(
        _share(studio, _together(studio, plan, piece, coat, only), piece, coat)
        for coat in piece.stack
    )


def _share(
    studio: Studio, together: list[tuple[Piece, Coat]], piece: Piece, coat: Coat
) -> CoatShare:
    amounts = amounts_of(studio, together)
    position = next(i for i, one in enumerate(together) if one[0].key == piece.key)
    whole = sum(amounts.spread_grams)
    share = amounts.spread_grams[position] / whole if whole > 0.0 else 1.0 / len(together)
    set_up = max(one.setup_minutes for _, one in together) * amounts.parts
    return CoatShare(
        product=coat.product,
        grams={part: grams * share for part, grams in amounts.by_part},
        colourants=_added_up((words, share * grams) for words, grams in amounts.colourants),
        mixes=amounts.parts * share,
        set_up_minutes=set_up * share,
    )


def _together(
    studio: Studio, plan: Plan | None, piece: Piece, coat: Coat, only: frozenset[str] | None
) -> list[tuple[Piece, Coat]]:
    rows = () if plan is None else plan.coats
    own = next((r for r in rows if (r.piece, r.coat) == (piece.key, coat.key)), None)
    if own is None:
        return [(piece, coat)]
    shared = [r for r in rows if r.mix == own.mix and (only is None or r.piece in only)]
    found = [(studio.piece(r.piece), r.coat) for r in shared]
    return [(one, one.coat(key)) for one, key in found]


def _added_up(weighed: Iterable[tuple[str, float]]) -> dict[str, float]:
    found: dict[str, float] = {}
    for words, grams in weighed:
        found[words] = found.get(words, 0.0) + grams
    return found
