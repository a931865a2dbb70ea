"""Facts of questions and answers as the desk writes them."""

from __future__ import annotations

from datetime import datetime, time
from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from datetime import date

    from studio_planner.craft.settings import ClockForm
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.asking import Question
    from studio_planner.services.trying.trial import WhatIf

_NOON = time(12)


def question_words(asked: Question | WhatIf, form: ClockForm) -> str:
    """A question as it is asked, a time in it on the studio's kind of clock."""
    said = translate("questions", asked.words)
    example = getattr(asked, "example", None)
    return said if example is None else said.format(time=words.time_of_day(example, form))


class QuestionVoice(DeskVoice):
    """Writes on the studio's clock and in its units, and a day with its weekday."""

    def __init__(self, studio: Studio) -> None:
        """Write for a studio."""
        super().__init__(studio)
        self._zone = studio.time_zone

    @override
    def translated(self, text: str) -> str:
        return translate("said", text)

    @override
    def day(self, day: date) -> str:
        return words.day_name(datetime.combine(day, _NOON, tzinfo=self._zone), self._zone)
