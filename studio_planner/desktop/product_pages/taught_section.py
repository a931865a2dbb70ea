"""What touch tests say of a product, beside its sheet, and verbs to take it or leave it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.products import ProductKind
from studio_planner.desktop.product_pages.law_words import in_a_sentence, stage_name
from studio_planner.desktop.product_pages.taught_bands import Band, TaughtBands, band_names
from studio_planner.desktop.product_pages.taught_words import (
    found_sentence,
    rests_on,
    state_sentence,
    title_of,
)
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.science.stages import Stage
from studio_planner.services.teaching import lessons_of, use_sheet, use_tests

if TYPE_CHECKING:
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.taught import TaughtStage
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.services.desk import DeskView
    from studio_planner.services.teaching import StageLesson, Three

_Facts = tuple[object, ...]


class TaughtSection(QWidget):
    """A heading, and a row for every stage that the product's touch tests tell of."""

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show no product yet."""
        super().__init__(parent)
        self._facts: _Facts = ()
        head = Line(
            canvas, translate("teaching", "What your own touch tests say"), self, font="clock"
        )
        self.empty = Line(
            canvas,
            translate(
                "teaching",
                "No touch test of this product yet. Write down in the log what a finger finds, "
                "and this studio's own times are learned from it.",
            ),
            self,
            colour="quiet",
        )
        self.rows = {
            stage: TaughtRow(canvas, changes, stage, self) for stage in Stage if stage.teachable
        }
        self.foot = Line(
            canvas,
            translate(
                "teaching",
                "Tests teach only what a finger can feel. Recoat closes and cup life stay as "
                "the sheet prints them.",
            ),
            self,
            font="small",
            colour="quiet",
        )
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        for part in (head, self.empty, *self.rows.values(), self.foot):
            layout.addWidget(part)

    def show_product(self, view: DeskView, product: Product) -> None:
        """Show what tests say of a product; nothing is learned anew while nothing changed."""
        self.setVisible(product.kind is not ProductKind.LEAF)
        facts = _facts_of(view.studio, product)
        if len(facts) == len(self._facts) and all(map(_is, facts, self._facts)):
            return
        self._facts = facts
        lessons = {one.stage: one for one in lessons_of(view.studio, product, view.now)}
        for stage, row in self.rows.items():
            row.show_lesson(product, lessons.get(stage), view)
        self.empty.setVisible(not lessons)
        self.foot.setVisible(bool(lessons))


def _facts_of(studio: Studio, product: Product) -> _Facts:
    """What tests are read from; values are frozen, so the same one says the same."""
    return (
        product,
        studio.log,
        studio.poured,
        studio.mixes,
        studio.pieces,
        studio.places,
        studio.units,
    )


def _is(one: object, other: object) -> bool:
    return one is other


class TaughtRow(QWidget):
    """One stage: the sheet's band over the studio's own, in words, and two verbs."""

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, stage: Stage, parent: QWidget
    ) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._changes = changes
        self._stage = stage
        self._product: Product | None = None
        self._offered: TaughtStage | None = None
        self.title = Line(canvas, "", self, font="bold")
        self.bands = TaughtBands(canvas, self)
        self.found = Line(canvas, "", self)
        self.state = Line(canvas, "", self, font="small", colour="quiet")
        name = stage_name(stage)
        self.use = verb(translate("teaching", "Use them"), self._use, self, about=name)
        self.back = verb(
            translate("teaching", "Go back to the data sheet"), self._go_back, self, about=name
        )
        verbs = QHBoxLayout()
        verbs.addWidget(self.use)
        verbs.addWidget(self.back)
        verbs.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        for part in (self.title, self.bands, self.found, self.state):
            layout.addWidget(part)
        layout.addLayout(verbs)

    def show_lesson(self, product: Product, lesson: StageLesson | None, view: DeskView) -> None:
        """Show what tests say of the stage; None hides the row."""
        self.setVisible(lesson is not None)
        self._product = product
        self._offered = None if lesson is None else lesson.offered
        if lesson is None:
            return
        self.title.say(title_of(lesson, view.studio.units))
        self.bands.show_bands(in_a_sentence(stage_name(self._stage)), _bands(lesson))
        self.found.say(f"{found_sentence(lesson)} {rests_on(lesson.shown)}")
        self.state.say(state_sentence(lesson, self._canvas.wall))
        newer = lesson.used is not None and lesson.holds
        self.use.setText(
            translate("teaching", "Use the newer tests too")
            if newer
            else translate("teaching", "Use them")
        )
        self.use.setAccessibleName(f"{self.use.text()}: {stage_name(self._stage)}")
        held = self.use.hasFocus() or self.back.hasFocus()
        self.use.setVisible(lesson.offered is not None)
        self.back.setVisible(lesson.used is not None)
        if held:
            # The verb that was pressed may be gone: the other one is where the hand is.
            (self.back if self.use.isHidden() else self.use).setFocus()

    def _use(self) -> None:
        if self._product is not None and self._offered is not None:
            self._changes.attempt(use_tests(self._product, self._offered))

    def _go_back(self) -> None:
        if self._product is not None:
            self._changes.attempt(use_sheet(self._product, self._stage))


def _bands(lesson: StageLesson) -> tuple[Band, ...]:
    hours = [lesson.sheet, _hours(lesson.shown)]
    if lesson.offered is not None and lesson.offered is not lesson.shown:
        hours.append(_hours(lesson.offered))
    return tuple(Band(*row) for row in zip(band_names(), hours, strict=False))


def _hours(taught: TaughtStage) -> Three:
    return taught.early_hours, taught.likely_hours, taught.late_hours
