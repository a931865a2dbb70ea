"""The stack patterns of a studio: named, worked on, and put on the chosen pieces."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import StackPattern
from studio_planner.desktop.forms.fields import TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.piece_pages.stack_panel import StackPanel
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing import patterns
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import (
    copy_of,
    moved_thing,
    with_thing,
    without_thing,
)
from studio_planner.services.editing.stacks import StackHolder

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_LIST_WIDTH, _LIST_HEIGHT, _GAP, _WIDEST = 220, 160, 18, 300
_LEAST_BESIDE = 240
_ROOM_FOR_NAMES = 4
_ANY_HEIGHT = 10_000
_BESIDE, _BELOW = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom


class PatternPanel(QWidget):
    """Patterns, and the stack of the chosen one beside them, or below in a narrow room."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no pattern yet."""
        super().__init__(parent)
        self._desk = desk
        self._view: DeskView | None = None
        self._pieces: tuple[Piece, ...] = ()
        self._width = 0
        self.list = NounList(
            desk.canvas,
            translate("pieces", "Stack patterns"),
            translate(
                "pieces",
                "No pattern yet. Make one of the stack of the chosen piece; it can then be put "
                "on as many pieces as you like.",
            ),
            self,
        )
        self.form = Form(desk.canvas, self._rename, self)
        self.form.add(
            "name", TextField(desk.canvas, translate("pieces", "Name of the pattern"))
        )
        self.put_button = verb("", self.put_on, self)
        self.of_whom = Line(desk.canvas, "", self, font="small", colour="quiet")
        self._columns, self._head = QBoxLayout(_BESIDE), QBoxLayout(_BELOW)
        self._lay_out()
        self.list.chosen.connect(lambda _key: self._show_chosen())
        self.list.add_asked.connect(self.add)
        self.list.copy_asked.connect(self._copy)
        self.list.remove_asked.connect(self._remove)
        self.list.move_asked.connect(self._move)

    @cached_property
    def stack(self) -> StackPanel:
        """The stack of the chosen pattern, made when there is one to show."""
        stack = StackPanel(self._desk, self)
        self._columns.addWidget(stack, 1)
        self.__dict__["stack"] = stack
        self.fit(self._width)
        return stack

    def _lay_out(self) -> None:
        self.list.setFixedWidth(_LIST_WIDTH)
        self.list.setMinimumHeight(_LIST_HEIGHT)
        what = QVBoxLayout()
        what.setSpacing(6)
        for part in (self.form, self.put_button, self.of_whom):
            part.setMaximumWidth(_WIDEST)
            what.addWidget(part)
        what.addStretch()
        self._head.setSpacing(_GAP)
        self._head.addWidget(self.list, 0, Qt.AlignmentFlag.AlignLeft)
        self._head.addLayout(what)
        self._head.addStretch()
        self._columns.setContentsMargins(0, 0, 0, 0)
        self._columns.setSpacing(_GAP)
        self._columns.addLayout(self._head)
        self.setLayout(self._columns)

    def fit(self, width: int) -> None:
        """Lie in a room of so many pixels across."""
        self._width = width
        if "stack" not in self.__dict__:
            return
        wide = width >= _LIST_WIDTH + _GAP + self.stack.beside_width
        self._columns.setDirection(_BESIDE if wide else _BELOW)
        narrow = width < _LIST_WIDTH + _GAP + _LEAST_BESIDE
        self._head.setDirection(_BELOW if wide or narrow else _BESIDE)
        self.list.setMaximumHeight(_ANY_HEIGHT if wide else _LIST_HEIGHT)

    def show_patterns(self, view: DeskView, pieces: Sequence[Piece]) -> None:
        """Show the patterns of a studio; `pieces` are the chosen ones."""
        self._view, self._pieces = view, tuple(pieces)
        self.list.show_things(
            [(one.key, one.name, _coats_line(one)) for one in view.studio.patterns]
        )
        self.list.add_button.setEnabled(bool(pieces))
        self._show_chosen()

    @property
    def _chosen(self) -> StackPattern | None:
        known = self._desk.session.studio.patterns if self._desk.session else ()
        return next((one for one in known if one.key == self.list.current_key), None)

    def _show_chosen(self) -> None:
        pattern, view = self._chosen, self._view
        for part in (self.form, self.put_button, self.of_whom):
            part.setVisible(pattern is not None)
        if pattern is None or view is None:
            if "stack" in self.__dict__:
                self.stack.hide()
            return
        self.stack.show()
        if pattern not in view.studio.patterns:
            return
        fresh = self.form.property("shown") != pattern.key
        self.form.setProperty("shown", pattern.key)
        self.form.show_values({"name": pattern.name}, view.studio.units, fresh=fresh)
        self.put_button.setText(self._put_words())
        self.put_button.setAccessibleName(self._put_words())
        self.put_button.setEnabled(bool(self._pieces))
        self.of_whom.say(self._names())
        blank = self._pieces[0].key if self._pieces else ""
        self.stack.show_stack(view, StackHolder(pattern.key, pattern=True, blank=blank))

    def _put_words(self) -> str:
        if len(self._pieces) == 1:
            return translate("pieces", "Put on the chosen piece")
        return translate("pieces", "Put on {count} pieces").format(count=len(self._pieces))

    def _names(self) -> str:
        names = [piece.name for piece in self._pieces[:_ROOM_FOR_NAMES]]
        more = len(self._pieces) - len(names)
        said = ", ".join(names)
        if more:
            said += translate("pieces", " and {count} more").format(count=more)
        return said

    # Verbs

    def add(self) -> None:
        """Make a pattern of the first chosen piece."""
        if not self._pieces:
            return
        piece = self._pieces[0]
        name = translate("pieces", "Stack of {piece}").format(piece=piece.name)

        def make(studio: Studio) -> Studio:
            return with_thing(
                studio, patterns.pattern_of(studio, studio.piece(piece.key), name)
            )

        words = translate("pieces", "Save the stack of {piece}").format(piece=piece.name)
        if self._attempt(words, make):
            self._choose_last()

    def put_on(self) -> None:
        """Put the chosen pattern on the chosen pieces."""
        pattern, keys = self._chosen, [piece.key for piece in self._pieces]
        if pattern is None or not keys:
            return
        words = translate("pieces", "Put {pattern} on {count} pieces").format(
            pattern=pattern.name, count=len(keys)
        )
        made = self._attempt(words, lambda now: patterns.put_on(now, pattern, keys))
        if made:
            self._desk.tell(words + ".")

    def _rename(self, _field: str, values: Mapping[str, str]) -> None:
        pattern, name = self._chosen, values["name"]
        if pattern is not None:
            words = translate("pieces", "Rename {pattern}").format(pattern=pattern.name)
            self._desk.changes.make(
                Change(words, lambda now: patterns.renamed(now, pattern, name))
            )

    def _copy(self) -> None:
        pattern = self._chosen
        if pattern is not None:
            words = translate("pieces", "Copy {pattern}").format(pattern=pattern.name)
            if self._attempt(words, lambda now: with_thing(now, copy_of(now, pattern))):
                self._choose_last()

    def _remove(self) -> None:
        pattern = self._chosen
        if pattern is not None:
            words = translate("pieces", "Remove {pattern}").format(pattern=pattern.name)
            self._attempt(words, lambda now: without_thing(now, StackPattern, pattern.key))

    def _move(self, key: str, to: int) -> None:
        words = translate("pieces", "Move a pattern")
        self._attempt(words, lambda now: moved_thing(now, StackPattern, key, to))

    def _attempt(self, words: str, make: Callable[[Studio], Studio]) -> bool:
        try:
            self._desk.changes.make(Change(words, make))
        except InvalidEntry as error:
            said = " ".join(str(rule) for rule in error.broken)
        except StudioError as error:
            said = str(error)
        else:
            return True
        self._desk.notice.say(said, wrong=True)
        return False

    def _choose_last(self) -> None:
        session = self._desk.session
        if session is not None:
            self.list.choose(session.studio.patterns[-1].key)


def _coats_line(pattern: StackPattern) -> str:
    return ", ".join(kind_word(coat.kind) for coat in pattern.stack)
