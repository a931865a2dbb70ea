"""The pour sheet: A5 for the clipboard, for one mix or for all mixes that a day pours."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.services.paper.heading import headed
from studio_planner.services.paper.mix_parts import MixParts
from studio_planner.services.paper.pages import NothingForPaper, PaperSize, Sheet
from studio_planner.services.paper.wall_words import (
    date_said,
    local_day,
    long_date_said,
)

if TYPE_CHECKING:
    from datetime import date

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.services.desk import DeskView


def pour_days(view: DeskView) -> tuple[date, ...]:
    """The days on which something is still to be poured or laid, in order."""
    days = {local_day(view.studio, coat.start) for coat in still_to_pour(view)}
    return tuple(sorted(days))


def pours_on(view: DeskView, day: date) -> tuple[PlannedCoat, ...]:
    """What is still to be poured or laid and begins on a day."""
    coats = still_to_pour(view)
    return tuple(one for one in coats if local_day(view.studio, one.start) == day)


def pour_sheet_of_day(view: DeskView, day: date) -> Sheet:
    """All mixes that begin on a day of the studio's calendar; NothingForPaper without any."""
    coats = pours_on(view, day)
    if not coats:
        raise NothingForPaper(_nothing_on(view, day))
    mixes = dict.fromkeys(one.mix for one in sorted(coats, key=lambda c: (c.start, c.mix)))
    title = translate("paper", "Pour sheet, {date}").format(date=long_date_said(day))
    return _sheet(view, title, f"pours-{day.isoformat()}", tuple(mixes))


def pour_sheet_of_mix(view: DeskView, mix: int) -> Sheet:
    """One mix of the plan that is still to be poured; NothingForPaper when it is not."""
    coats = [one for one in still_to_pour(view) if one.mix == mix]
    if not coats:
        raise NothingForPaper(
            translate("paper", "There is no mix {mix} in the plan that is still to be poured.")
            .format(mix=mix)
        )  # fmt: skip
    day = local_day(view.studio, coats[0].start)
    title = translate("paper", "Pour sheet, {date}").format(date=long_date_said(day))
    return _sheet(view, title, f"pour-{day.isoformat()}-{min(c.number for c in coats)}", (mix,))


def still_to_pour(view: DeskView) -> tuple[PlannedCoat, ...]:
    """What of the plan is not poured, nor written down as poured since it was made."""
    if view.plan is None:
        return ()
    poured = view.studio.poured_keys
    coats = (one for one in view.plan.coats if not one.poured)
    return tuple(one for one in coats if (one.piece, one.coat) not in poured)


def _nothing_on(view: DeskView, day: date) -> str:
    later = [one for one in pour_days(view) if one > day]
    if later:
        return translate(
            "paper", "Nothing is to be poured on {day}; the next pours are on {later}."
        ).format(day=date_said(day), later=date_said(later[0]))
    return translate(
        "paper", "Nothing is to be poured on {day}, nor planned for later; plan again first."
    ).format(day=date_said(day))


def _sheet(view: DeskView, title: str, name: str, mixes: tuple[int, ...]) -> Sheet:
    plan = view.plan
    assert plan is not None  # noqa: S101 - what is still to be poured is of a plan
    return headed(view, PaperSize.A5, title, name, MixParts(view, plan).of(mixes))
