"""Stage times on whole seconds, rounded to the safe side and remembered.

The clocks of the craft are exact; a plan asks them the same questions over and over.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from typing_extensions import override

if TYPE_CHECKING:
    from typing import Protocol

    class Clock(Protocol):
        """What both a clock in one place and one of a moving piece can answer."""

        def reached(self, start: float, /) -> float | None:
            """When the stage is reached from a start."""

        def start_for(self, by: float, /) -> float | None:
            """The latest start that has reached it by then."""


ALWAYS = 1 << 40
"""Later than every record: the answer of a *not after* stage that never comes."""


class NotBefore:
    """When a *not before* stage is reached, a second late rather than early."""

    def __init__(self, clock: Clock) -> None:
        """Wrap the clock."""
        self._clock = clock
        self._reached: dict[int, int | None] = {}
        self._latest: dict[int, int | None] = {}

    def at(self, spread: int) -> int | None:
        """The second at which it is reached; None when never within the record."""
        if spread not in self._reached:
            exact = self._clock.reached(spread)
            self._reached[spread] = None if exact is None else int(exact) + 2
        return self._reached[spread]

    def latest(self, by: int) -> int | None:
        """The latest spread second that has reached it by `by`; None when there is none."""
        if by not in self._latest:
            exact = self._clock.start_for(by - 2)
            self._latest[by] = None if exact is None else int(exact)
        return self._latest[by]


class AtOnce(NotBefore):
    """A stage that is there as soon as the block ends: leaf has no film to wait for."""

    def __init__(self) -> None:
        """Need no clock."""

    @override
    def at(self, spread: int) -> int | None:
        """The same second."""
        return spread

    @override
    def latest(self, by: int) -> int | None:
        """The same second."""
        return by


class NotAfter:
    """When a *not after* stage passes, a second early rather than late."""

    def __init__(self, clock: Clock) -> None:
        """Wrap the clock."""
        self._clock = clock
        self._reached: dict[int, int] = {}

    def at(self, mixed: int) -> int:
        """The second at which it passes; ALWAYS when not within the record."""
        if mixed not in self._reached:
            exact = self._clock.reached(mixed)
            self._reached[mixed] = ALWAYS if exact is None else int(exact) - 2
        return self._reached[mixed]

    def earliest(self, after: int) -> int | None:
        """The earliest mixed second that has not passed before `after`; None when all serve."""
        exact = self._clock.start_for(after + 3)
        return None if exact is None else int(exact) + 1
