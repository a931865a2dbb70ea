"""The steps of a portion that are still to be done, worked out from what is in its cups."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.services.mix_run.stand import Do, RunStep
from studio_planner.services.mixing.cup_plan import portion_time
from studio_planner.services.mixing.scale_steps import ScaleStep, ScaleWork, scale_steps
from studio_planner.services.whole_steps import on_steps

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.stand import PortionRun
    from studio_planner.services.weighing import Cup

_FIRST = {ScaleWork.PART_A, ScaleWork.PART_B, ScaleWork.WHOLE}


def steps_to_do(studio: Studio, run: PortionRun) -> tuple[RunStep, ...]:
    """What is still to be done of a portion, in order."""
    return (*_first_cup(studio, run), *_cups(studio, run), *_pours(run))


def with_minutes(studio: Studio, run: PortionRun, step: RunStep) -> RunStep:
    """A step with the minutes of the cup that it pours, if it pours one."""
    if step.cup is None:
        return step
    times = portion_time(studio, run.portion).cups
    return replace(step, pour=next(time for time in times if time.cup == step.cup))


def _first_cup(studio: Studio, run: PortionRun) -> Iterator[RunStep]:
    first = {one.work: one for one in scale_steps(studio, run.portion) if one.work in _FIRST}
    if not run.mixed:
        if run.a_grams is None and ScaleWork.WHOLE in first:
            yield RunStep(do=Do.WEIGH, scale=first[ScaleWork.WHOLE])
        return
    if run.a_grams is None:
        yield RunStep(do=Do.WEIGH, scale=first[ScaleWork.PART_A])
    if run.met is None:
        yield RunStep(do=Do.MEET, scale=first[ScaleWork.PART_B])
    if run.b_grams is None:
        yield RunStep(do=Do.WEIGH, scale=first[ScaleWork.PART_B])
    yield from _put_right(studio, run)
    if not run.stirred:
        yield RunStep(do=Do.STIR)


def _put_right(studio: Studio, run: PortionRun) -> Iterator[RunStep]:
    if run.b_grams is None or run.real is None:
        return
    if not run.settled:
        yield RunStep(do=Do.MORE, scale=_more(studio, run))
    if too_full(studio, run) and not run.divided:
        yield RunStep(do=Do.DIVIDE)


def too_full(studio: Studio, run: PortionRun) -> bool:
    """Whether more is in one cup than the product allows."""
    limit = run.portion.product.cup_limit_g
    return run.portion.total_grams > limit + studio.settings.scale_step_g / 2


def to_add(studio: Studio, run: PortionRun) -> tuple[ScaleWork, float] | None:
    """What puts the ratio right, and how many grams of it; None where it is right."""
    real, step = run.real, studio.settings.scale_step_g
    if real is None or run.b_grams is None:
        return None
    if abs(real.hardener_share) <= studio.settings.ratio_tolerance_pct / 100.0:
        return None
    if real.hardener_share > 0.0:
        return ScaleWork.PART_A, max(real.add_a_grams, step)
    return ScaleWork.PART_B, max(real.add_b_grams, step)


def _more(studio: Studio, run: PortionRun) -> ScaleStep:
    work, grams = to_add(studio, run) or (ScaleWork.PART_A, 0.0)
    return ScaleStep(
        work=work,
        cup=0,
        name="",
        add_grams=grams,
        reads_grams=on_steps(run.on_scale + grams, studio.settings.scale_step_g),
        tare=False,
    )


def _cups(studio: Studio, run: PortionRun) -> Iterator[RunStep]:
    cups = [cup for cup in run.portion.cups if cup.mix_grams > 0.0]
    if len(run.portion.cups) == 1:
        yield from _colourant(studio, run, cups[0], 0, run.portion.total_grams)
        return
    for cup in cups:
        grams = run.mixes.get(cup.number)
        if grams is None:
            grams = _share(studio, run, cups, cup)
            yield RunStep(do=Do.WEIGH, scale=_mix(cup, grams))
        yield from _colourant(studio, run, cup, cup.number, grams)


def _share(studio: Studio, run: PortionRun, cups: list[Cup], cup: Cup) -> float:
    """What goes into a cup: its share, and into the last one the rest that is there."""
    if cup is not cups[-1]:
        return cup.mix_grams
    others = sum(run.mixes.get(one.number, one.mix_grams) for one in cups[:-1])
    rest = on_steps(run.portion.total_grams - others, studio.settings.scale_step_g)
    return max(rest, 0.0)


def _mix(cup: Cup, grams: float) -> ScaleStep:
    return ScaleStep(
        work=ScaleWork.MIX,
        cup=cup.number,
        name=cup.colour,
        add_grams=grams,
        reads_grams=grams,
        tare=True,
    )


def _colourant(
    studio: Studio, run: PortionRun, cup: Cup, number: int, before: float
) -> Iterator[RunStep]:
    if cup.number in run.colours:
        return
    step = studio.settings.scale_step_g
    grams = on_steps(before * _share_of_colourant(studio, run, cup), step)
    if grams <= 0.0:
        return
    yield RunStep(
        do=Do.WEIGH,
        scale=ScaleStep(
            work=ScaleWork.COLOURANT,
            cup=number,
            name=cup.colourant,
            add_grams=grams,
            reads_grams=on_steps(before + grams, step),
            tare=False,
        ),
    )


def _share_of_colourant(studio: Studio, run: PortionRun, cup: Cup) -> float:
    """The colourant of a cup as a share of the mix that is in it."""
    planned = run.portion.coats[0]
    coat = studio.piece(planned.piece).coat(planned.coat)
    shares = (one.colourant_pct / 100.0 for one in coat.colours if one.name == cup.colour)
    return next(shares, 0.0)


def _pours(run: PortionRun) -> Iterator[RunStep]:
    for cup in run.portion.cups:
        if cup.number not in run.emptied and cup.mix_grams > 0.0:
            yield RunStep(do=Do.POUR, cup=cup)
