"""The numbers of the mixes that are on a piece, for paper that goes with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.log import Poured
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio


def mix_numbers_of(studio: Studio, piece: str) -> tuple[int, ...]:
    """The numbers under which the coats of a piece (a key) were weighed, first coat first.

    What was poured without a mix being written down has none.
    """
    return tuple(
        dict.fromkeys(
            number for pour in studio.pours_of(piece) for number in _of_pour(studio, pour)
        )
    )


def mix_numbers(studio: Studio, coats: Iterable[PlannedCoat]) -> tuple[int, ...]:
    """The numbers under which coats of a plan that are poured were weighed."""
    wanted = {(one.piece, one.coat) for one in coats}
    return tuple(
        dict.fromkeys(
            number
            for pour in studio.poured
            if (pour.piece, pour.coat) in wanted
            for number in _of_pour(studio, pour)
        )
    )


def _of_pour(studio: Studio, pour: Poured) -> list[int]:
    own = [
        mix.batch
        for mix in studio.standing_mixes
        if any((one.piece, one.coat) == (pour.piece, pour.coat) for one in mix.coats)
    ]
    return own or ([] if pour.batch is None else [pour.batch])
