"""Faults planted in a plan that keeps every rule: each is found, under the rule's name."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.plans import StepKind
from studio_planner.planning.checker import Rule, check_plan
from tests.planning.checker import (
    faults_of_joints,
    faults_of_places,
    faults_of_promises,
    faults_of_steps,
    faults_of_work,
)
from tests.planning.checker.hand_made import (
    PLAN,
    STUDIO,
    at,
    moved,
    without_step,
)

if TYPE_CHECKING:
    from tests.planning.checker.faults import (
        Fault,
    )

FAULTS = (
    *faults_of_work.FAULTS,
    *faults_of_joints.FAULTS,
    *faults_of_places.FAULTS,
    *faults_of_steps.FAULTS,
    *faults_of_promises.FAULTS,
)


@pytest.mark.parametrize("fault", FAULTS, ids=[fault.name for fault in FAULTS])
def test_a_planted_fault_is_found(fault: Fault) -> None:
    report = check_plan(fault.studio, fault.plan)
    found = [
        finding
        for finding in report.broken
        if (finding.rule, finding.piece, finding.coat) == (fault.rule, fault.piece, fault.coat)
        and fault.words in finding.words
    ]
    assert found, "\n".join(f"{one.rule}: {one.words}" for one in report.broken)


def test_a_plan_that_keeps_every_rule_is_clean() -> None:
    report = check_plan(STUDIO, PLAN)
    assert report.clean
    assert report.broken == report.warnings == ()


def test_every_rule_has_a_planted_fault() -> None:
    warnings = {Rule.TEST_FIRST, Rule.AIR_UNKNOWN}
    assert {fault.rule for fault in FAULTS} | warnings == set(Rule)


def test_all_broken_rules_are_listed_not_only_the_first() -> None:
    plan = moved(without_step(PLAN, StepKind.TAPE, "tray"), "tray", "lock", at(0, "21:21"))
    rules = {finding.rule for finding in check_plan(STUDIO, plan).broken}
    assert {Rule.TAPE, Rule.HANDS, Rule.BLOCK, Rule.READY} <= rules
