"""The page of questions on a desk that plans only when it is told to."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.pages.questions_page import QuestionsPage

if TYPE_CHECKING:
    from studio_planner.desktop.window import DeskWindow


def questions_on(desk: DeskWindow) -> QuestionsPage:
    """Go to the questions of a desk."""
    desk.changes.plans_by_itself = False
    desk.go_to("questions")
    found = desk.pages.page("questions")
    assert isinstance(found, QuestionsPage)
    return found
