"""How a cup stands by its minutes since A met B, and what that is called."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from studio_planner.desktop.tongue import translate
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.services.mix_run.stand import Do

if TYPE_CHECKING:
    from studio_planner.services.mix_run.stand import Stand


class CupState(Enum):
    """How a cup stands: not mixed yet, good, to be emptied now, gone, empty."""

    EMPTY = "empty"
    RESTS = "rests"
    GOOD = "good"
    DUE = "due"
    GONE = "gone"


@dataclass(frozen=True, slots=True, kw_only=True)
class CupTimes:
    """Minutes since A met B (None: not yet), and those by which it is to be empty and gone.

    `empty` tells that nothing is left in any cup.
    """

    minute: float | None = None
    pour_by: float | None = None
    gone: float | None = None
    empty: bool = False

    @property
    def state(self) -> CupState:
        """How it stands now; without a cup life on the sheet it is good as far as we know."""
        if self.empty:
            return CupState.EMPTY
        if self.minute is None:
            return CupState.RESTS
        if self.gone is not None and self.minute >= self.gone:
            return CupState.GONE
        if self.pour_by is not None and self.minute >= self.pour_by:
            return CupState.DUE
        return CupState.GOOD

    @property
    def counted(self) -> str:
        """The time that has gone, counted up: 12:05."""
        seconds = max(0, int((self.minute or 0.0) * 60.0 + 1e-6))
        return f"{seconds // 60}:{seconds % 60:02}"

    @property
    def word(self) -> str:
        """How it stands, in few words."""
        said = {
            CupState.EMPTY: translate("weigh", "Every cup is empty"),
            CupState.RESTS: translate("weigh", "The clock starts when B goes in"),
            CupState.GOOD: translate("weigh", "Good"),
            CupState.DUE: translate("weigh", "Empty it now"),
            CupState.GONE: translate("weigh", "Gone: do not pour"),
        }
        if self.state is CupState.GOOD and self.pour_by is None:
            return translate("weigh", "The sheet has no cup life: nobody knows by when")
        return said[self.state]

    @property
    def ends(self) -> str:
        """By when it is to be empty, and when it is gone."""
        if self.pour_by is None or self.gone is None:
            return ""
        return translate("weigh", "pour by minute {by}, gone at {gone}").format(
            by=int(self.pour_by), gone=int(self.gone)
        )

    @property
    def spoken(self) -> str:
        """All of it for a screen reader."""
        counted = "" if self.minute is None else self.counted
        return ", ".join(part for part in (counted, self.word, self.ends) if part)


def times_of(stand: Stand | None, minute: float | None) -> CupTimes:
    """The times of the cup that is in hand; `minute` is how long ago A met B in it."""
    if stand is not None and stand.step.do in {Do.WRITE, Do.WRITTEN}:
        return CupTimes(minute=minute, empty=True)
    if stand is None or not stand.now.mixed:
        return CupTimes()
    cup = stand.step.pour
    if cup is not None:
        return CupTimes(minute=minute, pour_by=cup.out_by_minute, gone=cup.gone_minute)
    by = stand.now.portion.out_of_cup_minutes
    gone = None if by is None else by / SHARE_TO_USE
    return CupTimes(minute=minute, pour_by=by, gone=gone)
