"""The desk in German: on every page nothing is clipped, and nothing is left in English."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING
from xml.etree import ElementTree as ET

import pytest
from PySide6.QtCore import QDate, QLocale, QModelIndex, QRect, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QDialogButtonBox,
    QLabel,
    QLineEdit,
    QMenu,
    QPlainTextEdit,
    QTabBar,
    QTableView,
    QWidget,
)

from studio_planner.craft.resources import resource_path
from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.forms.still_editors import StillDate
from studio_planner.desktop.page_keys import ORDERS, PLAN
from studio_planner.desktop.planning_process import plan_command
from studio_planner.desktop.quantities import number_of, number_words
from studio_planner.desktop.remembered import remembered_language
from studio_planner.desktop.tongue import Language, speak, spoken
from studio_planner.services.sample import create_sample
from tests.desktop import scenes
from tests.desktop.test_desk_is_readable import PAGES, show_page

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow

_SAID = """
    the and of is are not no with what when how from until before after first next last each
    every nothing nobody coat coats piece pieces pour pours order orders room spot spots open
    late kept planned again left add remove to by it its
"""
ENGLISH = frozenset(_SAID.split())
"""Words that no German sentence holds."""


@pytest.fixture(autouse=True)
def _in_german() -> Iterator[None]:
    before = QLocale()
    speak(Language.GERMAN)
    yield
    speak(Language.ENGLISH)
    QLocale.setDefault(before)


def visible_texts(desk: QWidget) -> list[str]:
    """Everything that a widget in view says, in no order."""
    found: list[str] = []
    for widget in desk.findChildren(QWidget):
        if widget.isVisibleTo(desk):
            found += [text for text in _texts(widget) if text]
            found += [widget.accessibleName(), widget.accessibleDescription(), widget.toolTip()]
    return [text for text in found if text]


def _texts(widget: QWidget) -> list[str]:
    if isinstance(widget, QLabel | QAbstractButton):
        return [widget.text()]
    if isinstance(widget, QLineEdit | QPlainTextEdit):
        return [widget.placeholderText()]
    if isinstance(widget, QComboBox):
        return [widget.itemText(row) for row in range(widget.count())]
    if isinstance(widget, QTabBar):
        return [widget.tabText(row) for row in range(widget.count())]
    if isinstance(widget, QAbstractItemView) and widget.model() is not None:
        return _cells(widget)
    return []


def _cells(view: QAbstractItemView) -> list[str]:
    model, root = view.model(), QModelIndex()
    across, down = Qt.Orientation.Horizontal, Qt.Orientation.Vertical
    table = isinstance(view, QTableView)
    rows, columns = model.rowCount(root), model.columnCount(root) if table else 1
    found: list[object] = []
    if table:
        found += [model.headerData(n, across) for n in range(columns)]
        found += [model.headerData(n, down) for n in range(rows)]
    for row in range(rows):
        for column in range(columns):
            index = model.index(row, column)
            found.append(model.data(index, Qt.ItemDataRole.DisplayRole))
            found.append(model.data(index, Qt.ItemDataRole.AccessibleDescriptionRole))
    return [said for said in found if isinstance(said, str)]


def names_of(desk: DeskWindow) -> set[str]:
    """The words of the studio's own names, which are in whatever language the maker used."""
    session = desk.session
    assert session is not None
    studio = session.studio
    said = [*(one.name for one in studio.pieces), *(one.name for one in studio.products)]
    said += [*(one.name for one in studio.orders), *(one.name for one in studio.people)]
    said += [*(one.name for one in studio.places), *(one.name for one in studio.spots)]
    return {studio.name, *said}


def english_in(text: str, names: set[str]) -> set[str]:
    """The English words of a text, its names left out."""
    for name in sorted(names, key=len, reverse=True):
        if name:
            text = re.sub(re.escape(name.rstrip(".")), "", text, flags=re.IGNORECASE)
    return set(re.findall(r"[a-z]+", text.replace("&", "").lower())) & ENGLISH


def untranslated(texts: list[str]) -> list[str]:
    """Texts that are the English side of the list, though German says them otherwise."""
    tree = ET.parse(resource_path("translations/studio_planner_de.ts"))  # noqa: S314
    pairs = [
        (message.findtext("source") or "", message.findtext("translation") or "")
        for message in tree.getroot().iter("message")
    ]
    english, german = {a for a, b in pairs if a != b}, {b for _, b in pairs}
    return [text for text in texts if text in english - german]


@pytest.mark.parametrize("page", PAGES)
def test_no_english_is_left_among_what_is_shown(
    qtbot: QtBot, desk: DeskWindow, page: str
) -> None:
    show_page(qtbot, desk, page)
    texts, names = visible_texts(desk), names_of(desk)
    assert not set(untranslated(texts)) - names
    left = {text: found for text in texts if (found := english_in(text, names))}
    assert not left


@pytest.mark.parametrize("page", [PLAN, ORDERS])
def test_a_plan_that_was_made_in_english_gives_its_reasons_in_german(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path, page: str
) -> None:
    speak(Language.ENGLISH)
    path = tmp_path / "sample.studio"
    plan = create_sample(path, scenes.at(0, "06:00").date()).plan
    assert plan is not None
    late = next(one for one in plan.outcomes if one.reason)
    english = str(late.reason)
    speak(Language.GERMAN)
    assert window.open_path(path)
    window.go_to(page, late.order)
    german = capital(str(late.reason))
    assert german.startswith("Zu kalt: ")
    qtbot.waitUntil(lambda: any(german in text for text in visible_texts(window)))
    assert not any(english in text for text in visible_texts(window))


@pytest.mark.parametrize("page", PAGES)
def test_no_label_or_button_is_clipped_in_german(
    qtbot: QtBot, desk: DeskWindow, page: str
) -> None:
    show_page(qtbot, desk, page)
    for label in desk.findChildren(QLabel):
        if label.isVisibleTo(desk) and label.text():
            wrap = int(Qt.TextFlag.TextWordWrap) if label.wordWrap() else 0
            room = QRect(0, 0, label.width(), 10_000)
            need = label.fontMetrics().boundingRect(room, wrap, label.text())
            assert need.width() <= label.width() + 1, label.text()
            assert need.height() <= label.height() + 1, label.text()
    for button in desk.findChildren(QAbstractButton):
        if button.isVisibleTo(desk) and button.text():
            wide = button.fontMetrics().horizontalAdvance(button.text())
            assert wide < button.width(), button.text()


def test_every_menu_speaks_german(desk: DeskWindow) -> None:
    texts = [action.text() for action in desk.verbs.values()]
    texts += [action.text() for action in desk.menuBar().actions()]
    assert not untranslated(texts)
    assert desk.verbs["plan"].text() == "Neu &planen"


def test_days_and_months_are_called_as_in_german() -> None:
    start, end = scenes.at(0, "18:20"), scenes.at(0, "19:05")
    zone = words.wall_of(scenes.studio())
    assert words.span(start, end, zone) == "Di 8. Dez 18:20 bis 19:05"
    assert words.moment(scenes.at(1, "07:05"), zone) == "Mi 9. Dez 07:05"


def test_qts_own_buttons_speak_german(qtbot: QtBot) -> None:
    box = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
    qtbot.addWidget(box)
    button = box.button(QDialogButtonBox.StandardButton.Cancel)
    assert button.text().replace("&", "") == "Abbrechen"


def test_the_choice_of_a_language_is_remembered_and_said(desk: DeskWindow) -> None:
    assert spoken() is Language.GERMAN
    menus = desk.menuBar().findChildren(QMenu)
    languages = next(menu for menu in menus if menu.title() == "&Sprache")
    languages.aboutToShow.emit()
    offered = {action.text(): action for action in languages.actions()}
    assert set(offered) == {"&English", "&Deutsch", "Wie das S&ystem"}
    offered["&English"].trigger()
    assert remembered_language() is Language.ENGLISH
    assert desk.notice.words == "Die Sprache gilt ab dem nächsten Start."


def test_the_language_of_a_page_is_that_of_its_start(qtbot: QtBot, desk: DeskWindow) -> None:
    show_page(qtbot, desk, PLAN)
    assert desk.title_bar.plan_button.text() == "Neu planen"
    speak(Language.ENGLISH)
    assert desk.title_bar.plan_button.text() == "Neu planen"


def test_planning_is_asked_to_tell_of_its_plans_in_german(tmp_path: Path) -> None:
    words = plan_command(tmp_path)
    assert words[words.index("--language") + 1] == "de"
    speak(Language.ENGLISH)
    assert "--language" not in plan_command(tmp_path)


def test_a_figure_is_read_as_it_was_written() -> None:
    assert number_words(1250.5) == "1250,5"
    assert number_of(number_words(1250.5)) == 1250.5


def test_a_field_for_a_date_puts_a_point_behind_the_day(qtbot: QtBot) -> None:
    field = StillDate()
    qtbot.addWidget(field)
    field.setDate(QDate(2026, 12, 23))
    assert field.text() == "Mi. 23. Dez. 2026"
