"""Plans of the exact model for pieces that were carried about, judged by the checker."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_of_pours
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.solver import Status
from tests.planning.carried_studios import carried_about
from tests.planning.exact.frames import fixed_at, sanded_at_once, search_of

if TYPE_CHECKING:
    from studio_planner.planning.exact.search import PlanSearch
    from tests.planning.studios import Situation

_STEPS = 3
_LONG, _LITTLE_WORK = 60.0, 0.1


@dataclass(frozen=True, slots=True)
class Judged:
    """What came of one seed: how often pieces were carried, and how many plans were judged.

    `broken` is what a plan breaks; empty if nothing. `refused` tells that the model does not
    know the quick plan, as may be where pieces go in and out of a warm box.
    """

    seed: int
    carried: int
    plans: int = 0
    broken: str = ""
    refused: bool = False
    box: bool = False


def judged(seed: int) -> Judged:
    """Look for better plans of a seed's studio, and ask the checker about every one."""
    situation = carried_about(seed)
    legs = legs_of_pours(situation.studio).values()
    carried = sum(len(mine) - 1 for mine in legs)
    search = search_of(situation.studio, situation.start)
    if search is None:
        return Judged(seed, carried)
    refused, plans, broken = _refused(search), 1, _broken(situation, search)
    improver = Improver(search.best, seed)
    for _ in range(_STEPS):
        before = search.best.standing
        improver.step(_LONG, _LITTLE_WORK)
        if search.best.standing is not before:
            plans, broken = plans + 1, broken or _broken(situation, search)
    box = len(situation.studio.places) > 1
    return Judged(seed, carried, plans, broken, refused, box)


def _broken(situation: Situation, search: PlanSearch) -> str:
    report = check_plan(situation.studio, search.plan())
    return "\n".join(finding.words for finding in report.broken)


def _refused(search: PlanSearch) -> bool:
    """Whether the quick plan, fixed as it is, is no answer of the model."""
    if sanded_at_once(search):
        return False
    standing = search.best.standing
    placed = frozenset(at for at, lane in enumerate(standing.lanes) if lane.placed is not None)
    draft = search.best.parts.draft(standing, Freedom(placed))
    return draft is None or fixed_at(draft, Hints(draft)).status is Status.IMPOSSIBLE
