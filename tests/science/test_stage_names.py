"""The stages and on which side of each it is safe to be wrong."""

from __future__ import annotations

import pytest

from studio_planner.science.stages import Edge, Stage, safe_edge

NOT_AFTER = {
    "cup_life", "working_time", "last_torch", "recoat_closes", "tape_closes", "trim_closes",
}  # fmt: skip


@pytest.mark.parametrize("stage", list(Stage))
def test_every_stage_is_either_not_before_or_not_after(stage: Stage) -> None:
    assert stage.not_after == (stage.value in NOT_AFTER)
    assert stage.not_before != stage.not_after


@pytest.mark.parametrize("stage", list(Stage))
def test_the_safe_edge_is_late_for_not_before_and_early_for_not_after(stage: Stage) -> None:
    assert safe_edge(stage) is (Edge.EARLY if stage.not_after else Edge.LATE)


def test_late_cure_and_closes_are_the_stages_with_rules_of_their_own() -> None:
    late = {stage.value for stage in Stage if stage.late_cure}
    assert late == {"sandable", "handle", "print_free", "full_cure"}
    closes = {stage.value for stage in Stage if stage.closes}
    assert closes == {"recoat_closes", "tape_closes", "trim_closes"}
