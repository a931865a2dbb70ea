"""A sheet pasted as text: what is read of it, what is not understood, and taking it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QBoxLayout,
    QCheckBox,
    QHBoxLayout,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.craft.products import RatioBy
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.product_pages.law_words import row_name
from studio_planner.desktop.product_pages.wrong_words import wrong_words
from studio_planner.desktop.quantities import Quantity, number_words
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import quoted, translate
from studio_planner.science.stages import Stage
from studio_planner.services.data_sheets.figures import read_figures
from studio_planner.services.data_sheets.times import PrintedTime, shown_time
from studio_planner.services.editing.products import (
    changed_product,
    lacks_densities,
    with_sheet,
)

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.products import MixRatio, Product, SheetPoint
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.services.data_sheets.figures import ReadSheet

_MOST_LINES = 14
_WIDE = 560
_SIGN = "\N{BLACK RIGHT-POINTING TRIANGLE}"


class PastePanel(QWidget):
    """Text at the left, what it means at the right; taken as one change.

    Signals:
        done: the figures were taken, or the maker has closed it.
    """

    done = Signal()

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Be empty."""
        super().__init__(parent)
        self._canvas = canvas
        self._changes = changes
        self._product: Product | None = None
        self._units: Units | None = None
        self.read: ReadSheet = read_figures("")
        self.text = QPlainTextEdit(self)
        self.text.setTabChangesFocus(True)
        self.text.setMinimumSize(220, 150)
        self.text.setAccessibleName(translate("products", "The sheet's text or table"))
        self.text.setPlaceholderText(
            translate(
                "products",
                "Paste lines or a table of the sheet, for example\n"
                "Recoat window 4-6 h to 24 h at 20 °C",
            )
        )
        self.celsius = NumberField(
            canvas,
            translate("products", "Where a line names no temperature"),
            Quantity.TEMPERATURE,
            self,
            optional=True,
        )
        self.named = QCheckBox(self)
        self.found = Line(canvas, "", self)
        self.unread = Line(canvas, "", self, font="small", colour="now")
        self.wrong = Line(canvas, "", self, colour="now")
        self.take_button = verb(_take_words(0), self.take, self)
        self.close_button = verb(translate("products", "Close"), self._close, self)
        self._both = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._lay_out()
        self.text.textChanged.connect(self._read)
        self.celsius.edited.connect(self._read)
        self.named.toggled.connect(lambda _on: self._offer())
        self._read()

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.addWidget(self.text, 1)
        left.addWidget(self.celsius)
        verbs = QHBoxLayout()
        verbs.addWidget(self.take_button)
        verbs.addWidget(self.close_button)
        verbs.addStretch(1)
        right = QVBoxLayout()
        for part in (self.named, self.found, self.unread, self.wrong):
            right.addWidget(part)
        right.addStretch(1)
        right.addLayout(verbs)
        self._both.setContentsMargins(0, 0, 0, 0)
        self._both.setSpacing(18)
        self._both.addLayout(left, 1)
        self._both.addLayout(right, 1)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = self.width() >= _WIDE
        self._both.setDirection(
            QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom
        )

    def show_product(self, product: Product, units: Units) -> None:
        """Read for a product; text that was pasted for another one is dropped."""
        if self._product is not None and self._product.key != product.key:
            self.text.clear()
        self._product, self._units = product, units
        self.celsius.set_units(units)
        self._read()

    def _read(self) -> None:
        if self._units is None:
            return
        self.celsius.say_right()
        try:
            celsius = self.celsius.value()
        except ValueError as error:
            self.celsius.say_wrong(str(error))
            celsius = None
        self.read = read_figures(self.text.toPlainText(), celsius)
        self.found.say(self._found_words(self.read.points, self._units))
        self.unread.say(self._unread_words())
        self.wrong.say("")
        self._offer_name()
        self._offer()

    def _offer_name(self) -> None:
        """Offer what the sheet is headed with as the name: of a new product, unless refused."""
        product, name = self._product, self.read.name
        offered = product is not None and name not in {"", product.name}
        if product is not None and not offered:
            self.named.setChecked(not product.sheet)
        said = translate("products", "Call it {name}").format(name=quoted(name))
        said = said.replace("&", "&&")  # one alone would be a key
        self.named.setText(said)
        self.named.setVisible(offered)

    @property
    def _name(self) -> str:
        """The name that is taken too; empty when none is."""
        taken = not self.named.isHidden() and self.named.isChecked()
        return self.read.name if taken else ""

    def _offer(self) -> None:
        count = len(self.read.points)
        something = count > 0 or self._ratio() is not None or bool(self._name)
        self.take_button.setEnabled(something)
        self.take_button.setText(_take_words(count))

    def _found_words(self, points: tuple[SheetPoint, ...], units: Units) -> str:
        ratio = self._ratio()
        if not points and ratio is None:
            return translate(
                "products", "What is understood will stand here, to be looked over."
            )
        lines = [] if ratio is None else [_ratio_words(ratio)]
        if self._waits(ratio):
            lines.append(_waiting_words())
        lines += [_figure_words(point, units) for point in points[:_MOST_LINES]]
        return "\n".join([*lines, *_more(len(points))])

    def _ratio(self) -> MixRatio | None:
        """The ratio that was read, where the product is one that has a ratio."""
        mixed = self._product is not None and self._product.ratio is not None
        return self.read.ratio if mixed else None

    def _waits(self, ratio: MixRatio | None) -> bool:
        """Whether that ratio has to wait for the densities of A and B."""
        product = self._product
        return ratio is not None and product is not None and lacks_densities(product, ratio)

    def _unread_words(self) -> str:
        if not self.read.unread:
            return ""
        head = translate("products", "Not understood:")
        lines = [
            translate("products", "Line {number}, {line}: {reason}").format(
                number=one.number, line=quoted(one.line.strip()[:48]), reason=one.reason
            )
            for one in self.read.unread[:_MOST_LINES]
        ]
        return "\n".join([head, *lines, *_more(len(self.read.unread))])

    def take(self) -> None:
        """Put what was read on the product's sheet, in one change.

        A ratio that waits for densities stays here, to be taken when they are entered.
        """
        product, points = self._product, self.read.points
        ratio, name, waits = self._ratio(), self._name, self._waits(self._ratio())
        if product is None or not self.take_button.isEnabled():
            return
        what = translate("products", "{count} figures pasted").format(count=len(points))
        change = changed_product(
            product, what, lambda now: with_sheet(now, points, ratio, name)
        )
        try:
            self._changes.make(change)
        except StudioError as error:
            self._refuse(error)
            return
        if waits:
            self.wrong.say(f"{_SIGN} {_left_words()}")
        else:
            self._close()

    def _refuse(self, error: StudioError) -> None:
        said = str(error)
        if isinstance(error, InvalidEntry) and self._units is not None:
            said = wrong_words(error, self._units)
        self.wrong.say(f"{_SIGN} {said}")

    def _close(self) -> None:
        self.text.clear()
        self.done.emit()


def _more(count: int) -> list[str]:
    if count <= _MOST_LINES:
        return []
    return [translate("products", "and {count} more").format(count=count - _MOST_LINES)]


def _waiting_words() -> str:
    return translate(
        "products",
        "By volume it can be weighed only with the densities of A and of B: enter them below, "
        "then take the ratio too.",
    )


def _left_words() -> str:
    return translate(
        "products",
        "All the rest is taken. The ratio waits here for the densities of A and of B.",
    )


def _ratio_words(ratio: MixRatio) -> str:
    texts = {
        RatioBy.WEIGHT: translate("products", "Mix ratio {a} to {b} by weight"),
        RatioBy.VOLUME: translate("products", "Mix ratio {a} to {b} by volume"),
        RatioBy.ASSUMED: translate(
            "products",
            "Mix ratio {a} to {b}; it does not say whether by weight or by volume: choose it "
            "from the sheet",
        ),
    }
    return texts[ratio.by].format(a=number_words(ratio.a), b=number_words(ratio.b))


def _figure_words(point: SheetPoint, units: Units) -> str:
    mass = point.mass_g if point.stage is Stage.CUP_LIFE else None
    return translate("products", "{stage}: {time} at {degrees}").format(
        stage=row_name(point.stage, mass, units),
        time=shown_time(PrintedTime(point.from_hours, point.to_hours)),
        degrees=words.degrees(point.celsius, units),
    )


def _take_words(count: int) -> str:
    if count == 0:  # the ratio, or the name, or nothing yet
        return translate("products", "Take what was read")
    if count == 1:
        return translate("products", "Take 1 figure")
    return translate("products", "Take {count} figures").format(count=count)
