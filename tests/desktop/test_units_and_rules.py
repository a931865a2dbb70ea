"""Units, words and rules of thumb are changed, and everything shown follows."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.pieces import Material
from studio_planner.craft.settings import (
    ClockForm,
    FilmUnit,
    LengthUnit,
    MassUnit,
    TemperatureUnit,
    Units,
)
from studio_planner.desktop import bar_words
from studio_planner.desktop.forms.fields import ChoiceField
from studio_planner.desktop.page_keys import PLAN
from studio_planner.desktop.pages.studio_page import (
    HANDS,
    RULES,
    UNITS,
)
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.desktop.studio_pages.rules_section import RulesSection
from studio_planner.desktop.studio_pages.units_section import UnitsSection
from tests.desktop import scenes
from tests.desktop.studio_steps import click, section, studio_of, typed

if TYPE_CHECKING:
    from studio_planner.desktop.window import DeskWindow


pytestmark = pytest.mark.journey


AMERICAN = Units(
    temperature=TemperatureUnit.FAHRENHEIT,
    mass=MassUnit.OUNCE,
    length=LengthUnit.INCH,
    film=FilmUnit.MIL,
    clock=ClockForm.HOURS_12,
    week_starts=6,
)


def test_every_unit_is_chosen_and_everything_shown_follows(desk: DeskWindow) -> None:
    before = studio_of(desk)
    units = section(desk, UNITS, UnitsSection)
    for name in ("temperature", "mass", "length", "film", "clock", "week_starts"):
        field = units.form.fields[name]
        assert isinstance(field, ChoiceField)
        field.show_value(getattr(AMERICAN, name))
        field.editor.activated.emit(field.editor.currentIndex())
    assert studio_of(desk).units == AMERICAN
    assert studio_of(desk).plan == before.plan
    assert not studio_of(desk).plan_outdated
    assert "7:36 pm" in units.example.text()
    desk.go_to(PLAN)
    bar = desk.timeline.lanes.lanes[3].bars[0]
    told = bar_words.tooltip(bar)
    assert "7.9 mil" in told
    assert "6:00 pm" in told
    desk.timeline.choose_piece("m")
    assert "19.7 mil" in desk.parts.side.section.accessibleDescription()
    assert "°F" in desk.parts.room.reading_at(600)
    desk.parts.show_side()
    assert any("pm" in row.spoken for row in desk.parts.side.hands.rows.rows)
    hands = section(desk, HANDS, HandsSection)
    assert hands.panel.week.shape.first == 6
    assert hands.panel.wakes.editor.text() == "7:00 am"
    for _ in range(6):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


@pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
def test_a_zone_is_found_by_typing_and_a_wrong_one_is_said_beside_it(
    desk: DeskWindow,
) -> None:
    units = section(desk, UNITS, UnitsSection)
    typed(units.zone, "Nowhere/Atlantis")
    assert "no time zone called" in units.zone.wrong
    assert studio_of(desk).zone == scenes.ZONE
    assert units.zone.editor.currentText() == "Nowhere/Atlantis"
    typed(units.zone, "America/New_York")
    assert not units.zone.wrong
    assert studio_of(desk).zone == "America/New_York"


def test_name_and_currency_are_changed_and_a_wrong_currency_stays_typed(
    desk: DeskWindow,
) -> None:
    units = section(desk, UNITS, UnitsSection)
    typed(units.name, "Gorse Yard")
    assert desk.title_bar.name.words == "Gorse Yard"
    typed(units.currency, "gbp")
    assert studio_of(desk).currency == "GBP"
    typed(units.currency, "pounds")
    assert units.currency.wrong == "use three letters, such as EUR."
    assert units.currency.editor.text() == "pounds"
    assert studio_of(desk).currency == "GBP"


def test_a_rule_of_thumb_is_changed_and_set_back(desk: DeskWindow) -> None:
    before = studio_of(desk)
    rules = section(desk, RULES, RulesSection)
    row = rules.rows["dew_margin_celsius"]
    assert row.usual.text() == "By ISO 8502-4: 3 °C."
    assert not row.back.isVisibleTo(rules)
    typed(row.field, "4,5")
    assert studio_of(desk).settings.dew_margin_celsius == 4.5
    assert desk.verbs["undo"].text() == "&Undo: Rule of thumb, margin above the dew point"
    click(row.back)
    assert studio_of(desk).settings == before.settings
    assert row.field.editor.text() == "3"


def test_a_rule_outside_its_range_is_said_beside_its_field(desk: DeskWindow) -> None:
    before = studio_of(desk)
    row = section(desk, RULES, RulesSection).rows["sand_minutes"]
    typed(row.field, "0")
    assert "outside 1 to 600" in row.field.wrong
    assert studio_of(desk) == before


def test_the_lag_of_one_material_is_changed_alone(desk: DeskWindow) -> None:
    rules = section(desk, RULES, RulesSection)
    typed(rules.rows["surface_lag_hours, slate"].field, "2")
    lags = studio_of(desk).settings.surface_lag_hours
    expected = dict(scenes.studio().settings.surface_lag_hours)
    expected[Material.SLATE] = 2.0
    assert lags == expected


def test_every_field_of_the_settings_has_its_rule(desk: DeskWindow) -> None:
    rules = section(desk, RULES, RulesSection)
    named = {name.partition(",")[0] for name in rules.rows}
    assert named == set(studio_of(desk).settings.__dataclass_fields__) | {"moved_minutes"}


def test_by_how_much_a_window_moves_before_it_is_said_is_a_rule_too(desk: DeskWindow) -> None:
    before = studio_of(desk)
    row = section(desk, RULES, RulesSection).rows["moved_minutes"]
    typed(row.field, "2")
    assert "outside 5 to" in row.field.wrong
    typed(row.field, "45")
    assert studio_of(desk).reminding.moved_minutes == 45
    click(row.back)
    assert studio_of(desk).reminding == before.reminding
