"""What a plan is worth and how sure it is, as a maker reads it beneath the plan."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.fragile import fragile_of
from studio_planner.services.how_sure import sure_words
from studio_planner.services.plan_worth import IN_ORDER, worth_of
from studio_planner.terminal.ask_command import TerminalVoice
from studio_planner.terminal.writing import say, say_wrapped

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.services.promises import PromiseKept


def print_worth(studio: Studio, plan: Plan, promises: Iterable[PromiseKept]) -> None:
    """Print a line for each goal that matters, the time spent, and what rehearsals say."""
    worth = worth_of(studio, plan)
    if worth.goals:
        say()
        say("How good this plan is")
        for line in worth.goals:
            say_wrapped(line.words)
        if sum(bool(line.verdict) for line in worth.goals) > 1:
            say_wrapped(IN_ORDER)
        say_wrapped(worth.effort)
    told = print_sureness(plan, promises)
    fragile = fragile_of(studio, plan)
    if fragile is not None:
        if not told:
            _say_how_sure()
        say_wrapped(fragile.words(TerminalVoice(studio)))


def print_sureness(plan: Plan, promises: Iterable[PromiseKept]) -> bool:
    """Print how sure each promise is, and tell whether any was rehearsed."""
    rows = [(kept.order.name, sure_words(kept.outcome, plan)) for kept in promises]
    known = [(name, sure) for name, sure in rows if sure]
    if known:
        _say_how_sure()
    for name, sure in known:
        say_wrapped(f"{name}: {sure}.")
    return bool(known)


def _say_how_sure() -> None:
    say()
    say("How sure it is")
