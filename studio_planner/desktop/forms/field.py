"""One field: a label, an editor, its unit, and a line that says what is wrong with it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Protocol, runtime_checkable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.forms.undo_keys import UndoKeys
from studio_planner.desktop.into_sight import into_sight

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas


class Field(QWidget):
    """A labelled editor. What is typed stays, right or wrong, until it is shown anew.

    Signals:
        edited: the maker has finished with the field, and it reads otherwise than before.
    """

    edited = Signal()

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Put `label` over an editor that a subclass adds with `hold`."""
        super().__init__(parent)
        self.canvas = canvas
        self.words = label
        self._refused: Callable[[], str] = lambda: self.wrong
        self._label = QLabel(label, self)
        self._wrong = QLabel(self)
        self._wrong.setWordWrap(True)
        self._wrong.setTextFormat(Qt.TextFormat.PlainText)
        self._wrong.hide()
        self._advice = QLabel(self)
        self._advice.setWordWrap(True)
        self._advice.setTextFormat(Qt.TextFormat.PlainText)
        self._advice.hide()
        self._row = QHBoxLayout()
        self._row.setSpacing(6)
        self._column = layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 4)
        layout.setSpacing(2)
        # Beside a higher field the label stays over its editor.
        layout.setAlignment(Qt.AlignmentFlag.AlignTop)
        layout.addWidget(self._label)
        layout.addLayout(self._row)
        layout.addWidget(self._wrong)
        layout.addWidget(self._advice)
        canvas.recoloured.connect(self._recolour)
        self._recolour()

    def rename(self, label: str) -> None:
        """Say another label; the editor takes its name with the next unit or value shown."""
        self.words = label
        self._label.setText(label)
        buddy = self._label.buddy()
        if buddy is not None:
            buddy.setAccessibleName(label)

    def hold(self, editor: QWidget, unit: QLabel | None = None) -> None:
        """Take the editor in; a screen reader hears the label with it."""
        editor.setAccessibleName(self.words)
        self._label.setBuddy(editor)
        self._row.addWidget(editor, 1)
        if unit is not None:
            self._row.addWidget(unit)
        self.setFocusProxy(editor)

    def explain(self, line: QWidget) -> None:
        """Put a line at the foot that says what the values mean."""
        self._column.addWidget(line)

    def value(self) -> Any:  # noqa: ANN401 - each field has its own kind of value
        """What the field says; ValueError in a sentence when that makes no sense."""
        raise NotImplementedError

    def show_value(self, value: Any) -> None:  # noqa: ANN401 - likewise
        """Show a value; what was wrong before is forgotten."""
        raise NotImplementedError

    def say_wrong(self, sentence: str) -> None:
        """Say under the field what is wrong with it."""
        self._wrong.setText(f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}")
        self._wrong.show()
        editor = self.focusProxy()
        if editor is not None:
            editor.setAccessibleDescription(sentence)

    def say_right(self) -> None:
        """Take back what was said to be wrong."""
        self._wrong.hide()
        editor = self.focusProxy()
        if editor is not None:
            editor.setAccessibleDescription("")

    def advise(self, sentence: str) -> None:
        """Say under the field what wants a second look though it is kept; empty: nothing."""
        self._advice.setText(sentence)
        self._advice.setVisible(bool(sentence))

    @property
    def advice(self) -> str:
        """What wants a second look; empty when nothing does."""
        return self._advice.text()

    def take_up(self) -> None:
        """Bring it into view, ready to be typed into: what stands there gives way."""
        editor = self.focusProxy()
        if editor is None:
            return
        if isinstance(editor, QLineEdit):
            editor.selectAll()
        editor.setFocus(Qt.FocusReason.OtherFocusReason)
        into_sight(self)

    @property
    def in_hand(self) -> bool:
        """Whether the maker is in the middle of typing into it."""
        editor = self.focusProxy()
        if editor is None or not editor.hasFocus():
            return False
        return isinstance(editor, QLineEdit) and editor.isModified()

    @property
    def wrong(self) -> str:
        """What is said to be wrong with it; empty when nothing is."""
        return "" if self._wrong.isHidden() else self._wrong.text()[2:]

    def answer_with(self, refused: Callable[[], str]) -> None:
        """Let a form, which takes its fields together, tell why it has not taken this one."""
        self._refused = refused

    @property
    def refused(self) -> str:
        """Why what was typed last was not taken; empty when it was."""
        return self._refused()

    def _recolour(self) -> None:
        theme = self.canvas.theme
        self._label.setFont(self.canvas.fonts.small)
        self._wrong.setFont(self.canvas.fonts.small)
        self._advice.setFont(self.canvas.fonts.small)
        coloured = ((self._label, "quiet"), (self._wrong, "now"), (self._advice, "warmth"))
        for label, colour in coloured:
            palette = label.palette()
            palette.setColor(palette.ColorRole.WindowText, theme.colour(colour))
            label.setPalette(palette)


class TypedField(Field):
    """A field that tells of itself when it is left, where it reads otherwise than was shown.

    A subclass says with `_typed` what its editor reads, keeps in `_shown` what was shown, and
    has `_finished` called when the maker is through with it.
    """

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Put `label` over an editor that a subclass adds with `hold`."""
        super().__init__(canvas, label, parent)
        self._shown: object = None

    @override
    def hold(self, editor: QWidget, unit: QLabel | None = None) -> None:
        super().hold(editor, unit)
        UndoKeys(editor, self._unfinished)

    @property
    @override
    def in_hand(self) -> bool:
        editor = self.focusProxy()
        return editor is not None and editor.hasFocus() and self._unfinished()

    def _typed(self) -> object:
        """What the editor reads now, whether it makes sense or not."""
        raise NotImplementedError

    def _unfinished(self) -> bool:
        """Whether it holds something that was not told yet."""
        return self._typed() != self._shown

    def _finished(self) -> None:
        if self._unfinished():
            self._shown = self._typed()
            self.edited.emit()


@runtime_checkable
class InUnits(Protocol):
    """A field that follows the studio's units."""

    def set_units(self, units: Units) -> None:
        """Show the value in those units from now on."""
        ...
