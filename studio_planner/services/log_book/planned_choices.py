"""A way out of a missed window once it is planned: its dates, and whether the promise holds."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.services.desk import DeskView
from studio_planner.services.editing.changes import Change
from studio_planner.services.left_out import why_left_out
from studio_planner.services.log_book.after_missing import choices_after
from studio_planner.services.trying.trial import CannotTry, done_with

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.log_book.after_missing import Choice, Missed


@dataclass(frozen=True, slots=True, kw_only=True)
class Dates:
    """What a choice means once it is planned.

    `next_pour` and `last_pour` (its end) are those of the piece, `leaves` and `due` those of
    its order; None where there is none. `reason` says why the piece is not planned then.
    """

    next_pour: datetime | None
    last_pour: datetime | None
    leaves: datetime | None
    due: datetime | None
    reason: str

    @property
    def keeps_promise(self) -> bool | None:
        """Whether its order leaves in time; None without an order."""
        if self.due is None:
            return None
        return self.leaves is not None and self.leaves <= self.due


def dates_of(choice: Choice, missed: Missed, planned: Studio) -> Dates:
    """What a choice means for its piece, in the studio that was planned for it."""
    assert choice.trial is not None  # noqa: S101 - only ways that are one are planned
    studio = done_with(choice.trial, planned)
    plan = studio.plan
    coats = [one for one in (plan.coats if plan else ()) if one.piece == missed.piece]
    coming = [one for one in coats if not one.poured]
    order = studio.order_of(missed.piece)
    outcomes = plan.outcomes if plan is not None else ()
    leaves = (one.leaves for one in outcomes if order is not None and one.order == order.key)
    return Dates(
        next_pour=min((one.start for one in coming), default=None),
        last_pour=max((one.end for one in coming), default=None),
        leaves=next(leaves, None),
        due=None if order is None else order.due(studio.time_zone),
        reason=why_left_out(plan, studio.piece(missed.piece)),
    )


def choice_done(choice: Choice, missed: Missed, planned: Studio, now: datetime) -> Change:
    """Do a choice that was planned from `now` (aware), with its plan, as one change.

    Making it raises CannotTry where the studio has become another one meanwhile.
    """
    assert choice.trial is not None  # noqa: S101 - only ways that are one are planned

    def make(studio: Studio) -> Studio:
        choices = choices_after(DeskView(studio, now), missed)
        again = next((one.trial for one in choices if one.way is choice.way), None)
        if again is None:
            raise CannotTry(
                translate("after missing", "The studio is another one now; plan them again.")
            )
        return done_with(again, planned)

    return Change(choice.trial.words, make)
