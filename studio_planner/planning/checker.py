"""The checker: does a plan keep every rule, judged from the continuous laws alone.

It shares no code with the planners. It takes only t(T) of each stage and the room's history,
and integrates by its own quadrature.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.checking.blocks import broken_blocks
from studio_planner.planning.checking.dust import broken_dust
from studio_planner.planning.checking.faces import broken_faces
from studio_planner.planning.checking.facts import broken_facts
from studio_planner.planning.checking.findings import CheckReport, Finding, Rule
from studio_planner.planning.checking.hands import broken_hands
from studio_planner.planning.checking.joints import broken_joints, doubtful_joints
from studio_planner.planning.checking.packing import broken_packing, broken_promises
from studio_planner.planning.checking.readiness import broken_ready
from studio_planner.planning.checking.reading import Reading
from studio_planner.planning.checking.spots import broken_spots
from studio_planner.planning.checking.steps import broken_steps
from studio_planner.planning.checking.trimming import broken_trimming
from studio_planner.planning.checking.weather import broken_air, unknown_air

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

__all__ = ["CheckReport", "Finding", "Rule", "check_plan"]

_RULES = (
    broken_facts,
    broken_blocks,
    broken_hands,
    broken_joints,
    broken_faces,
    broken_spots,
    broken_air,
    broken_dust,
    broken_trimming,
    broken_steps,
    broken_packing,
    broken_promises,
    broken_ready,
)
_WARNINGS = (doubtful_joints, unknown_air)


def check_plan(studio: Studio, plan: Plan) -> CheckReport:
    """List every rule that a plan breaks, and what a maker should know besides.

    Any plan can be checked: what can't be read (an unknown piece, times that run backwards)
    is a finding of its own, and the rules are tried on the rest.
    """
    reading = Reading(studio, plan)
    broken = [finding for rule in _RULES for finding in rule(reading)]
    warnings = [finding for rule in _WARNINGS for finding in rule(reading)]
    return CheckReport(broken=(*reading.unsound, *broken), warnings=tuple(warnings))
