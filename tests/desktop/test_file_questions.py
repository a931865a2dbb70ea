"""The real questions about files, answered as a maker would."""

from __future__ import annotations

from contextlib import contextmanager
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QFileDialog, QLineEdit, QMessageBox

from studio_planner.desktop.dialogs import Dialogs

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from studio_planner.desktop.window import DeskWindow

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)


@contextmanager
def answering(name: str, asked: list[str]) -> Iterator[None]:
    """Type a name into the dialog that opens; say no to whatever it asks back."""

    def refuse() -> None:
        box = QApplication.activeModalWidget()
        if isinstance(box, QMessageBox):
            asked.append(box.text())
            box.reject()

    def answer() -> None:
        dialog = QApplication.activeModalWidget()
        if not isinstance(dialog, QFileDialog):
            return
        if asked:
            dialog.reject()
            return
        line = dialog.findChild(QLineEdit)
        assert isinstance(line, QLineEdit)
        line.setText(name)
        dialog.accept()

    # A timer does not fire again while what it calls still waits for an answer: one for each.
    timers = [QTimer(), QTimer()]
    for timer, does in zip(timers, (refuse, answer), strict=True):
        timer.timeout.connect(does)
        timer.start(30)
    yield
    for timer in timers:
        timer.stop()


def test_new_never_offers_to_replace_a_file_and_says_that_it_is_there(
    desk: DeskWindow, studio_path: Path
) -> None:
    asked: list[str] = []
    before = studio_path.read_bytes()
    desk.dialogs = Dialogs()
    with answering(studio_path.name, asked):
        desk.verbs["new"].trigger()
    assert not asked
    assert desk.notice.words.startswith("Not done: ")
    assert studio_path.name in desk.notice.words
    assert studio_path.read_bytes() == before


def test_a_copy_asks_before_it_replaces_a_file(desk: DeskWindow, tmp_path: Path) -> None:
    asked: list[str] = []
    other = tmp_path / "other.studio"
    other.write_bytes(b"someone's")
    desk.dialogs = Dialogs()
    with answering(other.name, asked):
        desk.verbs["copy"].trigger()
    assert asked
    assert other.read_bytes() == b"someone's"
