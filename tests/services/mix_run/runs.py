"""Mixes that are run through at the scale by hands that are told what to do."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.services.mix_run.stand import Do
from studio_planner.services.mix_run.taps import RunningMix, Tap, TapKind
from studio_planner.services.mix_run.walk import stand_of
from tests.services.mixing.bench_mixes import START, poured

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.stand import Stand


def begun() -> RunningMix:
    return RunningMix(coats=(poured(1),), begun=START)


def reads(running: RunningMix, grams: float) -> RunningMix:
    return running.tapped(Tap(kind=TapKind.READS, at=later(running), grams=grams))


def left_over(running: RunningMix, grams: float) -> RunningMix:
    return running.tapped(Tap(kind=TapKind.LEFT, at=later(running), grams=grams))


def taps(running: RunningMix, kind: TapKind) -> RunningMix:
    return running.tapped(Tap(kind=kind, at=later(running)))


def later(running: RunningMix) -> datetime:
    return START + timedelta(minutes=len(running.taps))


def obeyed(
    studio: Studio,
    running: RunningMix,
    until: Do,
    seen: Callable[[Stand], None] = lambda _stand: None,
) -> RunningMix:
    """Do what every step asks for, to the gram, until one asks for `until`."""
    for _ in range(200):
        stand = stand_of(studio, running)
        seen(stand)
        if stand.step.do is until:
            return running
        if stand.step.scale is not None and stand.step.weighs:
            running = reads(running, stand.step.scale.reads_grams)
        else:
            met = stand.step.do is Do.MEET
            running = taps(running, TapKind.MET if met else TapKind.DONE)
    raise AssertionError(until)
