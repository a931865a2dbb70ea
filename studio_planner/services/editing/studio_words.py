"""What a maker can change about the studio itself: its name, zone, currency, units, rules."""

from __future__ import annotations

from dataclasses import fields, replace
from typing import TYPE_CHECKING, Any

from studio_planner.craft.settings import Settings, Units
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.studio import Studio

DEFAULTS = Settings()
"""The rules of thumb as a new studio has them."""

LAG = "surface_lag_hours"
"""The rule that has a figure for each material."""

_UNITS = frozenset(field.name for field in fields(Units))


def changed_studio(what: str, values: Mapping[str, Any]) -> Change:
    """Change fields of the studio and of its units, by their names."""
    own = {name: value for name, value in values.items() if name not in _UNITS}
    units = {name: value for name, value in values.items() if name in _UNITS}

    def make(studio: Studio) -> Studio:
        return replace(studio, units=replace(studio.units, **units), **own)

    return Change(translate("changes", "Studio, {what}").format(what=what), make)


def changed_rules(what: str, values: Mapping[str, Any]) -> Change:
    """Change rules of thumb by their names."""
    return _ruled(what, lambda settings: replace(settings, **values))


def changed_lag(what: str, hours: Mapping[Material, float]) -> Change:
    """Change for some materials how long a surface takes to follow the air."""

    def make(settings: Settings) -> Settings:
        return replace(settings, surface_lag_hours={**settings.surface_lag_hours, **hours})

    return _ruled(what, make)


def _ruled(what: str, make: Callable[[Settings], Settings]) -> Change:
    return Change(
        translate("changes", "Rule of thumb, {what}").format(what=what),
        lambda studio: replace(studio, settings=make(studio.settings)),
    )
