"""The maker's language: every sentence that the desk says by itself goes through here."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication


def translate(context: str, text: str) -> str:
    """Give a text in the language that the desk speaks; English where it has no other word.

    Both must be literals, since the list of texts is read off the source.
    """
    return QCoreApplication.translate(context, text)
