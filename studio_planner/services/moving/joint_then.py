"""How a coat would meet the one below it: the window it stands in, or what it misses."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust, Window
from studio_planner.craft.products import ProductKind
from studio_planner.craft.sheet_stages import (
    gate_stage,
    window_unknown,
)
from studio_planner.craft.standing import sanded_for
from studio_planner.planning.sanded import scuffed_at
from studio_planner.science.stages import Stage
from studio_planner.services.film_windows import window_now
from studio_planner.services.moving.breaks import Break, Rule
from studio_planner.services.moving.held import ribbons_of
from studio_planner.services.questions.sentences import Lasting, Moment, Sentence, said
from studio_planner.services.ribbons import StepMark

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.plans import PlannedStep
    from studio_planner.services.ribbons import Lane, Ribbon

_HOUR = 3600.0
_THIN = {ProductKind.SIZE, ProductKind.LEAF}


@dataclass(frozen=True, slots=True, kw_only=True)
class Met:
    """A joint: what it is, the window it stands in, and the rules that it breaks.

    `too_late` is set where washing and sanding first might serve instead of a window.
    """

    joint: Joint
    window: Window | None = None
    breaks: tuple[Break, ...] = ()
    too_late: bool = False


def joint_then(lane: Lane, bar: Ribbon) -> Met:
    """How a coat on a lane meets the one below."""
    position = lane.piece.below(bar.position)
    if position is None:
        return Met(joint=Joint.BARE)
    below = ribbons_of(lane).get(lane.piece.stack[position].key)
    if below is None:
        words = said("The coat below is not in the plan.")
        return Met(joint=bar.coat.joint, breaks=(Break(rule=Rule.WINDOW, words=words),))
    fact = _sanded_already(lane, bar, below)
    if fact is not None:
        return fact
    if bar.planned.joint is Joint.SCUFFED:
        return _scuffed(lane, bar, below)
    safe, found = _windowed(lane, bar, below)
    if found is not None:
        return found
    early = safe is not None and bar.planned.start < safe.opens
    missed = _missed(lane, bar, below, safe)
    return Met(joint=bar.coat.joint, breaks=(missed,), too_late=not early)


def _sanded_already(lane: Lane, bar: Ribbon, below: Ribbon) -> Met | None:
    """The scuffed joint of a coat that was sanded for, which waits for the dust alone."""
    # Most coats lie on one that is still to come; the log is read for the others only.
    if not below.planned.poured:
        return None
    studio = lane.studio
    second = scuffed_at(studio, lane.piece, bar.position, sanded_for(studio))
    if second is None:
        return None
    settled = second + 60 * studio.settings.settle_minutes
    if bar.planned.start.timestamp() >= settled:
        return Met(joint=Joint.SCUFFED)
    broken = dusty(lane.piece.name, datetime.fromtimestamp(settled, UTC))
    return Met(joint=Joint.SCUFFED, breaks=(broken,))


def dusty(piece: str, settled: datetime) -> Break:
    """The dust of a piece that was or is sanded, which settles until then."""
    text = "Dust from sanding {piece} settles until {settled}."
    words = said(text, piece=piece, settled=Moment(settled))
    return Break(rule=Rule.DUST, words=words)


def _windowed(lane: Lane, bar: Ribbon, below: Ribbon) -> tuple[Window | None, Met | None]:
    """The safe window, and the joint in it or in the likely one; None where in neither."""
    safe = _window(lane, bar, below, Trust.SAFE)
    for trust in Trust:
        window = safe if trust is Trust.SAFE else _window(lane, bar, below, trust)
        if window is not None and _inside(bar, window):
            return safe, _in_window(bar, below, window)
        if not (below.coat.sandable or below.coat.test_first):
            break
    return safe, None


def _in_window(bar: Ribbon, below: Ribbon, window: Window) -> Met:
    if window.trust is Trust.SAFE:
        return Met(joint=bar.coat.joint, window=window)
    text = "Touch-test the {below} first: the time is likely right, but not for sure."
    words = said(text, below=_name(below))
    return Met(
        joint=bar.coat.joint,
        window=window,
        breaks=(Break(rule=Rule.TEST_FIRST, words=words, hard=False),),
    )


def _inside(bar: Ribbon, window: Window) -> bool:
    closes = window.closes
    return window.opens <= bar.planned.start and (closes is None or bar.planned.end <= closes)


def _window(lane: Lane, bar: Ribbon, below: Ribbon, trust: Trust) -> Window | None:
    """The window over the coat below at an edge; None where it never opens or is not known."""
    wet = bar.coat.joint is Joint.WET_IN_WET
    if window_unknown(lane.studio, lane.piece, bar.position) or (
        wet and trust is Trust.TEST_FIRST
    ):
        return None
    return window_now(bar, below, trust)


def _missed(lane: Lane, bar: Ribbon, below: Ribbon, window: Window | None) -> Break:
    if window is None:
        unknown = window_unknown(lane.studio, lane.piece, bar.position)
        text = (
            "The sheet of the {below} does not say when its window closes."
            if unknown
            else "The window over the {below} never opens in the time looked at."
        )
        return Break(rule=Rule.WINDOW, words=said(text, below=_name(below)))
    if bar.planned.start < window.opens:
        text = "Outside its window: the {below} opens {opens}, you are {early} early."
        early = Lasting((window.opens - bar.planned.start).total_seconds() / _HOUR)
        words = said(text, below=_name(below), opens=Moment(window.opens), early=early)
        return Break(rule=Rule.WINDOW, words=words)
    closes = window.closes or bar.planned.end
    text = "Outside its window: the {below} closes {closes}, you end {late} late."
    late = Lasting((bar.planned.end - closes).total_seconds() / _HOUR)
    words = said(text, below=_name(below), closes=Moment(closes), late=late)
    return Break(rule=Rule.WINDOW, words=words)


def _scuffed(lane: Lane, bar: Ribbon, below: Ribbon) -> Met:
    """A scuffed joint stays so where its sanding serves, else it is tried in the window."""
    step = sanding_of(lane, bar)
    ready = below.film.safe(Stage.SANDABLE)
    served = step is not None and step.end <= bar.planned.start and not _meets_turn(lane, step)
    if step is not None and served and ready is not None and step.start >= ready:
        return Met(joint=Joint.SCUFFED)
    _, found = _windowed(lane, bar, below)
    if found is not None:
        return found
    if step is not None and not served:
        text = "It has to be sanded first, and that is planned until {end}."
        words = said(text, end=Moment(step.end))
        return _unserved(words)
    if ready is None:
        text = "The {below} cannot be sanded in the time looked at."
        words = said(text, below=_name(below))
    else:
        text = "The {below} can be sanded only from {ready}."
        words = said(text, below=_name(below), ready=Moment(ready))
    return _unserved(words)


def _unserved(words: Sentence) -> Met:
    broken = Break(rule=Rule.WINDOW, words=words)
    return Met(joint=Joint.SCUFFED, breaks=(broken,), too_late=True)


def _meets_turn(lane: Lane, step: PlannedStep) -> bool:
    """Whether the piece would be turned while it is sanded."""
    turns = (mark.planned for mark in lane.bars if isinstance(mark, StepMark))
    return any(
        turn.kind is StepKind.TURN and turn.start < step.end and step.start < turn.end
        for turn in turns
    )


def sanding_of(lane: Lane, bar: Ribbon) -> PlannedStep | None:
    """The sanding before a coat; None where there is none."""
    steps = (mark.planned for mark in lane.bars if isinstance(mark, StepMark))
    return next((s for s in steps if s.kind is StepKind.SAND and s.coat == bar.coat.key), None)


def faces_then(lane: Lane, bar: Ribbon) -> Iterator[Break]:
    """What is too soft for the piece to lie on, and coats that are not done before it."""
    bars = ribbons_of(lane)
    for index in range(bar.position):
        before = bars.get(lane.piece.stack[index].key)
        if before is not None and bar.planned.start < before.planned.end:
            text = "The {before} comes first, and is poured until {end}."
            words = said(text, before=_name(before), end=Moment(before.planned.end))
            yield Break(rule=Rule.ORDER, words=words)
            return
    for below, ready in _lain_on(lane, bar):
        if ready is None or _turned(lane, bar) < ready:
            yield _soft(below, ready)


def handled_below(lane: Lane, bar: Ribbon) -> list[datetime | None]:
    """When each coat can be handled that the piece lies on meanwhile; None: not in sight."""
    return [ready for _, ready in _lain_on(lane, bar)]


def _lain_on(lane: Lane, bar: Ribbon) -> Iterator[tuple[Ribbon, datetime | None]]:
    bars = ribbons_of(lane)
    for index in lane.piece.rests_on(bar.position):
        below = bars.get(lane.piece.stack[index].key)
        if below is not None and not _never_asked(lane, below):
            stage = gate_stage(below.product, Stage.HANDLE)
            yield below, None if stage is None else below.film.safe(stage)


def _soft(below: Ribbon, ready: datetime | None) -> Break:
    if ready is None:
        text = "The piece lies on the {below}, which cannot be handled in the time looked at."
        return Break(rule=Rule.FACES, words=said(text, below=_name(below)))
    text = "The piece lies on the {below}, which can be handled only from {ready}."
    return Break(rule=Rule.FACES, words=said(text, below=_name(below), ready=Moment(ready)))


def _never_asked(lane: Lane, below: Ribbon) -> bool:
    """Whether *handle* is not asked of it: size or leaf under a coat, whose sheet is silent."""
    over = lane.piece.stack[below.position + 1 :]
    silent = gate_stage(below.product, Stage.HANDLE) is None
    return silent and below.product.kind in _THIN and any(c.touches(below.coat) for c in over)


def _turned(lane: Lane, bar: Ribbon) -> datetime:
    steps = (mark.planned for mark in lane.bars if isinstance(mark, StepMark))
    turns = [s.start for s in steps if s.kind is StepKind.TURN and s.coat == bar.coat.key]
    return min([bar.planned.start, *turns])


def _name(bar: Ribbon) -> str:
    return bar.lane.piece.coat_name(bar.coat.key)
