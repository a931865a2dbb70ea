"""The maker's language: every sentence that is shown goes through here on its way out.

Texts are written in English. Whoever shows them (the desk) may put a speaker in here that
knows another language; until then, and always in the terminal, each text comes back as it is.
The list of texts is read off the source, so both are literals where they are written down.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    Speaker = Callable[[str, str], str]
    """Gives a text of a context in another language; the text itself where it has no words."""


class _Mouth:
    speaker: Speaker | None = None


_MOUTH: Final = _Mouth()


def speak_with(speaker: Speaker | None) -> None:
    """Let `speaker` say every text from now on; None says them in English."""
    _MOUTH.speaker = speaker


def translate(context: str, text: str) -> str:
    """Give a text in the language that is spoken."""
    speaker = _MOUTH.speaker
    return text if speaker is None else speaker(context, text)


def marked(context: str, text: str) -> str:  # noqa: ARG001 - read off the source
    """Note a text of a table for the list of texts; it is translated where it is used."""
    return text


def counted(count: int, one: str, many: str) -> str:
    """Say a number of things: `one` for exactly one, else `many`, both with a place {count}.

    Examples
    --------
    >>> counted(1, "{count} coat", "{count} coats"), counted(0, "{count} coat", "{count} coats")
    ('1 coat', '0 coats')
    """
    return (one if count == 1 else many).format(count=count)


def figure(written: str) -> str:
    """Write a figure such as 1,250.5 with the signs of the language that is spoken."""
    signs = translate("figures", "1,000.5")
    group, decimal = signs[1], signs[5]
    if (group, decimal) == (",", "."):
        return written
    return written.translate({ord(","): group, ord("."): decimal})


def quoted(text: str) -> str:
    """Put what somebody wrote between the quotation marks of the language that is spoken."""
    return translate("figures", "“{text}”").format(text=text.strip())


def listed(names: Iterable[str], most: int | None = 3) -> str:
    """Names one after another, each once; of many the first few and a count, of None all.

    Examples
    --------
    >>> listed("ABC"), listed("ABCDE"), listed("ABCDE", most=None), listed("A")
    ('A, B and C', 'A, B, C and 2 more', 'A, B, C, D and E', 'A')
    """
    every = list(dict.fromkeys(names))
    shown = every[:most]
    if len(shown) < len(every):
        shown.append(translate("lists", "{count} more").format(count=len(every) - len(shown)))
    if len(shown) <= 1:
        return "".join(shown)
    both = translate("lists", "{first} and {last}")
    return both.format(first=", ".join(shown[:-1]), last=shown[-1])


def capital(text: str) -> str:
    """Begin a text with a capital; what comes after stays as it is."""
    return text[:1].upper() + text[1:]


def sentence(text: str) -> str:
    """Begin a text with a capital and end it with a full stop, as a sentence stands alone."""
    return capital(text) + ("" if text.endswith((".", "?", "!")) else ".")
