"""The questions the desk asks about files; tests pass their own answers in."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

    Ask = Callable[[QWidget, str], Path | None]

_SUFFIX = "studio"


def _filter() -> str:
    studios, every = translate("dialogs", "Studios"), translate("dialogs", "All files")
    return f"{studios} (*.studio);;{every} (*)"


def _ask_open(parent: QWidget, folder: str) -> Path | None:
    name, _ = QFileDialog.getOpenFileName(
        parent, translate("dialogs", "Open a studio"), folder, _filter()
    )
    return Path(name) if name else None


def _ask_new(parent: QWidget, folder: str) -> Path | None:
    return _ask_name(parent, translate("dialogs", "New studio"), folder, confirm=False)


def _ask_copy(parent: QWidget, folder: str) -> Path | None:
    return _ask_name(parent, translate("dialogs", "Save a copy"), folder, confirm=True)


def _ask_readings(parent: QWidget, folder: str) -> Path | None:
    readings, every = translate("dialogs", "Readings"), translate("dialogs", "All files")
    name, _ = QFileDialog.getOpenFileName(
        parent,
        translate("dialogs", "Choose a logger's file"),
        folder,
        f"{readings} (*.csv *.txt);;{every} (*)",
    )
    return Path(name) if name else None


def _ask_name(parent: QWidget, title: str, folder: str, *, confirm: bool) -> Path | None:
    dialog = QFileDialog(parent, title, folder, _filter())
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setDefaultSuffix(_SUFFIX)
    dialog.setOption(QFileDialog.Option.DontConfirmOverwrite, on=not confirm)
    if not dialog.exec():
        return None
    return Path(dialog.selectedFiles()[0])


def _ask_sheet(parent: QWidget, proposed: str) -> Path | None:
    dialog = QFileDialog(parent, translate("dialogs", "Save the sheet as PDF"), proposed)
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setNameFilter("PDF (*.pdf)")
    dialog.setDefaultSuffix("pdf")
    dialog.selectFile(proposed)
    if not dialog.exec():
        return None
    return Path(dialog.selectedFiles()[0])


def _ask_calendar(parent: QWidget, proposed: str) -> Path | None:
    dialog = QFileDialog(parent, translate("dialogs", "Save the calendar file"), proposed)
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setNameFilter(translate("dialogs", "Calendar files (*.ics)"))
    dialog.setDefaultSuffix("ics")
    dialog.selectFile(proposed)
    if not dialog.exec():
        return None
    return Path(dialog.selectedFiles()[0])


@dataclass(frozen=True, slots=True)
class Dialogs:
    """One question each; the answer is a path, or None when the maker changed their mind.

    Before `copy`, `sheet` or `calendar` answers with a file that is there already, the maker
    has agreed to replace it. `sheet` and `calendar` are given the name that is proposed, the
    others a folder.
    """

    open: Ask = _ask_open
    new: Ask = _ask_new
    copy: Ask = _ask_copy
    readings: Ask = _ask_readings
    sheet: Ask = _ask_sheet
    calendar: Ask = _ask_calendar
