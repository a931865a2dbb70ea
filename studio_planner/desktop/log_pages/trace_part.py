"""Where did it come from: a piece back to its mixes and lots, a mix or lot on to its pieces."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import ChoiceField, TextField
from studio_planner.desktop.layouts import empty
from studio_planner.desktop.log_pages import choices
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.trace_names import traced
from studio_planner.services.log_book.trace_words import (
    customer_words,
    piece_passages,
    spread_passages,
)
from studio_planner.services.log_book.tracing import trace_piece
from studio_planner.services.naming import UnknownName

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.log_book.trace_words import Passage

_WIDEST = 820


class TracePart(QWidget):
    """Asked for a piece, or for the number on a cup or bottle; each answer can be copied."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Ask of no studio yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._studio: Studio | None = None
        self._by_number = False
        self._all = ""
        self.piece = ChoiceField(canvas, translate("trace", "A piece"))
        self.number = TextField(
            canvas, translate("trace", "Or an order, the number of a mix, a lot")
        )
        self.number.editor.setMinimumWidth(220)
        self.follow = verb(translate("trace", "Follow it"), self._follow_number, self)
        self.customer = Line(canvas, "", self)
        self.customer.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.copy_customer = verb(
            translate("trace", "Copy this for the customer"), self._copy_customer, self
        )
        self.copy_all = verb(translate("trace", "Copy everything"), self._copy_all, self)
        self.answer = QVBoxLayout()
        self.answer.setSpacing(3)
        text = translate("trace", "In one sentence, for the customer")
        self.for_customer = Line(canvas, text, self, font="clock")
        self.lines: list[Line] = []
        self._lay_out()
        self.piece.edited.connect(self._follow_piece)
        self.number.editor.returnPressed.connect(self._follow_number)

    def _lay_out(self) -> None:
        asking = QHBoxLayout()
        asking.setSpacing(14)
        asking.addWidget(self.piece)
        asking.addWidget(self.number)
        asking.addWidget(self.follow, 0, Qt.AlignmentFlag.AlignBottom)
        asking.addStretch(1)
        verbs = QHBoxLayout()
        verbs.setSpacing(10)
        verbs.addWidget(self.copy_customer)
        verbs.addWidget(self.copy_all)
        verbs.addStretch(1)
        inside = QWidget(self)
        inside.setMaximumWidth(_WIDEST)
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 4, 12, 12)
        column.setSpacing(10)
        column.addLayout(self.answer)
        column.addWidget(self.for_customer)
        column.addWidget(self.customer)
        column.addLayout(verbs)
        column.addStretch(1)
        scroll = QScrollArea(self)
        scroll.setAccessibleName(translate("trace", "Where it came from"))
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(inside)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 4, 0, 0)
        layout.addLayout(asking)
        layout.addWidget(scroll, 1)

    def show_studio(self, studio: Studio | None) -> None:
        """Ask of a studio as it is now; what was asked is answered anew."""
        self._studio = studio
        self.setEnabled(studio is not None)
        if studio is None:
            return
        self.piece.offer(choices.any_pieces(studio))
        if self._by_number:
            self._follow_number()
        else:
            self._follow_piece()

    def ask_piece(self, piece: str) -> None:
        """Follow a piece."""
        self.piece.show_value(piece)
        self._follow_piece()

    def _follow_piece(self) -> None:
        studio, piece = self._studio, self.piece.value()
        self._by_number = False
        self.number.say_right()
        if studio is None or piece is None:
            self._show((), "")
            return
        self._show_pieces(studio, [piece])

    def _follow_number(self) -> None:
        studio, number = self._studio, self.number.value()
        self.number.say_right()
        if studio is None or not number:
            return
        self._by_number = True
        try:
            asked = traced(studio, number)
        except UnknownName as error:
            # An answer to another question must not be copied as one to this.
            self._show((), "")
            self.number.say_wrong(str(error))
            return
        if asked.spread is not None:
            self._show(spread_passages(studio, asked.spread), "")
        else:
            self._show_pieces(studio, asked.pieces)

    def _show_pieces(self, studio: Studio, pieces: Sequence[str]) -> None:
        voice = DeskVoice(studio)
        every = [trace_piece(studio, piece) for piece in pieces]
        passages = [one for found in every for one in piece_passages(studio, found)]
        told = [customer_words(studio, found, voice) for found in every]
        self._show(passages, "\n".join(told))

    def _show(self, passages: Sequence[Passage], customer: str) -> None:
        empty(self.answer)
        self.lines = []
        studio = self._studio
        voice = None if studio is None else DeskVoice(studio)
        if voice is not None:
            for passage in passages:
                self.answer.addSpacing(8)
                self._add(passage.heading, "clock")
                self._add("\n".join(s.words(voice) for s in passage.sentences), "plain")
            self._all = "\n\n".join(passage.text(voice) for passage in passages)
        self.customer.say(customer)
        for part in (self.for_customer, self.copy_customer):
            part.setVisible(bool(customer))
        self.copy_all.setVisible(bool(passages))

    def _add(self, words: str, font: str) -> None:
        if words:
            line = Line(self._desk.canvas, words, self, font=font)
            line.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            self.answer.addWidget(line)
            self.lines.append(line)

    @property
    def words(self) -> str:
        """Everything that is answered."""
        return self._all

    def _copy_customer(self) -> None:
        self._copy(self.customer.text())

    def _copy_all(self) -> None:
        self._copy(self._all)

    def _copy(self, words: str) -> None:
        QGuiApplication.clipboard().setText(words)
        self._desk.tell(translate("trace", "It is copied; put it into a letter."))
