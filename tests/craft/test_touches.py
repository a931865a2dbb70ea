"""What a touch of the film tells of its stages."""

from __future__ import annotations

import pytest

from studio_planner.craft.touches import Touch, Verdict
from studio_planner.science.stages import Stage

TAUGHT = {Stage.RECOAT_OPENS, Stage.TACK_FREE, Stage.HANDLE, Stage.PRINT_FREE}


def test_touches_tell_of_every_stage_that_is_taught_and_of_no_other() -> None:
    told = {stage for touch in Touch for v in Verdict for stage, _ in touch.tells(v)}
    assert told == TAUGHT


@pytest.mark.parametrize("touch", Touch)
def test_what_a_touch_says_of_a_stage_is_what_was_found(touch: Touch) -> None:
    for verdict in Verdict:
        assert all(said is verdict for _, said in touch.tells(verdict))


def test_a_string_says_that_the_window_is_still_shut() -> None:
    assert Touch.STRING.tells(Touch.STRING.usual) == ((Stage.RECOAT_OPENS, Verdict.NOT_YET),)


def test_a_film_without_strings_may_still_be_too_wet() -> None:
    assert Touch.STRING.tells(Verdict.ALREADY) == ()


def test_only_a_string_is_noted_as_not_yet() -> None:
    assert [t for t in Touch if t.usual is Verdict.NOT_YET] == [Touch.STRING]


@pytest.mark.parametrize(
    ("touch", "verdict"),
    [(Touch.NO_MARK, Verdict.NOT_YET), (Touch.THUMBNAIL, Verdict.ALREADY)],
)
def test_handle_lies_between_a_finger_and_a_thumbnail(touch: Touch, verdict: Verdict) -> None:
    assert (Stage.HANDLE, verdict) in touch.tells(verdict)


@pytest.mark.parametrize("touch", Touch)
def test_a_touch_asks_about_a_stage_it_can_tell_of(touch: Touch) -> None:
    assert touch.stage in {stage for v in Verdict for stage, _ in touch.tells(v)}
