"""One product: its bottles, its sheet, its laws, and a pour in the studio's own room."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.forms.same_names import same_name_words
from studio_planner.desktop.idle_work import IdleWork
from studio_planner.desktop.product_pages.cup_plot import CupPlot
from studio_planner.desktop.product_pages.gap_words import gap_sentence
from studio_planner.desktop.product_pages.law_plot import LawPlot
from studio_planner.desktop.product_pages.paste_panel import PastePanel
from studio_planner.desktop.product_pages.pour_view import PourView
from studio_planner.desktop.product_pages.product_form import ProductForm
from studio_planner.desktop.product_pages.sheet_table import SheetTable
from studio_planner.desktop.product_pages.taught_section import TaughtSection
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.data_sheets.gaps import gaps_of
from studio_planner.services.trial_pour import evening_pour

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.products import Product
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.services.desk import DeskView
    from studio_planner.services.trial_pour import TrialPour

_WIDE = 800
"""From this width on the plot stands beside the sheet, unless the sheet is wide itself."""

_FEW_COLUMNS = 3
_USUAL_ROOM = (18.0, 22.0)
_SIGN = "\N{BLACK RIGHT-POINTING TRIANGLE}"


class ProductPanel(QWidget):
    """Everything about one product, from its name down to its cup."""

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show no product yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._pour: TrialPour | None = None
        self.form = ProductForm(canvas, changes, self)
        self.sheet = SheetTable(canvas, changes, self)
        self.paste = PastePanel(canvas, changes, self)
        self.plot = LawPlot(canvas, self)
        self.cup = CupPlot(canvas, self)
        self.pour = PourView(canvas, self)
        self.taught = TaughtSection(canvas, changes, self)
        self.gaps = Line(canvas, "", self)
        self.sentence = Line(canvas, "", self, font="bold")
        self.hint = Line(
            canvas,
            translate("products", "Left and right read it, up and down choose the stage."),
            self,
            font="small",
            colour="quiet",
        )
        self.paste_button = verb(translate("products", "Paste a sheet"), self.open_paste, self)
        self._heads = {
            name: Line(canvas, text, self, font="clock")
            for name, text in (
                ("sheet", translate("products", "What the sheet prints")),
                ("pour", ""),
                ("cup", translate("products", "Larger mixes go faster")),
                ("limits", translate("products", "Densities and limits")),
            )
        }
        self._cup_words = Line(canvas, "", self)
        self._of_pour: tuple[QWidget, ...] = (self._heads["pour"], self.pour)
        self._of_cup: tuple[QWidget, ...] = (self._heads["cup"], self.cup)
        self._key = ""
        self.later = IdleWork(self)
        self._both = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()
        self.sheet.stage_chosen.connect(self.plot.choose_stage)
        self.plot.moved.connect(lambda: self.sentence.say(self.plot.sentence))
        self.sheet.grid.sheet_pasted.connect(self._open_with)
        self.paste.done.connect(self._close_paste)
        self.paste.hide()

    def _lay_out(self) -> None:
        law = QVBoxLayout()
        law.setSpacing(4)
        law.addWidget(self.plot, 1)
        law.addWidget(self.sentence)
        law.addWidget(self.hint)
        sheet = QVBoxLayout()
        sheet.addWidget(self.sheet)
        sheet.addStretch(1)
        self._both.setSpacing(24)
        self._both.addLayout(sheet)
        self._both.addLayout(law, 1)
        head = QHBoxLayout()
        head.addWidget(self._heads["sheet"], 1)
        head.addWidget(self.paste_button)
        caution = Line(self._canvas, deferral(), self, font="small", colour="quiet")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        layout.addWidget(self.form)
        layout.addWidget(self.gaps)
        layout.addLayout(head)
        layout.addWidget(self.paste)
        layout.addLayout(self._both)
        layout.addWidget(self.taught)
        parts: list[QWidget] = [self._heads["pour"], self.pour, self._heads["limits"]]
        parts += [self.form.limits, self._heads["cup"], self._cup_words, self.cup, caution]
        for part in parts:
            layout.addWidget(part)
        layout.addStretch(1)

    def open_paste(self) -> None:
        """Offer a place to paste into."""
        self.paste.show()
        self.paste_button.hide()
        self.paste.text.setFocus()

    def _open_with(self, text: str) -> None:
        self.open_paste()
        self.paste.text.setPlainText(text)

    def _close_paste(self) -> None:
        self.paste.hide()
        self.paste_button.show()
        self.paste_button.setFocus()

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        beside = self.width() >= _WIDE and len(self.sheet.columns()) <= _FEW_COLUMNS
        self._both.setDirection(
            QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        )

    def show_product(self, view: DeskView, product: Product) -> None:
        """Show a product of a studio; what is typed and where the reader is stays.

        Fields and sheet are there at once, what asks many clocks a moment later.
        """
        units = view.studio.units
        self.form.show_product(product, units)
        name = self.form.form.fields["name"]
        name.advise(same_name_words(product, view.studio.products))
        self.sheet.show_product(product, units)
        self.paste.show_product(product, units)
        if product.key != self._key:
            self._key = product.key
            for part in (self.gaps, self.taught, *self._of_pour, *self._of_cup):
                part.hide()
        self.later.do(self._showing_rest(view, product))
        self._arrange()

    def _showing_rest(self, view: DeskView, product: Product) -> Iterator[None]:
        units = view.studio.units
        pour = self._pour_of(view, product)
        room = None if pour is None else pour.celsius()
        yield
        yield from self.plot.showing(product, units, room)
        gaps = gaps_of(product, *(room or _USUAL_ROOM))
        self.gaps.say("\n".join(f"{_SIGN} {gap_sentence(gap, units)}" for gap in gaps))
        yield
        self.taught.show_product(view, product)
        yield
        if pour is not None:
            yield from pour.asking()
        moments = () if pour is None else pour.moments
        self._heads["pour"].say(self._pour_words(pour) if pour else "")
        self.pour.show_pour(pour if moments else None)
        for part in self._of_pour:
            part.setVisible(bool(moments))
        yield
        self.cup.show_product(product, sum(room or _USUAL_ROOM) / 2, units)
        self._cup_words.say(self.cup.sentence)
        for part in self._of_cup:
            part.setVisible(bool(self.cup.points))

    def _pour_of(self, view: DeskView, product: Product) -> TrialPour | None:
        """The pour of this evening; the one that is shown where nothing of it has changed."""
        pour, known = evening_pour(view.studio, product, view.now), self._pour
        if pour is None or known is None or not pour.same_as(known):
            self._pour = pour
        return self._pour

    def _pour_words(self, pour: TrialPour) -> str:
        time = words.clock_time(pour.start, self._canvas.wall)
        return translate("products", "Poured today at {time}: {place}").format(
            time=time, place=pour.place.name
        )
