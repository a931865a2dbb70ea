"""What a maker can change about the studio itself: its name, zone, currency, units, rules."""

from __future__ import annotations

from dataclasses import fields, replace
from typing import TYPE_CHECKING, Any

from studio_planner.craft.reminders import Reminding
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

MOVED = "moved_minutes"
"""The rule that lies with the reminders: by how much a window moves before it is said."""

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


def changed_moved(what: str, minutes: int) -> Change:
    """Change by how much a window has to move before that is said."""

    def make(studio: Studio) -> Studio:
        return replace(studio, reminding=replace(studio.reminding, moved_minutes=minutes))

    return Change(translate("changes", "Rule of thumb, {what}").format(what=what), make)


def rule_figure(studio: Studio, name: str) -> float:
    """A rule of thumb that is one figure, by its name."""
    holder = studio.reminding if name == MOVED else studio.settings
    return float(getattr(holder, name))


def usual_figure(name: str) -> float:
    """The figure that such a rule has in a new studio."""
    holder = Reminding() if name == MOVED else DEFAULTS
    return float(getattr(holder, name))


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
