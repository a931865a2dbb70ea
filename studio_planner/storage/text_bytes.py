"""Text from bytes of unknown encoding, and numbers from text of unknown habits."""

from __future__ import annotations

import codecs
import math
import re
from dataclasses import dataclass

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate

_MARKS = (
    (codecs.BOM_UTF8, "utf-8", "UTF-8"),
    (codecs.BOM_UTF16_LE, "utf-16-le", "UTF-16"),
    (codecs.BOM_UTF16_BE, "utf-16-be", "UTF-16"),
)
_SAMPLE = 4096
_NUMBER = re.compile(r"[+-]?(\d+([.,]\d*)?|[.,]\d+)([eE][+-]?\d{1,3})?", re.ASCII)
_MINUS = str.maketrans({"\u2212": "-", "\u2013": "-"})


@dataclass(frozen=True, slots=True)
class DecodedText:
    """A text and the name of the encoding it was in."""

    text: str
    encoding: str


def text_of(data: bytes, what: str) -> DecodedText:
    """Decode bytes as UTF-8, UTF-16 or Latin-1; StudioFileError when they are no text.

    `what` begins the sentence, such as "The data sheet".
    """
    if not data.strip():
        raise StudioFileError(translate("files", "{what} is empty.").format(what=what))
    decoded = _decoded(data, what)
    if "\x00" in decoded.text:
        raise StudioFileError(
            translate("files", "{what} is not text; save it as CSV and try again.").format(
                what=what
            )
        )
    return decoded


def _decoded(data: bytes, what: str) -> DecodedText:
    for mark, codec, name in (*_MARKS, *_unmarked(data)):
        if data.startswith(mark):
            try:
                return DecodedText(data[len(mark) :].decode(codec), name)
            except UnicodeDecodeError as error:
                raise StudioFileError(
                    translate("files", "{what} is cut short or damaged: {error}.").format(
                        what=what, error=error
                    )
                ) from error
    try:
        return DecodedText(data.decode("utf-8"), "UTF-8")
    except UnicodeDecodeError:
        return DecodedText(data.decode("latin-1"), "Latin-1")


def _unmarked(data: bytes) -> tuple[tuple[bytes, str, str], ...]:
    # Western text in UTF-16 has a zero in every other byte; which one tells the byte order.
    sample = data[:_SAMPLE]
    even, odd = sample[0::2], sample[1::2]
    for zeros, rest, codec in ((odd, even, "utf-16-le"), (even, odd, "utf-16-be")):
        if zeros.count(0) > 0.8 * len(zeros) and not rest.count(0):
            return ((b"", codec, "UTF-16"),)
    return ()


def plain_number(text: str) -> float | None:
    """A number with a decimal point or comma and no thousands marks; None when it is not one.

    Examples
    --------
    >>> plain_number("21,5"), plain_number("-3.25"), plain_number("1.234,5")
    (21.5, -3.25, None)
    """
    stripped = text.strip().translate(_MINUS)
    if not _NUMBER.fullmatch(stripped):
        return None
    number = float(stripped.replace(",", "."))
    return number if math.isfinite(number) else None
