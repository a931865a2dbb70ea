"""What may turn out otherwise than planned, and by how much."""

from __future__ import annotations

import math
from dataclasses import dataclass

NORMAL_90 = 1.6448536269514722
"""How many standard deviations either way hold 90 % of a normal distribution."""

_NORMAL_BELOW_90 = 1.2815515655446004
"""How many standard deviations above the middle 90 % of a normal distribution end."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Chances:
    """Spreads of a rehearsal. Without a source unless one is named: common practice.

    Attributes
    ----------
    room, laws, maker
        Factors on the three kinds of uncertainty; 1 is as stated, 0 leaves one out.
    hourly_correlation
        How much of a room's error is left an hour later where no log tells: 0.96 is a day until
        it has faded to a third, as weather does.
    prior_errors
        How many independent logged errors of a room weigh as much as its stated band.
    log_days
        How far back the log of a room is looked at [d]: other seasons err otherwise.
    together
        Share of the variance of a law that all stages of a product have in common (the age of
        the bottles, the ratio really weighed, the film); the rest is each stage's own.
    late_middle_minutes, late_90_minutes
        By how much a maker starts late: half the time, and nine times in ten, at the most.
        Log-normal: seldom very late, never early.
    slowest
        A block takes between as long as planned and so many times as long, all alike.
    """

    room: float = 1.0
    laws: float = 1.0
    maker: float = 1.0
    hourly_correlation: float = 0.96
    prior_errors: float = 5.0
    log_days: float = 60.0
    together: float = 0.7
    late_middle_minutes: float = 5.0
    late_90_minutes: float = 20.0
    slowest: float = 1.2

    @property
    def late_spread(self) -> float:
        """Standard deviation of ln(minutes late).

        Examples
        --------
        >>> round(Chances().late_spread, 3)
        1.082
        """
        return math.log(self.late_90_minutes / self.late_middle_minutes) / _NORMAL_BELOW_90


NOTHING_HAPPENS = Chances(room=0.0, laws=0.0, maker=0.0)
"""Everything goes as is likely."""
