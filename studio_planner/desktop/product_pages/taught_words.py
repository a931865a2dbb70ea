"""What touch tests taught of a stage, in sentences."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.product_pages.law_words import stage_name
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units
    from studio_planner.craft.taught import TaughtStage
    from studio_planner.desktop.words import Wall
    from studio_planner.services.teaching import StageLesson

_ABOUT_THE_SAME = 0.03
"""Hours that differ by a smaller share are the same to a maker (ours)."""


def title_of(lesson: StageLesson, units: Units) -> str:
    """The stage, at which temperature, and after how long it is safe."""
    taught = lesson.shown
    return translate("teaching", "{stage} at {degrees}: safe after {late}").format(
        stage=stage_name(lesson.stage),
        degrees=words.degrees(taught.celsius, units),
        late=words.length_of_time(taught.late_hours),
    )


def found_sentence(lesson: StageLesson) -> str:
    """What was found, against the sheet."""
    taught = lesson.shown
    share = taught.likely_hours / lesson.sheet[1] - 1.0
    likely, sheet = (
        words.length_of_time(hours) for hours in (taught.likely_hours, lesson.sheet[1])
    )
    if abs(share) < _ABOUT_THE_SAME:
        return translate(
            "teaching", "Likely {likely}, about what the sheet says ({sheet})."
        ).format(likely=likely, sheet=sheet)
    form = (
        translate("teaching", "Likely {likely}, {percent} % later than the sheet ({sheet}).")
        if share > 0
        else translate(
            "teaching",
            "Likely {likely}, {percent} % sooner than the sheet ({sheet}); where they differ, "
            "the sheet is the safer guide.",
        )
    )
    return form.format(likely=likely, sheet=sheet, percent=round(100 * abs(share)))


def rests_on(taught: TaughtStage) -> str:
    """How many tests and pours it rests on."""
    if taught.tests == 1:
        return translate("teaching", "It rests on a single test.")
    if taught.pours == 1:
        return translate("teaching", "It rests on {tests} tests of a single pour.").format(
            tests=taught.tests
        )
    return translate("teaching", "It rests on {tests} tests of {pours} pours.").format(
        tests=taught.tests, pours=taught.pours
    )


def state_sentence(lesson: StageLesson, wall: Wall) -> str:
    """What plans go by now."""
    if lesson.used is None:
        return translate("teaching", "Plans go by the data sheet.")
    if not lesson.holds:
        return translate(
            "teaching",
            "The sheet has changed since you took your tests, so plans go by the sheet.",
        )
    since = words.day_name(lesson.used.at, wall)
    return translate("teaching", "Plans go by your tests, as they were on {day}.").format(
        day=since
    )
