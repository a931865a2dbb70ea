"""Questions in the terminal: listed, answered, and refused in a sentence."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.services.caution import DEFERRAL
from studio_planner.services.questions.every import QUESTIONS

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal

AT = ("--at", "2026-02-02T19:00")


def test_without_a_question_all_are_listed(terminal: Terminal, sample: Path) -> None:
    said = terminal("ask", sample)
    assert said.code == 0
    assert all(one.key in said.out for one in QUESTIONS)
    listed = terminal("ask", sample, "--json").json["questions"]
    assert [one["key"] for one in listed] == [one.key for one in QUESTIONS]
    assert {"key", "words", "kind", "value", "options"} == set(listed[0]["wants"][0])


@pytest.mark.parametrize("key", [one.key for one in QUESTIONS])
def test_every_question_is_answered_in_words_and_as_json(
    terminal: Terminal, sample: Path, key: str
) -> None:
    said = terminal("ask", sample, key, *AT)
    assert (said.code, said.err) == (0, "")
    found = terminal("ask", sample, key, *AT, "--json").json
    assert set(found) == {
        "question", "words", "at", "asked", "answer", "verdict", "lines", "caution",
    }  # fmt: skip
    assert found["answer"] in {"yes", "with care", "no", "not known"}
    assert found["at"] == "2026-02-02T19:00:00+01:00"
    assert found["verdict"]["words"].split()[0] in said.out
    assert (found["caution"] == DEFERRAL) == (DEFERRAL.split()[0] in said.out.splitlines()[-1])


def test_what_a_question_wants_to_know_is_given_by_name(
    terminal: Terminal, sample: Path
) -> None:
    given = ("--with", "piece=Dusk tray", "--with", "day=2026-02-14", "--with", "opens=10:00")
    found = terminal("ask", sample, "to-market", *AT, *given, "--json").json
    assert found["asked"] == {"piece": "dusk-tray", "day": "2026-02-14", "opens": "10:00:00"}
    assert "Dusk tray" in found["verdict"]["words"]
    hot = terminal("ask", sample, "posting", *AT, "--with", "hot=yes", "--json").json
    assert hot["asked"]["hot"] is True
    warm = ("--with", "celsius=104F")
    assert terminal("ask", sample, "warming", *AT, *warm, "--json").json["asked"][
        "celsius"
    ] == pytest.approx(40.0)


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (("tea",), "There is no question “tea”; ask one of: colour-window"),
        (("to-market", "--with", "piece"), "it asks for: piece, day, opens"),
        (("to-market", "--with", "piece=moon"), "“moon” is not to choose from; there is:"),
        (("to-market", "--with", "opens=25"), "is not a time of day; write it as 18:00."),
        (("to-market", "--with", "day=soon"), "is not a date; write it as 2026-02-02."),
        (("posting", "--with", "hot=maybe"), "is neither yes nor no."),
        (("sanding-now", "--with", "minutes=0"), "is not a whole number from 1 to 1440."),
        (("warming", "--with", "celsius=warm"), "is not a temperature"),
        (("bottleneck", "--with", "x=1"), "it asks for: nothing"),
    ],
)
def test_what_cannot_be_used_is_said_in_a_sentence(
    terminal: Terminal, sample: Path, words: tuple[str, ...], sentence: str
) -> None:
    wrong = terminal("ask", sample, *words)
    assert wrong.code == 2
    assert sentence in wrong.one_sentence


def test_a_studio_without_a_plan_says_what_to_do(terminal: Terminal, unplanned: Path) -> None:
    said = terminal("ask", unplanned, "if-left")
    assert said.code == 0
    assert "plan first" in said.out
