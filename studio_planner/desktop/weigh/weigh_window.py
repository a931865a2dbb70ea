"""The weigh view: one step, one number; nothing goes on by itself, the last tap can go back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from typing_extensions import override

from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.digit_pad import ERASE
from studio_planner.desktop.weigh.weigh_face import WeighFace
from studio_planner.services.mix_run.stand import Do
from studio_planner.services.mix_run.taps import TapKind

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QCloseEvent, QKeyEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.mix_run.stand import Stand

TICK_MILLISECONDS = 1_000
"""How often the cup clock counts on."""


class WeighWindow(WeighFace):
    """The whole screen for one mix: its sheet, then step by step, then its number.

    What was tapped is kept after each tap, so that the view can be left, or the desk killed.
    """

    def __init__(
        self,
        desk: PageDesk,
        data_folder: Callable[[], Path] | None,
        parent: QWidget | None = None,
    ) -> None:
        """Weigh mixes of the desk's studio; taps are kept in the maker's own `data_folder`."""
        super().__init__(desk, data_folder, parent)
        self._connect()
        self._tick = QTimer(self)
        self._tick.setInterval(TICK_MILLISECONDS)
        self._tick.timeout.connect(self.show_now)
        desk.changes.changed.connect(self.show_now)

    def _connect(self) -> None:
        for button, does in (
            (self.target, self.tap),
            (self.other, self.tap_other),
            (self.back, self.undo),
            (self.leave, self.close),
            (self.sound, self.switch_sound),
            (self.give_up, self.ask_to_give_up),
        ):
            button.clicked.connect(does)
        self.pad.typed.connect(self.show_now)
        for keys, does in (
            ("Esc", self.leave_part),
            ("Ctrl+Z", self.undo),
            ("Right", lambda: self._other_mix(1)),
            ("Left", lambda: self._other_mix(-1)),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(does)

    def begin(self, coat: tuple[str, str] | None = None) -> None:
        """Take the whole screen: for the mix that is running, else that of a coat, or the next.

        `coat` is a pair of piece and coat.
        """
        self.asks, self.giving_up = None, False
        self.work.look()
        self._choose(coat)
        self.show_now()
        self.showFullScreen()
        self._tick.start()
        self.target.setFocus()

    # Taps

    def tap(self) -> None:
        """Do what the target says."""
        stand = self.work.stand
        if self.giving_up:
            self._give_up()
        elif self.asks is not None:
            self._take_typed()
        elif stand is not None:
            self._tap_step(stand)
        elif self.sheet is not None:
            self.work.begin(self.sheet.coats, *self.cover.lots)
        else:
            self.close()
            return
        self.show_now()

    def _tap_step(self, stand: Stand) -> None:
        step = stand.step
        if step.do is Do.WRITTEN:
            self.work.finish()
            self._choose(None)
        elif step.do is Do.MEET:
            self.work.tap(TapKind.MET)
        elif step.scale is not None:
            self.work.tap(TapKind.READS, step.scale.reads_grams)
        else:
            self.work.tap(TapKind.DONE)

    def tap_other(self) -> None:
        """Do what the button beside the target says."""
        stand = self.work.stand
        if self.giving_up or self.asks is not None:
            self.leave_part()
            return
        if stand is None:
            self._other_mix(1)
        elif self.other.text() == translate("weigh", "Leave it as it is"):
            self.work.tap(TapKind.LEAVE)
        else:
            self._ask(TapKind.LEFT if stand.step.do is Do.POUR else TapKind.READS)
        self.show_now()

    def undo(self) -> None:
        """Take the last tap back: what opened the pad or asked, the last step, the mix."""
        if self.asks is not None or self.giving_up:
            self.leave_part()
            return
        if self.work.running is None:
            self._other_mix(-1)
            return
        self.work.undo()
        self.show_now()

    def _choose(self, coat: tuple[str, str] | None) -> None:
        self.choice.see(self.work.studio)
        self.choice.choose(coat)

    def _other_mix(self, step: int) -> None:
        if self.work.running is None:
            self.choice.step(step)
            self.show_now()

    def ask_to_give_up(self) -> None:
        """Ask whether the mix is really to be thrown away."""
        self.asks, self.giving_up = None, True
        self.show_now()
        self.other.setFocus()

    def _give_up(self) -> None:
        self.giving_up = False
        self.work.throw_away()
        self._choose(None)

    def switch_sound(self) -> None:
        """Sound, or be silent."""
        self.sounds.off = not self.sounds.off
        self.show_now()

    def leave_part(self) -> None:
        """Leave the pad or the question, else the scale; what was tapped stays."""
        if self.asks is None and not self.giving_up:
            self.close()
            return
        self.asks, self.giving_up = None, False
        self.show_now()
        self.target.setFocus()

    @override
    def closeEvent(self, event: QCloseEvent) -> None:
        self._tick.stop()
        stand = self.work.stand
        if stand is not None and stand.step.do is Do.WRITTEN:
            self.work.finish()
        elif stand is not None:
            # A cup that hardens is not to be forgotten.
            said = translate("window", "A mix is still at the scale: F12 goes on with it.")
            self.desk.notice.say(said)
        super().closeEvent(event)

    # The pad

    def _ask(self, kind: TapKind, text: str = "") -> None:
        session = self.desk.session
        if session is not None:
            self.asks = kind
            self.pad.begin(session.studio.units, text)

    def _take_typed(self) -> None:
        grams, kind = self.typed_grams(), self.asks
        if grams is not None and kind is not None:
            self.asks = None
            self.work.tap(kind, grams)
            self.target.setFocus()

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        stand, text = self.work.stand, event.text()
        if event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.target.click()
        elif self.asks is not None and event.key() == Qt.Key.Key_Backspace:
            self.pad.press(ERASE)
        elif stand is None or not (text.isdigit() or text in {",", "."}):
            super().keyPressEvent(event)
        else:
            if self.asks is None and stand.step.weighs:
                self._ask(TapKind.READS)
                self.show_now()
            if self.asks is not None:
                self.pad.press(text)
