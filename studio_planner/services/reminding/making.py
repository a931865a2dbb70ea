"""All reminders of a studio, made of its kept plan and of what was written down."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.reminding.of_air import of_air
from studio_planner.services.reminding.of_coats import of_coats
from studio_planner.services.reminding.of_steps import of_steps
from studio_planner.services.reminding.scene import Scene

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.reminders import Reminder
    from studio_planner.craft.studio import Studio


def reminders_of(studio: Studio, now: datetime) -> tuple[Reminder, ...]:
    """Every reminder of a studio at `now` (aware), in the order in which they are due.

    Those of the whole plan are there, past and to come; none without a plan. What the maker
    does not want to hear of is left out, and so is what packed and spoiled pieces would need.
    """
    if studio.plan is None:
        return ()
    scene = Scene(studio, studio.plan, now)
    found = {
        one.uid: scene.quiet.put_off(one)
        for one in (*of_coats(scene), *of_steps(scene), *of_air(scene))
        if one.kind not in studio.reminding.off and one.piece not in scene.over
    }
    return tuple(sorted(found.values(), key=lambda one: (one.due, one.uid)))
