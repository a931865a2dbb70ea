"""A plan as rows of JSON; times are ISO 8601 with the studio's offset."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from studio_planner.services.plan_worth import not_planned
from studio_planner.services.promises import promises_of
from studio_planner.terminal.writing import iso

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.plans import Plan, PlannedCoat, PlannedStep
    from studio_planner.craft.studio import Studio
    from studio_planner.services.checking import Finding
    from studio_planner.services.promises import PromiseKept


def plan_json(studio: Studio, plan: Plan, warnings: Iterable[Finding] = ()) -> dict[str, Any]:
    """Give a whole plan.

    Keys: studio, zone, made, start, coats (see `coat_json`), steps (see `step_json`), orders
    (see `order_json`), unplanned (each with piece, coat, reason), warnings (see
    `finding_json`), reasons (sentences: why pieces are not planned; empty when all are), and
    what `worth_json` gives.
    """
    zone = studio.time_zone
    return {
        "studio": studio.name,
        "zone": studio.zone,
        "made": iso(zone, plan.made),
        "start": iso(zone, plan.start),
        "coats": [coat_json(studio, plan, coat) for coat in plan.coats],
        "steps": [step_json(studio, step) for step in plan.steps],
        "orders": [order_json(studio, kept) for kept in promises_of(studio, plan)],
        "unplanned": [
            {"piece": row.piece, "coat": row.coat, "reason": str(row.reason)}
            for row in plan.unplanned
        ],
        "reasons": [str(row.reason) for row in plan.unplanned],
        "warnings": [finding_json(studio, finding) for finding in warnings],
        **worth_json(plan),
    }


def worth_json(plan: Plan) -> dict[str, Any]:
    """Give what a plan is worth.

    Keys: goals (in their order, each with goal, value, bound, gap, proved; bound and gap are
    null when no bound is known), grid_minutes (starts were looked at so far apart),
    solved_seconds (of looking for better plans), rehearsals (simulated weeks behind every
    share; 0 when the plan was not rehearsed), orders_not_planned (orders with pieces that are
    left out: no hours late are known of them).
    """
    return {
        "goals": [
            {
                "goal": one.goal,
                "value": one.value,
                "bound": one.bound,
                "gap": one.gap,
                "proved": one.proved,
            }
            for one in plan.goals
        ],
        "grid_minutes": plan.grid_minutes,
        "solved_seconds": plan.solved_seconds,
        "rehearsals": plan.rehearsals,
        "orders_not_planned": not_planned(plan),
    }


def coat_json(studio: Studio, plan: Plan, coat: PlannedCoat) -> dict[str, Any]:
    """Give one coat.

    Keys: number, piece and piece_name, coat, kind, product, start and end of the hands-on
    block, spot, joint, opens and closes (of the window used; null for none), trust, mix,
    person, air, poured, held and wrong_first (the shares of rehearsed weeks in which it found
    its window, and in which its piece went wrong with it first; null when not rehearsed), and
    ready: for handle, print_free and full_cure of the whole piece likely and safe (null: never
    within the record).
    """
    zone = studio.time_zone
    piece = studio.piece(coat.piece)
    entered = piece.coat(coat.coat)
    window = coat.window
    return {
        "number": coat.number,
        "piece": coat.piece,
        "piece_name": piece.name,
        "coat": coat.coat,
        "kind": entered.kind,
        "product": entered.product,
        "start": iso(zone, coat.start),
        "end": iso(zone, coat.end),
        "spot": coat.spot,
        "joint": coat.joint,
        "opens": None if window is None else iso(zone, window.opens),
        "closes": None if window is None else iso(zone, window.closes),
        "trust": None if window is None else window.trust,
        "mix": coat.mix,
        "person": coat.person,
        "air": coat.air,
        "poured": coat.poured,
        "held": coat.held,
        "wrong_first": coat.wrong_first,
        "ready": _ready_json(studio, plan, coat.piece),
    }


def _ready_json(studio: Studio, plan: Plan, piece: str) -> dict[str, Any]:
    zone = studio.time_zone
    return {
        str(row.stage): {"likely": iso(zone, row.likely), "safe": iso(zone, row.safe)}
        for row in plan.ready
        if row.piece == piece
    }


def step_json(studio: Studio, step: PlannedStep) -> dict[str, Any]:
    """Give one step: kind, piece, coat, start, end, person, opens, closes."""
    zone = studio.time_zone
    return {
        "kind": step.kind,
        "piece": step.piece,
        "coat": step.coat,
        "start": iso(zone, step.start),
        "end": iso(zone, step.end),
        "person": step.person,
        "opens": iso(zone, step.opens),
        "closes": iso(zone, step.closes),
    }


def order_json(studio: Studio, kept: PromiseKept) -> dict[str, Any]:
    """Give one order.

    Keys: order (its key), name, promise, promised (the date that was given), gate, due (the
    last pick-up that keeps it, for a market its opening), ships (when it left, or is to; null
    when a piece of it is not planned), state (shipped, in time, late, not planned), late_hours,
    spare_hours, held and day_held (the shares of rehearsed weeks in which the promise was kept,
    and it shipped on the day of ships or sooner), rehearsed_spare_hours (left in nine weeks of
    ten, negative when late; all three null when not rehearsed), reason, and changes: each with
    words, ships, keeps_promise.
    """
    zone = studio.time_zone
    order, outcome = kept.order, kept.outcome
    return {
        "order": order.key,
        "name": order.name,
        "promise": order.promise,
        "promised": order.promised.isoformat(),
        "gate": order.gate,
        "due": iso(zone, order.due(zone)),
        "ships": None if outcome is None else iso(zone, outcome.leaves),
        "state": kept.word,
        "late_hours": None if outcome is None else outcome.late_hours,
        "spare_hours": None if outcome is None else outcome.spare_hours,
        "held": None if outcome is None else outcome.held,
        "day_held": None if outcome is None else outcome.day_held,
        "rehearsed_spare_hours": None if outcome is None else outcome.rehearsed_spare_hours,
        "reason": "" if outcome is None else str(outcome.reason),
        "changes": [
            {
                "words": str(change.words),
                "ships": iso(zone, change.leaves),
                "keeps_promise": change.keeps_promise,
            }
            for change in (() if outcome is None else outcome.changes)
        ],
    }


def finding_json(studio: Studio, finding: Finding) -> dict[str, Any]:
    """Give what a check found: rule, piece, coat, when, words."""
    return {
        "rule": finding.rule,
        "piece": finding.piece,
        "coat": finding.coat,
        "when": iso(studio.time_zone, finding.when),
        "words": finding.words,
    }
