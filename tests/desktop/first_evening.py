"""The first evening with an empty studio, played through the real window as a maker would.

    python -m tests.desktop.first_evening FOLDER

makes a picture after every step, in English and German, light and dark, at 100 and 200 %, and
says how many clicks and keys it took.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu, QPlainTextEdit, QWidget

from studio_planner.assembly import SystemClock
from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.products import ProductKind
from studio_planner.desktop.application import application, desk_window
from studio_planner.desktop.dialogs import Dialogs
from studio_planner.desktop.page_keys import ORDERS, PIECES, PRODUCTS, SET_UP
from studio_planner.desktop.pages.orders_page import OrdersPage
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.desktop.pages.studio_page import HANDS
from studio_planner.desktop.piece_pages.part_names import STACK
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.desktop.studio_pages.set_up_section import SetUpSection
from studio_planner.desktop.theme import Look
from studio_planner.desktop.tongue import Language
from studio_planner.science.stages import Stage
from studio_planner.services.needs import Need
from tests.desktop.studio_steps import pulled, section

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.desktop.window import DeskWindow

SHEET = """Mixing ratio 100 : 45 by weight
Working time 35 min at 20 °C
Recoat window 4 h to 24 h at 20 °C
Handle after 24 h at 20 °C
Full cure 7 d at 20 °C
"""
TYPED = (
    (Stage.WORKING_TIME, "0.6"),
    (Stage.RECOAT_OPENS, "4"),
    (Stage.RECOAT_CLOSES, "24"),
    (Stage.HANDLE, "24"),
    (Stage.PRINT_FREE, "48"),
)
"""Hours at 20 °C."""


class Maker:
    """A maker's mouse and keys; every click and every key is counted."""

    def __init__(self, desk: DeskWindow, see: Callable[[str], None]) -> None:
        """Sit before a window; `see` is called with the name of each step when it is done."""
        self.desk = desk
        self.see = see
        self.clicks = 0
        self.keys = 0

    def click(self, button: QWidget) -> None:
        """Click what can be seen without scrolling."""
        QApplication.processEvents()
        assert in_view(button), f"out of view: {button.accessibleName()}"
        self.clicks += 1
        QTest.mouseClick(button, Qt.MouseButton.LeftButton)

    def pick(self, menu: QMenu, index: int) -> None:
        """Open the menu of a button, and click an entry."""
        self.clicks += 2
        menu.actions()[index].trigger()

    def press(self, key: Qt.Key, held: Qt.KeyboardModifier | None = None) -> None:
        """Press a key wherever the keys go now."""
        self.keys += 1 if held is None else 2
        focused = QApplication.focusWidget()
        assert focused is not None
        QTest.keyClick(focused, key, held or Qt.KeyboardModifier.NoModifier)

    def write(self, text: str) -> None:
        """Type wherever the keys go now; the editor has to be in view."""
        QApplication.processEvents()
        focused = QApplication.focusWidget()
        assert focused is not None
        assert in_view(focused), f"out of view: {focused.accessibleName()}"
        self.keys += len(text)
        QTest.keyClicks(focused, text)

    def paste(self, text: str) -> None:
        """Paste into the text that has the focus."""
        focused = QApplication.focusWidget()
        assert isinstance(focused, QPlainTextEdit)
        QApplication.clipboard().setText(text)
        self.press(Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)

    def drag(self, week: QWidget, day: int, start: int, end: int) -> None:
        """Drag over hours of a week that is in view."""
        assert in_view(week)
        self.clicks += 1
        pulled(week, day, start, end)  # type: ignore[arg-type]

    @property
    def set_up(self) -> SetUpSection:
        """The guide, wherever it was left."""
        return section(self.desk, SET_UP, SetUpSection)


def in_view(widget: QWidget) -> bool:
    """Whether the whole of a widget is inside all that it is scrolled in."""
    window = widget.window()
    own = widget.visibleRegion().boundingRect()
    if not widget.isVisible() or own.isEmpty():
        return False
    inside = window.rect().contains(widget.mapTo(window, QPoint(widget.width() // 2, 1)))
    return inside and own.height() >= min(widget.height(), 24)


def play(maker: Maker) -> None:
    """From nothing to a plan."""
    desk = maker.desk
    maker.keys += 2
    desk.verbs["new"].trigger()
    QApplication.processEvents()
    maker.see("0 the guide")
    for step in (enter_hands, enter_room, enter_spots, enter_products, enter_piece):
        step(maker)
    enter_order(maker)
    assert desk.guide.next is None
    maker.click(desk.guide.go)


def guide(maker: Maker, need: Need) -> None:
    """Let the line over the page lead on to what lacks next."""
    assert maker.desk.guide.next is need, maker.desk.guide.said.text()
    maker.see(f"{list(Need).index(need)} before {need.value}")
    maker.click(maker.desk.guide.go)


def enter_hands(maker: Maker) -> None:
    maker.click(maker.set_up.rows[Need.HANDS].verb)
    hands = section(maker.desk, HANDS, HandsSection)
    maker.click(hands.people.add_button)
    maker.write("Tove")
    maker.press(Qt.Key.Key_Return)
    maker.drag(hands.panel.week, 0, 17 * 60, 21 * 60)
    maker.click(hands.panel.same)


def enter_room(maker: Maker) -> None:
    guide(maker, Need.ROOM)
    maker.press(Qt.Key.Key_Space)  # the keys are on Add
    maker.write("Back room")
    for _ in range(2):
        maker.press(Qt.Key.Key_Tab)
    maker.write("19")
    maker.press(Qt.Key.Key_Return)


def enter_spots(maker: Maker) -> None:
    guide(maker, Need.SPOT)
    maker.press(Qt.Key.Key_Space)
    maker.write("Top shelf")
    maker.press(Qt.Key.Key_Tab)
    maker.write("900")
    maker.press(Qt.Key.Key_Return)
    maker.see("2 spot")


def enter_products(maker: Maker) -> None:
    guide(maker, Need.PRODUCT)
    page = maker.desk.pages.page(PRODUCTS)
    assert isinstance(page, ProductsPage)
    kind = list(ProductKind).index(ProductKind.TWO_PART)
    maker.pick(page.kinds, kind)
    maker.write("Clear flood")
    maker.press(Qt.Key.Key_Return)
    sheet = page.panel.sheet
    maker.see("3 product named")
    for stage, hours in TYPED:
        cell = sheet.grid.edits[sheet.place_of(stage, 20, None)]
        maker.click(cell)
        maker.write(hours)
        maker.press(Qt.Key.Key_Return)
    maker.see("3 product typed")
    maker.pick(page.kinds, kind)
    maker.write("Slow casting")
    maker.press(Qt.Key.Key_Return)
    maker.click(page.panel.paste_button)
    maker.paste(SHEET)
    maker.see("3 product pasted")
    maker.click(page.panel.paste.take_button)
    maker.see("3 product taken")


def enter_piece(maker: Maker) -> None:
    guide(maker, Need.PIECE)
    page = maker.desk.pages.page(PIECES)
    assert isinstance(page, PiecesPage)
    maker.press(Qt.Key.Key_Space)
    maker.write("Moon tray")
    maker.press(Qt.Key.Key_Return)
    maker.see("4 piece named")
    maker.click(page.parts.names[STACK])
    verbs = page.stack.verbs
    for kind in (CoatKind.FLOOD, CoatKind.FLOOD):
        maker.pick(verbs.add_menu, list(CoatKind).index(kind))
    maker.see("4 piece with three coats")


def enter_order(maker: Maker) -> None:
    assert maker.desk.guide.next is None
    maker.click(maker.desk.guide.later)
    page = maker.desk.pages.page(ORDERS)
    assert isinstance(page, OrdersPage)
    maker.see("5 before order")
    maker.press(Qt.Key.Key_Space)
    maker.write("Tern House")
    maker.press(Qt.Key.Key_Return)
    maker.see("5 order")


# Pictures


def main(arguments: list[str]) -> int:
    """Make the pictures; each scale needs a process of its own."""
    if len(arguments) != 1:
        sys.stderr.write(
            "Say where the pictures go: python -m tests.desktop.first_evening OUT\n"
        )
        return 2
    out = Path(arguments[0]).resolve()
    out.mkdir(parents=True, exist_ok=True)
    for percent in (100, 200):
        environment = os.environ | {
            "QT_QPA_PLATFORM": os.environ.get("QT_QPA_PLATFORM", "offscreen"),
            "QT_SCALE_FACTOR": str(percent / 100),
            "PICTURES_PERCENT": str(percent),
        }
        program = [sys.executable, "-m", "tests.desktop.first_evening", str(out), "one scale"]
        subprocess.run(program, check=True, env=environment)  # noqa: S603 - our own module
    return 0


def one_scale(out: Path, percent: int) -> None:
    """Play it in both languages and looks at the scale that this process runs at."""
    for language in (Language.ENGLISH, Language.GERMAN):
        for look in Look:
            with TemporaryDirectory() as folder:
                one_evening(
                    Path(folder),
                    language,
                    look,
                    out / f"{percent}-{language}-{look.value}-.png",
                )


def one_evening(folder: Path, language: Language, look: Look, picture: Path) -> None:
    """Play it in one language and look; each step's picture is named after `picture`."""
    app = application()
    dialogs = Dialogs(
        open=lambda _parent, _folder: None,
        new=lambda _parent, _folder: folder / "tern.studio",
        copy=lambda _parent, _folder: None,
    )
    window = desk_window(
        SystemClock(),  # the process that plans asks the real time
        look=look,
        language=language,
        dialogs=dialogs,
        data_folder=lambda: folder,
    )
    window.changes.plans_by_itself = False
    window.resize(1280, 800)
    window.show()
    QTest.qWaitForWindowActive(window)

    def see(name: str) -> None:
        for _ in range(20):
            app.processEvents()
        step = picture.with_stem(picture.stem + name.replace(" ", "-"))
        window.grab().save(str(step), quality=0)

    maker = Maker(window, see)
    play(maker)
    while window.canvas.view is None or window.canvas.view.plan is None:
        app.processEvents()
    see("6 plan")
    sys.stdout.write(f"{maker.clicks} clicks, {maker.keys} keys\n")
    window.close()


if __name__ == "__main__":
    if len(sys.argv) == 3 and "PICTURES_PERCENT" in os.environ:
        one_scale(Path(sys.argv[1]), int(os.environ["PICTURES_PERCENT"]))
    else:
        raise SystemExit(main(sys.argv[1:]))
