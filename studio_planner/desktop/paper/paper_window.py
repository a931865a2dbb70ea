"""The window of the sheets: which one, how it looks, and the verbs to save or print it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QTimer
from PySide6.QtWidgets import QComboBox, QDialog, QHBoxLayout, QLabel, QPushButton, QVBoxLayout
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.notice_line import NoticeLine
from studio_planner.desktop.paper.page_view import SheetView
from studio_planner.desktop.paper.pdf import draw_pdf
from studio_planner.desktop.tongue import marked, translate
from studio_planner.services.desk import DeskView
from studio_planner.services.paper.choosing import SheetKind, choices, sheet_of
from studio_planner.services.paper.placing import place_sheet

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.paper.choosing import Choice
    from studio_planner.services.paper.pages import Sheet

TITLES = {
    SheetKind.POURS: marked("paper", "Pour sheet"),
    SheetKind.WEEK: marked("paper", "Week sheet"),
    SheetKind.ORDER: marked("paper", "Order slip"),
    SheetKind.STOCK: marked("paper", "Stock list"),
}

_NOTHING = {
    SheetKind.POURS: marked("paper", "Nothing is to be poured. Plan first, then come back."),
    SheetKind.ORDER: marked("paper", "There is no order yet. Enter one on the page of orders."),
}

_WIDE, _HIGH = 760, 780
_PAUSE_MILLISECONDS = 400
_TARGET = 28
"""How high what is clicked is at least [pixels]."""


class PaperWindow(QDialog):
    """One sheet at a time; it stays open beside the desk and follows what is changed there."""

    def __init__(self, desk: PageDesk, parent: QWidget) -> None:
        """Belong to `desk`, whose window is `parent`."""
        super().__init__(parent)
        self.desk = desk
        self.kind = SheetKind.POURS
        self._view: DeskView | None = None
        self._sheet: Sheet | None = None
        self.notice = NoticeLine(desk.canvas, self)
        self.which = QComboBox(self)
        self.which.setAccessibleName(translate("paper", "Which"))
        self.which.activated.connect(lambda _row: self._show_chosen())
        self.save = QPushButton(translate("paper", "Save as PDF…"), self)
        self.save.clicked.connect(self.save_chosen)
        self.print = QPushButton(translate("paper", "Print…"), self)
        self.print.clicked.connect(self.print_chosen)
        self.sheet_view = SheetView(self)
        self.nothing = QLabel(self)
        self.nothing.setWordWrap(True)
        self._lay_out()
        self.resize(_WIDE, _HIGH)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_PAUSE_MILLISECONDS)
        self._soon.timeout.connect(self._follow)
        desk.canvas.redrawn.connect(self._follow_soon)

    def _lay_out(self) -> None:
        for widget in (self.which, self.save, self.print):
            widget.setMinimumHeight(_TARGET)
        verbs = QHBoxLayout()
        verbs.addWidget(self.which, 1)
        verbs.addWidget(self.save)
        verbs.addWidget(self.print)
        whole = QVBoxLayout(self)
        whole.addWidget(self.notice)
        whole.addLayout(verbs)
        whole.addWidget(self.nothing)
        whole.addWidget(self.sheet_view, 1)

    def show_kind(self, kind: SheetKind, key: str = "") -> None:
        """Show the sheet of that kind and key, else the one that is mostly wanted."""
        self.kind = kind
        self.setWindowTitle(translate("paper", TITLES[kind]))
        self.notice.hide()
        self._fill(key)
        self.show()
        self.raise_()
        self.activateWindow()
        self.which.setFocus()

    @override
    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.WindowActivate:
            self._follow()
        return super().event(event)

    def _follow(self) -> None:
        """Show what the studio is now, where it is another one than is shown."""
        self._soon.stop()
        session = self.desk.session
        if not self.isVisible() or self._view is None or session is None:
            return
        if session.studio is not self._view.studio:
            self._fill(self._chosen)

    def _follow_soon(self) -> None:
        # While better plans keep coming only the last of them is drawn.
        if self.isVisible() and not self._soon.isActive():
            self._soon.start()

    @property
    def _chosen(self) -> str:
        return str(self.which.currentData() or "")

    def _fill(self, key: str) -> None:
        """Offer what there is now; what was chosen stays so while it is there."""
        self._view = self._seen()
        found = () if self._view is None else choices(self._view, self.kind)
        self._offer(found, key)
        self._show_chosen()

    def _offer(self, found: tuple[Choice, ...], key: str) -> None:
        self.which.clear()
        for choice in found:
            self.which.addItem(choice.words, choice.key)
        self.which.setCurrentIndex(max(self.which.findData(key), 0) if found else -1)
        self.which.setEnabled(len(found) > 1)

    def _seen(self) -> DeskView | None:
        session = self.desk.session
        if session is None:
            return None
        return DeskView(session.studio, session.now(), session.view)

    def _show_chosen(self) -> None:
        self._sheet = None
        why = translate("paper", "No studio is open.")
        if self._view is not None:
            why = translate("paper", _NOTHING.get(self.kind, _NOTHING[SheetKind.POURS]))
        if self._view is not None and self.which.count():
            try:
                self._sheet = sheet_of(self._view, self.kind, self._chosen)
                self.sheet_view.show_sheet(self._sheet)
            except StudioError as error:
                self._sheet, why = None, str(error)
        there = self._sheet is not None
        self.nothing.setText(why)
        self.nothing.setVisible(not there)
        self.sheet_view.setVisible(there)
        self.save.setEnabled(there)
        self.print.setEnabled(there)

    def save_chosen(self) -> None:
        """Ask for a name and put the sheet there as a PDF."""
        session = self.desk.session
        if self._sheet is None or self._view is None or session is None:
            return
        proposed = session.path.parent / f"{self._sheet.file_name}.pdf"
        target = self.desk.dialogs.sheet(self, str(proposed))
        if target is None:
            return
        try:
            place_sheet(draw_pdf, self._sheet, self._view.now, target, overwrite=True)
        except StudioError as error:
            self.notice.say(str(error), wrong=True)
            return
        self.notice.say(translate("paper", "Saved as {file}.").format(file=target))

    def print_chosen(self) -> None:
        """Ask for a printer and print the sheet."""
        pages = self.sheet_view.pages
        if pages is None:
            return
        try:
            # The system's printing is loaded with the first sheet, and may be missing.
            from studio_planner.desktop.paper.printing import ask_and_print  # noqa: PLC0415

            printed = ask_and_print(self, pages)
        except ImportError:
            words = translate(
                "paper", "Nothing here can print; save it as PDF and print that instead."
            )
            self.notice.say(words, wrong=True)
        except StudioError as error:
            self.notice.say(str(error), wrong=True)
        else:
            if printed:
                self.notice.say(translate("paper", "Sent to the printer."))
