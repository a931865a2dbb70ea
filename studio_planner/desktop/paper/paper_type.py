"""The letters on paper: a few sizes of the desk's own font, measured in millimetres."""

from __future__ import annotations

from enum import Enum
from functools import cache

from PySide6.QtGui import QFont, QFontMetricsF, QGuiApplication, QTextLayout

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import translate

DOTS_PER_MM = 40
"""How finely a page is drawn: 1016 dots to the inch, so that letters keep their widths."""

_PLAIN_LETTERS = 0x7F


class Face(Enum):
    """A size [mm of an em] and a weight; 3.5 mm are about 10 points."""

    SMALL = (2.8, False)
    LABEL = (3.0, False)
    PLAIN = (3.5, False)
    BOLD = (3.5, True)
    LARGE = (4.8, False)
    LARGE_BOLD = (4.8, True)
    HEADING = (3.9, True)
    TITLE = (6.4, True)
    NUMBER = (17.0, True)


@cache
def font_of(face: Face) -> QFont:
    """The font of a face, in dots; letters are never drawn together, so that text is found."""
    size, bold = face.value
    font = QFont(QGuiApplication.font().family())
    font.setPixelSize(round(size * DOTS_PER_MM))
    font.setBold(bold)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    for ligatures in ("liga", "clig", "dlig"):
        font.setFeature(QFont.Tag(ligatures), 0)
    return font


@cache
def _metrics(face: Face) -> QFontMetricsF:
    return QFontMetricsF(font_of(face))


def line_height(face: Face) -> float:
    """From one line to the next [mm]."""
    return _metrics(face).lineSpacing() / DOTS_PER_MM


def ascent(face: Face) -> float:
    """From the top of a line to where its letters stand [mm]."""
    return _metrics(face).ascent() / DOTS_PER_MM


def width_of(words: str, face: Face) -> float:
    """How wide a text is on one line [mm]."""
    return _metrics(face).horizontalAdvance(writable(words)) / DOTS_PER_MM


def wrapped(words: str, face: Face, width: float) -> tuple[str, ...]:
    """A text in lines that are no wider than `width` [mm]; what is longer is cut in two."""
    lines: list[str] = []
    line = ""
    for word in writable(words).split():
        longer = f"{line} {word}" if line else word
        if width_of(longer, face) <= width:
            line = longer
            continue
        if line:
            lines.append(line)
        *full, line = _pieces(word, face, width)
        lines += full
    return (*lines, line) if line or not lines else tuple(lines)


def _pieces(word: str, face: Face, width: float) -> list[str]:
    """A word in pieces that fit: mostly one."""
    pieces = [""]
    for letter in word:
        if pieces[-1] and width_of(pieces[-1] + letter, face) > width:
            pieces.append("")
        pieces[-1] += letter
    return pieces


def writable(words: str) -> str:
    """A text without what no font here has a letter for; that is a question mark."""
    if words.isascii() and words.isprintable():
        return words
    return "".join(map(_letter, words))


@cache
def _letter(letter: str) -> str:
    if not letter.isprintable():
        return " "
    return letter if ord(letter) < _PLAIN_LETTERS or _has(letter) else "?"


def _has(letter: str) -> bool:
    layout = QTextLayout(letter, font_of(Face.PLAIN))
    layout.beginLayout()
    layout.createLine()
    layout.endLayout()
    return all(0 not in run.glyphIndexes() for run in layout.glyphRuns())


def require_letters() -> None:
    """StudioError where this computer has no font to write with."""
    if not _has("A"):
        raise StudioError(
            translate(
                "paper",
                "No font was found to write with; install one, on Debian or Ubuntu with: sudo "
                "apt-get install fonts-dejavu-core.",
            )
        )


def forget_fonts() -> None:
    """Measure anew; fonts belong to the application that they were made for."""
    for known in (font_of, _metrics, _letter):
        known.cache_clear()
