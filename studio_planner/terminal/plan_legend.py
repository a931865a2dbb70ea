"""The short words of a printed plan, explained beneath it: only those that it uses."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust
from studio_planner.terminal.writing import say_wrapped

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.plans import Plan, PlannedCoat

TEST_FIRST = "test first"
NEVER = "never"

_SHORT_JOINTS = {Joint.BARE: "bare", Joint.IN_WINDOW: "in window"}
_MEANINGS = {
    "bare": "onto the bare piece",
    "in window": "while the coat below still bonds by itself",
    "scuffed": "the coat below is washed and sanded first",
    "on dry": "over something that bonds once it is dry",
    "wet in wet": "while the coat below can still be worked",
    TEST_FIRST: "the window is likely but not safe, so a touch test decides before the pour",
}
_NEVER_MEANS = (
    "Closes: never - the sheet gives the window no end, or it ends after what is known of the "
    "room."
)


def joint_words(coat: PlannedCoat) -> str:
    """Say in a word or two how a coat meets the one below."""
    if coat.window is not None and coat.window.trust is Trust.TEST_FIRST:
        return TEST_FIRST
    return _SHORT_JOINTS.get(coat.joint, coat.joint.value)


def never_closes(coat: PlannedCoat) -> bool:
    """Whether a coat's window has no end in what the plan knows."""
    return (
        coat.window is not None and coat.window.closes is None and coat.joint is not Joint.BARE
    )


def print_legend(plan: Plan) -> None:
    """Explain the joints of a plan, and a window that never closes."""
    used = _used(plan.coats)
    if used:
        say_wrapped(f"Joint: {'; '.join(f'{word} - {_MEANINGS[word]}' for word in used)}.")
    if any(map(never_closes, plan.coats)):
        say_wrapped(_NEVER_MEANS)


def _used(coats: Iterable[PlannedCoat]) -> list[str]:
    met = {joint_words(coat) for coat in coats}
    return [word for word in _MEANINGS if word in met]
