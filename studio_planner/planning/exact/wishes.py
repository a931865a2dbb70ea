"""Which foreseen plan is looked for next, and how often: less when it was in vain."""

from __future__ import annotations

from threading import Lock
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from random import Random

    from studio_planner.planning.exact.best_so_far import BestSoFar
    from studio_planner.planning.exact.foreseen import Foreseen
    from studio_planner.planning.exact.part import Standing

_OFTEN, _LEAST_OFTEN = 0.7, 0.1
"""How often another foreseen plan is looked for after the first ones."""

_TIRED, _IN_VAIN = 0.85, 0.4
"""How much less often after one that did not gain, and when there was none."""


class Wishes:
    """Foreseen plans to be near to; one thread looks for the next while others solve."""

    def __init__(self, foreseen: Foreseen, random: Random, *, again: bool) -> None:
        """Draw from a generator; `again` where there is a plan that is kept."""
        self._foreseen = foreseen
        self._random = random
        # What has moved from a kept plan may find a place with few moves: that comes first.
        self._waits = again
        self._looking = Lock()
        self._often = _OFTEN
        self._missed: Standing | None = None
        self._loosened: Standing | None = None

    @property
    def opening(self) -> bool:
        """Whether there are still some to be tried before all else."""
        return self._foreseen.opening

    def drawn(self, best: BestSoFar) -> Standing | None:
        """One that is less late than the best plan so far; None when it is not their turn."""
        if self._missed is not None:
            # What is nowhere so near may still be better than what stands.
            self._loosened, self._missed = self._missed, None
            return self._loosened
        waits, self._waits = self._waits, False
        if waits or not best.may_be_less_late:
            return None
        if not self.opening and self._random.random() >= self._often:
            return None
        return self._looked_for(best)

    def _looked_for(self, best: BestSoFar) -> Standing | None:
        if not self._looking.acquire(blocking=False):
            return None
        try:
            wish = self._foreseen.less_late(best, self._random)
        finally:
            self._looking.release()
        if wish is None:
            self._often = max(_LEAST_OFTEN, _IN_VAIN * self._often)
        return wish

    def is_loose(self, wish: Standing) -> bool:
        """Whether anything near a wish will do that is better than what stands."""
        return wish is self._loosened

    def learn(self, *, gained: bool, missed: Standing | None = None) -> None:
        """Hear whether a wish gained; one that was `missed` comes once more, as a loose one."""
        self._often = _OFTEN if gained else max(_LEAST_OFTEN, _TIRED * self._often)
        if missed is not None and missed is not self._loosened:
            self._missed = missed
