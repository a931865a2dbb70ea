"""The rules of thumb: each figure with its sentence, its default, and the way back to it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.pieces import Material
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.page import Page
from studio_planner.desktop.quantities import Quantity, scale_of, shown_number
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.studio_pages.rule_texts import (
    ThumbRule,
    material_name,
    rule_groups,
)
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.editing.studio_words import (
    DEFAULTS,
    LAG,
    MOVED,
    changed_lag,
    changed_moved,
    changed_rules,
    rule_figure,
    usual_figure,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.settings import Units
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.editing.changes import Change

_WIDEST, _FIELD_WIDTH = 860, 168
_ISO = frozenset({"dew_margin_celsius"})
"""Rules whose default is that of a standard, ISO 8502-4."""
_UNKNOWN = frozenset({"tariff_per_kwh"})
"""Figures that nobody can know for a studio."""


class RuleRow(QWidget):
    """One figure: its field, what it does, its default, and the verb to set it back."""

    def __init__(self, section: RulesSection, rule: ThumbRule, default: float) -> None:
        """Be a row of `section`."""
        super().__init__(section)
        canvas = section.canvas
        self._rule = rule
        self.default = default
        self.field = NumberField(canvas, rule.title, rule.quantity, self)
        self.field.setFixedWidth(_FIELD_WIDTH)
        self.sentence = Line(canvas, rule.sentence, self)
        self.usual = Line(canvas, "", self, font="small", colour="quiet")
        self.back = verb(
            translate("rules", "Set back"),
            lambda: section.set_back(rule),
            self,
            about=rule.title,
        )
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 4, 0, 4)
        grid.setHorizontalSpacing(16)
        grid.setVerticalSpacing(0)
        section.form.add(rule.name, self.field, into=_Cell(grid))
        grid.addWidget(self.sentence, 0, 1, Qt.AlignmentFlag.AlignBottom)
        grid.addWidget(self.usual, 1, 1, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(self.back, 0, 2, 2, 1, Qt.AlignmentFlag.AlignVCenter)
        grid.setColumnStretch(1, 1)
        policy = self.back.sizePolicy()
        policy.setRetainSizeWhenHidden(True)
        self.back.setSizePolicy(policy)

    def show_value(self, value: float, units: Units) -> None:
        """Say what is usual, in the studio's units; offer it where the figure is another."""
        scale = scale_of(self._rule.quantity, units)
        usual = shown_number(self.default, self._rule.quantity, units)
        said = _usual_words(self._rule.name)
        self.usual.say(said.format(usual=f"{usual} {scale.unit}".strip()))
        self.back.setVisible(value != self.default)


class _Cell:
    """The first cell of a grid, taken as a form takes a layout."""

    def __init__(self, grid: QGridLayout) -> None:
        self._grid = grid

    def addWidget(self, widget: QWidget) -> None:  # noqa: N802 - Qt's name
        """Put the widget there."""
        self._grid.addWidget(widget, 0, 0, 2, 1, Qt.AlignmentFlag.AlignTop)


class RulesSection(Page):
    """All rules by what they are about, then the lag of each material."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        self._path: object = None
        self.form = Form(self.canvas, self._enter, self)
        self.rows: dict[str, RuleRow] = {}
        self._lay_out()

    def _lay_out(self) -> None:
        canvas = self.canvas
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        layout = QVBoxLayout(column)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        layout.addWidget(Line(canvas, translate("rules", "Rules of thumb"), self, font="clock"))
        said = translate(
            "rules",
            "What the trade does where no data sheet says anything. Change what your studio "
            "does otherwise; plans and amounts follow.",
        )
        layout.addWidget(Line(canvas, said, self, colour="quiet"))
        layout.addWidget(self.form)
        for group in rule_groups():
            self._add_group(layout, group.title, group.rules)
        self._add_group(layout, translate("rules", "How a surface follows the air"), _lags())
        layout.addSpacing(10)
        layout.addWidget(Line(canvas, deferral(), self, font="small", colour="quiet"))
        layout.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    def _add_group(self, layout: QVBoxLayout, title: str, rules: tuple[ThumbRule, ...]) -> None:
        line = Line(self.canvas, title, self, font="bold")
        line.setContentsMargins(0, 12, 0, 0)
        layout.addWidget(line)
        for rule in rules:
            row = RuleRow(self, rule, _default(rule.name))
            self.rows[rule.name] = row
            layout.addWidget(row)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self.setEnabled(view is not None)
        if view is None:
            return
        session = self.desk.session
        path = None if session is None else session.path
        fresh, self._path = path != self._path, path
        units = view.studio.units
        values = {name: _figure(view.studio, name) for name in self.rows}
        self.form.show_values(values, units, fresh=fresh)
        for name, row in self.rows.items():
            row.show_value(values[name], units)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        self.desk.changes.make(self._change(name, values[name]))

    def set_back(self, rule: ThumbRule) -> None:
        """Give a rule its default again."""
        row = self.rows[rule.name]
        if self.desk.changes.attempt(self._change(rule.name, row.default)):
            row.field.show_value(row.default)

    def _change(self, name: str, value: float) -> Change:
        title = self.rows[name].field.words
        what = title[:1].lower() + title[1:]
        material = _material(name)
        if material is not None:
            return changed_lag(what, {material: value})
        if name == MOVED:
            return changed_moved(what, round(value))
        return changed_rules(what, {name: value})


def _usual_words(name: str) -> str:
    if name in _ISO:
        return translate("rules", "By ISO 8502-4: {usual}.")
    if name in _UNKNOWN:
        return translate("rules", "Unless you enter it: {usual}.")
    return translate("rules", "Common practice: {usual}.")


def _lags() -> tuple[ThumbRule, ...]:
    return tuple(
        ThumbRule(
            f"{LAG}, {material}",
            material_name(material),
            translate("rules", "{name} is as warm as the air after about so long.").format(
                name=material_name(material)
            ),
            Quantity.HOURS,
        )
        for material in Material
    )


def _material(name: str) -> Material | None:
    field, _, material = name.partition(", ")
    return Material(material) if field == LAG else None


def _default(name: str) -> float:
    material = _material(name)
    return usual_figure(name) if material is None else DEFAULTS.surface_lag_hours[material]


def _figure(studio: Studio, name: str) -> float:
    material = _material(name)
    if material is None:
        return rule_figure(studio, name)
    hours = studio.settings.surface_lag_hours
    return hours.get(material, DEFAULTS.surface_lag_hours[material])
