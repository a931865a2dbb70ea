"""The weigh view: one step, one number; nothing goes on by itself, the last tap can go back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from typing_extensions import override

from studio_planner.desktop import mix_lines, words
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh import weigh_words
from studio_planner.desktop.weigh.cup_clock import CupTimes
from studio_planner.desktop.weigh.digit_pad import ERASE
from studio_planner.desktop.weigh.weigh_screen import WeighScreen
from studio_planner.desktop.weigh.weigh_sound import WeighSound
from studio_planner.desktop.weigh.weigh_work import WeighWork
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.services.mix_run.kept_file import KeptMix, kept_for
from studio_planner.services.mix_run.stand import Do
from studio_planner.services.mix_run.taps import TapKind
from studio_planner.services.mix_run.walk import least_reading
from studio_planner.services.mixing.at_the_scale import ScaleVerdict
from studio_planner.services.mixing.mix_sheet import mix_sheet, mixes_to_pour

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QCloseEvent, QKeyEvent
    from PySide6.QtWidgets import QPushButton, QWidget

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.mix_run.stand import Stand
    from studio_planner.services.mixing.mix_sheet import MixSheet

TICK_MILLISECONDS = 1_000
"""How often the cup clock counts on."""

_CRUMB = 1e-6


class WeighWindow(WeighScreen):
    """The whole screen for one mix: its sheet, then step by step, then its batch number.

    What was tapped is kept after each tap, so that the view can be left, or the desk killed.
    """

    def __init__(
        self,
        desk: PageDesk,
        data_folder: Callable[[], Path] | None,
        parent: QWidget | None = None,
    ) -> None:
        """Weigh mixes of the desk's studio; taps are kept in the maker's own `data_folder`."""
        super().__init__(desk.canvas, parent)
        self._desk = desk
        self._data_folder = data_folder
        self._mix: int | None = None
        self._asks: TapKind | None = None
        self._giving_up = False
        self._sheet: tuple[Studio, MixSheet] | None = None
        self.work = WeighWork(desk, self._kept)
        self.sounds = WeighSound(self)
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
        self.pad.typed.connect(self._offer_typed)
        for keys, does in (
            ("Esc", self.leave_part),
            ("Ctrl+Z", self.undo),
            ("Right", lambda: self._other_mix(1)),
            ("Left", lambda: self._other_mix(-1)),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(does)

    def _kept(self) -> KeptMix | None:
        session = self._desk.session
        return None if session is None else kept_for(session.path, self._data_folder)

    def begin(self, coat: tuple[str, str] | None = None) -> None:
        """Take the whole screen: for the mix that is running, else that of a coat, or the next.

        `coat` is a pair of piece and coat.
        """
        self._asks, self._giving_up = None, False
        self.work.look()
        self._mix = self._mix_of(coat)
        self.show_now()
        self.showFullScreen()
        self._tick.start()
        self.target.setFocus()

    def _mix_of(self, wanted: tuple[str, str] | None) -> int | None:
        coats = [one for one in self._coats if (one.piece, one.coat) == wanted]
        mixes = self._mixes
        mix = coats[0].mix if coats else None
        return mix if mix in mixes else next(iter(mixes), None)

    # What there is

    @property
    def _coats(self) -> tuple[PlannedCoat, ...]:
        studio = self.work.studio
        return () if studio is None or studio.plan is None else studio.plan.coats

    @property
    def _mixes(self) -> tuple[int, ...]:
        studio = self.work.studio
        if studio is None or studio.plan is None:
            return ()
        return mixes_to_pour(studio, studio.plan)

    @property
    def sheet(self) -> MixSheet | None:
        """The sheet of the mix that could be begun; None where there is none."""
        studio = self.work.studio
        if studio is None or studio.plan is None or self._mix not in self._mixes:
            return None
        known = self._sheet
        if known is None or known[0] is not studio or known[1].mix != self._mix:
            known = (studio, mix_sheet(studio, studio.plan, self._mix))
            self._sheet = known
            self.cover.show_sheet(*known)
        return known[1]

    @property
    def minute(self) -> float | None:
        """How many minutes ago A met B in the portion that is in hand; None before."""
        session, stand = self._desk.session, self.work.stand
        since = None if stand is None else stand.now.since
        if session is None or since is None:
            return None
        return (session.now() - since).total_seconds() / 60.0

    @property
    def times(self) -> CupTimes:
        """What the cup clock shows."""
        stand = self.work.stand
        if stand is not None and stand.step.do in {Do.WRITE, Do.WRITTEN}:
            return CupTimes(minute=self.minute, empty=True)
        if stand is None or not stand.now.mixed:
            return CupTimes()
        if stand.step.pour is not None:
            cup = stand.step.pour
            return CupTimes(minute=self.minute, pour_by=cup.out_by_minute, gone=cup.gone_minute)
        by = stand.now.portion.out_of_cup_minutes
        gone = None if by is None else by / SHARE_TO_USE
        return CupTimes(minute=self.minute, pour_by=by, gone=gone)

    # What is shown

    def show_now(self) -> None:
        """Show the step as it is now, and count."""
        self.work.follow()
        session, stand = self._desk.session, self.work.stand
        if session is None:
            return
        if stand is not None:
            self._show_step(session.studio, stand)
        elif self.sheet is not None:
            self._show_cover(session.studio, self.sheet)
        else:
            self._show_nothing()
        self._show_head()
        self._offer_typed()
        self.said.setVisible(bool(self.said.text()))
        self.fit_letters()

    def _say(self, shown: weigh_words.Shown) -> None:
        for label, text in (
            (self.verb, shown.verb),
            (self.about, shown.about),
            (self.number, shown.number),
            (self.meaning, shown.meaning),
            (self.reads, shown.reads),
        ):
            label.setText(text)
            label.setVisible(bool(text))
        self._offer(self.target, shown.target)
        self._offer(self.other, shown.other)

    def _offer(self, button: QPushButton, text: str) -> None:
        button.setText(text.replace("&", "&&"))
        button.setAccessibleName(text)
        button.setVisible(bool(text))
        button.setEnabled(True)

    def _show_step(self, studio: Studio, stand: Stand) -> None:
        shown = weigh_words.shown(studio, stand, self.minute, self.work.batches)
        self._say(shown)
        real = stand.now.real
        lines = list(real.sentences) if real is not None and self._judged(stand) else []
        stops = real is not None and real.verdict is ScaleVerdict.STOP and bool(lines)
        if stops and stand.step.do is Do.MORE:
            lines.insert(0, translate("weigh", "Stop: do not pour it like this."))
        if stand.lefts and self._desk.session is not None:
            lines += weigh_words.left_lines(self._desk.session.view, stand)
        if stand.step.do is Do.MORE and stand.now.can_leave and not stops:
            self._offer(self.other, translate("weigh", "Leave it as it is"))
        self._show_said(lines, stops=stops)
        self._show_right(stand)
        self.clock.show_times(self.times)
        self._sound(stand)

    def _judged(self, stand: Stand) -> bool:
        """Whether the last verdict is still worth a word: until what it is about is stirred."""
        do = stand.step.do
        return do in {Do.MORE, Do.DIVIDE, Do.MEET, Do.STIR} or (
            do is Do.WEIGH and not stand.now.stirred and stand.now.mixed
        )

    def _sound(self, stand: Stand) -> None:
        pour, minute = stand.step.pour, self.minute
        come = pour is not None and minute is not None and minute >= pour.pour_minute - _CRUMB
        step = (stand.part, stand.step_number)
        self.sounds.hear(step, self.times.state, minute, come=come)

    def _show_right(self, stand: Stand | None) -> None:
        if self._asks is not None:
            self.right.setCurrentWidget(self.pad)
            self._say_pad()
        else:
            self.right.setCurrentWidget(self.cover if stand is None else self.clock)

    def _say_pad(self) -> None:
        left = self._asks is TapKind.LEFT
        self._offer(
            self.target,
            translate("weigh", "So much is left")
            if left
            else translate("weigh", "It reads so"),
        )
        self._offer(self.other, translate("weigh", "Back"))

    def _show_cover(self, studio: Studio, sheet: MixSheet) -> None:
        wall = words.wall_of(studio)
        self._say(
            weigh_words.Shown(
                verb=sheet.product.name,
                about=mix_lines.coats_line(studio, sheet),
                number=weigh_words.reading(sheet.total_grams, studio),
                reads="\n".join(
                    (
                        mix_lines.cups_line(sheet),
                        translate("weigh", "Planned {when}").format(
                            when=words.span(sheet.start, sheet.end, wall)
                        ),
                    )
                ),
                target=translate("weigh", "Begin to weigh"),
                other=translate("weigh", "Another mix") if len(self._mixes) > 1 else "",
            )
        )
        self._show_said([], stops=False)
        self._show_right(None)

    def _show_nothing(self) -> None:
        self._say(
            weigh_words.Shown(
                verb=translate("weigh", "Nothing is to be weighed."),
                about=translate(
                    "weigh", "Pours of the plan are weighed here; plan again to get some."
                ),
                number="",
                target=translate("weigh", "Leave the scale"),
            )
        )
        self._show_said([], stops=False)
        self.right.setCurrentWidget(self.clock)
        self.clock.show_times(CupTimes())

    def _show_said(self, lines: list[str], *, stops: bool) -> None:
        if self._giving_up:
            said = translate(
                "weigh",
                "Throw this mix away? What A and B are in it stays in the log as weighed; no "
                "pour is written down.",
            )
            self._offer(self.target, translate("weigh", "Throw it away"))
            self._offer(self.other, translate("weigh", "No, go on"))
            self.said.say(said, stops=True)
            return
        trouble = self.work.trouble
        if trouble:
            self.said.say("\n".join([trouble, *lines]), stops=True)
            return
        self.said.say("\n".join(lines), stops=stops)

    def _show_head(self) -> None:
        session, stand = self._desk.session, self.work.stand
        if session is None:
            return
        parts = [words.moment(session.now(), words.wall_of(session.studio))]
        if stand is not None:
            step = translate("weigh", "step {number} of {count}")
            parts.append(step.format(number=stand.step_number, count=stand.step_count))
            if stand.parts > 1:
                said = translate("weigh", "mix {part} of {parts}")
                parts.append(said.format(part=stand.part, parts=stand.parts))
        parts += [
            translate("weigh", "batch {batch}").format(batch=batch)
            for batch in self.work.batches[-1:]
        ]
        self.head.setText("   ".join(parts))
        running = self.work.running is not None
        written = stand is not None and stand.step.do is Do.WRITTEN
        self._offer(self.back, translate("weigh", "Undo last tap") if running else "")
        self.give_up.setVisible(running and not written)
        off = self.sounds.off
        self._offer(
            self.sound,
            translate("weigh", "Sound is off") if off else translate("weigh", "Sound is on"),
        )

    def _offer_typed(self) -> None:
        if self._asks is not None and self.right.currentWidget() is self.pad:
            self.target.setEnabled(self._typed() is not None)

    # Taps

    def tap(self) -> None:
        """Do what the target says."""
        stand = self.work.stand
        if self._giving_up:
            self._give_up()
        elif self._asks is not None:
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
            self._mix = self._mix_of(None)
        elif step.do is Do.MEET:
            self.work.tap(TapKind.MET)
        elif step.scale is not None:
            self.work.tap(TapKind.READS, step.scale.reads_grams)
        else:
            self.work.tap(TapKind.DONE)

    def tap_other(self) -> None:
        """Do what the button beside the target says."""
        stand = self.work.stand
        if self._giving_up or self._asks is not None:
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
        """Take the last tap back."""
        self._asks, self._giving_up = None, False
        self.work.undo()
        self.show_now()

    def _other_mix(self, step: int) -> None:
        mixes = self._mixes
        if self.work.running is None and mixes:
            place = mixes.index(self._mix) if self._mix in mixes else 0
            self._mix = mixes[(place + step) % len(mixes)]
            self.show_now()

    def ask_to_give_up(self) -> None:
        """Ask whether the mix is really to be thrown away."""
        self._asks, self._giving_up = None, True
        self.show_now()
        self.other.setFocus()

    def _give_up(self) -> None:
        self._giving_up = False
        self.work.throw_away()
        self._mix = self._mix_of(None)

    def switch_sound(self) -> None:
        """Sound, or be silent."""
        self.sounds.off = not self.sounds.off
        self.show_now()

    def leave_part(self) -> None:
        """Leave the pad or the question, else the scale; what was tapped stays."""
        if self._asks is None and not self._giving_up:
            self.close()
            return
        self._asks, self._giving_up = None, False
        self.show_now()
        self.target.setFocus()

    @override
    def closeEvent(self, event: QCloseEvent) -> None:
        self._tick.stop()
        stand = self.work.stand
        if stand is not None and stand.step.do is Do.WRITTEN:
            self.work.finish()
        super().closeEvent(event)

    # The pad

    def _ask(self, kind: TapKind, text: str = "") -> None:
        session = self._desk.session
        if session is not None:
            self._asks = kind
            self.pad.begin(session.studio.units, text)

    def _typed(self) -> float | None:
        """The grams that were typed, where they can be; None else."""
        session, stand = self._desk.session, self.work.stand
        if session is None or stand is None:
            return None
        grams = self.pad.grams(session.studio.units)
        if grams is None or grams <= 0.0:
            return None
        if self._asks is TapKind.READS and grams <= least_reading(stand) + _CRUMB:
            return None
        return grams

    def _take_typed(self) -> None:
        grams, kind = self._typed(), self._asks
        if grams is not None and kind is not None:
            self._asks = None
            self.work.tap(kind, grams)
            self.target.setFocus()

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        stand, text = self.work.stand, event.text()
        if event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.target.click()
        elif self._asks is not None and event.key() == Qt.Key.Key_Backspace:
            self.pad.press(ERASE)
        elif stand is None or not (text.isdigit() or text in {",", "."}):
            super().keyPressEvent(event)
        else:
            if self._asks is None and stand.step.weighs:
                self._ask(TapKind.READS)
                self.show_now()
            if self._asks is not None:
                self.pad.press(text)
