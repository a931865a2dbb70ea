"""Which mix of the plan is to be weighed next, and its sheet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.mixing.mix_sheet import mix_sheet, mixes_to_pour

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.mix_sheet import MixSheet


class MixChoice:
    """One of the mixes that are still to be weighed; its sheet is made when it is asked for."""

    def __init__(self) -> None:
        """Choose nothing yet."""
        self._studio: Studio | None = None
        self._mix: int | None = None
        self._sheet: MixSheet | None = None

    def see(self, studio: Studio | None) -> None:
        """Choose among the mixes of a studio; what was chosen stays so where it can."""
        if studio is not self._studio:
            self._studio, self._sheet = studio, None

    @property
    def mixes(self) -> tuple[int, ...]:
        """The numbers of all mixes that are still to be weighed, in order of time."""
        studio = self._studio
        if studio is None or studio.plan is None:
            return ()
        return mixes_to_pour(studio, studio.plan)

    def choose(self, coat: tuple[str, str] | None) -> None:
        """Choose the mix of a coat (piece, coat), or the first one."""
        studio, mixes = self._studio, self.mixes
        coats = () if studio is None or studio.plan is None else studio.plan.coats
        wanted = [one.mix for one in coats if (one.piece, one.coat) == coat]
        known = [mix for mix in wanted if mix in mixes]
        self._mix = next(iter(known or mixes), None)

    def step(self, by: int) -> None:
        """Choose the mix so many places on, from the last one the first."""
        mixes = self.mixes
        if mixes:
            place = mixes.index(self._mix) if self._mix in mixes else 0
            self._mix = mixes[(place + by) % len(mixes)]

    @property
    def sheet(self) -> MixSheet | None:
        """The sheet of the chosen mix, of the first where that is gone; None without any."""
        studio, mixes = self._studio, self.mixes
        if studio is None or studio.plan is None or not mixes:
            return None
        if self._mix not in mixes:
            self._mix = mixes[0]
        if self._sheet is None or self._sheet.mix != self._mix:
            self._sheet = mix_sheet(studio, studio.plan, self._mix)
        return self._sheet
