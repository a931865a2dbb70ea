"""Which foreseen plan is looked for next, and how often: less when it was in vain."""

from __future__ import annotations

from dataclasses import dataclass, replace
from threading import Lock
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable
    from random import Random

    from studio_planner.planning.exact.best_so_far import BestSoFar
    from studio_planner.planning.exact.foreseen import Foreseen, Wish

    _Look = Callable[[BestSoFar, Random], Wish | None]

_OFTEN, _LEAST_OFTEN = 0.7, 0.1
"""How often a plan that is foreseen anew is looked for after the first ones."""

_OFTEN_BESIDE, _LEAST_OFTEN_BESIDE = 0.7, 0.4
"""How often one beside the plan that stands is looked for: it is soon found, or not."""

_TIRED, _IN_VAIN = 0.85, 0.4
"""How much less often after one that did not gain, and when there was none anew."""

_ROUGH_AT_ONCE = 2
"""How many rough plans of a large studio are tried beside each other."""


@dataclass(slots=True)
class _Kind:
    """One way to look for a foreseen plan, and how often: usually, at least, and now."""

    look: _Look
    usual: float
    least: float
    in_vain: float
    often: float

    def tire(self, share: float) -> None:
        """Be drawn less often, but never less than a little."""
        self.often = max(self.least, share * self.often)


class Wishes:
    """Foreseen plans to be near to; one thread looks for the next while others solve."""

    def __init__(
        self, foreseen: Foreseen, random: Random, *, again: bool, beside: bool
    ) -> None:
        """Draw from a generator; `again` where there is a plan that is kept.

        With `beside` plans beside the one that stands are wished for too: of a large studio.
        """
        self._foreseen = foreseen
        self._random = random
        # What has moved from a kept plan may find a place with few moves: that comes first.
        self._waits, self._large = again, beside
        self._looking, self._most_rough = Lock(), _ROUGH_AT_ONCE if beside else 1
        self._rough_ones: list[Wish] = []
        self._anew = _Kind(foreseen.less_late, _OFTEN, _LEAST_OFTEN, _IN_VAIN, _OFTEN)
        self._beside = _Kind(
            foreseen.beside, _OFTEN_BESIDE, _LEAST_OFTEN_BESIDE, _TIRED, _OFTEN_BESIDE
        )
        self._by_days = replace(self._beside, look=foreseen.beside_by_days)
        kinds = (
            (self._anew, foreseen.anew),
            (self._by_days, beside and foreseen.rough),
            (self._beside, beside),
        )
        self._kinds = [kind for kind, wished in kinds if wished]
        self._missed: Wish | None = None

    @property
    def opening(self) -> bool:
        """Whether there are still some to be tried before all else."""
        return self._foreseen.opening

    def drawn(self, best: BestSoFar) -> Wish | None:
        """One that is less late than the best plan so far; None when it is not their turn."""
        if self._missed is not None:
            # What is nowhere so near may still be better than what stands.
            missed, self._missed = self._missed, None
            return replace(missed, loosely=True)
        waits, self._waits = self._waits, False
        if waits or not best.may_be_less_late:
            return None
        wish = self._rough(best)
        if wish is not None or (self._large and self._rough_ones):
            return wish
        if self.opening:
            return self._looked_for(best, self._anew)
        drawn = (kind for kind in self._kinds if self._random.random() < kind.often)
        found = (self._looked_for(best, kind) for kind in drawn)
        return next((wish for wish in found if wish is not None), None)

    def _rough(self, best: BestSoFar) -> Wish | None:
        """A rough plan; the next one when it is known what came of it.

        Meanwhile others look for other foreseen plans; but not of a large studio: a rough
        plan that comes after them gains less by parts than one that comes first. There they
        look for the next rough plan: of some nothing comes.
        """
        more = self._foreseen.by_days_first and len(self._rough_ones) < self._most_rough
        wish = self._looked_with(self._foreseen.by_days, best) if more else None
        if wish is not None:
            self._rough_ones.append(wish)
        return wish

    def _looked_for(self, best: BestSoFar, kind: _Kind) -> Wish | None:
        if self._looking.locked():
            return None
        wish = self._looked_with(kind.look, best)
        if wish is None:
            kind.tire(kind.in_vain)
        return wish

    def _looked_with(self, look: _Look, best: BestSoFar) -> Wish | None:
        """What is found by looking; None too while another thread looks."""
        if not self._looking.acquire(blocking=False):
            return None
        try:
            return look(best, self._random)
        finally:
            self._looking.release()

    def learn(self, wish: Wish, *, gained: bool, missed: bool) -> None:
        """Hear whether a wish gained; one that was `missed` comes once more, as a loose one."""
        if wish in self._rough_ones:
            self._rough_ones.remove(wish)
            if gained and self._large:
                self._foreseen.leave_rough_plans()
            return
        kind = self._kind(wish)
        if gained:
            kind.often = kind.usual
        else:
            kind.tire(_TIRED)
        if missed and wish.beside is None and not wish.loosely:
            self._missed = wish

    def _kind(self, wish: Wish) -> _Kind:
        if wish.beside is None:
            return self._anew
        return self._beside if wish.days is None else self._by_days
