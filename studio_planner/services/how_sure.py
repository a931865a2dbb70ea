"""How sure a plan is, in the maker's words: what rehearsed weeks tell of promises and pours.

A share of weeks is never rounded to all or to none of them.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.length_words import length_of_time
from studio_planner.craft.tongue import figure, translate

if TYPE_CHECKING:
    from studio_planner.craft.plans import Outcome, Plan, PlannedCoat

DOUBTFUL = 0.5
"""What comes true in a smaller share of the weeks is said to be in doubt (our choice)."""


def in_doubt(outcome: Outcome | None) -> bool:
    """Whether a promise is seldom kept, or a late order seldom leaves on its new day."""
    share = None if outcome is None else _share(outcome)
    return share is not None and share < DOUBTFUL


def day_in_doubt(outcome: Outcome | None) -> bool:
    """Whether the day on which the plan lets an order leave seldom comes true."""
    held = None if outcome is None else outcome.day_held
    return in_doubt(outcome) or (held is not None and held < DOUBTFUL)


def _share(outcome: Outcome) -> float | None:
    """How often it comes true: the promise, or where that is broken the new day."""
    return outcome.day_held if outcome.late_hours else outcome.held


def share_words(share: float) -> str:
    """A share of rehearsed weeks in whole per cent; all and none only when they are."""
    if 0.0 < share < 0.01:  # noqa: PLR2004 - one per cent
        return translate("worth", "under 1 %")
    if 0.99 < share < 1.0:  # noqa: PLR2004 - likewise
        return translate("worth", "over 99 %")
    return f"{round(share * 100.0)} %"


def weeks_words(rehearsals: int) -> str:
    """How many weeks were rehearsed, such as 1,000 rehearsed weeks."""
    text = (
        translate("worth", "{count} rehearsed week")
        if rehearsals == 1
        else translate("worth", "{count} rehearsed weeks")
    )
    return text.format(count=figure(f"{rehearsals:,}"))


def sure_words(outcome: Outcome | None, plan: Plan) -> str:
    """How sure a promise is, or a late order's new day; empty when that was not rehearsed."""
    share = None if outcome is None else _share(outcome)
    if outcome is None or share is None or not plan.rehearsals:
        return ""
    spare = outcome.rehearsed_spare_hours
    if outcome.late_hours:
        said = translate("worth", "leaves that day or sooner in {share} of {weeks}")
    elif spare is not None and spare > 0.0:
        said = translate(
            "worth", "kept in {share} of {weeks}, in nine of ten with {time} spare"
        )
    else:
        said = translate("worth", "kept in {share} of {weeks}")
    return said.format(
        share=share_words(share),
        weeks=weeks_words(plan.rehearsals),
        time=length_of_time(spare or 0.0),
    )


def held_words(coat: PlannedCoat, plan: Plan) -> str:
    """How often a pour found its window; empty when it is poured or was not rehearsed."""
    if coat.held is None or coat.poured or not plan.rehearsals:
        return ""
    said = translate("worth", "held in {share} of rehearsed weeks")
    return said.format(share=share_words(coat.held))
