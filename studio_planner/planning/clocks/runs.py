"""The highest of so many values in a row."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence


class Runs:
    """The highest in runs of a sequence, for any length of a run.

    Any run is two that overlap, each as long as a power of two; those are looked for once.
    """

    def __init__(self, values: Sequence[float]) -> None:
        """Look at these values."""
        self._highest = [list(values)]

    def highest(self, length: int, count: int) -> list[float]:
        """The highest of `length` values in a row, from the first `count` of them on.

        Fewer where the values end before.
        """
        power = length.bit_length() - 1
        while len(self._highest) <= power:
            last = self._highest[-1]
            self._highest.append(list(map(max, last, last[1 << (len(self._highest) - 1) :])))
        runs, apart = self._highest[power], length - (1 << power)
        return list(map(max, runs[:count], runs[apart : apart + count]))
