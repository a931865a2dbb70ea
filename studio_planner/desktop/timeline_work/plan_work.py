"""What is done with the plan by hand: taking a pour, dropping it, pinning it, and its verbs."""

from __future__ import annotations

from functools import cached_property, partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from studio_planner.desktop import bar_words
from studio_planner.desktop.timeline_work.aftermath import Aftermath
from studio_planner.desktop.timeline_work.drag import Drag
from studio_planner.desktop.timeline_work.drag_painter import DragPainter
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.pins import (
    dropped,
    evening_forbidden,
    let_all_go,
    let_go,
    pinned_here,
)
from studio_planner.services.moving.moved_plan import moved_plan
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from datetime import datetime

    from PySide6.QtCore import QPoint
    from PySide6.QtGui import QPainter

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.timeline import Timeline
    from studio_planner.desktop.timeline_work.bar_verbs import BarVerbs
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.editing.changes import Change
    from studio_planner.services.moving.judging import Verdict
    from studio_planner.services.ribbons import Bar


class PlanWork(QObject):
    """Works on the plan of a desk through its timeline."""

    def __init__(self, desk: WorkDesk, timeline: Timeline) -> None:
        """Work for `desk`; nothing is in the hand yet."""
        super().__init__(timeline)
        self._desk = desk
        self._timeline = timeline
        self.drag: Drag | None = None
        self.aftermath = Aftermath(desk, timeline, self)

    @property
    def by_keys(self) -> bool:
        """Whether the pour in the hand is moved by keys."""
        return self.drag is not None and self.drag.by_keys

    @property
    def _studio(self) -> Studio | None:
        return None if self._desk.session is None else self._desk.session.studio

    # Taking and dropping

    def take(self, bar: Bar, *, by_keys: bool) -> bool:
        """Take a bar in the hand; what cannot be moved is said. True when it is taken."""
        line, session = self._desk.work_line, self._desk.session
        if session is None:
            return False
        if not isinstance(bar, Ribbon):
            line.say(
                translate("work", "{bar} follows its pour: move that.").format(
                    bar=bar_words.short_name(bar)
                )
            )
            return False
        if bar.planned.poured:
            line.say(
                translate("work", "{bar} is poured: what is poured stays where it is.").format(
                    bar=bar_words.short_name(bar)
                )
            )
            return False
        self.drag = Drag(session.view, bar, by_keys=by_keys)
        return True

    def say_drag(self) -> None:
        """Say where the pour in the hand is, and what it would break."""
        if self.drag is not None:
            name = bar_words.short_name(self.drag.bar)
            self._desk.work_line.say(
                f"{name}: {self.drag.said}", wrong=not self.drag.verdict.allowed
            )

    def put_back(self) -> None:
        """Give up: the pour goes back to where it was."""
        if self.drag is not None:
            name = bar_words.short_name(self.drag.bar)
            said = translate("work", "{bar} stays where it was.").format(bar=name)
            self.give_up()
            self._desk.work_line.say(said)

    def interrupt(self) -> None:
        """Let go because the plan is another one now, and say so."""
        if self.drag is not None:
            self.give_up()
            said = translate("work", "The plan has changed meanwhile: take the pour again.")
            self._desk.work_line.say(said)

    def give_up(self) -> None:
        """Let go of what is in the hand without a word."""
        if self.drag is not None:
            self.drag = None
            self._timeline.viewport().unsetCursor()
            self._timeline.viewport().update()

    def drop(self) -> None:
        """Drop the pour where it is held; where it may not be it goes back, with the reason."""
        drag = self.drag
        if drag is None:
            return
        self.give_up()
        if not drag.moved:
            self._desk.work_line.clear()
            return
        self.pour_at(drag.judge.view.studio, drag, drag.verdict)

    def pour_at(self, studio: Studio, drag: Drag, verdict: Verdict) -> None:
        """Pour at a time that was judged: pinned there, or said why not with the nearest."""
        name = bar_words.short_name(drag.bar)
        if not verdict.allowed:
            self._spring_back(studio, drag, verdict)
            return
        when = DeskVoice(studio).moment(verdict.start)
        words = translate("work", "Pour {bar} {when}").format(bar=name, when=when)
        said = translate("work", "{bar} is pinned to {when}.").format(bar=name, when=when)
        moved = partial(moved_plan, verdict=verdict)
        self._make(dropped(verdict.coats, moved, words), verdict.coats, said)

    def _spring_back(self, studio: Studio, drag: Drag, verdict: Verdict) -> None:
        voice, name = DeskVoice(studio), bar_words.short_name(drag.bar)
        why = " ".join(voice.all_of(one.words for one in verdict.hard))
        said = translate("work", "{bar} stays where it was. {why}").format(bar=name, why=why)
        nearest = drag.judge.nearest(verdict.start)
        line = self._desk.work_line
        if nearest is None or nearest.start == drag.bar.start:
            line.say(said, wrong=True)
            return
        verb = translate("work", "Pour {when}").format(when=voice.moment(nearest.start))
        line.say(said, wrong=True)
        line.offer((verb, lambda: self.pour_at(studio, drag, nearest)))

    def _make(self, change: Change, mine: tuple[PlannedCoat, ...], said: str) -> bool:
        """Make a change; what it moves besides `mine` is shown until it is taken note of."""
        made = self.aftermath.make(change, mine)
        if made:
            self._desk.work_line.say(said)
        return made

    # Verbs

    def mix_of(self, bar: Ribbon) -> tuple[PlannedCoat, ...]:
        """The coats that are poured with one, itself among them."""
        plan = bar.lane.plan
        coats = plan.coats if plan else ()
        return tuple(c for c in coats if c.mix == bar.planned.mix and not c.poured)

    def is_pinned(self, bar: Ribbon) -> bool:
        """Whether a pour is pinned."""
        return bar.lane.studio.pinned(bar.lane.piece.key, bar.coat.key) is not None

    def pin_here(self, bar: Ribbon) -> None:
        """Pin a pour where the plan has it."""
        name, when = bar_words.short_name(bar), DeskVoice(bar.lane.studio).moment(bar.start)
        words = translate("work", "Pin {bar}").format(bar=name)
        said = translate("work", "{bar} is pinned to {when}.").format(bar=name, when=when)
        mix = self.mix_of(bar)
        self._make(pinned_here(mix, words), mix, said)

    def let_go(self, bar: Ribbon) -> None:
        """Let planning choose the time of a pour again."""
        name = bar_words.short_name(bar)
        words = translate("work", "Let {bar} go").format(bar=name)
        said = translate("work", "{bar} may be moved by planning again.").format(bar=name)
        self._make(let_go(self.mix_of(bar), words), (), said)

    def let_all_go(self) -> None:
        """Let planning choose every time again."""
        words = translate("work", "Let all pins go")
        self._make(let_all_go(words), (), translate("work", "No pour is pinned any more."))

    def forbid_evening(self, bar: Bar) -> None:
        """Let nobody work on the evening of a bar's day."""
        session = self._desk.session
        if session is None:
            return
        day = self.evening_of(bar.start)
        words = translate("work", "Nobody works on {day}").format(day=day)
        said = translate("work", "Nobody works in the evening of {day}.").format(day=day)
        self._make(evening_forbidden(bar.start, session.now(), words), (), said)

    def evening_of(self, when: datetime) -> str:
        """The day of an evening, as it is called."""
        from studio_planner.desktop import words  # noqa: PLC0415 - few need it

        studio = self._studio
        return "" if studio is None else words.day_name(when, words.wall_of(studio))

    def evening_ahead(self, when: datetime) -> bool:
        """Whether any of the evening of a day is still to come."""
        session = self._desk.session
        if session is None:
            return False
        zone = session.studio.time_zone
        return when.astimezone(zone).date() >= session.now().astimezone(zone).date()

    def show_menu(self, place: QPoint) -> None:
        """Show the verbs for the chosen bar at a place on the screen."""
        if not self.verbs.showing:
            bar = self._timeline.lanes.bar(self._timeline.currentIndex())
            self.verbs.menu(bar).popup(place)

    @cached_property
    def verbs(self) -> BarVerbs:
        """The verbs of a bar."""
        from studio_planner.desktop.timeline_work.bar_verbs import BarVerbs  # noqa: PLC0415

        return BarVerbs(self, self._desk, self._timeline)

    # Drawing

    @cached_property
    def _painter(self) -> DragPainter:
        return DragPainter(self._timeline)

    def paint(self, painter: QPainter) -> None:
        """Draw what lies over the ribbons: ghosts, and the pour in the hand."""
        self.aftermath.paint(painter)
        if self.drag is not None:
            self._painter.paint(painter, self.drag)
