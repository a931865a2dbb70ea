"""The menus of the desk: verbs in words, each with its key."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Protocol

from PySide6.QtGui import QAction, QActionGroup, QKeySequence

from studio_planner.desktop.motion import choose_motion, moves_little
from studio_planner.desktop.page_keys import PLAN
from studio_planner.desktop.theme import Look
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QMenu, QMenuBar

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_backups import DeskBackups
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.desktop.desk_files import DeskFiles
    from studio_planner.desktop.desk_parts import DeskParts
    from studio_planner.desktop.due_pages.due_corner import DueCorner
    from studio_planner.desktop.other_windows import OtherWindows
    from studio_planner.desktop.reminding.calendar_files import CalendarFiles
    from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline

_Key = QKeySequence.StandardKey


class Verbs(Protocol):
    """What a window can do for its menus."""

    canvas: Canvas
    changes: DeskChanges
    files: DeskFiles
    others: OtherWindows

    @property
    def backups(self) -> DeskBackups:
        """What makes backups and brings them back."""
        ...

    @property
    def due(self) -> DueCorner:
        """The list of what is due."""
        ...

    @property
    def calendars(self) -> CalendarFiles:
        """What writes calendar files."""
        ...

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

    def leave(self) -> bool:
        """End the desk; False when it stays for what is being typed."""
        ...

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...

    def plan_again(self) -> None:
        """Plan again."""
        ...

    def stop_planning(self) -> None:
        """Stop planning."""
        ...

    def weigh_chosen(self) -> None:
        """Weigh the mix of the chosen bar, or the next one."""
        ...

    def choose_look(self, look: Look) -> None:
        """Change the colours for now and later."""
        ...


def build_menus(window: Verbs) -> dict[str, QAction]:
    """Put the menus into a window; give each action under a short name."""
    bar = window.menuBar()
    bar.setAccessibleName(translate("menus", "Menus"))
    menus = _Menus(bar)
    _studio_menu(menus, window)
    _change_menu(menus, window)
    _plan_menu(menus, window)
    _look_menu(menus, window)
    return menus.verbs


class _Menus:
    """Makes actions, each in its menu and under its short name."""

    def __init__(self, bar: QMenuBar) -> None:
        self.bar = bar
        self.verbs: dict[str, QAction] = {}

    def add(
        self,
        menu: QMenu,
        name: str,
        words: str,
        key: _Key | str | None,
        does: Callable[[], object],
    ) -> QAction:
        action = QAction(words, self.bar)
        if key is not None:
            action.setShortcut(QKeySequence(key))
        action.triggered.connect(lambda _checked=False: does())
        menu.addAction(action)
        self.verbs[name] = action
        return action


# Parts of the window that are made later, or when first asked for, are looked up by each verb.


def _studio_menu(menus: _Menus, window: Verbs) -> None:
    menu, add = menus.bar.addMenu(translate("menus", "&Studio")), menus.add
    add(menu, "open", translate("menus", "&Open…"), _Key.Open, window.files.ask_open)
    add(menu, "new", translate("menus", "&New…"), _Key.New, window.files.ask_new)
    add(menu, "copy", translate("menus", "Save a &copy…"), _Key.SaveAs, window.files.ask_copy)
    back_up = translate("menus", "&Back up now")
    add(menu, "back up", back_up, _Key.Save, lambda: window.backups.make_now())  # noqa: PLW0108
    menus.verbs["back up"].setEnabled(False)
    menu.addSeparator()
    _add_paper(menus, menu.addMenu(translate("menus", "Sheets for &paper")), window)
    phone = menu.addMenu(translate("menus", "Calendar for the p&hone"))
    phone.aboutToShow.connect(lambda: window.calendars.fill(phone))
    menu.addSeparator()
    leave = translate("menus", "&Leave")
    add(menu, "close", leave, _Key.Quit, lambda: window.leave())  # noqa: PLW0108


def _add_paper(menus: _Menus, paper: QMenu, window: Verbs) -> None:
    """The four sheets; the first one has the key that prints elsewhere."""
    for kind, words, key in (
        ("pours", translate("menus", "&Pour sheet…"), _Key.Print),
        ("week", translate("menus", "&Week sheet…"), None),
        ("order", translate("menus", "&Order slip…"), None),
        ("stock", translate("menus", "&Stock list…"), None),
    ):
        does = partial(_show_paper, window, kind)
        menus.add(paper, f"paper {kind}", words, key, does)


def _show_paper(window: Verbs, kind: str) -> None:
    window.others.show_paper(kind)


def _change_menu(menus: _Menus, window: Verbs) -> None:
    menu, add = menus.bar.addMenu(translate("menus", "&Change")), menus.add
    undo, redo = translate("changes", "&Undo"), translate("changes", "&Do again")
    add(menu, "undo", undo, _Key.Undo, lambda: window.changes.undo())  # noqa: PLW0108
    add(menu, "redo", redo, _Key.Redo, lambda: window.changes.redo())  # noqa: PLW0108


def _plan_menu(menus: _Menus, window: Verbs) -> None:
    menu, add = menus.bar.addMenu(translate("menus", "&Plan")), menus.add
    add(menu, "plan", translate("menus", "Plan &now"), "Ctrl+R", window.plan_again)
    stop = add(
        menu, "stop", translate("menus", "&Stop planning"), "Ctrl+.", window.stop_planning
    )
    stop.setEnabled(False)
    menu.addSeparator()
    words = translate("menus", "Plan after each &change")
    by_itself = add(menu, "by itself", words, None, lambda: None)
    by_itself.setCheckable(True)
    by_itself.setChecked(True)
    by_itself.toggled.connect(lambda on: window.changes.plan_by_itself(on))  # noqa: PLW0108
    menu.addSeparator()
    due = translate("menus", "What is &due")
    add(menu, "due", due, "Ctrl+D", lambda: window.due.open())  # noqa: PLW0108
    warmth = translate("menus", "Another &temperature for a time…")
    add(menu, "temperature", warmth, "Ctrl+T", partial(_ask_air, window))
    _add_chosen(menu, window)


def _ask_air(window: Verbs) -> None:
    window.go_to(PLAN)
    window.parts.ask_air()


def _look_menu(menus: _Menus, window: Verbs) -> None:
    menu, add = menus.bar.addMenu(translate("menus", "&Look")), menus.add
    canvas = window.canvas
    nearer, farther = translate("menus", "&Nearer"), translate("menus", "&Farther")
    add(menu, "nearer", nearer, _Key.ZoomIn, lambda: window.timeline.zoom_in())  # noqa: PLW0108
    add(menu, "farther", farther, _Key.ZoomOut, lambda: window.timeline.zoom_out())  # noqa: PLW0108
    add(menu, "now", translate("menus", "&Go to now"), "Ctrl+G", canvas.show_now)
    add(menu, "week", translate("menus", "The coming &week"), "Ctrl+0", canvas.show_week)
    add(menu, "whole", translate("menus", "The &whole plan"), "Ctrl+9", canvas.show_plan)
    _add_views(menu, window, menus.verbs)
    menu.addSeparator()
    add(menu, "bench", translate("menus", "&Bench"), "F11", window.others.show_bench)
    add(menu, "weigh", translate("menus", "&Scale"), "F12", window.weigh_chosen)
    menu.addSeparator()
    legend = translate("menus", "L&egend")
    add(menu, "legend", legend, _Key.HelpContents, window.others.show_legend)
    menu.addSeparator()
    _add_looks(menus, menu, window)
    _add_motion(menus, menu)
    menu.addSeparator()
    languages = menu.addMenu(translate("menus", "Lan&guage"))
    languages.aboutToShow.connect(partial(_fill_languages, languages, window))


def _add_looks(menus: _Menus, menu: QMenu, window: Verbs) -> None:
    looks = QActionGroup(menus.bar)
    names = {
        Look.LIGHT: ("light", translate("menus", "&Light")),
        Look.DARK: ("dark", translate("menus", "&Dark")),
    }
    for look, (name, words) in names.items():
        action = menus.add(menu, name, words, None, partial(window.choose_look, look))
        action.setCheckable(True)
        action.setChecked(look is window.canvas.theme.look)
        looks.addAction(action)


def _fill_languages(menu: QMenu, window: Verbs) -> None:
    from studio_planner.desktop.language_menu import fill_languages  # noqa: PLC0415 - when opened

    fill_languages(menu, window)


def _add_motion(menus: _Menus, menu: QMenu) -> None:
    words = translate("menus", "Little &motion")
    little = menus.add(menu, "little motion", words, None, _turn_motion)
    little.setCheckable(True)
    menu.aboutToShow.connect(lambda: little.setChecked(moves_little()))


def _turn_motion() -> None:
    choose_motion(little=not moves_little())


def _add_chosen(plan: QMenu, window: Verbs) -> None:
    """The verbs of the chosen bar, asked when the menu is opened."""
    plan.addSeparator()
    chosen = plan.addMenu(translate("menus", "The &chosen bar"))

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
    by_piece, by_spot = translate("menus", "By &piece"), translate("menus", "By &spot")
    find, beside = translate("menus", "&Find"), translate("menus", "&Hands next beside it")
    for name, words, key, does in (
        ("by piece", by_piece, "F7", lambda: window.parts.show_by_piece()),  # noqa: PLW0108
        ("by spot", by_spot, "F8", lambda: window.parts.show_by_spot()),  # noqa: PLW0108
        ("side", beside, "F9", lambda: window.parts.turn_side()),  # noqa: PLW0108
        ("find", find, _Key.Find, lambda: window.parts.work_line.begin_to_find()),  # noqa: PLW0108
    ):
        verbs[name] = look.addAction(words)
        verbs[name].setShortcut(QKeySequence(key))
        verbs[name].triggered.connect(lambda _checked=False, does=does: show(does))
    views = QActionGroup(look)
    for name in ("by piece", "by spot"):
        verbs[name].setCheckable(True)
        views.addAction(verbs[name])
    verbs["by piece"].setChecked(True)
