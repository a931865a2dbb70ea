"""A list of things by name, with the verbs to add, copy, remove and move them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSizePolicy,
    QSpacerItem,
    QVBoxLayout,
    QWidget,
)

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.desktop.canvas import Canvas

_KEY = Qt.ItemDataRole.UserRole


class NounList(QWidget):
    """Things of one kind; the chosen one is shown beside the list by whoever listens.

    Signals:
        chosen: the key of the thing that is chosen; empty when none is.
        add_asked, copy_asked, remove_asked: a verb, the latter two for the chosen thing.
        move_asked: (key, position) where the maker has put a thing.
    """

    chosen = Signal(str)
    add_asked = Signal()
    copy_asked = Signal()
    remove_asked = Signal()
    move_asked = Signal(str, int)

    def __init__(
        self, canvas: Canvas, title: str, empty: str, parent: QWidget | None = None
    ) -> None:
        """Name the list `title`; `empty` says what to do while there is nothing in it."""
        super().__init__(parent)
        self._canvas = canvas
        self._title = QLabel(title, self)
        self.list = QListWidget(self)
        self.list.setAccessibleName(title)
        self.list.setFrameShape(QListWidget.Shape.NoFrame)
        self._title.setBuddy(self.list)
        self._empty = QLabel(empty, self)
        self._empty.setWordWrap(True)
        self.add_button = QPushButton(translate("forms", "Add"), self)
        self.copy_button = QPushButton(translate("forms", "Copy"), self)
        self.remove_button = QPushButton(translate("forms", "Remove"), self)
        self._lay_out()
        self.list.currentItemChanged.connect(lambda *_: self._current_changed())
        self.add_button.clicked.connect(self.add_asked)
        self.copy_button.clicked.connect(self.copy_asked)
        self.remove_button.clicked.connect(self.remove_asked)
        delete = QShortcut(QKeySequence(QKeySequence.StandardKey.Delete), self.list)
        delete.setContext(Qt.ShortcutContext.WidgetShortcut)
        delete.activated.connect(self.remove_asked)
        for keys, by in (("Alt+Up", -1), ("Alt+Down", 1)):
            move = QShortcut(QKeySequence(keys), self.list)
            move.setContext(Qt.ShortcutContext.WidgetShortcut)
            move.activated.connect(lambda by=by: self._move(by))
        canvas.recoloured.connect(self._recolour)
        self._recolour()
        self.show_things(())

    def _lay_out(self) -> None:
        self._title.setFont(self._canvas.fonts.clock)
        verbs = QHBoxLayout()
        title = self._title.text()
        for button in (self.add_button, self.copy_button, self.remove_button):
            button.setAccessibleName(f"{button.text()}: {title}")
            # The list is as wide whether there is anything to copy or not.
            policy = button.sizePolicy()
            policy.setRetainSizeWhenHidden(True)
            button.setSizePolicy(policy)
            verbs.addWidget(button)
        verbs.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._title)
        layout.addWidget(self._empty)
        layout.addWidget(self.list, 1)
        layout.addLayout(verbs)
        self._foot = QSpacerItem(0, 0, vData=QSizePolicy.Policy.Expanding)
        layout.addSpacerItem(self._foot)

    def _recolour(self) -> None:
        theme = self._canvas.theme
        palette = self._empty.palette()
        palette.setColor(palette.ColorRole.WindowText, theme.colour("quiet"))
        self._empty.setPalette(palette)
        ground = theme.palette
        ground.setColor(ground.ColorRole.Base, theme.colour("paper"))
        self.list.setPalette(ground)

    def show_things(self, things: Sequence[tuple[str, str, str]]) -> None:
        """Show things as (key, name, a quiet line); the chosen one stays so if it is there.

        `chosen` tells only of another choice; what is shown of the same one is up to the page.
        """
        kept = self.current_key
        self.list.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.list.clear()
        for key, name, line in things:
            item = QListWidgetItem(f"{name}\n{line}" if line else name)
            item.setData(_KEY, key)
            item.setSizeHint(QSize(0, round(self._line_height * (2 if line else 1) + 10)))
            self.list.addItem(item)
        keys = [key for key, _, _ in things]
        if kept in keys:
            self.choose(kept)
        self.list.blockSignals(False)  # noqa: FBT003 - Qt's own
        self._empty.setVisible(not things)
        for part in (self.list, self.copy_button, self.remove_button):
            part.setVisible(bool(things))
        self._keep_together(alone=not things)
        if keys and kept not in keys:
            self.choose(keys[0])
        self._offer()

    def keep_low(self, most: int) -> None:
        """Be as high as what is in it, up to `most` rows: it stands among other things."""
        rows = min(self.list.count(), most)
        high = sum(self.list.sizeHintForRow(row) for row in range(rows))
        self.list.setFixedHeight(high + 2 * self.list.frameWidth() + 2)

    def _keep_together(self, *, alone: bool) -> None:
        """Put the verb to add under the words that ask for it, while it is `alone`."""
        below = QSizePolicy.Policy.Expanding if alone else QSizePolicy.Policy.Fixed
        self._foot.changeSize(0, 0, QSizePolicy.Policy.Minimum, below)
        layout = self.layout()
        assert layout is not None  # noqa: S101 - it was given one when it was made
        layout.invalidate()

    @property
    def _line_height(self) -> float:
        return self._canvas.fonts.plain_height

    @property
    def current_key(self) -> str:
        """The key of the chosen thing; empty when none is."""
        row = self.list.currentRow()
        return str(self.list.item(row).data(_KEY)) if row >= 0 else ""

    def choose(self, key: str) -> None:
        """Choose a thing by its key."""
        for row in range(self.list.count()):
            if self.list.item(row).data(_KEY) == key:
                self.list.setCurrentRow(row)
                return

    def choose_only(self, key: str) -> None:
        """Choose a thing and nothing beside it; `chosen` does not tell of it."""
        self.list.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.list.clearSelection()
        self.choose(key)
        self.list.blockSignals(False)  # noqa: FBT003 - Qt's own
        self._offer()

    def _current_changed(self) -> None:
        self._offer()
        self.chosen.emit(self.current_key)

    def _offer(self) -> None:
        for button in (self.copy_button, self.remove_button):
            button.setEnabled(bool(self.current_key))

    def _move(self, by: int) -> None:
        to = self.list.currentRow() + by
        if 0 <= to < self.list.count():
            self.move_asked.emit(self.current_key, to)
