"""A sheet as a PDF: fonts embedded, text that can be found, the same bytes for the same sheet.

Qt writes the system's time into a PDF and offers no way to give another one; the marks it
leaves are written over in place, so that nothing in the file moves.
"""

from __future__ import annotations

import re
from datetime import UTC
from typing import TYPE_CHECKING
from uuid import NAMESPACE_URL, uuid5

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QUuid
from PySide6.QtGui import QGuiApplication, QPageSize, QPainter, QPdfWriter

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import translate
from studio_planner.desktop.paper.page_drawing import PaperPages
from studio_planner.desktop.paper.paper_type import DOTS_PER_MM, forget_fonts
from studio_planner.services.paper.pages import PaperSize

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.services.paper.pages import Sheet

_MM_PER_INCH = 25.4
PAPER_SIZES = {
    PaperSize.A5: QPageSize.PageSizeId.A5,
    PaperSize.A4: QPageSize.PageSizeId.A4,
}
_MADE = re.compile(rb"(?<=Date \(D:)\d{14}[^)]*(?=\))")
_STAMPED = re.compile(rb'(?<=(?:Create|Modify)Date=")[^"]*(?=")|(?<=MetadataDate=")[^"]*(?=")')


def draw_pdf(sheet: Sheet, made: datetime) -> bytes:
    """Give a sheet as a PDF that says it was made at an instant (aware).

    StudioError in a sentence when this computer has nothing to write with.
    """
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(round(DOTS_PER_MM * _MM_PER_INCH))
    writer.setPageSize(QPageSize(PAPER_SIZES[sheet.paper]))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    writer.setTitle(sheet.title)
    writer.setCreator("studio-planner")
    writer.setDocumentId(QUuid(str(uuid5(NAMESPACE_URL, "\n".join(sheet.texts)))))
    pages = PaperPages(sheet)
    count = len(pages.pages)
    painter = QPainter()
    if not painter.begin(writer):
        raise StudioError(translate("paper", "The sheet cannot be drawn; try again."))
    for number in range(count):
        if number:
            writer.newPage()
        pages.draw(painter, number)
    painter.end()
    return _stamped(bytes(buffer.data().data()), made.astimezone(UTC))


def draw_pdf_without_screen(sheet: Sheet, made: datetime) -> bytes:
    """The same where no application runs: it needs neither a window nor a display."""
    if QGuiApplication.instance() is not None:
        return draw_pdf(sheet, made)
    application = QGuiApplication(["studio-planner", "-platform", "offscreen"])
    try:
        return draw_pdf(sheet, made)
    finally:
        forget_fonts()
        application.shutdown()


def _stamped(pdf: bytes, made: datetime) -> bytes:
    """The file with the instant that it was made at in place of the system's own."""
    short = made.strftime("%Y%m%d%H%M%S").encode()
    long = made.isoformat(timespec="seconds").encode()

    def in_place(found: re.Match[bytes], stamp: bytes, rest: bytes) -> bytes:
        wanted = len(found.group())
        return (stamp + rest)[:wanted] if wanted <= len(stamp + rest) else found.group()

    def date(found: re.Match[bytes]) -> bytes:
        utc = b"Z" if found.group().endswith(b"Z") else b"+00'00'"
        return in_place(found, short, utc)

    pdf = _MADE.sub(date, pdf)
    return _STAMPED.sub(lambda found: in_place(found, long, b""), pdf)
