"""The menus of the desk: verbs in words, each with its key."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtGui import QAction, QActionGroup, QKeySequence

from studio_planner.desktop.page_keys import PLAN
from studio_planner.desktop.theme import Look

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QMenu, QMenuBar

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_backups import DeskBackups
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.desktop.desk_parts import DeskParts
    from studio_planner.desktop.other_windows import OtherWindows
    from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline

_Key = QKeySequence.StandardKey


class Verbs(Protocol):
    """What a window can do for its menus."""

    canvas: Canvas
    changes: DeskChanges
    backups: DeskBackups
    others: OtherWindows

    @property
    def timeline(self) -> WorkingTimeline:
        """What Nearer and Farther zoom."""
        ...

    @property
    def parts(self) -> DeskParts:
        """Timeline, spots and the line over them."""
        ...

    def menuBar(self) -> QMenuBar:  # noqa: N802 - Qt's name
        """The bar that the menus go into."""
        ...

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page."""
        ...

    def close(self) -> bool:
        """Leave."""
        ...

    def ask_open(self) -> None:
        """Ask for a studio and open it."""
        ...

    def ask_new(self) -> None:
        """Ask for a name and make a studio."""
        ...

    def ask_copy(self) -> None:
        """Ask for a name and save a copy."""
        ...

    def plan_again(self) -> None:
        """Plan again."""
        ...

    def stop_planning(self) -> None:
        """Stop planning."""
        ...

    def choose_look(self, look: Look) -> None:
        """Change the colours for now and later."""
        ...


def build_menus(window: Verbs) -> dict[str, QAction]:
    """Put the menus into a window; give each action under a short name."""
    verbs: dict[str, QAction] = {}
    bar = window.menuBar()
    bar.setAccessibleName("Menus")

    def add(
        menu: QMenu, name: str, words: str, key: _Key | str | None, does: Callable[[], object]
    ) -> None:
        action = QAction(words, bar)
        if key is not None:
            action.setShortcut(QKeySequence(key))
        action.triggered.connect(lambda _checked=False: does())
        menu.addAction(action)
        verbs[name] = action

    studio = bar.addMenu("&Studio")
    add(studio, "open", "&Open…", _Key.Open, window.ask_open)
    add(studio, "new", "&New…", _Key.New, window.ask_new)
    add(studio, "copy", "Save a &copy…", _Key.SaveAs, window.ask_copy)
    add(studio, "back up", "&Back up now", _Key.Save, lambda: window.backups.make_now())  # noqa: PLW0108
    studio.addSeparator()
    add(studio, "close", "&Leave", _Key.Quit, window.close)
    change = bar.addMenu("&Change")
    add(change, "undo", "&Undo", _Key.Undo, lambda: window.changes.undo())  # noqa: PLW0108 - made later
    add(change, "redo", "&Do again", _Key.Redo, lambda: window.changes.redo())  # noqa: PLW0108
    plan = bar.addMenu("&Plan")
    add(plan, "plan", "Plan &again", "Ctrl+R", window.plan_again)
    add(plan, "stop", "&Stop planning", "Ctrl+.", window.stop_planning)
    plan.addSeparator()
    add(plan, "by itself", "Plan after each &change", None, lambda: None)
    verbs["by itself"].setCheckable(True)
    verbs["by itself"].setChecked(True)
    verbs["by itself"].toggled.connect(lambda on: window.changes.plan_by_itself(on))  # noqa: PLW0108
    _add_chosen(plan, window)
    look = bar.addMenu("&Look")
    canvas = window.canvas
    # The timeline is made when it is first asked for, and is not yet.
    add(look, "nearer", "&Nearer", _Key.ZoomIn, lambda: window.timeline.zoom_in())  # noqa: PLW0108
    add(look, "farther", "&Farther", _Key.ZoomOut, lambda: window.timeline.zoom_out())  # noqa: PLW0108
    add(look, "now", "&Go to now", "Ctrl+G", canvas.show_now)
    add(look, "week", "The coming &week", "Ctrl+0", canvas.show_week)
    add(look, "whole", "The &whole plan", "Ctrl+9", canvas.show_plan)
    _add_views(look, window, verbs)
    look.addSeparator()
    add(look, "bench", "&Bench", "F11", window.others.show_bench)
    look.addSeparator()
    add(look, "legend", "L&egend", _Key.HelpContents, window.others.show_legend)
    look.addSeparator()
    add(look, "light", "&Light", None, lambda: window.choose_look(Look.LIGHT))
    add(look, "dark", "&Dark", None, lambda: window.choose_look(Look.DARK))
    looks = QActionGroup(bar)
    for name in ("light", "dark"):
        verbs[name].setCheckable(True)
        looks.addAction(verbs[name])
    verbs["dark" if canvas.theme.look is Look.DARK else "light"].setChecked(True)
    verbs["stop"].setEnabled(False)
    return verbs


def _add_chosen(plan: QMenu, window: Verbs) -> None:
    """The verbs of the chosen bar, asked when the menu is opened."""
    plan.addSeparator()
    chosen = plan.addMenu("The &chosen bar")

    def fill() -> None:
        timeline = window.timeline
        chosen.clear()
        timeline.work.verbs.fill(chosen, timeline.lanes.bar(timeline.currentIndex()))

    chosen.aboutToShow.connect(fill)


def _add_views(look: QMenu, window: Verbs, verbs: dict[str, QAction]) -> None:
    """The ways to look at the plan; each brings it to the front first."""

    def show(does: Callable[[], object]) -> None:
        window.go_to(PLAN)
        does()

    look.addSeparator()
    for name, words, key, does in (
        ("by piece", "By &piece", "F7", lambda: window.parts.show_by_piece()),  # noqa: PLW0108
        ("by spot", "By &spot", "F8", lambda: window.parts.show_by_spot()),  # noqa: PLW0108
        ("find", "&Find", _Key.Find, lambda: window.parts.work_line.begin_to_find()),  # noqa: PLW0108
    ):
        verbs[name] = look.addAction(words)
        verbs[name].setShortcut(QKeySequence(key))
        verbs[name].triggered.connect(lambda _checked=False, does=does: show(does))
