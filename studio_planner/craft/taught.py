"""What touch tests taught of a stage, kept once the maker has said yes to it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.kind_words import stage_word
from studio_planner.craft.tongue import translate
from studio_planner.science.stages import Stage  # noqa: TC001 - read by the exchange format
from studio_planner.science.taught_laws import TaughtFigure, taught_law

if TYPE_CHECKING:
    from studio_planner.science.laws import StageLaw

LONGEST_HOURS = 20_000.0
"""No stage takes longer, more than two years: such a figure is in another unit (our choice)."""

_SAME_SHARE = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class TaughtStage:
    """A stage as touch tests found it at their own temperature, and on the sheet's figures.

    `sheet_hours` are the likely hours of the sheet at `celsius` when this was learned: a sheet
    that has been changed since says others, and then this holds no longer. `early_hours` to
    `late_hours` hold the next pour's time at 90 %. `sheet_factor` is what the sheet's own
    figures are multiplied by, `band_left` the share of their bands that is left. It rests on
    `tests` touch tests of `pours` pours, and was learned `at` an instant.
    """

    stage: Stage
    celsius: float
    sheet_hours: float
    early_hours: float
    likely_hours: float
    late_hours: float
    sheet_factor: float
    band_left: float
    tests: int
    pours: int
    at: datetime

    def __post_init__(self) -> None:
        """Check that the stage can be taught and that the times are in order."""
        rules = Rulebook(
            translate("nouns", "what touch tests taught of {stage}").format(
                stage=stage_word(self.stage)
            )
        )
        rules.require(
            self.stage.teachable,
            "stage",
            translate(
                "rules", "touch tests teach opens, tack-free, handle and print-free only."
            ),
        )
        rules.between(self.celsius, -40, 150, "celsius")
        for name in ("sheet_hours", "early_hours", "likely_hours", "late_hours"):
            rules.between(getattr(self, name), 1e-4, LONGEST_HOURS, name)
        rules.require(
            self.early_hours <= self.likely_hours <= self.late_hours,
            "likely_hours",
            translate("rules", "the likely time must lie between the early and the late one."),
        )
        rules.between(self.sheet_factor, 0.01, 100, "sheet_factor")
        rules.between(self.band_left, 0, 1, "band_left")
        rules.between(self.tests, 1, 100_000, "tests")
        rules.between(self.pours, 1, self.tests, "pours")
        rules.require(
            self.at.utcoffset() is not None,
            "at",
            translate("rules", "give the time with a zone."),
        )
        rules.close()

    def holds_for(self, sheet: StageLaw) -> bool:
        """Whether the sheet still says what it said when this was learned."""
        return abs(sheet.hours(self.celsius) / self.sheet_hours - 1.0) <= _SAME_SHARE

    def law(self, sheet: StageLaw) -> StageLaw:
        """The law that touch tests made of the sheet's; the sheet's own if it has changed."""
        if not self.holds_for(sheet):
            return sheet
        own = TaughtFigure(self.celsius, self.early_hours, self.late_hours, self.likely_hours)
        return taught_law(
            sheet,
            own,
            sheet_factor=self.sheet_factor,
            band_left=self.band_left,
            tests=self.tests,
        )
