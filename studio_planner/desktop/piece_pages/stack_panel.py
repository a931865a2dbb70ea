"""The stack of a piece or a pattern: its section with verbs, and the chosen coat beside it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import QBoxLayout, QLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.craft.kind_words import kind_word
from studio_planner.desktop.piece_pages.coat_form import CoatForm
from studio_planner.desktop.piece_pages.joint_words import fault_words, for_form, planned_rows
from studio_planner.desktop.piece_pages.picture_files import kept_picture
from studio_planner.desktop.piece_pages.piece_lines import blank_words
from studio_planner.desktop.piece_pages.scrolling import scrolled
from studio_planner.desktop.piece_pages.stack_section import StackSection
from studio_planner.desktop.piece_pages.stack_verbs import StackVerbs, section_hint
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing import stacks
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.new_coats import new_coat, refitted
from studio_planner.services.editing.stack_faults import refused_by, stack_faults

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.pieces import Coat, CoatKind, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.editing.stack_faults import StackFault
    from studio_planner.services.editing.stacks import Stack, StackHolder

_FORM_WIDTH, _WIDEST_FORM, _SCROLL_BAR, _GAP = 336, 400, 18, 18
_LOW, _HIGH = 240, 720
"""How high it is at least, side by side and below each other; what is less is scrolled."""

_BESIDE_FILMS = 270
"""Pixels of the panel that are not film: verbs, blank, scale, hint."""


class StackPanel(QWidget):
    """Works on one stack at a time."""

    coat_chosen = Signal(str)

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no stack yet."""
        super().__init__(parent)
        self._desk = desk
        self._view: DeskView | None = None
        self._holder: StackHolder | None = None
        self._piece: Piece | None = None
        self._refused: tuple[StackFault, ...] = ()  # of what is typed
        self._told: tuple[StackFault, ...] = ()  # of a verb
        self._found: tuple[StackFault, ...] = ()
        self.section = StackSection(desk.canvas, self)
        self.coat_form = CoatForm(desk.canvas, self._enter_coat, self)
        self.coat_form.colours.picture = lambda key: kept_picture(desk, key)
        self.hint = section_hint(desk.canvas, self)
        outdated = translate(
            "pieces", "The times are those of the plan before the last changes; plan again."
        )
        self.outdated = Line(desk.canvas, outdated, self, font="small", colour="now")
        self.outdated.hide()
        self.verbs = StackVerbs(self)
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()
        self._listen()

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setContentsMargins(0, 0, 0, 0)
        left.setSpacing(6)
        left.addWidget(self.verbs)
        left.addWidget(scrolled(self.section, self), 1)
        left.addWidget(self.outdated)
        left.addWidget(self.hint)
        self.form_scroll = scrolled(self.coat_form, self)
        self._columns.setSpacing(_GAP)
        # Its least width is that of one above the other, so that it can be told to be so.
        self._columns.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        self._columns.addLayout(left, 1)
        self._columns.addWidget(self.form_scroll)
        self._columns.setContentsMargins(0, 0, 0, 0)
        self.setLayout(self._columns)

    def _listen(self) -> None:
        section, verbs = self.section, self.verbs
        verbs.add_asked.connect(self.add_coat)
        verbs.copy_asked.connect(self.copy_coat)
        verbs.remove_asked.connect(self.remove_coat)
        verbs.nearer_asked.connect(section.nearer)
        verbs.whole_asked.connect(section.whole)
        section.coat_chosen.connect(lambda _key: self._coat_chosen())
        section.coat_chosen.connect(self.coat_chosen)
        section.film_asked.connect(self._draw_film)
        section.move_asked.connect(self._move)
        section.add_asked.connect(verbs.add_button.showMenu)
        section.copy_asked.connect(self.copy_coat)
        section.remove_asked.connect(self.remove_coat)
        section.cannot.connect(self._desk.tell)

    @property
    def _form_width(self) -> int:
        needed = self.coat_form.minimumSizeHint().width() + _SCROLL_BAR
        return min(max(_FORM_WIDTH, needed), _WIDEST_FORM)

    @property
    def beside_width(self) -> int:
        """From this width on the coat stands beside the section, else below it."""
        return self.verbs.sizeHint().width() + _GAP + self._form_width

    @override
    def minimumSizeHint(self) -> QSize:
        widest = max(self.verbs.minimumSizeHint().width(), self._form_width)
        return QSize(widest, super().minimumSizeHint().height())

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = self.width() >= self.beside_width
        self._columns.setDirection(
            QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom
        )
        self.setMinimumHeight(_LOW if wide else _HIGH)
        self.form_scroll.setMinimumWidth(self._form_width if wide else 0)
        self.form_scroll.setMaximumWidth(self._form_width if wide else 10_000)
        beside = _BESIDE_FILMS if wide else _BESIDE_FILMS + self.form_scroll.height()
        self.section.set_room(self.height() - beside)

    # What is shown

    def show_stack(self, view: DeskView, holder: StackHolder) -> None:
        """Show a stack of the studio as it is now."""
        if self._holder is None or holder.bearer != self._holder.bearer:
            self._refused = self._told = ()
            self.section.chosen = ""
        self._view, self._holder = view, holder
        self._piece = stacks.as_piece(view.studio, holder)
        self._show_section()
        self._show_coat()

    def choose_coat(self, key: str) -> None:
        """Choose a coat of the stack."""
        self.section.choose(key)
        self._show_coat()

    def _coat_chosen(self) -> None:
        if self._told:
            self._told = ()
            self._show_section()
        self._show_coat()

    def _show_section(self) -> None:
        view, piece = self._view, self._piece
        if view is None or piece is None:
            return
        found = stack_faults(view.studio, piece, view.timing, view.now)
        self._found = found
        keys = {coat.key for coat in piece.stack}
        refused = (fault for fault in (*self._refused, *self._told) if fault.coat in keys)
        self.section.show_piece(
            view.studio, piece, planned_rows(view.plan, piece), (*refused, *found)
        )

    def _show_coat(self) -> None:
        view, piece, holder = self._view, self._piece, self._holder
        key = self.section.chosen
        if view is None or piece is None or holder is None or not key:
            return
        poured = stacks.poured_coats(view.studio, holder)
        laid = any(coat.key == key for coat in poured)
        why = stacks.poured_words(piece, poured) if laid else ""
        self.coat_form.were_it_on = blank_words(view.studio, piece, holder)
        self.coat_form.show_coat(view.studio, piece, key, why[:1].upper() + why[1:])
        self.coat_form.advise([fault for fault in self._found if fault.coat == key])
        outdated = view.studio.plan_outdated and bool(planned_rows(view.plan, piece))
        self.outdated.setVisible(outdated)

    # What is changed

    def _enter_coat(self, label: str, made: Callable[[], Coat]) -> None:
        """Make what the form says; what is refused is said at the coat in the section too."""
        piece, key = self._piece, self.section.chosen
        if piece is None:
            return
        words = f"{piece.name}, {piece.coat_name(key)}: {label}"
        before = self._refused
        self._refused = tuple(fault for fault in before if fault.coat != key)
        self._told = ()
        try:
            coat = made()
            self._make(words, lambda stack: stacks.with_coat(stack, coat))
        except InvalidEntry as error:
            refused = self._in_words(error)
            self._refused += refused
            self._show_section()
            raise InvalidEntry(error.noun, [for_form(f, key) for f in refused]) from error
        if before != self._refused:
            self._show_section()

    def _in_words(self, error: InvalidEntry) -> tuple[StackFault, ...]:
        """The rules that a change would have broken, at their coats."""
        view, refused = self._view, refused_by(error, self.section.chosen)
        if view is None:
            return refused
        return tuple(replace(one, sentence=fault_words(view.studio, one)) for one in refused)

    def _make(self, words: str, change: Callable[[Stack], Stack]) -> None:
        holder = self._holder
        if holder is None:
            return

        def make(studio: Studio) -> Studio:
            piece = stacks.as_piece(studio, holder)
            if piece is None:
                return studio
            stack = refitted(studio, piece.stack, change(piece.stack))
            return stacks.with_stack(studio, holder, stack)

        self._desk.changes.make(Change(words, make))

    def _attempt(self, words: str, change: Callable[[Stack], Stack]) -> bool:
        """Make a change by a verb; what is refused is said at its coat and in the line."""
        self._told = ()
        try:
            self._make(words, change)
        except InvalidEntry as error:
            self._told = self._in_words(error)
            self._show_section()
            said = " ".join(fault.sentence for fault in self._told)
        except StudioError as error:
            said = str(error)
        else:
            return True
        self._desk.notice.say(said[:1].upper() + said[1:], wrong=True)
        return False

    def add_coat(self, kind: CoatKind) -> None:
        """Add a coat of a kind above the chosen one, as it is usually put on."""
        view, piece, key = self._view, self._piece, self.section.chosen
        if view is None or piece is None:
            return
        at = stacks.position(piece.stack, key) + 1
        try:
            coat = new_coat(view.studio, kind, piece.stack, at)
        except InvalidEntry as error:
            self._desk.notice.say(" ".join(rule.sentence for rule in error.broken), wrong=True)
            return
        words = translate("pieces", "{piece}, add {kind}").format(
            piece=piece.name, kind=kind_word(kind)
        )
        if self._attempt(words, lambda stack: stacks.with_new(stack, at, coat)):
            self.choose_coat(coat.key)
            self.section.setFocus()

    def copy_coat(self) -> None:
        """Put a copy of the chosen coat above it."""
        piece, key = self._piece, self.section.chosen
        if piece is None:
            return
        stack, new = stacks.with_copy(piece.stack, key)
        words = translate("pieces", "{piece}, copy {coat}").format(
            piece=piece.name, coat=piece.coat_name(key)
        )
        if self._attempt(words, lambda _stack: stack):
            self.choose_coat(new)

    def remove_coat(self) -> None:
        """Take the chosen coat out."""
        piece, key = self._piece, self.section.chosen
        if piece is None:
            return
        words = translate("pieces", "{piece}, remove {coat}").format(
            piece=piece.name, coat=piece.coat_name(key)
        )
        self._attempt(words, lambda stack: stacks.without_coat(stack, key))

    def _move(self, key: str, other: str) -> None:
        piece = self._piece
        if piece is None:
            return
        to = stacks.position(piece.stack, other)
        words = translate("pieces", "{piece}, move {coat}").format(
            piece=piece.name, coat=piece.coat_name(key)
        )
        self._attempt(words, lambda stack: stacks.with_move(stack, key, to))

    def _draw_film(self, key: str, mm: float) -> None:
        if key != self.section.chosen:
            self.choose_coat(key)
        self.coat_form.type_film(mm)
