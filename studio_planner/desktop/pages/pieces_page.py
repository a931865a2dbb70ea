"""The page of pieces: the list, and of the chosen one its stack, blank, photos and patterns."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.pieces import Piece
from studio_planner.desktop import words
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.page import Page
from studio_planner.desktop.page_keys import PRODUCTS
from studio_planner.desktop.piece_pages.blank_form import BlankForm
from studio_planner.desktop.piece_pages.happened_button import HappenedButton
from studio_planner.desktop.piece_pages.missed_panel import MissedPanel
from studio_planner.desktop.piece_pages.part_names import (
    BLANK,
    MISSED,
    PATTERNS,
    PHOTOS,
    STACK,
    PieceSearch,
    piece_parts,
)
from studio_planner.desktop.piece_pages.pattern_panel import PatternPanel
from studio_planner.desktop.piece_pages.photo_panel import PhotoPanel
from studio_planner.desktop.piece_pages.picture_drops import PictureDrops
from studio_planner.desktop.piece_pages.piece_lines import (
    full_line,
    head_line,
    names_line,
    short_line,
)
from studio_planner.desktop.piece_pages.removal import removal
from studio_planner.desktop.piece_pages.scrolling import scrolled
from studio_planner.desktop.piece_pages.stack_panel import StackPanel
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import moved_thing, with_thing
from studio_planner.services.editing.pieces import can_be_coated, copied, found, new_piece
from studio_planner.services.editing.stacks import StackHolder

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_LIST_WIDTH, _BESIDE_PANEL = 232, 40
_KEY = Qt.ItemDataRole.UserRole


class PiecesPage(Page):
    """Pieces at the left; several can be chosen there to put one pattern on all of them."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._filling = False
        self.key = STACK
        self.pieces = NounList(
            self.canvas,
            translate("pieces", "Pieces"),
            translate("pieces", "No piece here. Add a piece, or look for other words."),
            self,
        )
        self.search = PieceSearch(self)
        self.name = Line(self.canvas, "", self, font="title")
        self.line = Line(self.canvas, "", self, font="small", colour="quiet")
        self.products_button = verb(
            translate("pieces", "Go to Products"), lambda: desk.go_to(PRODUCTS), self
        )
        self.parts = piece_parts(self.canvas, self)
        self.stack = StackPanel(desk, self)
        self.blank = BlankForm(self.canvas, desk.changes, self)
        self.photos = PhotoPanel(desk, self)
        self.patterns = PatternPanel(desk, self)
        self.missed = MissedPanel(desk, self)
        self.happened = HappenedButton(desk, self)
        self._front = QStackedWidget(self)
        self._shown: dict[str, QWidget] = {}
        self._lay_out()
        self._listen()
        self.show_part(STACK)

    def _lay_out(self) -> None:
        self._shown = {
            STACK: scrolled(self.stack, self),
            BLANK: scrolled(self.blank, self),
            PHOTOS: scrolled(self.photos, self),
            PATTERNS: scrolled(self.patterns, self),
            MISSED: scrolled(self.missed, self),
        }
        for widget in self._shown.values():
            self._front.addWidget(widget)
        self.pieces.setFixedWidth(_LIST_WIDTH)
        self.pieces.list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        inside = self.pieces.layout()
        if isinstance(inside, QVBoxLayout):
            inside.insertWidget(1, self.search)
        right = QVBoxLayout()
        right.setContentsMargins(14, 0, 12, 0)
        right.setSpacing(4)
        head = QHBoxLayout()
        head.addWidget(self.name, 1)
        head.addWidget(self.happened, 0, Qt.AlignmentFlag.AlignTop)
        right.addLayout(head)
        right.addWidget(self.line)
        right.addWidget(self.products_button, 0, Qt.AlignmentFlag.AlignLeft)
        right.addWidget(self.parts)
        right.addWidget(self._front, 1)
        right.addStretch()
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 8, 0, 12)
        layout.addWidget(self.pieces)
        layout.addLayout(right, 1)

    def _listen(self) -> None:
        self.search.textChanged.connect(lambda _text: self._fill())
        self.pieces.chosen.connect(lambda _key: self._show_chosen())
        self.pieces.list.itemSelectionChanged.connect(self._show_chosen)
        self.pieces.add_asked.connect(self.add)
        self.pieces.copy_asked.connect(self._copy)
        self.pieces.remove_asked.connect(self._remove)
        self.pieces.move_asked.connect(self._move)
        self.parts.part_asked.connect(self.show_part)
        PictureDrops(self).dropped.connect(self._keep_dropped)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.patterns.fit(self.width() - self.pieces.width() - _BESIDE_PANEL)

    # What is shown

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        self._fill()

    @property
    @override
    def chosen(self) -> str:
        return self.pieces.current_key

    @override
    def choose(self, key: str) -> None:
        """Choose a piece, and behind a slash a coat or a part of it: tide-tray/flood."""
        piece, _, coat = key.partition("/")
        if piece not in self._listed:
            self.search.clear()
        self._choose_only(piece)
        chosen = self._piece(piece)
        if chosen is not None and any(one.key == coat for one in chosen.stack):
            self.show_part(STACK)
            self.stack.choose_coat(coat)
        elif coat == MISSED and self.missed.needed:
            self.show_part(MISSED)

    def show_part(self, key: str) -> None:
        """Bring the stack, the blank, the photos or the patterns to the front."""
        self.key = key
        self.parts.show_part(key)
        self._front.setCurrentWidget(self._shown[key])
        self._show_chosen()

    @property
    def _listed(self) -> list[str]:
        rows = self.pieces.list
        return [str(rows.item(row).data(_KEY)) for row in range(rows.count())]

    def _fill(self) -> None:
        view = self._view
        studio = view.studio if view else None
        kept = self.chosen_keys
        listed = found(studio, self.search.text()) if studio else ()
        self._filling = True
        self.pieces.show_things(
            [(p.key, words.piece_name(p), short_line(studio, p)) for p in listed]
        )
        for row, piece in enumerate(listed):
            if piece.key in kept:
                self.pieces.list.item(row).setSelected(True)
        self._filling = False
        self.pieces.add_button.setEnabled(studio is not None and can_be_coated(studio))
        self._show_chosen()

    @property
    def chosen_keys(self) -> tuple[str, ...]:
        """The keys of all pieces that are chosen, in the order of the list."""
        items = self.pieces.list.selectedItems()
        keys = {str(item.data(_KEY)) for item in items} or {self.pieces.current_key} - {""}
        return tuple(key for key in self._listed if key in keys)

    def _piece(self, key: str) -> Piece | None:
        pieces = self._view.studio.pieces if self._view else ()
        return next((piece for piece in pieces if piece.key == key), None)

    def _show_chosen(self) -> None:
        if self._filling:
            return
        view, piece = self._view, self._piece(self.pieces.current_key)
        several = [one for key in self.chosen_keys if (one := self._piece(key))]
        for part in (self.happened, self.parts, self._front):
            part.setVisible(piece is not None)
        lacking = view is not None and not can_be_coated(view.studio)
        self.products_button.setVisible(lacking)
        studio, searched = view.studio if view else None, bool(self.search.text())
        self.name.say(head_line(studio, piece, len(several), searched=searched))
        self.line.say(full_line(view.studio, piece) if view and piece else "")
        if view is None or piece is None:
            return
        self.happened.piece = piece.key
        self.missed.show_piece(view, piece.key)
        self.parts.names[MISSED].setVisible(self.missed.needed)
        if self.key == MISSED and not self.missed.needed:
            self.show_part(STACK)
            return
        {
            MISSED: lambda: None,  # shown already, since its name depends on it
            STACK: lambda: self.stack.show_stack(view, StackHolder(piece.key)),
            BLANK: lambda: self.blank.show_piece(view.studio, piece),
            PHOTOS: lambda: self.photos.show_piece(view.studio, piece),
            PATTERNS: lambda: self.patterns.show_patterns(view, several or [piece]),
        }[self.key]()

    # Verbs

    def _keep_dropped(self, paths: list[Path]) -> None:
        if self._piece(self.pieces.current_key) is not None:
            self.show_part(PHOTOS)
            self.photos.keep(paths)

    def add(self) -> None:
        """Add a piece, ready to be named."""
        name = translate("pieces", "New piece")

        def make(studio: Studio) -> Studio:
            return with_thing(studio, new_piece(studio, name))

        if self._attempt(translate("pieces", "Add a piece"), make):
            self.search.clear()
            self._choose_only(self._newest)
            self.show_part(BLANK)
            self.blank.form.fields["name"].take_up()

    def _copy(self) -> None:
        keys = self.chosen_keys
        said = translate("pieces", "Copy {pieces}").format(pieces=self._names(keys))
        if self._attempt(said, lambda studio: copied(studio, keys)[0]):
            self._choose_only(self._newest)

    def _remove(self) -> None:
        view, keys = self._view, self.chosen_keys
        if view is None or not keys:
            return
        change, news = removal(view.studio, keys)
        if self.desk.changes.attempt(change) and news:
            self.desk.tell(news)

    def _move(self, key: str, to: int) -> None:
        view = self._view
        if view is None:
            return
        # The list may show a part of the pieces; the place is that of the one there now.
        other = [piece.key for piece in view.studio.pieces].index(self._listed[to])
        said = translate("pieces", "Move a piece")
        self._attempt(said, lambda studio: moved_thing(studio, Piece, key, other))

    def _names(self, keys: tuple[str, ...]) -> str:
        return names_line(self._piece(keys[0]) if keys else None, len(keys))

    def _attempt(self, said: str, make: Callable[[Studio], Studio]) -> bool:
        return self.desk.changes.attempt(Change(said, make))

    @property
    def _newest(self) -> str:
        session = self.desk.session
        return session.studio.pieces[-1].key if session else ""

    def _choose_only(self, key: str) -> None:
        self.pieces.choose_only(key)
        self._show_chosen()
