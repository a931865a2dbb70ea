"""What is done with the plan by hand: taking a pour, dropping it, pinning it, and its verbs."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QObject, Signal

from studio_planner.desktop import bar_words
from studio_planner.desktop.timeline_work.aftermath import Aftermath
from studio_planner.desktop.timeline_work.drag import Drag
from studio_planner.desktop.timeline_work.drag_painter import DragPainter
from studio_planner.desktop.timeline_work.dropping import drop_at
from studio_planner.desktop.timeline_work.ghosts import draw_ghosts
from studio_planner.desktop.timeline_work.slip import Slip, SlipLine
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.pins import (
    evening_forbidden,
    let_all_go,
    let_go,
    pinned_here,
)
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


class Refusal(NamedTuple):
    """A drop that was refused: why, beside which piece and at which instant [s].

    It is shown as long as the line over the timeline still says so.
    """

    slip: Slip
    drag: Drag
    said: str


class PlanWork(QObject):
    """Works on the plan of a desk through its timeline and its spots.

    Signals:
        renewed: what lies over the bars is to be drawn again.
        shown: the piece and the coat of a pour that the maker wants to see.
        left: nothing is in the hand any more.
    """

    renewed = Signal()
    shown = Signal(str, str)
    left = Signal()

    def __init__(self, desk: WorkDesk, timeline: Timeline) -> None:
        """Work for `desk`; nothing is in the hand yet."""
        super().__init__(timeline)
        self._desk = desk
        self._timeline = timeline
        self.drag: Drag | None = None
        self.refusal: Refusal | None = None
        self.aftermath = Aftermath(desk, self)
        self.aftermath.renewed.connect(self.renewed)
        self.aftermath.shown.connect(self.shown)
        desk.work_line.spoke.connect(self._forget_refusal)

    def _forget_refusal(self) -> None:
        if self.refusal is not None and self._desk.work_line.said != self.refusal.said:
            self.refusal = None
            self.renewed.emit()

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
            self.left.emit()
            self.renewed.emit()

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
        if not verdict.allowed:
            self._spring_back(studio, drag, verdict)
            return
        self._make(*drop_at(studio, drag, verdict))

    def _spring_back(self, studio: Studio, drag: Drag, verdict: Verdict) -> None:
        voice, name = DeskVoice(studio), bar_words.short_name(drag.bar)
        reasons = voice.all_of(one.words for one in verdict.hard)
        stays = translate("work", "{bar} stays where it was. {why}")
        said = stays.format(bar=name, why=" ".join(reasons))
        heading = stays.format(bar=name, why="").strip()
        slip = Slip(heading, tuple(SlipLine(why, forbids=True) for why in reasons))
        self.refusal = Refusal(slip, drag, said)
        nearest = drag.nearest
        line = self._desk.work_line
        line.say(said, wrong=True)
        if nearest is not None and (nearest.start != drag.bar.start or drag.goes is not None):
            verb = translate("work", "Pour {when}").format(when=voice.moment(nearest.start))
            line.offer((verb, lambda: self.pour_at(studio, drag, nearest)))
        self.renewed.emit()

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

    def show_menu(self, bar: Bar | None, place: QPoint) -> None:
        """Show the verbs for a bar at a place on the screen."""
        if not self.verbs.showing:
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
        """Draw what lies over the ribbons: ghosts, the pour in the hand, why it was refused."""
        moved = self.aftermath.difference.moved
        if moved:
            draw_ghosts(painter, self._timeline, moved)
        if self.drag is not None:
            self._painter.paint(painter, self.drag)
        elif self.refusal is not None:
            drag = self.refusal.drag
            key, second = drag.bar.lane.piece.key, drag.wanted.timestamp()
            self._painter.draw_words(painter, self.refusal.slip, key, second)
