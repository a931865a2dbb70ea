"""A tried plan beside today's: hand-made plans whose differences are known."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import Plan, Unplanned
from studio_planner.craft.saying import SILENT, Saying
from studio_planner.services.desk import DeskView
from studio_planner.services.questions.asking import Sign
from studio_planner.services.trying import heating
from studio_planner.services.trying.comparing_trials import Comparison, compared
from studio_planner.services.trying.trial import Trial, Warmth
from tests.desktop import scenes
from tests.desktop.scenes import NOW, at
from tests.services.questions.steady import PlainVoice

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Sentence

_VOICE = PlainVoice()


def _plan(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


def _compared(
    change: Callable[[Plan], Plan],
    *,
    again: Callable[[Plan], Plan] = lambda plan: plan,
    warm: bool = False,
    about: tuple[str, str] | None = None,
) -> Comparison:
    studio = scenes.planned()
    studio = replace(studio, plan=replace(_plan(studio), solved_seconds=20.0))
    warmth = Warmth("room", at(0, "20:00"), at(1, "07:00"), 20.0) if warm else None
    trial = Trial(
        words="Try",
        studio=studio,
        warmth=warmth,
        coats=frozenset() if about is None else frozenset({about}),
        to_do=_sentence() if warm else None,
    )
    planned, plain = (replace(studio, plan=made(_plan(studio))) for made in (change, again))
    return compared(DeskView(studio, NOW), trial, planned, plain)


def _sentence() -> Sentence:
    from studio_planner.services.questions.sentences import said  # noqa: PLC0415

    return said("Turn it on.")


def _coat(plan: Plan, piece: str, key: str, **changes: object) -> Plan:
    def other(coat: PlannedCoat) -> PlannedCoat:
        mine = (coat.piece, coat.coat) == (piece, key)
        return replace(coat, **changes) if mine else coat  # type: ignore[arg-type]

    return replace(plan, coats=tuple(map(other, plan.coats)))


def _leaves(plan: Plan, order: str, when: datetime) -> Plan:
    return replace(
        plan,
        outcomes=tuple(
            replace(row, leaves=when, reason=SILENT) if row.order == order else row
            for row in plan.outcomes
        ),
    )


def _words(comparison: Comparison) -> list[str]:
    return [comparison.verdict.words(_VOICE), *(s.words(_VOICE) for s in comparison.lines)]


def test_the_same_plan_changes_nothing() -> None:
    found = _compared(lambda plan: plan)
    assert (found.sign, found.pours) == (Sign.OPEN, ())
    assert _words(found)[0] == "It changes nothing in the plan."


def test_a_promise_that_is_kept_at_last_is_the_verdict() -> None:
    found = _compared(lambda plan: _leaves(plan, "34", at(6, "15:00")))
    assert (found.sign, _words(found)[0]) == (Sign.YES, "Yes: Moon tray would be in time.")
    row = next(one for one in found.promises if one.name == "Moon tray")
    assert row.without is not None
    assert row.tried is not None
    assert (row.without.leaves, row.tried.leaves) == (at(9, "16:00"), at(6, "15:00"))


def test_what_planning_again_gains_is_said_and_not_counted() -> None:
    def sooner(plan: Plan) -> Plan:
        return _leaves(plan, "34", at(6, "15:00"))

    found = _compared(sooner, again=sooner)
    already = (
        "Planning again without any change already brings Moon tray sooner; that is not "
        "counted here."
    )
    assert found.sign is Sign.OPEN
    assert _words(found)[:2] == ["It changes nothing in the plan.", already]
    assert already not in _words(_compared(sooner))


def test_a_promise_that_breaks_is_a_no() -> None:
    found = _compared(lambda plan: _leaves(plan, "33", at(9, "16:00")))
    assert (found.sign, _words(found)[0]) == (Sign.NO, "No: Slate coasters would be late.")


def test_an_order_that_leaves_later_is_told_of_beside_one_that_leaves_sooner() -> None:
    def later(plan: Plan) -> Plan:
        return _leaves(plan, "34", at(10, "10:00"))

    found = _compared(later)
    assert (found.sign, _words(found)[0]) == (Sign.CARE, "Moon tray would leave later.")
    both = _compared(lambda plan: _leaves(later(plan), "33", at(5, "12:00")))
    assert both.sign is Sign.CARE
    assert _words(both)[0] == "Slate coasters would leave sooner, but Moon tray later."


def test_a_joint_that_gets_worse_is_told_where_no_promise_changes() -> None:
    found = _compared(lambda plan: _coat(plan, "h1", "flood", joint=Joint.SCUFFED))
    assert found.sign is Sign.CARE
    assert _words(found)[0] == "No promise changes, but a joint gets worse."


def test_some_minutes_are_not_worth_the_verdict() -> None:
    found = _compared(lambda plan: _leaves(plan, "33", at(6, "15:45")))
    assert found.sign is Sign.OPEN


def test_a_piece_that_is_lost_is_a_no_before_everything_else() -> None:
    def lost(plan: Plan) -> Plan:
        rows = (Unplanned(piece="m", coat="lock", reason=Saying("its window closes")),)
        coats = tuple(c for c in plan.coats if c.piece != "m")
        return replace(plan, coats=coats, unplanned=rows)

    found = _compared(lost)
    assert found.sign is Sign.NO
    assert _words(found)[0] == "No: Moon tray could not be planned any more."
    assert {(row.coat, row.tried) for row in found.pours} == {
        ("seal", None),
        ("glitter", None),
        ("lock", None),
    }


def test_warmth_is_no_pure_gain_where_a_window_closes_sooner() -> None:
    def warmer(plan: Plan) -> Plan:
        coat = next(c for c in plan.coats if (c.piece, c.coat) == ("h1", "flood"))
        assert coat.window is not None
        assert coat.window.closes is not None
        window = replace(
            coat.window,
            opens=coat.window.opens - timedelta(hours=1),
            closes=coat.window.closes - timedelta(hours=2),
        )
        return _coat(plan, "h1", "flood", window=window)

    found = _compared(warmer, warm=True)
    said = _words(found)
    assert found.sign is Sign.CARE
    assert "the window of Harbour board 1, flood opens 1.00 h sooner" in said[0]
    assert any("Windows close sooner too" in s and "2.00 h sooner" in s for s in said)
    (row,) = found.pours
    assert (row.opens_sooner, row.closes_sooner) == (timedelta(hours=1), timedelta(hours=2))


def test_what_changes_in_a_week_is_not_the_verdict() -> None:
    # Patterns are weekly, so the same night a week later is warmer in a trial too.
    def later(plan: Plan) -> Plan:
        plan = _coat(plan, "h1", "clear", start=at(8, "10:20"), end=at(8, "11:40"))
        return _coat(plan, "h2", "clear", start=at(8, "10:20"), end=at(8, "11:40"))

    found = _compared(later, warm=True)
    assert not any("sooner" in sentence for sentence in _words(found))


def test_a_pour_that_the_trial_is_about_is_shown_even_where_it_stays() -> None:
    found = _compared(lambda plan: plan, about=("c", "seal"))
    (row,) = found.pours
    assert row.words == "Slate coasters, seal"
    assert row.without == row.tried
    assert row.without is not None
    assert row.without.margin is not None
    assert 5.0 < row.without.margin < 8.0  # the damp hours before six


def test_moved_pours_are_shown_in_the_order_of_their_new_times() -> None:
    def moved(plan: Plan) -> Plan:
        plan = _coat(plan, "f", "prime", start=at(0, "20:00"), end=at(0, "20:25"))
        return _coat(plan, "c", "seal", start=at(0, "21:05"), end=at(0, "21:55"))

    found = _compared(moved)
    assert [(row.piece, row.coat) for row in found.pours] == [("f", "prime"), ("c", "seal")]


def test_what_was_taken_for_granted_is_said() -> None:
    studio = scenes.planned()
    trial = Trial(words="Try", studio=studio)
    found = compared(DeskView(studio, NOW), trial, studio, studio)
    said = _words(found)
    # Three coats had begun by the scene's now and are not written down.
    assert "Taken as poured, as planned, though not written down: 3." in said


def test_heat_tells_the_least_margin_of_the_night_then_and_now() -> None:
    # At 20 °C and 60 % the dew point is 12.0 °C (Magnus), 8.0 °C below; warmed to 25 °C the
    # moisture stays, and the margin grows to 13.0 °C once the blanks, which lag behind, have
    # been warm for a night.
    room = replace(
        scenes.constant_room(20.0),
        pattern=(PatternPoint(at=time(0), celsius=20.0, humidity_pct=60.0),),
    )
    today = DeskView(scenes.planned(room), NOW)
    given = {"place": "room", "celsius": 25.0, "start": time(20), "end": time(12)}
    trial = heating.WHAT_IF.tried(today, given)
    assert trial.warmth is not None
    late = replace(trial, warmth=replace(trial.warmth, start=at(1, "04:00")))
    planned = replace(trial.studio, plan=today.plan)
    said = [s.words(_VOICE) for s in compared(today, late, planned, today.studio).lines]
    expected = "Meanwhile the dew-point margin is 13.0 °C at the least, instead of 8.0 °C."
    assert expected in said
