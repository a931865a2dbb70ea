"""The numbers of the mixes that are on a piece, for paper that goes with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.log import Poured
    from studio_planner.craft.studio import Studio


def mix_numbers(studio: Studio, pours: Iterable[Poured]) -> tuple[int, ...]:
    """The numbers under which pours were weighed, each once, in the order of the pours.

    What was poured without a mix being written down has none.
    """
    return tuple(dict.fromkeys(number for pour in pours for number in _of_pour(studio, pour)))


def _of_pour(studio: Studio, pour: Poured) -> list[int]:
    own = [
        mix.batch
        for mix in studio.standing_mixes
        if any((one.piece, one.coat) == (pour.piece, pour.coat) for one in mix.coats)
    ]
    return own or ([] if pour.batch is None else [pour.batch])
