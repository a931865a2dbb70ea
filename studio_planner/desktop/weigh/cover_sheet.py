"""The sheet before the first tap: the cups in order, the bottles, and what to mind."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from studio_planner.craft.stock import LotPart
from studio_planner.desktop import mix_lines
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.weigh_words import reading
from studio_planner.services.cup_times import air_at
from studio_planner.services.mix_run.bottles import Bottles, bottles_for

if TYPE_CHECKING:
    from PySide6.QtGui import QFont

    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.mix_sheet import MixSheet

_LEAST = 48


class CoverSheet(QWidget):
    """What there is to know of a mix before it is weighed; each bottle is a button."""

    def __init__(self, parent: QWidget) -> None:
        """Show no mix yet."""
        super().__init__(parent)
        self._studio: Studio | None = None
        self._bottles: tuple[Bottles, ...] = ()
        self._chosen: dict[LotPart, str] = {}
        self.order = self._label()
        self.notes = self._label()
        self.buttons = [QPushButton(self), QPushButton(self)]
        for place, button in enumerate(self.buttons):
            button.setMinimumHeight(_LEAST)
            button.clicked.connect(partial(self._next_bottle, place))
        inside = QWidget(self)
        lines = QVBoxLayout(inside)
        lines.setContentsMargins(0, 0, 0, 0)
        lines.addWidget(self.order)
        lines.addWidget(self.notes)
        lines.addStretch(1)
        self._scroll = QScrollArea(self)
        self._scroll.setWidget(inside)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setAccessibleName(translate("weigh", "The mix: its cups and notes"))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._scroll, 1)
        for button in self.buttons:
            layout.addWidget(button)

    def _label(self) -> QLabel:
        label = QLabel(self)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        return label

    def set_fonts(self, line: QFont, small: QFont) -> None:
        """Write the cups with one, the rest with the other."""
        self.order.setFont(line)
        self.notes.setFont(small)
        for button in self.buttons:
            button.setFont(small)

    def show_sheet(self, studio: Studio, sheet: MixSheet) -> None:
        """Show another mix; the bottles that the stock sets aside for it are chosen."""
        self._studio = studio
        plan = studio.plan
        self._bottles = (
            () if plan is None else bottles_for(studio, plan, sheet.mix, sheet.product)
        )
        self._chosen = {one.part: one.chosen for one in self._bottles}
        self.order.setText("\n".join(mix_lines.order_lines(sheet)))
        self.notes.setText("\n".join(notes_of(studio, sheet)))
        self._show_bottles()

    @property
    def lots(self) -> tuple[str, str]:
        """The chosen bottles of A (or of the whole) and of B; empty where none is noted."""
        chosen = self._chosen
        return (
            chosen.get(LotPart.A) or chosen.get(LotPart.WHOLE) or "",
            chosen.get(LotPart.B, ""),
        )

    def _next_bottle(self, place: int, _checked: bool = False) -> None:  # noqa: FBT001, FBT002
        bottles = self._bottles[place]
        keys = [one.lot.key for one in bottles.levels] + [""]
        now = keys.index(self._chosen[bottles.part])
        self._chosen[bottles.part] = keys[(now + 1) % len(keys)]
        self._show_bottles()

    def _show_bottles(self) -> None:
        for place, button in enumerate(self.buttons):
            there = place < len(self._bottles) and bool(self._bottles[place].levels)
            button.setVisible(there)
            if there:
                button.setText(self._said(self._bottles[place]))
                button.setAccessibleName(button.text())

    def _said(self, bottles: Bottles) -> str:
        studio, key = self._studio, self._chosen[bottles.part]
        part = "" if bottles.part is LotPart.WHOLE else f"{bottles.part}: "
        level = next((one for one in bottles.levels if one.lot.key == key), None)
        if level is None or studio is None:
            return part + translate("weigh", "bottle not noted")
        said = translate("weigh", "bottle {label}, {grams} left")
        return part + said.format(
            label=level.lot.label, grams=reading(level.left_g, studio)
        ).replace("&", "&&")


def notes_of(studio: Studio, sheet: MixSheet) -> list[str]:
    """Everything there is to say of a mix beside its cups: warnings first, the caution last."""
    first = sheet.coats[0]
    celsius, _ = air_at(studio, first.spot, first.start)
    lines = [
        *sheet.warnings,
        *sheet.notes,
        mix_lines.fits_line(sheet),
        mix_lines.heat_line(studio, sheet),
        *mix_lines.depth_lines(studio, sheet, celsius),
        mix_lines.saving_line(studio, sheet),
        sheet.caution,
    ]
    return list(dict.fromkeys(line for line in lines if line))
