"""What a studio's own touch tests say of a product's stages, and taking it or leaving it.

The tests are read off the log and its rooms; what they teach is used only once the maker has
said so, and is then kept as it was found, so that a plan stays what it was until the maker
takes newer tests or goes back to the data sheet.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import stage_word
from studio_planner.craft.taught import TaughtStage
from studio_planner.craft.tongue import translate
from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.stages import Edge, Stage
from studio_planner.science.teaching import FilmTest, Lesson, taught_by
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.teaching_films import TouchedFilms

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.science.laws import StageLaw

Three = tuple[float, float, float]
"""Early, likely and late hours."""

_SAME_SHARE = 1e-9


@dataclass(frozen=True, slots=True)
class StageLesson:
    """What tests say of one stage of a product, beside its sheet, at the tests' temperature.

    `used` is what the maker has said yes to, None where plans go by the sheet; `holds` is False
    when the sheet has changed since, so that plans go by the sheet again. `offered` is what the
    tests of today's log teach, None where it is what is used already, or where there are none.
    """

    stage: Stage
    used: TaughtStage | None
    holds: bool
    offered: TaughtStage | None
    sheet: Three

    @property
    def shown(self) -> TaughtStage:
        """What there is to say of it: what is used where it holds, else what is offered."""
        shown = self.used if self.holds or self.offered is None else self.offered
        assert shown is not None  # noqa: S101 - a stage of which nothing is said is no lesson
        return shown


def lessons_of(studio: Studio, product: Product, now: datetime) -> tuple[StageLesson, ...]:
    """What touch tests say of each stage of a product; nothing of a stage without any."""
    films = TouchedFilms(studio)
    found = (_lesson(films, product, stage, now) for stage in Stage if stage.teachable)
    return tuple(lesson for lesson in found if lesson is not None)


def use_tests(product: Product, offered: TaughtStage) -> Change:
    """Plan with what touch tests say of a stage."""
    words = translate("teaching", "{name}, touch tests used for {stage}").format(
        name=product.name, stage=stage_word(offered.stage)
    )
    return Change(words, lambda now: _with(now, product.key, offered.stage, (offered,)))


def use_sheet(product: Product, stage: Stage) -> Change:
    """Plan with the data sheet again; the tests stay in the log."""
    words = translate("teaching", "{name}, back to the data sheet for {stage}").format(
        name=product.name, stage=stage_word(stage)
    )
    return Change(words, lambda now: _with(now, product.key, stage, ()))


def _with(studio: Studio, key: str, stage: Stage, taught: tuple[TaughtStage, ...]) -> Studio:
    product = studio.product(key)
    others = tuple(one for one in product.taught if one.stage is not stage)
    every = sorted((*others, *taught), key=_in_order)
    return with_thing(studio, replace(product, taught=tuple(every)))


def _in_order(taught: TaughtStage) -> int:
    return list(Stage).index(taught.stage)


def _lesson(
    films: TouchedFilms, product: Product, stage: Stage, now: datetime
) -> StageLesson | None:
    law = product.sheet_law(stage)
    if law is None:
        return None
    used = product.taught_stage(stage)
    holds = used is not None and used.holds_for(law)
    learned = _learned(stage, law.figures, films.tests(product, stage))
    offered = None if learned is None else _taught(law, learned, now)
    if used is not None and offered is not None and _says_the_same(offered, used):
        offered = None
    if used is None and offered is None:
        return None
    shown = used if holds or offered is None else offered
    assert shown is not None  # noqa: S101 - one of the two is there
    return StageLesson(stage, used, holds, offered, _hours(law, shown.celsius))


@lru_cache(maxsize=64)
def _learned(
    stage: Stage, figures: tuple[SheetFigure, ...], tests: tuple[FilmTest, ...]
) -> Lesson | None:
    """Learn once: pages ask after every change, and mostly nothing was touched."""
    return taught_by(stage_law(stage, figures), tests)


def _taught(law: StageLaw, lesson: Lesson, now: datetime) -> TaughtStage:
    said = law.hours(lesson.celsius)
    return TaughtStage(
        stage=law.stage,
        celsius=lesson.celsius,
        sheet_hours=said,
        early_hours=said * lesson.early,
        likely_hours=said * lesson.factor,
        late_hours=said * lesson.late,
        sheet_factor=lesson.sheet_factor,
        band_left=lesson.band_left,
        tests=lesson.tests,
        pours=lesson.pours,
        at=now,
    )


def _says_the_same(one: TaughtStage, other: TaughtStage) -> bool:
    if (one.tests, one.pours) != (other.tests, other.pours):
        return False
    pairs = (
        (one.sheet_hours, other.sheet_hours),
        (one.celsius, other.celsius),
        (one.early_hours, other.early_hours),
        (one.likely_hours, other.likely_hours),
        (one.late_hours, other.late_hours),
    )
    return all(abs(a - b) <= _SAME_SHARE * abs(b) for a, b in pairs)


def _hours(law: StageLaw, celsius: float) -> Three:
    early, likely, late = (law.hours(celsius, edge) for edge in Edge)
    return early, likely, late
