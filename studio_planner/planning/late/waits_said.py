"""What the slowest chain of an order waits for, in words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.orders import Promise
from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.saying import coat_said, length_said, moment_said

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.planning.late.fitting import Fit
    from studio_planner.planning.late.ladder import Ladder
    from studio_planner.planning.late.soonest import Wait
    from studio_planner.planning.problem import Chain


def slowest(fit: Fit) -> Chain | None:
    """The chain that is packed last, or the one that found no place."""
    if fit.stuck:
        return fit.stuck[0].chain
    return None if fit.slowest is None else fit.slowest.chain


def after_pick_up(ladder: Ladder, order: Order, wait: Wait) -> Saying:
    """For packing that only hands bring behind the last pick-up in time."""
    due = order.due(ladder.studio.time_zone)
    missed = wait.index is None and wait.since <= due.timestamp() < wait.until
    if not missed or order.promise is Promise.MARKET:
        return SILENT
    when = moment_said(ladder.studio.time_zone, due.timestamp())
    return joined(", ", saying("late", "after the pick-up {when}", when=when), between="")


def waiting(chain: Chain, wait: Wait) -> Saying:
    """What waits, as the beginning of a sentence."""
    piece = chain.pieces[0]
    if wait.index is None:
        return saying("late", "Packing {piece}", piece=piece.name)
    return coat_said(piece, chain.tasks[wait.index].coat.key, first=True)


def air_wait(fit: Fit, ladder: Ladder, wait: Wait) -> Saying:
    """A whole sentence about a coat that waits for the air; empty where none does."""
    chain = slowest(fit)
    if chain is None or wait.index is None:
        return SILENT
    task, zone = chain.tasks[wait.index], ladder.studio.time_zone
    text = (
        marked(
            "late",
            "{what} has to wait from {since} to {until}, because the room is outside the "
            "limits of {product} (temperature, humidity, dew point) or the air warms while it "
            "would be bare.",
        )
        if task.bare_porous
        else marked(
            "late",
            "{what} has to wait from {since} to {until}, because the room is outside the "
            "limits of {product} (temperature, humidity, dew point).",
        )
    )
    return saying(
        "late",
        text,
        what=waiting(chain, wait),
        since=moment_said(zone, wait.since),
        until=moment_said(zone, wait.until),
        product=task.product.name,
    )


def longest_cure(fit: Fit) -> Saying:
    """The longest stretch in which the slowest chain only cures."""
    last = fit.slowest
    if last is None or not last.packed:
        return SILENT
    chain, piece = last.chain, last.chain.pieces[0]
    ends = [start + task.block for start, task in zip(last.starts, chain.tasks, strict=True)]
    nexts = [*last.starts[1:], last.packed[0].start]
    gaps = [after - end for end, after in zip(ends, nexts, strict=True)]
    index = max(range(chain.first, len(gaps)), key=lambda i: gaps[i], default=len(gaps) - 1)
    lower, length = coat_said(piece, chain.tasks[index].coat.key), length_said(gaps[index])
    if index + 1 == len(gaps):
        return saying(
            "late",
            "The longest wait is {length} from {lower} until it is packed.",
            length=length,
            lower=lower,
        )
    upper = coat_said(piece, chain.tasks[index + 1].coat.key)
    return saying(
        "late",
        "The longest wait is {length} from {lower} until {upper}.",
        length=length,
        lower=lower,
        upper=upper,
    )
