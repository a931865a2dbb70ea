"""A tried plan beside one without the change: verdict, promises, pours, and warnings.

Both are planned again from the same moment on: what planning again gains is not the change's.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import listed
from studio_planner.services.desk import DeskView
from studio_planner.services.moving.comparing import compare
from studio_planner.services.moving.difference_words import in_full
from studio_planner.services.questions.air_ahead import air_between, lowest_margin
from studio_planner.services.questions.asking import Sign
from studio_planner.services.questions.damp_tonight import slowest
from studio_planner.services.questions.sentences import Lasting, Moment, Step, said
from studio_planner.services.trying.pours import PourBeside, pours_beside
from studio_planner.services.trying.trial import begun_coats

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.plans import Outcome
    from studio_planner.craft.studio import Studio
    from studio_planner.services.moving.comparing import Difference
    from studio_planner.services.questions.sentences import Sentence
    from studio_planner.services.trying.trial import Trial

LOOK_SECONDS = 4
"""How long a trial looks for better plans than the quick one."""

_HOUR = timedelta(hours=1)
_MATTERS = timedelta(minutes=10)
"""Windows that open or close by less than this otherwise are not worth a sentence."""


_MATTERS_HOURS = 1.0
"""Orders that leave by less than this sooner or later are not worth the verdict."""


@dataclass(frozen=True, slots=True)
class PromiseBeside:
    """An order, and what it comes to without and with the change; None: not planned."""

    name: str
    without: Outcome | None
    tried: Outcome | None


@dataclass(frozen=True, slots=True)
class Comparison:
    """What a trial comes to."""

    sign: Sign
    verdict: Sentence
    lines: tuple[Sentence, ...]
    promises: tuple[PromiseBeside, ...]
    pours: tuple[PourBeside, ...]


def compared(today: DeskView, trial: Trial, planned: Studio, again: Studio) -> Comparison:
    """Compare what was planned for a trial with what was planned `again` without the change.

    Both began where today's plan stands, and had as long.
    """
    without, tried = DeskView(again, today.now), DeskView(planned, today.now)
    difference = compare(again, planned)
    pours = pours_beside(without, tried, trial.coats)
    sign, verdict = _verdict(difference, pours, planned)
    # The pours that moved stand in a table of their own.
    told = _without_moves(difference, planned)
    damp = _dampness(without, trial, tried)
    already = _gained_already(compare(today.studio, again), again)
    lines = (*already, *told, *_sooner_shut(pours), *damp, *_cautions(today, trial))
    return Comparison(
        sign=sign,
        verdict=verdict,
        lines=lines,
        promises=_promises(without, tried),
        pours=pours,
    )


def _gained_already(difference: Difference, again: Studio) -> Iterator[Sentence]:
    """What planning again gains by itself, which is no merit of the change."""
    names = {order.key: order.name for order in again.orders}
    sooner = [
        names[row.order]
        for row in difference.promises
        if _matters(row.hours_later) and not row.later
    ]
    if sooner:
        yield said(
            "Planning again without any change already brings {names} sooner; that is not "
            "counted here.",
            names=listed(sooner),
        )


def _without_moves(difference: Difference, planned: Studio) -> tuple[Sentence, ...]:
    said_of = in_full(difference, planned)
    return said_of[: len(said_of) - len(difference.moved)]


def _verdict(
    difference: Difference, pours: tuple[PourBeside, ...], planned: Studio
) -> tuple[Sign, Sentence]:
    if difference.lost:
        names = listed(planned.piece(key).name for key in difference.lost)
        return Sign.NO, said("No: {names} could not be planned any more.", names=names)
    by_promise = _by_promises(difference, planned)
    if by_promise is not None:
        return by_promise
    if difference.worsened:
        text = "No promise changes, but a joint gets worse."
        return Sign.CARE, said(text)
    return _by_windows(difference, pours)


def _by_promises(difference: Difference, planned: Studio) -> tuple[Sign, Sentence] | None:
    names = {order.key: order.name for order in planned.orders}
    mended = [names[row.order] for row in difference.promises if row.mended]
    broken = [names[row.order] for row in difference.promises if row.broken]
    much = [row for row in difference.promises if _matters(row.hours_later)]
    sooner = [names[row.order] for row in much if not row.later]
    later = [names[row.order] for row in much if row.later]
    if broken:
        text = "No: {names} would be late."
        return Sign.NO, said(text, names=listed(broken))
    if mended:
        return Sign.YES, said("Yes: {names} would be in time.", names=listed(mended))
    if sooner and later:
        text = "{sooner} would leave sooner, but {later} later."
        return Sign.CARE, said(text, sooner=listed(sooner), later=listed(later))
    if sooner:
        return Sign.YES, said("{names} would leave sooner.", names=listed(sooner))
    if later:
        return Sign.CARE, said("{names} would leave later.", names=listed(later))
    return None


def _matters(hours: float | None) -> bool:
    return hours is None or abs(hours) >= _MATTERS_HOURS


def _by_windows(difference: Difference, pours: tuple[PourBeside, ...]) -> tuple[Sign, Sentence]:
    opening = [row for row in pours if (row.opens_sooner or timedelta()) >= _MATTERS]
    if opening:
        best = opening[0]  # the next one that is poured
        text = "No promise changes; the window of {what} opens {sooner} sooner."
        sooner = Lasting((best.opens_sooner or timedelta()) / _HOUR)
        return Sign.CARE, said(text, what=best.words, sooner=sooner)
    if difference.moved:
        text = "No promise changes; {count} pours move."
        return Sign.CARE, said(text, count=len(difference.moved))
    return Sign.OPEN, said("It changes nothing in the plan.")


def _sooner_shut(pours: tuple[PourBeside, ...]) -> Iterator[Sentence]:
    shut = [row for row in pours if (row.closes_sooner or timedelta()) >= _MATTERS]
    if shut:
        worst = max(shut, key=lambda row: row.closes_sooner or timedelta())
        then = worst.tried.closes if worst.tried is not None else None
        if then is not None:
            yield said(
                "Windows close sooner too: that of {what} {sooner} sooner, {closes}.",
                what=worst.words,
                sooner=Lasting((worst.closes_sooner or timedelta()) / _HOUR),
                closes=Moment(then),
            )


def _dampness(without: DeskView, trial: Trial, tried: DeskView) -> Iterator[Sentence]:
    """The least margin above the dew point while a place is warmed, then and now."""
    warmth = trial.warmth
    if warmth is None or warmth.place not in {one.key for one in without.studio.places}:
        return
    span = warmth.start, warmth.end
    lows = [
        lowest_margin(air_between(view.timing, warmth.place, slowest(view), *span))
        for view in (without, tried)
    ]
    before, after = (None if low is None else low.margin for low in lows)
    if before is not None and after is not None:
        yield said(
            "Meanwhile the dew-point margin is {after} at the least, instead of {before}.",
            after=Step(after),
            before=Step(before),
        )


def _cautions(today: DeskView, trial: Trial) -> Iterator[Sentence]:
    unwritten = len(begun_coats(trial.studio, today.now))
    if unwritten:
        text = "Taken as poured, as planned, though not written down: {count}."
        yield said(text, count=unwritten)


def _promises(without: DeskView, tried: DeskView) -> tuple[PromiseBeside, ...]:
    zone = tried.studio.time_zone
    before, after = _outcomes(without), _outcomes(tried)
    orders = sorted(tried.studio.orders, key=lambda one: (one.due(zone), one.key))
    return tuple(
        PromiseBeside(one.name, before.get(one.key), after.get(one.key)) for one in orders
    )


def _outcomes(view: DeskView) -> dict[str, Outcome]:
    return {row.order: row for row in (view.plan.outcomes if view.plan is not None else ())}
