"""What happened to a piece, told where the hand already is: the verbs of a menu."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind
from studio_planner.craft.tongue import capital
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.desktop.page_keys import LOG
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.known import coat_name
from studio_planner.services.log_book.taps import (
    last_coat,
    may_happen,
    tap_for,
    tapped,
    what_words,
)

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QMenu

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.log_book.taps import Tap

_ELSEWHERE = frozenset({EntryKind.MOVED, EntryKind.TOUCHED})
"""What needs more than one tap: it has a menu or a form of its own."""


def fill_happened(menu: QMenu, desk: PageDesk, piece: str) -> None:
    """Put into a menu what can be written down of a piece, each with one tap, at now."""
    session = desk.session
    if session is None:
        return
    studio = session.studio
    kinds = may_happen(studio, piece)
    for kind in kinds:
        if kind is EntryKind.TOUCHED:
            _add_touches(menu, desk, studio, piece)
        elif kind not in _ELSEWHERE:
            _add_tap(menu, desk, studio, tap_for(studio, kind, piece))
    menu.addSeparator()
    text = translate("happened", "At another &time, moved, with a note…")
    _add(menu, text, lambda: desk.go_to(LOG, piece))
    text = translate("happened", "&Where did it come from?")
    _add(menu, text, lambda: desk.go_to(LOG, f"trace/{piece}"))


def _add_touches(menu: QMenu, desk: PageDesk, studio: Studio, piece: str) -> None:
    text = translate("happened", "Touch test: {coat}")
    coat = coat_name(studio, piece, last_coat(studio, piece))
    touches = menu.addMenu(_plain(text.format(coat=coat)))
    for touch in Touch:
        for verdict in (Verdict.ALREADY, Verdict.NOT_YET):
            tap = tap_for(studio, EntryKind.TOUCHED, piece, touch, verdict)
            words = capital(f"{kind_word(touch)}: {kind_word(verdict)}")
            _add(touches, words, lambda tap=tap: tap_now(desk, tap))  # type: ignore[misc]


def _add_tap(menu: QMenu, desk: PageDesk, studio: Studio, tap: Tap) -> None:
    _add(menu, _plain(what_words(studio, tap)), lambda: tap_now(desk, tap))


def tap_now(desk: PageDesk, tap: Tap) -> bool:
    """Write down that something has happened just now; what is wrong is said. True if done."""
    session = desk.session
    if session is None:
        return False
    now = desk.clock.now()
    words = what_words(session.studio, tap)
    if not desk.changes.attempt(tapped(session.studio, tap, now, now)):
        return False
    text = translate("happened", "In the log: {what}. Undo takes it back.")
    desk.tell_entry(text.format(what=words))
    return True


def _plain(words: str) -> str:
    return words.replace("&", "&&")


def _add(menu: QMenu, words: str, does: Callable[[], object]) -> None:
    action = menu.addAction(words)
    action.triggered.connect(lambda _checked=False: does())
