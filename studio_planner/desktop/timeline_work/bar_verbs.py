"""The verbs of a bar: pin it, let it go, pour at a time, forbid its evening, show it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtWidgets import QMenu

from studio_planner.craft.grid import nearest_on_grid
from studio_planner.craft.local_time import readings_of
from studio_planner.desktop import bar_words
from studio_planner.desktop.happened_menu import fill_happened
from studio_planner.desktop.page_keys import ORDERS, PIECES, PRODUCTS
from studio_planner.desktop.timeline_work.drag import Drag
from studio_planner.desktop.tongue import translate
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.moving.judging import Verdict
    from studio_planner.services.ribbons import Bar


class Works(Protocol):
    """What is done with bars when a verb is chosen."""

    def is_pinned(self, bar: Ribbon) -> bool:
        """Whether a pour is pinned."""
        ...

    def pin_here(self, bar: Ribbon) -> None:
        """Pin a pour where the plan has it."""
        ...

    def let_go(self, bar: Ribbon) -> None:
        """Let planning choose its time again."""
        ...

    def let_all_go(self) -> None:
        """Let planning choose every time again."""
        ...

    def forbid_evening(self, bar: Bar) -> None:
        """Let nobody work on the evening of a bar's day."""
        ...

    def evening_of(self, when: datetime) -> str:
        """What the day of that evening is called."""
        ...

    def evening_ahead(self, when: datetime) -> bool:
        """Whether any of that evening is still to come."""
        ...

    def pour_at(self, studio: Studio, drag: Drag, verdict: Verdict) -> None:
        """Pour at a time that was judged."""
        ...


class BarVerbs:
    """Fills menus with what can be done with a bar."""

    def __init__(self, work: Works, desk: WorkDesk, timeline: QWidget) -> None:
        """Let `work` do it."""
        self._work = work
        self._desk = desk
        self._timeline = timeline
        self._menu = QMenu(timeline)

    @property
    def showing(self) -> bool:
        """Whether the menu is open."""
        return self._menu.isVisible()

    def menu(self, bar: Bar | None) -> QMenu:
        """The menu for a bar, made anew."""
        self._menu.clear()
        self.fill(self._menu, bar)
        return self._menu

    def fill(self, menu: QMenu, bar: Bar | None) -> None:
        """Put the verbs of a bar into a menu."""
        if bar is None:
            _add(menu, translate("work", "Choose a bar first"), None)
            return
        menu.setAccessibleName(bar_words.name(bar))
        self._add_happened(menu, bar)
        self._add_pinning(menu, bar)
        self._add_showing(menu, bar)

    def _add_happened(self, menu: QMenu, bar: Bar) -> None:
        happened = menu.addMenu(translate("work", "What &happened"))
        piece = bar.lane.piece.key
        # Only whoever opens it needs to know what can have happened.
        happened.aboutToShow.connect(lambda: self._fill_happened(happened, piece))

    def _fill_happened(self, menu: QMenu, piece: str) -> None:
        menu.clear()
        fill_happened(menu, self._desk, piece)

    def _add_pinning(self, menu: QMenu, bar: Bar) -> None:
        work = self._work
        if isinstance(bar, Ribbon) and bar.planned.poured:
            _add(menu, translate("work", "Poured: it stays where it is"), None)
        elif isinstance(bar, Ribbon):
            if work.is_pinned(bar):
                _add(menu, translate("work", "Let &go"), lambda: work.let_go(bar))
            else:
                _add(menu, translate("work", "&Pin here"), lambda: work.pin_here(bar))
            _add(menu, translate("work", "Pour &at…"), lambda: self.ask_time(bar))
            _add(menu, translate("work", "&Weigh this mix"), lambda: self._weigh(bar))
            _add(menu, translate("work", "Or drag it, or use Alt with left and right"), None)
        pins = bar.lane.studio.pins
        _add(menu, translate("work", "Let a&ll go"), work.let_all_go if pins else None)
        day = work.evening_of(bar.start)
        text = translate("work", "Nobody works in the &evening of {day}").format(day=day)
        free = bool(bar.lane.studio.people) and work.evening_ahead(bar.start)
        _add(menu, text, (lambda: work.forbid_evening(bar)) if free else None)
        menu.addSeparator()

    def _weigh(self, bar: Ribbon) -> None:
        self._desk.weigh(bar.lane.piece.key, bar.coat.key)

    def _add_showing(self, menu: QMenu, bar: Bar) -> None:
        studio, piece = bar.lane.studio, bar.lane.piece
        order = studio.order_of(piece.key)
        self._add_show(menu, translate("work", "Show the p&iece"), PIECES, piece.key)
        if order is not None:
            self._add_show(menu, translate("work", "Show the &order"), ORDERS, order.key)
        if isinstance(bar, Ribbon):
            key = bar.product.key
            self._add_show(menu, translate("work", "Show the p&roduct"), PRODUCTS, key)

    def _add_show(self, menu: QMenu, text: str, page: str, key: str) -> None:
        _add(menu, text, lambda: self._desk.go_to(page, key))

    def ask_time(self, bar: Ribbon) -> None:
        """Ask at which time to pour, beginning with the time that the plan has."""
        studio = bar.lane.studio
        wall = bar.start.astimezone(studio.time_zone).replace(tzinfo=None, second=0)
        question = translate("work", "Pour {bar} at").format(bar=bar_words.short_name(bar))
        self._desk.work_line.ask_time(
            question, wall, studio.units.clock, lambda when: self._pour_at(bar, when)
        )

    def _pour_at(self, bar: Ribbon, wall: datetime) -> None:
        session = self._desk.session
        if session is None:
            return
        found = readings_of(session.studio.time_zone, wall)
        if not found:
            said = translate("work", "The clock is put forward then: there is no such time.")
            self._desk.work_line.say(said, wrong=True)
            return
        drag = Drag(session.view, bar, by_keys=True)
        drag.want(nearest_on_grid(found[0]))
        self._desk.work_line.clear()
        self._timeline.setFocus()
        self._work.pour_at(session.studio, drag, drag.verdict)


def _add(menu: QMenu, text: str, does: Callable[[], object] | None) -> None:
    action = menu.addAction(text)
    action.setEnabled(does is not None)
    if does is not None:
        action.triggered.connect(lambda _checked=False: does())
