"""What is poured of pieces that have no place in a plan: it keeps its spots all the same."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import stays_along
from studio_planner.craft.products import ProductKind
from studio_planner.planning.problem import handle_stage

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator, Sequence

    from studio_planner.craft.log import Poured
    from studio_planner.craft.products import Product
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.exact.lanes import Lane, Spans


def placed_pieces(lanes: Sequence[Lane], free: Collection[int] = ()) -> set[str]:
    """The keys of the pieces of lanes that are placed or free to be."""
    return {
        piece.key
        for at, lane in enumerate(lanes)
        if at in free or lane.placed is not None
        for piece in lane.chain.pieces
    }


def held_spots(frame: Frame, there: Collection[str]) -> Iterator[tuple[str, int, int]]:
    """Spots that coats of all pieces but those `there` hold, from when to when [s]."""
    for pour, product, place in _pours(frame, there):
        stays = product.kind is ProductKind.SIZE and handle_stage(product) is None
        handle = frame.means.edges.handle(product, place)
        handled = None if stays else handle.at(int(pour.end.timestamp()))
        until = frame.means.end if handled is None else handled
        follows = _next_start(frame.studio.pours_of(pour.piece), pour)
        yield from stays_along(frame.means.legs(pour), min(until, follows or until))


def _next_start(pours: Sequence[Poured], pour: Poured) -> int | None:
    """When the next pour is put on one [s], which then holds its own spot."""
    later = (one.start for one in pours if one.start > pour.start)
    return next((int(start.timestamp()) for start in later), None)


def wet_lying(frame: Frame, there: Collection[str]) -> Spans:
    """From when to when [s] the same coats must not get dust."""
    found = []
    for pour, product, place in _pours(frame, there):
        clock = frame.means.edges.cover(product, place)
        if clock is not None:
            covered = clock.at(int(pour.end.timestamp()))
            until = frame.means.end if covered is None else covered
            found.append((int(pour.start.timestamp()), until))
    return found


def _pours(frame: Frame, there: Collection[str]) -> Iterable[tuple[Poured, Product, str]]:
    studio = frame.studio
    for pour in studio.poured:
        if pour.piece not in there:
            product = studio.product(studio.piece(pour.piece).coat(pour.coat).product)
            yield pour, product, frame.means.place_of(pour)
