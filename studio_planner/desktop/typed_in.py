"""What is being typed when the studio is left: it is entered first, or said to be refused."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol, runtime_checkable

from PySide6.QtWidgets import QAbstractSpinBox, QLineEdit, QPlainTextEdit, QWidget

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.desktop.notice_line import NoticeLine

_EDITORS = (QLineEdit, QPlainTextEdit, QAbstractSpinBox)


@runtime_checkable
class Typed(Protocol):
    """A field, or a cell, that knows what is being typed into it, and whether it was taken."""

    @property
    def in_hand(self) -> bool:
        """Whether it holds what was not entered yet."""
        ...

    @property
    def refused(self) -> str:
        """Why what was typed last was not taken; empty when it was."""
        ...


def enter_typed(window: QWidget, notice: NoticeLine) -> bool:
    """Have what is being typed into `window` entered, as when its field is left.

    False when it was refused now: it still stands in its field, and `notice` says why. Asked
    again, it is True unless somebody has typed since.
    """
    editor = window.focusWidget()
    if not isinstance(editor, _EDITORS):
        return True
    typed = [one for one in _up_from(editor) if isinstance(one, Typed) and one.in_hand]
    before = notice.failure
    editor.clearFocus()
    editor.setFocus()
    why = next((one.refused for one in typed), "")
    if not why and notice.failure != before:
        why = notice.failure
    if why:
        said = translate(
            "window", "{why} Put it right, or leave once more to go without what is typed."
        )
        notice.say(said.format(why=why), wrong=True)
    return not why


def _up_from(editor: QWidget) -> Iterator[QWidget]:
    above: QWidget | None = editor
    while above is not None:
        yield above
        above = above.parentWidget()
