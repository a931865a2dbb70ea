"""A trial of the sample that is planned and done: the plan that is kept breaks no rule."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.services.checking import checked
from studio_planner.services.desk import DeskView
from studio_planner.services.plan_again import plan_again
from studio_planner.services.trying.comparing_trials import compared
from studio_planner.services.trying.every import WHAT_IFS
from studio_planner.services.trying.trial import as_followed, begun_coats, done_with
from studio_planner.services.trying.trial_files import read_trial, remove_trial, write_trial
from tests.services.small_studios import kept, morning, planned_once

if TYPE_CHECKING:
    from pathlib import Path


@pytest.mark.slow
def test_a_trial_amid_the_plan_is_done_with_a_plan_that_keeps_every_rule(
    tmp_path: Path,
) -> None:
    studio = planned_once()
    now = morning(studio) + timedelta(days=1, hours=3)
    assert begun_coats(studio, now)
    view = DeskView(studio, now)
    spots = next(one for one in WHAT_IFS if one.key == "more-spots")
    given = {one.key: one.value for one in spots.parameters(view)}
    trial = spots.tried(view, given)
    folder = tmp_path / "trial"
    folder.mkdir()
    write_trial(folder, trial, now)
    followed = read_trial(folder)
    assert followed == as_followed(trial.studio, now)
    planned = replace(followed, plan=plan_again(followed, now).plan)
    done = done_with(trial, planned)
    assert checked(done, kept(done)).clean
    assert done.poured == studio.poured
    assert {(c.piece, c.coat) for c in kept(done).coats} == {
        (c.piece, c.coat) for c in kept(studio).coats
    }
    assert compared(view, trial, planned, as_followed(studio, now)).promises
    remove_trial(folder)
    assert not folder.exists()
