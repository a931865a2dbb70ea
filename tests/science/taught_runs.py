"""Many studios that learn from their tests: how often the truth is where the lesson says."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from random import Random
from typing import TYPE_CHECKING

from studio_planner.science.stages import Edge
from studio_planner.science.taught_laws import TaughtFigure, taught_law
from studio_planner.science.teaching import FilmTest, taught_by
from tests.science.touching import (
    SETTINGS,
    Maker,
    Room,
    drawn_maker,
    drawn_sheet,
    drawn_truth,
    touched,
)

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from studio_planner.science.laws import StageLaw
    from studio_planner.science.teaching import Lesson
    from tests.science.touching import Truth


@dataclass(frozen=True, slots=True)
class Run:
    """One studio: whether its law and its next pour lie where the lesson says.

    `law` is the studio's law at the temperature of the tests, `next_pour` a pour there,
    `elsewhere` a pour at some other temperature of the same room by the taught law's edges;
    `width` the new band over the sheet's on ln(hours), `miss` how far the likely time is from
    the true law on ln(hours).
    """

    law: bool
    next_pour: bool
    elsewhere: bool
    width: float
    miss: float


def drawn_run(
    seed: int,
    *,
    maker: Callable[[Random], Maker] = drawn_maker,
    away: float | None = None,
) -> Run:
    """One seeded studio; `away` puts the truth so many deviations of the prior off."""
    random = Random(seed)  # noqa: S311 - the same studio every time
    sheet = drawn_sheet(random)
    room = Room(random.uniform(14, 25), random.uniform(0, 3))
    truth = drawn_truth(random, sheet, room.mean)
    if away is not None:
        truth = _moved_to(truth, room, away * random.choice((-1, 1)))
    lesson = taught_by(sheet, touched(random, truth, room, maker(random)))
    assert lesson is not None
    return _judged(random, truth, lesson, room)


def moved_by_wild(seed: int, factor: float, *, same_pour: bool) -> float:
    """By what share one wild test beside seven honest ones moves the likely time.

    It says "already" (a factor below 1) or "not yet" (above) at that share of the true time.
    """
    random = Random(seed)  # noqa: S311 - the same studio every time
    sheet = drawn_sheet(random)
    room = Room(random.uniform(14, 25), random.uniform(0, 3))
    truth = drawn_truth(random, sheet, room.mean)
    maker = Maker(random.randint(1, 7), 7, replace(SETTINGS, wild_share=0.0))
    seven = touched(random, truth, room, maker)
    honest = taught_by(sheet, seven)
    assert honest is not None
    told = math.exp(truth.deviation(honest.celsius)) * factor
    pour = "pour 0" if same_pour else "wild"
    moved = taught_by(sheet, [*seven, FilmTest(pour, told, honest.celsius, factor < 1)])
    assert moved is not None
    return math.expm1(abs(math.log(moved.factor / honest.factor)))


def _moved_to(truth: Truth, room: Room, deviations: float) -> Truth:
    """The truth with its offset and slopes together so many deviations from the sheet."""
    edge = Edge.LATE if deviations > 0 else Edge.EARLY
    sheet = truth.sheet
    width = abs(math.log(sheet.hours(room.mean, edge) / sheet.hours(room.mean)))
    wanted = deviations * width / 1.645
    factor = wanted / truth.deviation(room.mean)
    return replace(
        truth,
        offset=truth.offset * factor,
        slopes=tuple(slope * factor for slope in truth.slopes),
    )


def _judged(random: Random, truth: Truth, lesson: Lesson, room: Room) -> Run:
    true = math.exp(truth.deviation(lesson.celsius))
    pour = math.exp(random.gauss(0, SETTINGS.pour_sd))
    law = law_of(truth.sheet, lesson)
    celsius = room.mean + random.uniform(-3, 3)
    there = truth.hours(celsius) * pour
    early, late = (truth.sheet.hours(lesson.celsius, edge) for edge in (Edge.EARLY, Edge.LATE))
    return Run(
        law=lesson.law_early <= true <= lesson.law_late,
        next_pour=lesson.early <= true * pour <= lesson.late,
        elsewhere=law.hours(celsius, Edge.EARLY) <= there <= law.hours(celsius, Edge.LATE),
        width=math.log(lesson.late / lesson.early) / math.log(late / early),
        miss=abs(math.log(lesson.factor / true)),
    )


def law_of(sheet: StageLaw, lesson: Lesson) -> StageLaw:
    """The taught law of a lesson."""
    said = sheet.hours(lesson.celsius)
    own = TaughtFigure(
        lesson.celsius, said * lesson.early, said * lesson.late, said * lesson.factor
    )
    return taught_law(
        sheet,
        own,
        sheet_factor=lesson.sheet_factor,
        band_left=lesson.band_left,
        tests=lesson.tests,
    )


def share(found: Iterable[bool]) -> float:
    """The share of what is true."""
    every = list(found)
    return sum(every) / len(every)
