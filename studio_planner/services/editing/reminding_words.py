"""What a maker can change about how the studio reminds."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.reminders import Means, ReminderKind, Reminding
    from studio_planner.craft.studio import Studio


def changed_reminding(what: str, values: Mapping[str, Any]) -> Change:
    """Change fields of how a studio reminds, by their names."""

    def make(studio: Studio) -> Studio:
        return replace(studio, reminding=replace(studio.reminding, **values))

    return Change(translate("changes", "Reminders, {what}").format(what=what), make)


def changed_lead(what: str, kind: ReminderKind, minutes: int) -> Change:
    """Change how long before its moment a kind rings."""

    def make(studio: Studio) -> Studio:
        leads = {**studio.reminding.leads, kind: minutes}
        return _with(studio, leads=leads)

    return Change(translate("changes", "Reminders, {what}").format(what=what), make)


def switched_kind(what: str, kind: ReminderKind, *, on: bool) -> Change:
    """Tell of a kind, or of it no more."""

    def make(studio: Studio) -> Studio:
        off = studio.reminding.off
        return _with(studio, off=off - {kind} if on else off | {kind})

    return Change(translate("changes", "Reminders, {what}").format(what=what), make)


def switched_means(what: str, means: Means, *, on: bool) -> Change:
    """Use a means, or use it no more."""

    def make(studio: Studio) -> Studio:
        off = studio.reminding.means_off
        return _with(studio, means_off=off - {means} if on else off | {means})

    return Change(translate("changes", "Reminders, {what}").format(what=what), make)


def _with(studio: Studio, **values: Any) -> Studio:  # noqa: ANN401 - the fields' own kinds
    reminding: Reminding = replace(studio.reminding, **values)
    return replace(studio, reminding=reminding)
