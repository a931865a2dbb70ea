"""Studios that touch their films, drawn from what a sheet leaves open: truths and verdicts.

A truth is drawn from the sheet's own bands, as `studio_planner.science.teaching` reads them:
an offset of the whole sheet, a slope for every stretch between or beyond its figures, one
deviation for each pour. The room goes up and down by day, and the true film is followed in
steps of a few minutes, by no clock of ours.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.stages import Stage
from studio_planner.science.teaching import FilmTest, steady_celsius
from studio_planner.science.teaching_grid import DEGREES_OF_FREEDOM
from studio_planner.science.teaching_pours import TeachingSettings
from studio_planner.science.teaching_prior import Prior

if TYPE_CHECKING:
    from random import Random

    from studio_planner.science.laws import StageLaw

SETTINGS = TeachingSettings()
_STEP_HOURS = 0.1


@dataclass(frozen=True, slots=True)
class Truth:
    """A studio's own law: the sheet's, an offset, and a slope for each stretch of the sheet."""

    sheet: StageLaw
    offset: float
    slopes: tuple[float, ...]

    def deviation(self, celsius: float) -> float:
        """How far the truth is from the sheet at a temperature, on ln(hours)."""
        stretch = sum(figure.celsius < celsius for figure in self.sheet.figures)
        grown = Prior(self.sheet, celsius, SETTINGS).slope
        return self.offset + self.slopes[stretch] * grown

    def hours(self, celsius: float) -> float:
        """The true hours at a steady temperature."""
        return self.sheet.hours(celsius) * math.exp(self.deviation(celsius))


def drawn_sheet(random: Random) -> StageLaw:
    """A sheet of one to four figures for a stage that can be taught."""
    stage = random.choice([stage for stage in Stage if stage.teachable])
    count = random.choice([1, 1, 2, 3, 4])
    celsius = random.choice([20.0, 23.0, 25.0]) if count == 1 else 10.0
    hours = math.exp(random.uniform(math.log(3), math.log(48)))
    energy = random.uniform(35, 60) / 8.314e-3
    at = [celsius + 8.0 * n for n in range(count)]
    figures = [SheetFigure(c, hours * math.exp(_rise(energy, at[-1], c))) for c in at]
    if random.random() < 0.3:
        figures = [
            SheetFigure(f.celsius, 0.8 * f.from_hours, 1.2 * f.from_hours) for f in figures
        ]
    return stage_law(stage, figures)


def _rise(energy: float, warm: float, celsius: float) -> float:
    return energy * (1 / (celsius + 273.15) - 1 / (warm + 273.15))


def drawn_truth(random: Random, sheet: StageLaw, celsius: float) -> Truth:
    """A truth from the prior that tests at a temperature would meet."""
    prior = Prior(sheet, celsius, SETTINGS)
    wide = math.sqrt(DEGREES_OF_FREEDOM / random.gammavariate(DEGREES_OF_FREEDOM / 2, 2))
    offset = random.gauss(0, 1) * wide
    offset *= prior.scale_up if offset > 0 else prior.scale_down
    slopes = tuple(random.gauss(0, 1) * wide for _ in range(len(sheet.figures) + 1))
    return Truth(sheet, offset, slopes)


@dataclass(frozen=True, slots=True)
class Room:
    """A room that is warmest in the afternoon."""

    mean: float
    swing: float

    def celsius(self, hour: float) -> float:
        """The temperature at an hour."""
        return self.mean + self.swing * math.sin(hour * math.tau / 24)


@dataclass(frozen=True, slots=True)
class Maker:
    """Who touches: how often in how many pours, and with which scatter."""

    pours: int
    tests: int
    settings: TeachingSettings = SETTINGS


def drawn_maker(random: Random) -> Maker:
    """Three to fourteen tests of one to six pours."""
    return Maker(random.randint(1, 6), random.randint(3, 14))


def touched(random: Random, truth: Truth, room: Room, maker: Maker) -> list[FilmTest]:
    """What a maker finds who touches the films of some pours; each in weather of its own."""
    found: list[FilmTest] = []
    for n in range(maker.pours):
        own = maker.tests // maker.pours + (n < maker.tests % maker.pours)
        then = Room(room.mean + random.gauss(0, 1.5), room.swing)
        film = _Film(
            truth, then, random.uniform(0, 24), random.gauss(0, maker.settings.pour_sd)
        )
        shares = sorted(math.exp(random.gauss(0.05, 0.3)) for _ in range(own))
        found += [film.touch(random, share, f"pour {n}", maker.settings) for share in shares]
    return found


class _Film:
    """One film, followed through its room."""

    def __init__(self, truth: Truth, room: Room, poured: float, deviation: float) -> None:
        self._truth, self._room = truth, room
        self._poured, self._deviation = poured, deviation
        self._hours = self._told = self._true = 0.0

    def touch(
        self, random: Random, share: float, pour: str, settings: TeachingSettings
    ) -> FilmTest:
        """Touch it when the sheet says that it has come so far; never earlier than before."""
        sheet = self._truth.sheet
        while self._told < share:
            celsius = self._room.celsius(self._poured + self._hours)
            rate = _STEP_HOURS / sheet.hours(celsius)
            self._told += rate
            self._true += rate * math.exp(-self._truth.deviation(celsius) - self._deviation)
            self._hours += _STEP_HOURS
        already = math.log(self._true) > _logistic(random, settings.test_sd)
        if random.random() < settings.wild_share:
            already = random.random() < 0.5
        return FilmTest(
            pour, self._told, steady_celsius(sheet, self._hours / self._told), already
        )


def _logistic(random: Random, sd: float) -> float:
    share = random.uniform(1e-9, 1 - 1e-9)
    return math.log(share / (1 - share)) * sd * math.sqrt(3) / math.pi
