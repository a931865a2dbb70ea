"""Whether a pour has its spot to itself, air without dust, and somebody awake for its tape."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.grid import next_on_grid
from studio_planner.craft.local_time import clipped
from studio_planner.craft.plans import StepKind
from studio_planner.craft.products import ProductKind
from studio_planner.craft.sheet_stages import cover_stage
from studio_planner.science.stages import Stage
from studio_planner.services.moving.breaks import Break, Rule
from studio_planner.services.moving.held import Stay, handled, stays_of
from studio_planner.services.moving.joint_then import dusty
from studio_planner.services.questions.sentences import Moment, Sentence, said

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat, PlannedStep
    from studio_planner.services.moving.around import Around
    from studio_planner.services.ribbons import Lane, Ribbon

_TASKS = (
    (
        StepKind.TAPE,
        Stage.TAPE_OPENS,
        Stage.TAPE_CLOSES,
        said("Everybody sleeps when the tape is to be pulled."),
    ),
    (
        StepKind.TRIM,
        Stage.TRIM_OPENS,
        Stage.TRIM_CLOSES,
        said("Everybody sleeps when drips are to be trimmed."),
    ),
)
_AWAKE = frozenset({StepKind.TAPE, StepKind.TRIM})


# Spots


def spot_then(around: Around, bar: Ribbon, others: set[str]) -> tuple[str, tuple[Break, ...]]:
    """The spot that a pour takes, and what is wrong with it.

    The planned one where it is free, else another of the same place that is; `others` are the
    spots of its mix.
    """
    lane, coat = bar.lane, bar.planned
    stays = stays_of(lane, _concerned(lane, coat))
    taken = next((b for stay in stays if (b := taken_on(around, stay)) is not None), None)
    early = _moved_too_early(lane, coat)
    if early is not None:
        return coat.spot, (early,)
    if taken is None:
        return coat.spot, ()
    mine = stays[-1]
    place = around.studio.place_of_spot(coat.spot)
    for spot in place.spots if _free_to_go(lane, coat) else ():
        stay = Stay(lane, coat, spot.key, mine.start, mine.end)
        if spot.key not in others and lane.piece.fits(spot) and _clear(around, spot.key, stay):
            text = "It goes to {spot}, since {taken}"
            words = said(text, spot=spot.name, taken=_because(taken))
            return spot.key, (Break(rule=Rule.OTHER_SPOT, words=words, hard=False),)
    return coat.spot, (Break(rule=Rule.SPOT, words=named(around, coat, taken)),)


def _concerned(lane: Lane, coat: PlannedCoat) -> list[PlannedCoat]:
    index = lane.coats.index(coat)
    return [c for c in lane.coats[max(index - 1, 0) : index + 1] if not c.poured or c is coat]


def taken_on(around: Around, stay: Stay) -> Stay | None:
    """The stay of another piece that one meets on its spot; None where that is free."""
    there = around.stays_on(stay.spot)
    return next((other for other in there if stay.meets(other)), None)


def _clear(around: Around, spot: str, stay: Stay) -> bool:
    return not any(stay.meets(other) for other in around.stays_on(spot))


def named(around: Around, coat: PlannedCoat, taken: Stay) -> Sentence:
    """Who takes the spot of a coat, and until when."""
    spot = around.studio.spot(coat.spot).name
    if taken.end is None:
        text = "{spot} is taken by {piece} for good."
        return said(text, spot=spot, piece=taken.lane.piece.name)
    if taken.start > coat.start:
        text = "{spot} is needed by {piece} from {start}, before this can be handled."
        name = taken.lane.piece.name
        return said(text, spot=spot, piece=name, start=Moment(taken.start))
    text = "{spot} is taken by {piece} until {until}."
    return said(text, spot=spot, piece=taken.lane.piece.name, until=Moment(taken.end))


def _because(taken: Stay) -> Sentence:
    return said("{piece} stands on its own.", piece=taken.lane.piece.name)


def _free_to_go(lane: Lane, coat: PlannedCoat) -> bool:
    """Whether a piece may stand somewhere else from this pour on, and after it too."""
    index = lane.coats.index(coat)
    before = lane.coats[index - 1] if index else None
    after = lane.coats[index + 1] if index + 1 < len(lane.coats) else None
    ready = None if before is None else handled(lane, before)
    freed = handled(lane, coat)
    came = before is None or (ready is not None and ready <= coat.start)
    return came and (after is None or (freed is not None and freed <= after.start))


def _moved_too_early(lane: Lane, coat: PlannedCoat) -> Break | None:
    index = lane.coats.index(coat)
    before = lane.coats[index - 1] if index else None
    if before is None or lane.lies_on(before) == coat.spot:
        return None
    ready = handled(lane, before)
    if ready is not None and ready <= coat.start:
        return None
    name, spot = lane.piece.coat_name(before.coat), lane.studio.spot(coat.spot).name
    if ready is None:
        text = "It cannot be moved to {spot}: the {before} can never be handled."
        return Break(rule=Rule.SPOT, words=said(text, spot=spot, before=name))
    text = "It cannot be moved to {spot} before the {before} can be handled, {ready}."
    return Break(rule=Rule.SPOT, words=said(text, spot=spot, before=name, ready=Moment(ready)))


# Dust


def dust_then(
    around: Around, bar: Ribbon, unsanded: frozenset[tuple[str, str]]
) -> Iterator[Break]:
    """Sanding whose dust would fall into a pour, or that would be beside it while it is wet.

    The sandings before `unsanded` coats (piece, coat) are no longer where the plan has them.
    """
    if bar.product.kind is ProductKind.LEAF:
        return
    settle = timedelta(minutes=around.studio.settings.settle_minutes)
    yield from _settling(around, bar, settle)
    covered: datetime | None = None
    for step in around.sandings:
        if (step.piece, step.coat) in unsanded:
            continue
        name = around.studio.piece(step.piece).name
        settled = step.end + settle
        if bar.planned.start < settled and step.start < bar.planned.end:
            yield dusty(name, settled)
        elif step.start >= bar.planned.end and not _its_own(bar, step):
            covered = covered or covered_at(bar)
            if step.start < covered:
                text = "{piece} is sanded at {at}, while this is wet until {covered}."
                facts = {"at": Moment(step.start), "covered": Moment(covered)}
                yield Break(rule=Rule.DUST, words=said(text, piece=name, **facts))


def _settling(around: Around, bar: Ribbon, settle: timedelta) -> Iterator[Break]:
    """The dust of what was sanded already."""
    for name, at in around.sanded:
        if at < bar.planned.end and bar.planned.start < at + settle:
            yield dusty(name, at + settle)


def _its_own(bar: Ribbon, step: PlannedStep) -> bool:
    """Whether a sanding waits for a later coat of the piece, and moves with that."""
    return step.piece == bar.lane.piece.key and step.coat != bar.coat.key


def covered_at(bar: Ribbon) -> datetime:
    """When dust does no harm to a film any more, for sure."""
    stage = cover_stage(bar.product)
    reached = bar.planned.end if stage is None else bar.film.safe(stage)
    return bar.lane.timing.end if reached is None else max(reached, bar.planned.end)


# Tape and drips


def tape_then(around: Around, bar: Ribbon) -> tuple[tuple[PlannedStep, ...], tuple[Break, ...]]:
    """The steps for tape and drips of a moved pour where they would be, and what is wrong."""
    steps: list[PlannedStep] = []
    breaks: list[Break] = []
    planned = {
        step.kind: step
        for step in around.steps
        if (step.piece, step.coat) == (bar.lane.piece.key, bar.coat.key)
    }
    for kind, opens, closes, words in _TASKS:
        if kind not in planned:
            continue
        since, until = bar.film.safe(opens), bar.film.safe(closes)
        found = None if since is None else _awake(around, since, until)
        if found is None:
            breaks.append(Break(rule=Rule.AWAKE, words=words))
            continue
        start, person = found
        length = planned[kind].end - planned[kind].start
        steps.append(_step(planned[kind], start, length, person, (since, until)))
    return tuple(steps), tuple(breaks)


def _step(
    step: PlannedStep,
    start: datetime,
    length: timedelta,
    person: str,
    window: tuple[datetime | None, datetime | None],
) -> PlannedStep:
    opens, closes = window
    return replace(
        step, start=start, end=start + length, person=person, opens=opens, closes=closes
    )


def _awake(
    around: Around, opens: datetime, closes: datetime | None
) -> tuple[datetime, str] | None:
    """The first time on the grid at which somebody is awake for tape, and who."""
    needed = timedelta(minutes=around.studio.settings.tape_minutes)
    last = around.timing.end if closes is None else closes
    found = [
        (start, key)
        for key, spans in around.awake.items()
        for a, b in clipped(spans, opens, last)
        if (start := next_on_grid(a)) + needed <= b
    ]
    return min(found, default=None)


def steps_then(around: Around, bar: Ribbon) -> Iterator[Break]:
    """Other work on the same piece that a pour would meet or come before."""
    for step in around.steps:
        mine = step.piece == bar.lane.piece.key and step.coat != bar.coat.key
        if not mine or step.kind not in _AWAKE or step.coat is None:
            continue
        before = bar.lane.piece.position(step.coat) < bar.position
        if before and bar.planned.start < step.end:
            text = (
                "The tape of the {coat} comes first, at {at}."
                if step.kind is StepKind.TAPE
                else "The trimming of the {coat} comes first, at {at}."
            )
            name = bar.lane.piece.coat_name(step.coat)
            words = said(text, coat=name, at=Moment(step.start))
            yield Break(rule=Rule.AWAKE, words=words)
