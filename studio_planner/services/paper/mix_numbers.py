"""The numbers of the mixes that are on a piece, for paper that goes with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio


def mix_numbers_of(studio: Studio, piece: str) -> tuple[int, ...]:
    """The numbers under which the coats of a piece (a key) were weighed, first coat first.

    What was poured without a mix being written down has none.
    """
    numbers = []
    for pour in studio.pours_of(piece):
        own = [
            mix.batch
            for mix in studio.standing_mixes
            if any((one.piece, one.coat) == (pour.piece, pour.coat) for one in mix.coats)
        ]
        numbers += own or ([] if pour.batch is None else [pour.batch])
    return tuple(dict.fromkeys(numbers))
