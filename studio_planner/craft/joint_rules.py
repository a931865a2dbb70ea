"""Coats that can never meet as they are entered, whatever time there is.

Leaf sticks to a size in its tack, or to a two-part mix while that is tacky; wet in wet only
mixes meet; and on a mix that has cured nothing bonds but what goes on in its window, or once it
is scuffed, but for size, which is put on a cured film (all common practice). On a bare face the
joint is not asked.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_said
from studio_planner.craft.pieces import Joint, coat_below
from studio_planner.craft.products import ProductKind
from studio_planner.craft.saying import Saying, saying

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio

WISHED = (Joint.IN_WINDOW, Joint.WET_IN_WET, Joint.ON_DRY)
"""The joints that a maker may ask for; the plan finds bare and scuffed."""

_MIX = ProductKind.TWO_PART


@dataclass(frozen=True, slots=True)
class Clash:
    """A coat that cannot lie where it does: its key, the field to change, and what to do."""

    coat: str
    field: str
    sentence: Saying


def clashes(studio: Studio, piece: Piece) -> Iterator[Clash]:
    """What of a piece is still to come and can never be, first coat first."""
    for index in range(len(studio.pours_of(piece.key)), len(piece.stack)):
        clash = clash_at(studio, piece.stack, index)
        if clash is not None:
            yield clash


def possible_joints(
    studio: Studio, stack: Sequence[Coat], index: int
) -> tuple[Joint, ...] | None:
    """The joints with which a coat can meet the one below it; None on a bare face."""
    below = coat_below(stack, index)
    if below is None:
        return None
    ways = (replace(stack[index], joint=joint) for joint in WISHED)
    return tuple(way.joint for way in ways if not _clash(studio, way, stack[below]))


def clash_at(studio: Studio, stack: Sequence[Coat], index: int) -> Clash | None:
    """Why a coat can never meet the one below it as it is entered; None where it can."""
    below = coat_below(stack, index)
    return None if below is None else _clash(studio, stack[index], stack[below])


def _clash(studio: Studio, coat: Coat, under: Coat) -> Clash | None:
    kind, lower = (studio.product(one.product).kind for one in (coat, under))
    if kind is ProductKind.LEAF:
        return _of_leaf(coat, under, lower)
    if coat.joint is Joint.WET_IN_WET:
        return _of_wet(coat, under, kind, lower)
    if coat.joint is Joint.ON_DRY and lower is _MIX and kind is not ProductKind.SIZE:
        words = saying(
            "stacks",
            "the {coat} below cures, and what lies on it bonds only in its window or once it "
            "is scuffed; choose in the window.",
            coat=kind_said(under.kind),
        )
        return Clash(coat.key, "joint", words)
    return None


def _of_leaf(coat: Coat, under: Coat, lower: ProductKind) -> Clash | None:
    if coat.joint is Joint.WET_IN_WET:
        words = saying(
            "stacks",
            "leaf laid on a wet coat sinks; let it come to tack: choose in the window.",
        )
        return Clash(coat.key, "joint", words)
    if lower not in {_MIX, ProductKind.SIZE}:
        words = saying(
            "stacks",
            "leaf does not stick to the {coat}; put a size between them.",
            coat=kind_said(under.kind),
        )
        return Clash(coat.key, "kind", words)
    if lower is _MIX and coat.joint is Joint.ON_DRY:
        words = saying(
            "stacks",
            "a dry {coat} has no tack for leaf; choose in the window, or put a size on.",
            coat=kind_said(under.kind),
        )
        return Clash(coat.key, "joint", words)
    return None


def _of_wet(coat: Coat, under: Coat, kind: ProductKind, lower: ProductKind) -> Clash | None:
    if lower is not _MIX:
        words = saying(
            "stacks",
            "only two-part mixes meet wet in wet, and the {coat} below is none; choose on dry.",
            coat=kind_said(under.kind),
        )
        return Clash(coat.key, "joint", words)
    if kind is not _MIX:
        words = saying(
            "stacks",
            "only two-part mixes meet wet in wet, and the {coat} is none; choose in the "
            "window.",
            coat=kind_said(coat.kind),
        )
        return Clash(coat.key, "joint", words)
    return None
