"""What the weigh view shows of a mix: its sheet, the step that is next, and what was wrong."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.desktop import mix_lines, words
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh import weigh_words
from studio_planner.desktop.weigh.bottle_words import bottle_said
from studio_planner.desktop.weigh.colour_words import colour_lines
from studio_planner.desktop.weigh.cup_times import CupTimes, times_of
from studio_planner.desktop.weigh.mix_choice import MixChoice
from studio_planner.desktop.weigh.pad_words import can_be, doubt_said, limit_said
from studio_planner.desktop.weigh.weigh_screen import WeighScreen
from studio_planner.desktop.weigh.weigh_sound import WeighSound
from studio_planner.desktop.weigh.weigh_work import WeighWork
from studio_planner.services.mix_run.kept_file import KeptMix, kept_for
from studio_planner.services.mix_run.stand import Do
from studio_planner.services.mix_run.taps import TapKind
from studio_planner.services.mixing.at_the_scale import ScaleVerdict

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtWidgets import QPushButton, QWidget

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.mix_run.stand import Stand
    from studio_planner.services.mixing.mix_sheet import MixSheet

_CRUMB = 1e-6


class WeighFace(WeighScreen):
    """The weigh view as far as it is looked at.

    `asks` is what the pad asks for, None while it is away; `giving_up` whether the maker is
    asked if the mix is to be thrown away.
    """

    def __init__(
        self, desk: PageDesk, data_folder: Callable[[], Path] | None, parent: QWidget | None
    ) -> None:
        """Show mixes of the desk's studio; taps are kept in the maker's own `data_folder`."""
        super().__init__(desk.canvas, parent)
        self.desk = desk
        self._data_folder = data_folder
        self.choice = MixChoice()
        self.asks: TapKind | None = None
        self.giving_up = False
        self._covered: MixSheet | None = None
        self.work = WeighWork(desk, self._kept)
        self.sounds = WeighSound(self)

    def _kept(self) -> KeptMix | None:
        session = self.desk.session
        return None if session is None else kept_for(session.path, self._data_folder)

    # What there is

    @property
    def sheet(self) -> MixSheet | None:
        """The sheet of the mix that could be begun; None where there is none."""
        self.choice.see(self.work.studio)
        return self.choice.sheet

    @property
    def minute(self) -> float | None:
        """How many minutes ago A met B in the portion that is in hand; None before."""
        session, stand = self.desk.session, self.work.stand
        since = None if stand is None else stand.now.since
        if session is None or since is None:
            return None
        return (session.now() - since).total_seconds() / 60.0

    @property
    def times(self) -> CupTimes:
        """What the cup clock shows."""
        return times_of(self.work.stand, self.minute)

    # What is shown

    def show_now(self) -> None:
        """Show the step as it is now, and count."""
        self.work.follow()
        session, stand = self.desk.session, self.work.stand
        if session is None:
            self._show_reading()
            return
        self.right.show()
        if stand is not None:
            self._show_step(session.studio, stand)
        elif self.sheet is not None:
            self._show_cover(session.studio, self.sheet)
        else:
            self._show_nothing(pieces=bool(session.studio.pieces))
        self._show_head()
        self.offer_typed()
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
        bottle = bottle_said(studio, self.work.running, stand)
        self._say(replace(shown, about="\n".join(filter(None, (shown.about, bottle)))))
        real = stand.now.real
        lines = list(real.sentences) if real is not None and self._judged(stand) else []
        stops = real is not None and real.verdict is ScaleVerdict.STOP and bool(lines)
        if stops and stand.step.do is Do.MORE:
            lines.insert(0, translate("weigh", "Stop: do not pour it like this."))
        elif stops and stand.now.met is None:
            said = translate("weigh", "B is not in it yet: take some A out and weigh it again.")
            lines.append(said)
        lines += colour_lines(studio, stand.now)
        lines[:0] = self._doubts(studio, stand)
        if stand.lefts and self.desk.session is not None:
            lines += weigh_words.left_lines(self.desk.session.view, stand)
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
        if self.asks is not None:
            self.right.setCurrentWidget(self.pad)
            self._say_pad()
        else:
            self.right.setCurrentWidget(self.cover if stand is None else self.clock)

    def _say_pad(self) -> None:
        left = self.asks is TapKind.LEFT
        self._offer(
            self.target,
            translate("weigh", "So much is left")
            if left
            else translate("weigh", "It reads so"),
        )
        self._offer(self.other, translate("weigh", "Back"))

    def _show_cover(self, studio: Studio, sheet: MixSheet) -> None:
        wall = words.wall_of(studio)
        if sheet is not self._covered:
            self._covered = sheet
            self.cover.show_sheet(studio, sheet)
        self._say(
            weigh_words.Shown(
                verb=sheet.product.name,
                about=mix_lines.coats_line(studio, sheet),
                number=weigh_words.reading(sheet.total_grams, studio),
                reads="\n".join(
                    (
                        mix_lines.cups_line(studio, sheet),
                        translate("weigh", "Planned {when}").format(
                            when=words.span(sheet.start, sheet.end, wall)
                        ),
                    )
                ),
                target=translate("weigh", "Begin to weigh"),
                other=translate("weigh", "Next mix") if len(self.choice.mixes) > 1 else "",
            )
        )
        self._show_said([], stops=False)
        self._show_right(None)

    def _show_nothing(self, *, pieces: bool) -> None:
        self._say(weigh_words.nothing_shown(pieces=pieces))
        self._show_said([], stops=False)
        self.right.hide()

    def _show_reading(self) -> None:
        """Say that there is no studio yet, instead of buttons for none."""
        self._say(weigh_words.reading_shown())
        for part in (self.right, self.back, self.give_up, self.sound, self.said):
            part.hide()
        self.fit_letters()

    def _show_said(self, lines: list[str], *, stops: bool) -> None:
        if self.giving_up:
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
        session, stand = self.desk.session, self.work.stand
        if session is None:
            return
        parts = [words.moment(session.now(), words.wall_of(session.studio))]
        mixes, chosen = self.choice.mixes, self.sheet
        if stand is None and chosen is not None and len(mixes) > 1:
            said = translate("weigh", "{place} of {count} mixes to weigh")
            parts.append(said.format(place=mixes.index(chosen.mix) + 1, count=len(mixes)))
        if stand is not None:
            step = translate("weigh", "step {number} of {count}")
            parts.append(step.format(number=stand.step_number, count=stand.step_count))
            if stand.parts > 1:
                said = translate("weigh", "portion {part} of {parts}")
                parts.append(said.format(part=stand.part, parts=stand.parts))
            # A portion has its number once it is in the log.
            parts += [
                translate("weigh", "mix {number}").format(number=number)
                for number in self.work.batches[stand.part - 1 : stand.part]
            ]
        self.head.setText("   ".join(parts))
        running = self.work.running is not None
        written = stand is not None and stand.step.do is Do.WRITTEN
        self._offer(self.back, self._back_said())
        self.give_up.setVisible(running and not written)
        off = self.sounds.off
        self._offer(
            self.sound,
            translate("weigh", "Sound is off") if off else translate("weigh", "Sound is on"),
        )

    def _back_said(self) -> str:
        if self.work.running is not None:
            return translate("weigh", "Undo last tap")
        return translate("weigh", "Mix before") if len(self.choice.mixes) > 1 else ""

    def offer_typed(self) -> None:
        """Offer to take what was typed, where it can be; else say what can."""
        session, stand = self.desk.session, self.work.stand
        if self.asks is None or self.right.currentWidget() is not self.pad:
            return
        if session is not None and stand is not None and self._doubts(session.studio, stand):
            self._offer(self.target, limit_said(session.studio, stand, self.asks))
        self.target.setEnabled(self.typed_grams() is not None)

    def typed_grams(self) -> float | None:
        """The grams that were typed, where they can be; None else."""
        session, stand = self.desk.session, self.work.stand
        if session is None or stand is None:
            return None
        grams = self.pad.grams(session.studio.units)
        return grams if can_be(stand, self.asks, grams) else None

    def _doubts(self, studio: Studio, stand: Stand) -> list[str]:
        """Why what was typed is not taken, where it isn't."""
        if self.asks is None:
            return []
        return doubt_said(studio, stand, self.asks, self.pad.grams(studio.units))
