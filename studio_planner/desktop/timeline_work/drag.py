"""A pour that is held in the hand: where it is wanted, and what it would mean there."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.services.moving.judging import Judge, snapped

if TYPE_CHECKING:
    from studio_planner.services.desk import DeskView
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
        self._voice = DeskVoice(view.studio)
        self._verdict: Verdict | None = None
        self._lanes: tuple[Lane, ...] | None = None

    def want_second(self, second: float) -> bool:
        """Hold it over an instant [s], to the nearest five minutes; tell whether it moved."""
        return self.want(snapped(datetime.fromtimestamp(second, UTC)))

    def step(self, minutes: int) -> bool:
        """Hold it some minutes later or sooner; tell whether it moved."""
        return self.want(self.wanted + timedelta(minutes=minutes))

    def want(self, when: datetime) -> bool:
        """Hold it over a time on the grid, inside the record; tell whether it moved."""
        timing = self.judge.view.timing
        length = self.bar.planned.end - self.bar.planned.start
        when = min(max(when, snapped(timing.start)), snapped(timing.end - length))
        moved = when != self.wanted
        if moved:
            self.wanted, self._verdict, self._lanes = when, None, None
        return moved

    @property
    def moved(self) -> bool:
        """Whether it is held somewhere else than it was."""
        return self.wanted != self.bar.start

    @property
    def verdict(self) -> Verdict:
        """What it would mean there."""
        if self._verdict is None:
            self._verdict = self.judge.at(self.wanted)
        return self._verdict

    @property
    def lanes(self) -> tuple[Lane, ...]:
        """The lanes of its mix as they would be drawn."""
        if self._lanes is None:
            self._lanes = self.judge.shown(self.verdict)
        return self._lanes

    @property
    def clock(self) -> str:
        """The time that it is held over."""
        return self._voice.clock(self.wanted)

    @property
    def moment(self) -> str:
        """The same with its day."""
        return self._voice.moment(self.wanted)

    @property
    def sentences(self) -> list[str]:
        """What it would break there, and what follows; empty where all is well."""
        return self._voice.all_of(one.words for one in self.verdict.breaks)

    @property
    def said(self) -> str:
        """The time and all that is to say about it, in one line."""
        return " ".join([f"{self.moment}.", *self.sentences])
