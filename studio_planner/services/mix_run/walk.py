"""From taps to where a mix stands: every tap is taken in turn, from the beginning."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.services.mix_run.stand import Do, LeftInCup, PortionRun, RunStep, Stand
from studio_planner.services.mix_run.steps_to_do import steps_to_do, to_add, with_minutes
from studio_planner.services.mix_run.taps import TapKind
from studio_planner.services.mixing.at_the_scale import (
    ScaleVerdict,
    with_real_a,
    with_real_parts,
)
from studio_planner.services.mixing.scale_steps import ScaleWork
from studio_planner.services.weighing import as_really_weighed, weigh_mix
from studio_planner.services.whole_steps import on_steps

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.taps import RunningMix, Tap
    from studio_planner.services.mixing.scale_steps import ScaleStep
    from studio_planner.services.weighing import Cup


def stand_of(studio: Studio, running: RunningMix) -> Stand:
    """Where a running mix stands.

    A tap that does not fit its step is passed over. KeyError when a piece, coat or product of
    it is not in the studio any more.
    """
    walk = _Walk(studio, running)
    for tap in running.taps:
        walk.take(tap)
    return walk.stand()


def least_reading(stand: Stand) -> float:
    """What the display has to read at least, so that anything was added [g]."""
    scale = stand.step.scale
    if scale is None:
        return 0.0
    return max(0.0, scale.reads_grams - scale.add_grams)


class _Walk:
    def __init__(self, studio: Studio, running: RunningMix) -> None:
        self._studio = studio
        self._planned = weigh_mix(studio, running.coats)
        self._portions = [PortionRun.of(self._planned[0])]
        self._written = False
        self._done = 0

    @property
    def _now(self) -> PortionRun:
        return self._portions[-1]

    def _steps(self) -> tuple[RunStep, ...]:
        left = steps_to_do(self._studio, self._now)
        if left or len(self._portions) < len(self._planned):
            return left
        return (RunStep(do=Do.WRITTEN if self._written else Do.WRITE),)

    def stand(self) -> Stand:
        steps = self._steps()
        return Stand(
            step=with_minutes(self._studio, self._now, steps[0]),
            now=self._now,
            portions=tuple(self._portions),
            parts=len(self._planned),
            step_number=self._done + 1,
            step_count=self._done + len(steps),
        )

    def take(self, tap: Tap) -> None:
        """Take one tap; one that does not fit is passed over."""
        steps = self._steps()
        step = steps[0]
        if tap.kind is TapKind.READS and step.weighs and step.scale is not None:
            self._reads(step, step.scale, tap)
        elif tap.kind is TapKind.LEFT and step.cup is not None:
            self._is_left(step.cup, tap)
        else:
            self._done_with(step, tap)
        left = self._steps()
        self._done += len(left) < len(steps)
        if not left:
            self._portions.append(PortionRun.of(self._planned[len(self._portions)]))
            self._done = 0

    def _done_with(self, step: RunStep, tap: Tap) -> None:
        now = self._now
        if step.do is Do.MEET and tap.kind is TapKind.MET:
            now.met = tap.at
        elif step.do is Do.MORE and tap.kind is TapKind.LEAVE and now.can_leave:
            now.settled = True
        elif tap.kind is TapKind.DONE:
            self._is_done(step, tap)

    def _is_done(self, step: RunStep, tap: Tap) -> None:
        now = self._now
        if step.do is Do.DIVIDE:
            now.divided = True
        elif step.do is Do.STIR:
            now.stirred = True
        elif step.cup is not None:
            now.emptied[step.cup.number] = tap.at
        elif step.do is Do.WRITE:
            self._written = True

    def _is_left(self, cup: Cup, tap: Tap) -> None:
        coloured = cup.colourant_grams > 0.0 or len(self._now.portion.cups) > 1
        self._now.left[cup.number] = LeftInCup(
            colour=cup.colour if coloured else "",
            grams=tap.grams,
            at=tap.at,
        )

    # What the display reads

    def _reads(self, step: RunStep, scale: ScaleStep, tap: Tap) -> None:
        grams = on_steps(tap.grams, self._studio.settings.scale_step_g)
        if grams <= 0.0:
            return
        if scale.work is ScaleWork.MIX:
            self._now.mixes[scale.cup] = grams
        elif scale.work is ScaleWork.COLOURANT:
            self._coloured(scale, grams)
        elif scale.work is ScaleWork.WHOLE:
            self._weighed_whole(grams, tap)
        elif step.do is Do.MORE:
            self._added(scale, grams)
        elif scale.work is ScaleWork.PART_A:
            self._weighed_a(grams, tap)
        else:
            self._weighed_b(grams)

    def _coloured(self, scale: ScaleStep, grams: float) -> None:
        now = self._now
        cup = scale.cup or now.portion.cups[0].number
        before = scale.reads_grams - scale.add_grams
        now.colours[cup] = max(0.0, round(grams - before, 6))

    def _weighed_whole(self, grams: float, tap: Tap) -> None:
        now = self._now
        now.a_grams, now.a_at = grams, tap.at
        real = as_really_weighed(self._studio, now.portion, grams, 0.0)
        now.portion = replace(real, a_grams=None, b_grams=None)

    def _weighed_a(self, grams: float, tap: Tap) -> None:
        now = self._now
        planned = self._planned[len(self._portions) - 1]
        now.real = with_real_a(self._studio, planned, grams)
        if now.real.verdict is ScaleVerdict.STOP:
            return  # nothing has met yet: some of A goes back, and is weighed anew
        now.a_grams, now.a_at = grams, tap.at
        now.portion = now.real.portion

    def _weighed_b(self, grams: float) -> None:
        b_grams = round(grams - (self._now.a_grams or 0.0), 6)
        if b_grams > 0.0:
            self._now.b_grams = b_grams
            self._judge()

    def _added(self, scale: ScaleStep, grams: float) -> None:
        now = self._now
        more = round(grams - now.on_scale, 6)
        if more < 0.0 or now.a_grams is None or now.b_grams is None:
            return
        if scale.work is ScaleWork.PART_A:
            now.a_grams = round(now.a_grams + more, 6)
        else:
            now.b_grams = round(now.b_grams + more, 6)
        self._judge()

    def _judge(self) -> None:
        now = self._now
        if now.a_grams is None or now.b_grams is None:
            return
        now.real = with_real_parts(self._studio, now.portion, now.a_grams, now.b_grams)
        now.portion = now.real.portion
        now.settled = to_add(self._studio, now) is None
