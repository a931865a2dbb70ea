"""A pour that is held in the hand: where it is wanted, and what it would mean there."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.grid import nearest_on_grid
from studio_planner.desktop import words
from studio_planner.desktop.timeline_work.slip import Slip, SlipLine
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.moving.judging import Judge

if TYPE_CHECKING:
    from studio_planner.services.desk import DeskView
    from studio_planner.services.moving.held import Goes
    from studio_planner.services.moving.judging import Verdict
    from studio_planner.services.ribbons import Lane, Ribbon


class Drag:
    """One pour in the hand. It is judged when it is asked about, so at most once a frame."""

    def __init__(self, view: DeskView, bar: Ribbon, *, by_keys: bool) -> None:
        """Take a pour to come; ValueError where it is poured."""
        self.judge = Judge(view, bar.planned)
        self.bar = bar
        self.by_keys = by_keys
        self.wanted = bar.start
        self.goes: Goes | None = None
        self._voice = DeskVoice(view.studio)
        self._verdict: Verdict | None = None
        self._lanes: tuple[Lane, ...] | None = None

    def want_second(self, second: float) -> bool:
        """Hold it over an instant [s], to the nearest five minutes; tell whether it moved."""
        return self.want(nearest_on_grid(datetime.fromtimestamp(second, UTC)))

    def step(self, minutes: int) -> bool:
        """Hold it some minutes later or sooner; tell whether it moved."""
        return self.want(self.wanted + timedelta(minutes=minutes))

    def want(self, when: datetime) -> bool:
        """Hold it over a time on the grid, inside the record; tell whether it moved."""
        timing = self.judge.view.timing
        length = self.bar.planned.end - self.bar.planned.start
        when = min(
            max(when, nearest_on_grid(timing.start)), nearest_on_grid(timing.end - length)
        )
        moved = when != self.wanted
        if moved:
            self.wanted, self._verdict, self._lanes = when, None, None
        return moved

    def want_spot(self, goes: Goes | None) -> bool:
        """Hold its piece over another spot, None for its own; tell whether it moved."""
        moved = goes != self.goes
        if moved:
            self.goes, self._verdict, self._lanes = goes, None, None
        return moved

    @property
    def spot(self) -> str:
        """The key of the spot that it is held over."""
        return self.bar.planned.spot if self.goes is None else self.goes.spot

    @property
    def moved(self) -> bool:
        """Whether it is held somewhere else than it was."""
        return self.wanted != self.bar.start or self.goes is not None

    @property
    def nearest(self) -> Verdict | None:
        """The allowed start nearest to where it is held; None where there is none near it."""
        return self.judge.nearest(self.wanted, self.goes)

    @property
    def verdict(self) -> Verdict:
        """What it would mean there."""
        if self._verdict is None:
            self._verdict = self.judge.at(self.wanted, self.goes)
        return self._verdict

    @property
    def lanes(self) -> tuple[Lane, ...]:
        """The lanes of its mix as they would be drawn."""
        if self._lanes is None:
            self._lanes = self.judge.shown(self.verdict)
        return self._lanes

    @property
    def moment(self) -> str:
        """The day and the time that it is held over."""
        return self._voice.moment(self.wanted)

    @property
    def companions(self) -> tuple[str, ...]:
        """The names of the other pieces whose coats are poured from the same mix."""
        studio = self.judge.view.studio
        keys = dict.fromkeys(coat.piece for coat in self.judge.mix[1:])
        return tuple(words.piece_name(studio.piece(key)) for key in keys)

    @property
    def sentences(self) -> list[str]:
        """What moves with it, what it would break there, and what follows."""
        return [line.words for line in self.slip.lines]

    @property
    def slip(self) -> Slip:
        """The time, and all that is to say about it."""
        others = self.companions
        lines: list[SlipLine] = []
        if others:
            text = translate("work", "From one mix: moves with {pieces}.")
            lines.append(SlipLine(text.format(pieces=", ".join(others))))
        breaks = self.verdict.breaks
        sentences = self._voice.all_of(one.words for one in breaks)
        found = zip(sentences, breaks, strict=True)
        lines += [SlipLine(text, forbids=one.hard) for text, one in found]
        return Slip(self.heading, tuple(lines))

    @property
    def heading(self) -> str:
        """The time that it is held over, with the spot where that is another."""
        if self.goes is None:
            return self.moment
        spot = self.judge.view.studio.spot(self.goes.spot).name
        return translate("work", "{time}, {spot}").format(time=self.moment, spot=spot)

    @property
    def said(self) -> str:
        """The time and all that is to say about it, in one line."""
        return " ".join([f"{self.moment}.", *self.sentences])
