"""What a plan is worth, how sure it is, and better plans as they come."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.craft.hands import Absence
from studio_planner.craft.saying import SILENT
from studio_planner.services import keeping
from studio_planner.services.studio_files import read_planned, read_studio
from studio_planner.storage.studio_file import open_studio
from tests.services.small_studios import morning, put_plan
from tests.terminal.found_plans import sure

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from pathlib import Path

    from studio_planner.services.plan_again import CheckedPlan
    from tests.terminal.conftest import Answer, Terminal


@pytest.fixture
def rehearsed(sample: Path) -> Path:
    put_plan(sample, sure(read_planned(sample)[1]))
    return sample


def said(answer: Answer) -> str:
    return " ".join(answer.out.split())


def test_a_printed_plan_says_what_it_is_worth(terminal: Terminal, rehearsed: Path) -> None:
    out = said(terminal(rehearsed))
    assert "How good this plan is Late: 14 h 30 min in all" in out
    assert "no plan can be below 6 h." in out
    assert "Scuffed: 2 joints; proved the best possible on starts every 10 minutes." in out
    assert "Separate mixes: 41; not known whether a better plan exists." in out
    assert "A better plan was looked for, for 20 s." in out


def test_a_printed_plan_says_how_sure_it_is(terminal: Terminal, rehearsed: Path) -> None:
    out = said(terminal(rehearsed))
    assert "Quay winter market: kept in 93 % of 1,000 rehearsed weeks." in out
    last = read_planned(rehearsed)[1].coats[-1]
    wrong = f" (pour {last.number}): In 29 % of 1,000 rehearsed weeks its piece goes wrong"
    assert wrong in out


def test_how_sure_a_plan_without_orders_is_stands_under_its_heading(
    terminal: Terminal, rehearsed: Path
) -> None:
    plan = read_planned(rehearsed)[1]
    put_plan(rehearsed, replace(plan, outcomes=()))
    out = terminal(rehearsed).out
    assert "\n\nHow sure it is\nMost fragile: " in out


def test_a_quick_plan_says_that_nothing_better_was_looked_for(
    terminal: Terminal, unplanned: Path
) -> None:
    out = said(terminal("plan", unplanned))
    assert "Late: no order." in out
    assert "This is the quick plan; no better one was looked for." in out
    assert "rehearsed" not in out


def test_promise_says_how_sure_each_order_is(terminal: Terminal, rehearsed: Path) -> None:
    assert "Quay winter market: kept in 93 %" in said(terminal("promise", rehearsed))


def test_the_json_of_plan_check_and_promise_carries_goals_and_shares(
    terminal: Terminal, rehearsed: Path
) -> None:
    goals = [
        {"goal": "weighted hours late", "value": 14.5, "bound": 6, "gap": 8.5, "proved": False},
        {"goal": "scuffed joints", "value": 2, "bound": 2, "gap": 0, "proved": True},
        {"goal": "separate mixes", "value": 41, "bound": None, "gap": None, "proved": False},
    ]
    for command in ("check", "promise"):
        found = terminal(command, rehearsed, "--json").json
        assert found["goals"] == goals
        assert (found["grid_minutes"], found["solved_seconds"]) == (10, 20)
        assert found["rehearsals"] == 1000
        assert {order["held"] for order in found["orders"]} == {0.93}
    assert terminal("check", rehearsed, "--json").json["coats"][-1]["held"] == 0.71
    made = terminal("plan", rehearsed, "--reasons", "--json").json
    assert made["goals"] == goals
    assert made["coats"][-1]["held"] == 0.71
    assert made["orders"][0]["held"] == 0.93


# Better plans as they come


def rows(answer: Answer) -> list[dict[str, Any]]:
    return [json.loads(line) for line in answer.out.splitlines()]


def test_without_seconds_only_the_quick_plan_is_made(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    asked = looks()
    assert terminal("plan", unplanned).code == 0
    assert terminal("plan", unplanned, "--seconds", "0").code == 0
    assert asked == []


def test_with_seconds_the_best_plan_found_is_printed_and_kept(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    asked = looks()
    answer = terminal("plan", unplanned, "--seconds", "20", "--keep")
    assert answer.code == 0
    assert asked == [20.0]
    assert "A better plan was looked for, for 2 s." in answer.out
    assert read_planned(unplanned)[1].rehearsals == 1000


def test_progress_is_a_line_for_each_better_plan_and_the_whole_plan_on_the_last(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    held: list[float] = []

    def look(_step: int) -> None:
        held.append(read_planned(unplanned)[1].solved_seconds)

    looks(between=look)
    answer = terminal("plan", unplanned, "--seconds", "9", "--keep", "--json", "--progress")
    *steps, last = rows(answer)
    assert [step["progress"]["solved_seconds"] for step in steps] == [0, 1, 2]
    # Each line tells of the plan that the file holds from then on.
    assert held == [0, 1]
    assert all(step.keys() == {"progress"} for step in steps)
    assert all(step["progress"]["kept"] for step in steps)
    assert steps[-1]["progress"]["words"] == "no order late; 2 joints scuffed; 41 mixes"
    assert steps[-1]["progress"]["goals"][0]["bound"] == 6
    assert last["kept"] is True
    assert last["coats"]
    assert "progress" not in last


def test_progress_without_keep_leaves_the_file_alone(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    looks()
    before = unplanned.read_bytes()
    *steps, last = rows(terminal("plan", unplanned, "--seconds", "9", "--json", "--progress"))
    assert not any(step["progress"]["kept"] for step in steps)
    assert last["kept"] is False
    assert unplanned.read_bytes() == before


def nobody_works(path: Path) -> None:
    """Somebody else takes all hands out of the studio, and its plan with them."""
    with open_studio(path) as other:
        other.write(replace(other.read(), people=(), plan=None))


def test_a_change_with_which_a_plan_does_not_hold_is_never_written_over(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    looks(between=lambda step: nobody_works(unplanned) if step == 1 else None)
    answer = terminal("plan", unplanned, "--seconds", "9", "--keep", "--json", "--progress")
    assert answer.code == 2
    assert len(rows(answer)) == 1
    assert "was changed while it was planned (hands)" in answer.err
    assert "There are no hands yet" in answer.err
    found = read_studio(unplanned)
    assert (found.people, found.plan) == ((), None)


def test_a_piece_that_is_new_by_the_end_is_in_the_plan_that_is_kept_and_printed(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    def one_more(step: int) -> None:
        with open_studio(unplanned) as other:
            studio = other.read()
            if step == 2:
                new = replace(studio.pieces[0], key="new", name="Newest tray")
                other.write(replace(studio, pieces=(*studio.pieces, new)))

    looks(between=one_more)
    answer = terminal("plan", unplanned, "--seconds", "9", "--keep")
    assert answer.code == 0
    assert "Newest tray" in answer.out
    studio, plan = read_planned(unplanned)
    assert {coat.piece for coat in plan.coats} == {piece.key for piece in studio.pieces}
    assert not studio.plan_outdated
    assert terminal("check", unplanned).code == 0


def test_what_a_change_has_moved_in_the_plan_that_was_found_is_said(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    def away(step: int) -> None:
        with open_studio(unplanned) as other:
            studio = other.read()
            off = Absence(start=morning(studio), end=morning(studio) + timedelta(days=1))
            people = tuple(replace(one, absences=(off,)) for one in studio.people)
            if step == 2:
                other.write(replace(studio, people=people))

    looks(between=away)
    answer = terminal("plan", unplanned, "--seconds", "9", "--keep")
    assert answer.code == 0
    assert "had to move for what was changed while it was planned." in said(answer)


def test_a_change_during_quick_planning_is_never_written_over_either(
    terminal: Terminal, unplanned: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = keeping.FileToPlan.keep

    def changed_before(
        file: keeping.FileToPlan,
        found: CheckedPlan,
        until: datetime | None = None,
        *,
        last: bool = False,
    ) -> CheckedPlan:
        nobody_works(unplanned)
        return real(file, found, until, last=last)

    monkeypatch.setattr(keeping.FileToPlan, "keep", changed_before)
    answer = terminal("plan", unplanned, "--keep")
    assert answer.code == 2
    assert "plan again" in answer.one_sentence
    assert read_studio(unplanned).plan is None


KILLED = """
import sys, threading
from dataclasses import replace
from types import ModuleType
from studio_planner.planning.quick import quick_plan
from studio_planner.terminal import plan_command
from studio_planner.assembly import run

def best_plan(studio, now, until=None, *, seconds, told, enough):
    plan = quick_plan(studio, now, until)
    told(plan)
    told(replace(plan, solved_seconds=1.5))
    threading.Event().wait()

module = ModuleType("studio_planner.planning.best")
module.best_plan = best_plan
sys.modules[module.__name__] = module
plan_command.PAUSE_SECONDS = 0.0
run(["plan", sys.argv[1], "--from", "2026-02-02T07:00", "--seconds", "60",
     "--keep", "--json", "--progress"])
"""


def test_a_search_that_is_killed_leaves_the_plan_of_its_last_line(unplanned: Path) -> None:
    with subprocess.Popen(  # noqa: S603 - our own script
        [sys.executable, "-c", KILLED, str(unplanned)],
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
    ) as search:
        assert search.stdout is not None
        told = [json.loads(search.stdout.readline())["progress"] for _ in range(2)]
        search.kill()
    assert [step["solved_seconds"] for step in told] == [0, 1.5]
    assert read_planned(unplanned)[1].solved_seconds == 1.5


def test_reasons_in_progress_are_on_one_line_too(terminal: Terminal, unplanned: Path) -> None:
    with open_studio(unplanned) as other:
        other.write(replace(other.read(), people=()))
    answer = terminal("plan", unplanned, "--json", "--progress")
    assert answer.code == 1
    (found,) = rows(answer)
    assert found["reasons"] == ["There are no hands yet: say who can work when."]


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (["--seconds", "soon"], "--seconds “soon” is not a whole number from 0 to 3600."),
        (["--seconds", "4000"], "--seconds “4000” is not a whole number from 0 to 3600."),
        (["--progress"], "--progress writes lines of JSON; write --json with it."),
        (["--reasons", "--seconds", "5"], "--reasons plans nothing anew"),
        (["--reasons", "--days", "5"], "--reasons plans nothing anew"),
        (
            ["--language", "de"],
            "--language is for the sentences in JSON",
        ),
        (["--json", "--language", "xx"], "--language: no “xx” is spoken here"),
    ],
)
def test_arguments_that_make_no_sense_are_answered_in_a_sentence(
    terminal: Terminal, unplanned: Path, words: list[str], sentence: str
) -> None:
    answer = terminal("plan", unplanned, *words)
    assert answer.code == 2
    assert answer.one_sentence.startswith(sentence)


def test_reasons_are_said_in_the_language_that_is_asked_for_and_kept_in_none(
    terminal: Terminal, sample: Path
) -> None:
    answer = terminal("plan", sample, "--keep", "--json", "--language", "de")
    german = [one["reason"] for one in answer.json["orders"] if one["reason"]]
    assert german
    assert all("Änderung" in reason for reason in german)
    kept = read_planned(sample)[1]
    found = terminal("promise", sample, "--json").json["orders"]
    english = [one["reason"] for one in found if one["reason"]]
    assert len(english) == len(german)
    assert all("tried" in reason for reason in english)
    assert terminal("plan", sample, "--keep", "--json").code == 0
    assert read_planned(sample)[1].outcomes == kept.outcomes


def test_reasons_are_found_anew_for_the_plan_that_is_kept(
    terminal: Terminal, sample: Path
) -> None:
    plan = read_planned(sample)[1]
    bare = replace(
        plan, outcomes=tuple(replace(one, reason=SILENT, changes=()) for one in plan.outcomes)
    )
    put_plan(sample, bare)
    assert terminal("plan", sample, "--reasons", "--keep").code == 0
    assert read_planned(sample)[1] == plan


def test_reasons_of_no_plan_are_a_reason_of_their_own(
    terminal: Terminal, unplanned: Path
) -> None:
    answer = terminal("plan", unplanned, "--reasons")
    assert answer.code == 1
    assert "keeps no plan yet" in said(answer)
