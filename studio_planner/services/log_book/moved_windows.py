"""Windows that moved since they were planned: a pour was another one, or the room was."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.services.editing.changes import fitting
from studio_planner.services.film_windows import window_now
from studio_planner.services.lanes import lanes_of
from studio_planner.services.questions.sentences import Lasting, Moment, said

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.log import Poured
    from studio_planner.craft.plans import Plan, PlannedCoat, Window
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.questions.sentences import Sentence
    from studio_planner.services.ribbons import Lane, Ribbon


@dataclass(frozen=True, slots=True, kw_only=True)
class MovedWindow:
    """A window of the kept plan that is another one by now.

    `now` is None where it does not open any more in the time looked at. `later` is by how much
    its opening moved, or its closing where that moved further; below zero when sooner. `fits`
    tells whether the planned pour still lies in it.
    """

    piece: str
    coat: str
    name: str
    now: Window | None
    later: timedelta | None
    fits: bool
    sentences: tuple[Sentence, ...]


def moved_windows(view: DeskView) -> tuple[MovedWindow, ...]:
    """The windows over films that lie there which moved by more than the maker's threshold.

    Those that no longer hold their pour come first, then in the order of the plan.
    """
    plan, studio = view.plan, view.studio
    if plan is None:
        return ()
    lanes = lanes_of(studio, as_happened(fitting(plan, studio), studio), view.timing)
    threshold = timedelta(minutes=studio.reminding.moved_minutes)
    found = [one for lane in lanes for one in _of_lane(lane, threshold)]
    starts = {(coat.piece, coat.coat): coat.start for coat in plan.coats}
    return tuple(sorted(found, key=lambda one: (one.fits, starts[one.piece, one.coat])))


def as_happened(plan: Plan, studio: Studio) -> Plan:
    """A plan whose coats that were poured are as they were written down."""
    pours = {(pour.piece, pour.coat): pour for pour in studio.poured}
    return replace(plan, coats=tuple(_as_poured(coat, pours) for coat in plan.coats))


def _as_poured(coat: PlannedCoat, pours: dict[tuple[str, str], Poured]) -> PlannedCoat:
    pour = pours.get((coat.piece, coat.coat))
    if pour is None:
        return replace(coat, poured=False)
    return coat.as_it_was(pour)


def _of_lane(lane: Lane, threshold: timedelta) -> Iterable[MovedWindow]:
    bars = {bar.coat.key: bar for bar in lane.ribbons}
    for bar in bars.values():
        planned, position = bar.planned.window, lane.piece.below(bar.position)
        if planned is None or position is None or bar.planned.poured:
            continue
        below = bars.get(lane.piece.stack[position].key)
        if below is None or not below.planned.poured:
            continue
        now = window_now(bar, below, planned.trust)
        later = None if now is None else _later(planned, now)
        if later is None or abs(later) > threshold:
            yield _moved(bar, planned, now, later)


def _later(planned: Window, now: Window) -> timedelta:
    shifts = [now.opens - planned.opens]
    if planned.closes is not None and now.closes is not None:
        shifts.append(now.closes - planned.closes)
    return max(shifts, key=abs)


def _moved(
    bar: Ribbon, planned: Window, now: Window | None, later: timedelta | None
) -> MovedWindow:
    piece = bar.lane.piece
    return MovedWindow(
        piece=piece.key,
        coat=bar.coat.key,
        name=f"{piece.name}, {piece.coat_name(bar.coat.key)}",
        now=now,
        later=later,
        fits=now is not None and _fits(bar, now),
        sentences=tuple(_sentences(bar, planned, now)),
    )


def _fits(bar: Ribbon, now: Window) -> bool:
    closes = now.closes
    return now.opens <= bar.planned.start and (closes is None or bar.planned.end <= closes)


def _sentences(bar: Ribbon, planned: Window, now: Window | None) -> Iterable[Sentence]:
    if now is None:
        yield said("Its window does not open in the time looked at; it is too cold there.")
        return
    if now.opens != planned.opens:
        yield said(
            "It opens {now} instead of {was}.",
            now=Moment(now.opens),
            was=Moment(planned.opens),
        )
    if now.closes is not None and planned.closes is not None and now.closes != planned.closes:
        yield said(
            "It closes {now} instead of {was}.",
            now=Moment(now.closes),
            was=Moment(planned.closes),
        )
    start = Moment(bar.planned.start)
    if _fits(bar, now):
        yield said("The pour of {start} still fits.", start=start)
    elif bar.planned.start < now.opens:
        early = Lasting((now.opens - bar.planned.start) / timedelta(hours=1))
        yield said(
            "The pour of {start} is {early} too early; plan again.", start=start, early=early
        )
    else:
        late = Lasting((bar.planned.end - (now.closes or now.opens)) / timedelta(hours=1))
        yield said(
            "The pour of {start} ends {late} too late; plan again.", start=start, late=late
        )
