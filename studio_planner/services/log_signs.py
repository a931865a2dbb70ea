"""What a file is that was taken for a logger's record, told by its first bytes."""

from __future__ import annotations

from studio_planner.craft.tongue import marked, translate

_WANTED = marked(
    "logs",
    "What is wanted here is the record of a temperature logger, saved as CSV text: rows with a "
    "time and a temperature, and the humidity where it was read.",
)

_SIGNS: tuple[tuple[bytes, str], ...] = (
    (
        b"SQLite format 3\x00",
        marked("logs", "is a studio file or another data file, not a logger's record."),
    ),
    (b"%PDF", marked("logs", "is a PDF document.")),
    (b"\x89PNG", marked("logs", "is a picture.")),
    (b"\xff\xd8\xff", marked("logs", "is a picture.")),
    (b"GIF8", marked("logs", "is a picture.")),
    (
        b"PK\x03\x04",
        marked("logs", "is a spreadsheet or an archive; open it and save its table as CSV."),
    ),
    (
        b"\xd0\xcf\x11\xe0",
        marked("logs", "is an old spreadsheet; open it and save its table as CSV."),
    ),
    (b"\x1f\x8b", marked("logs", "is a compressed file; unpack it first.")),
    (b"<", marked("logs", "is a web page or XML; export the record as CSV.")),
    (b"{", marked("logs", "is JSON, such as an exchange file of a studio.")),
    (b"[", marked("logs", "is JSON.")),
    (b"BEGIN:VCALENDAR", marked("logs", "is a calendar.")),
)
"""The beginnings of common kinds of files; each format publishes its own."""


def not_a_log(data: bytes) -> str:
    """Say what a file is and what is wanted, or nothing where it may be a log."""
    begins = data[:64].lstrip(b"\xef\xbb\xbf \t\r\n")
    if not begins:
        return " ".join((translate("logs", "is empty."), translate("logs", _WANTED)))
    for sign, words in _SIGNS:
        if begins.startswith(sign):
            return " ".join((translate("logs", words), translate("logs", _WANTED)))
    return ""
