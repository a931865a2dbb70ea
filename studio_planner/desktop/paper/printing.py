"""A sheet onto the system's printer, on the paper that it is made for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrintDialog, QPrinter

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import translate
from studio_planner.desktop.paper.pdf import PAPER_SIZES

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.paper.page_drawing import PaperPages


def ask_and_print(parent: QWidget, pages: PaperPages) -> bool:
    """Ask for a printer and print; False when the maker changed their mind."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(pages.sheet.title)
    take_paper(printer, pages)
    dialog = QPrintDialog(printer, parent)
    dialog.setWindowTitle(translate("paper", "Print"))
    if not dialog.exec():
        return False
    print_pages(printer, pages)
    return True


def take_paper(printer: QPrinter, pages: PaperPages) -> None:
    """Ask the printer for the sheet's paper, up to its edges; the sheet has white ones."""
    size = QPageSize(PAPER_SIZES[pages.sheet.paper])
    layout = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF())
    layout.setMode(QPageLayout.Mode.FullPageMode)
    printer.setPageLayout(layout)
    printer.setFullPage(True)


def print_pages(printer: QPrinter, pages: PaperPages) -> None:
    """Print the pages that were chosen; StudioError when the printer does not take them."""
    painter = QPainter()
    if not painter.begin(printer):
        raise StudioError(
            translate("paper", "The printer does not take the sheet; save it as PDF instead.")
        )
    first = printer.fromPage() or 1
    last = printer.toPage() or len(pages.pages)
    # A printer with other paper in it prints the sheet as large as it fits, in its own shape.
    room = printer.pageLayout().fullRectPixels(printer.resolution())
    dots = pages.dots
    scale = min(room.width() / dots.width(), room.height() / dots.height())
    for number in range(first - 1, min(last, len(pages.pages))):
        if number >= first:
            printer.newPage()
        painter.save()
        painter.scale(scale, scale)
        pages.draw(painter, number)
        painter.restore()
    painter.end()
