"""What a plan that is written down is worth, with no more at hand than its rows."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.planning.worth import MOVED_SECONDS, Worth, starts_of

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.worth import Starts


def plan_worth(studio: Studio, plan: Plan) -> Worth:
    """A written plan's goals in their order, but for pours moved: all are compared as new."""
    weights = {order.key: order.weight for order in studio.orders}
    late = sum(weights[one.order] * (one.late_hours or 0.0) for one in plan.outcomes)
    spare = studio.settings.spare_hours
    new = [coat for coat in plan.coats if not coat.poured]
    ends = {coat.piece: coat.end for coat in new}
    ends |= {step.piece: step.end for step in plan.steps if step.kind is StepKind.PACK}
    return Worth(
        left_out=len({row.piece for row in plan.unplanned}),
        late=round(late, 6),
        scuffed=sum(coat.joint is Joint.SCUFFED for coat in new),
        tested=sum(c.window is not None and c.window.trust is Trust.TEST_FIRST for c in new),
        moved=0,
        spare=round(sum(max(0.0, spare - (o.spare_hours or 0.0)) for o in plan.outcomes), 6),
        mixes=len({coat.mix for coat in new}),
        ends=sum((end - plan.start).total_seconds() / 3600.0 for end in ends.values()),
    )


def worth_against(studio: Studio, plan: Plan, before: Starts) -> Worth:
    """A written plan's goals in their order, pours moved from the starts before among them."""
    starts = starts_of(plan)
    moved = sum(
        abs(starts[key] - then) > MOVED_SECONDS for key, then in before.items() if key in starts
    )
    return plan_worth(studio, plan)._replace(moved=moved)
