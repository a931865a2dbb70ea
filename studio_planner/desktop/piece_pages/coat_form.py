"""One coat as the maker enters it, with the grams it takes as they type."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import CoatKind
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import ChoiceField, FlagField, NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.piece_pages.coat_fields import FacesField
from studio_planner.desktop.piece_pages.colours_field import ColoursField
from studio_planner.desktop.piece_pages.cup_words import cups_words
from studio_planner.desktop.piece_pages.grams_fold import GramsFold
from studio_planner.desktop.piece_pages.joint_words import fault_words, joints_offered
from studio_planner.desktop.piece_pages.typed import type_again, typed_in
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.editing.grams import parts_of
from studio_planner.services.editing.new_coats import of_kind
from studio_planner.services.editing.recipes import recipes_before

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.piece_pages.typed import Typed
    from studio_planner.services.editing.stack_faults import StackFault

_FIELDS = (
    "kind",
    "product",
    "film_mm",
    "faces",
    "joint",
    "colours",
    "sandable",
    "test_first",
    "taped",
    "trimmed",
    "area_cm2",
    "setup_minutes",
    "piece_minutes",
)


class CoatForm(QWidget):
    """The chosen coat; each field that is edited becomes one change.

    `enter` gets what the change is called, and makes the new coat when it is called; it lets
    InvalidEntry pass. `were_it_on` names the blank that a pattern's grams are reckoned for;
    empty for a piece's own coats.
    """

    def __init__(
        self,
        canvas: Canvas,
        enter: Callable[[str, Callable[[], Coat]], object],
        parent: QWidget | None = None,
    ) -> None:
        """Show no coat yet."""
        super().__init__(parent)
        self._enter_coat = enter
        self._shown = ("", "")
        self._typed: dict[tuple[str, str], Typed] = {}
        self.were_it_on = ""
        self._studio: Studio | None = None
        self._piece: Piece | None = None
        self._coat: Coat | None = None
        self.name = Line(canvas, "", self, font="clock")
        self.grams = Line(canvas, "", self, colour="warmth", font="bold")
        self.in_cups = Line(canvas, "", self, font="small")
        self.fold = GramsFold(canvas, self)
        self.caution = Line(canvas, deferral(), self, font="small", colour="quiet")
        self.poured = Line(canvas, "", self, font="small", colour="now")
        self.form = Form(canvas, self._enter, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        above = (self.name, self.poured, self.grams, self.in_cups, self.fold)
        for widget in (*above, self.form, self.caution):
            layout.addWidget(widget)
        layout.addStretch(1)
        self._add_fields(canvas)

    def _add_fields(self, canvas: Canvas) -> None:
        add = self.form.add
        kinds = [(kind, kind_word(kind)) for kind in CoatKind]
        add("kind", ChoiceField(canvas, translate("pieces", "Kind of coat"), kinds))
        self.product = ChoiceField(canvas, translate("pieces", "Product"))
        add("product", self.product)
        self.film = NumberField(canvas, translate("pieces", "Film"), Quantity.FILM)
        self.film.editor.textEdited.connect(lambda _text: self._say_grams())
        add("film_mm", self.film)
        add("faces", FacesField(canvas, translate("pieces", "Faces")))
        self.joint = ChoiceField(canvas, translate("pieces", "Meets the coat below"))
        add("joint", self.joint)
        self.colours = ColoursField(canvas, translate("pieces", "Colours"))
        add("colours", self.colours)
        for name, label in (
            ("sandable", translate("pieces", "Can be sanded")),
            ("test_first", translate("pieces", "The next coat may rely on a touch test")),
            ("taped", translate("pieces", "Taped; the tape is pulled in its window")),
            ("trimmed", translate("pieces", "Drips are trimmed in their window")),
        ):
            add(name, FlagField(canvas, label))
        area = NumberField(
            canvas,
            translate("pieces", "Own area of one piece, if measured"),
            Quantity.AREA,
            optional=True,
        )
        add("area_cm2", area)
        minutes = Quantity.MINUTES
        add(
            "setup_minutes",
            NumberField(canvas, translate("pieces", "Set-up, once a mix"), minutes),
        )
        add("piece_minutes", NumberField(canvas, translate("pieces", "Every piece"), minutes))

    def _keep_typed(self) -> None:
        """Keep what is wrong in the form for when its coat is looked at again."""
        typed = typed_in(self.form)
        if typed is None:
            self._typed.pop(self._shown, None)
        else:
            self._typed[self._shown] = typed

    def show_coat(self, studio: Studio, piece: Piece, key: str, poured: str) -> None:
        """Show a coat of a piece; `poured` says why it can't be changed, if so."""
        coat = piece.coat(key)
        other = self._shown != (piece.key, key)
        if other:
            self._keep_typed()
        self._shown = (piece.key, key)
        self._studio, self._piece, self._coat = studio, piece, coat
        name = piece.coat_name(key)
        self.name.say(name[:1].upper() + name[1:])
        self.poured.say(poured)
        self.product.offer([(product.key, product.name) for product in studio.products])
        self.joint.offer(joints_offered(studio, piece, coat))
        self.colours.offer(studio.pigments, recipes_before(studio, piece.key))
        values = {field: getattr(coat, field) for field in _FIELDS}
        self.form.show_values(values, studio.units, fresh=other)
        typed = self._typed.get(self._shown) if other else None
        if typed is not None:
            type_again(self.form, typed)
        self._say_grams()

    def advise(self, faults: Sequence[StackFault]) -> None:
        """Say what wants a second look beside the fields that it is about."""
        studio = self._studio
        if studio is None:
            return
        for name, field in self.form.fields.items():
            about = [fault_words(studio, one) for one in faults if one.field == name]
            field.advise(" ".join(about))

    def type_film(self, mm: float) -> None:
        """Enter a film as if it were typed: refused, it stays in the field."""
        self.film.show_value(mm)
        self.form.enter("film_mm")
        self._say_grams()

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        studio, coat = self._studio, self._coat
        if studio is None or coat is None:
            return

        def made() -> Coat:
            if name == "kind":
                return of_kind(studio, coat, values["kind"])
            # What was typed before the stack changed may no longer be offered.
            return replace(coat, **{**values, "joint": values["joint"] or coat.joint})

        self._enter_coat(self.form.fields[name].words, made)

    def _say_grams(self) -> None:
        studio, piece, coat = self._studio, self._piece, self._coat
        if studio is None or piece is None or coat is None:
            return
        self.in_cups.say("")
        try:
            typed = replace(coat, film_mm=self.film.value() or 0.0)
            parts = parts_of(studio, piece, typed)
        except (ValueError, InvalidEntry):
            self.fold.hide()
            self.grams.say(translate("pieces", "Grams follow when the film is a number."))
            return
        self.fold.show_parts(parts, studio.units)
        if parts is None:
            self.grams.say(translate("pieces", "Leaf is laid, not weighed."))
            return
        said = translate("pieces", "{grams} mixed for this coat, without what stays in cups")
        if self.were_it_on:
            said = translate("pieces", "{grams} mixed, were it on {blank}")
        mixed = words.mass(parts.grams, studio.units)
        self.grams.say(said.format(grams=mixed, blank=self.were_it_on))
        self.in_cups.say(cups_words(studio, coat, parts.mixed))
