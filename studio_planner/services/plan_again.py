"""Planning a studio again: plan, say why what is late is late, and have it checked."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.plans import Plan
from studio_planner.craft.tongue import translate
from studio_planner.planning.carrying import carried_over
from studio_planner.planning.late.bettering import bettered
from studio_planner.planning.late.promises import explain
from studio_planner.planning.quick import quick_plan
from studio_planner.services.checking import CheckReport, checked
from studio_planner.services.still_to_do import (
    nothing_left,
    only_to_do,
    still_to_do,
    with_what_is_done,
)

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from threading import Event

    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckedPlan:
    """A plan and what the checker said about it: no rule is broken.

    `moved` counts the pours that had to move for what was changed while it was planned.
    """

    plan: Plan
    report: CheckReport
    moved: int = 0


def plan_again(  # noqa: PLR0913 - each is one plain question
    studio: Studio,
    now: datetime,
    until: datetime | None = None,
    *,
    seconds: float = 0.0,
    told: Callable[[CheckedPlan], None] | None = None,
    enough: Event | None = None,
) -> CheckedPlan:
    """Plan everything from `now` on; what was poured stays. Nothing is kept in a file.

    Where everything is packed or has left, the plan is what was poured.

    Parameters
    ----------
    studio
        The studio; its kept plan is not changed.
    now
        Aware instant; nothing new starts before it.
    until
        Nothing is poured from then on; None lets everything be planned to its end.
    seconds
        How long to look for better plans than the quick one; 0 looks for none.
    told
        Takes each better plan as it comes, the quick one first, when better ones are looked
        for. Reasons and tried changes are only on the plan that is returned.
    enough
        Set, nothing better is looked for any more.

    Raises
    ------
    NoPlanPossible
        With the reasons, when the studio cannot be planned as asked, or when the checker finds
        the plan wrong.
    """
    todo = still_to_do(studio)
    if nothing_left(studio):
        plan = Plan(made=now, start=now, coats=())
    elif seconds > 0.0:
        plan = _best(studio, now, until, seconds=seconds, told=told, enough=enough)
    else:
        plan = bettered(todo, quick_plan(todo, now, until), until)
    return _passed(studio, explain(todo, plan, until))


def explained(studio: Studio, plan: Plan) -> CheckedPlan:
    """Say anew why orders are late in a plan that stays as it is; raises as `plan_again`."""
    return _passed(studio, explain(still_to_do(studio), only_to_do(plan, studio)))


def carried(
    studio: Studio, plan: Plan, until: datetime | None = None, *, last: bool = False
) -> CheckedPlan:
    """Carry a plan over to the studio as it is by now, where something was changed meanwhile.

    Of what is still to come only that is moved which must, and the checker is asked as always.
    The `last` plan of a search is rehearsed and explained anew.

    Raises
    ------
    NoPlanPossible
        With what would have to move where a new plan is better than that: less is left out,
        late, scuffed or to be tested.
    """
    if nothing_left(studio):
        return plan_again(studio, plan.start)
    todo = still_to_do(studio)
    found = carried_over(todo, only_to_do(plan, studio), until)
    if found.worse:
        raise NoPlanPossible([_moved_words(studio, *found.moved[0])])
    made = _passed(studio, _finished(todo, found.plan, plan) if last else found.plan)
    return replace(made, moved=len(found.moved))


def _moved_words(studio: Studio, piece: str, coat: str) -> str:
    moved = studio.piece(piece)
    said = translate(
        "planning", "{piece}, {coat} would have to move; a new plan is better than that."
    )
    return said.format(piece=moved.name, coat=moved.coat_name(coat))


def _finished(todo: Studio, plan: Plan, before: Plan) -> Plan:
    """A plan that was carried over with its reasons, and rehearsed if it was."""
    from studio_planner.planning.best import rehearsed  # noqa: PLC0415 - as below

    return explain(todo, rehearsed(todo, plan) if before.rehearsals else plan)


def _best(  # noqa: PLR0913 - as above
    studio: Studio,
    now: datetime,
    until: datetime | None,
    *,
    seconds: float,
    told: Callable[[CheckedPlan], None] | None,
    enough: Event | None,
) -> Plan:
    # Only a maker who waits for a better plan waits for what looks for it.
    from studio_planner.planning.best import best_plan  # noqa: PLC0415

    todo = still_to_do(studio)
    passed: list[Plan] = []

    def pass_on(plan: Plan) -> None:
        report = checked(todo, plan)
        if report.clean:
            passed.append(plan)
            if told is not None:
                told(CheckedPlan(plan=with_what_is_done(plan, studio), report=report))

    last = best_plan(todo, now, until, seconds=seconds, told=pass_on, enough=enough)
    # A better plan that breaks a rule is no plan; the best that breaks none is.
    return passed[-1] if passed and not checked(todo, last).clean else last


def _passed(studio: Studio, plan: Plan) -> CheckedPlan:
    """Check a plan of what is still to do, and add what is done."""
    report = checked(still_to_do(studio), plan)
    if not report.clean:
        broken = translate(
            "planning", "The plan that was found breaks a rule and is not used: {finding}"
        )
        raise NoPlanPossible(broken.format(finding=finding.words) for finding in report.broken)
    return CheckedPlan(plan=with_what_is_done(plan, studio), report=report)
