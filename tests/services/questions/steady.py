"""The desk's scene in a room that stays as it is, so that every time can be worked out by hand.

At a published point and without a room's band the late edge is 1.1 times what the sheet says,
the early edge the sheet's time by 1.1. At 25 °C: the quick seal is tack-free
after 2.64 h, opens after 3.08 h, closes after 13.64 h, and can be handled after 8.8 h; the slow
flood can be handled after 18.7 h, is print-free after 37.4 h and fully cured after 99 h.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.services.desk import DeskView
from tests.desktop import scenes

if TYPE_CHECKING:
    from datetime import date, datetime

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.asking import Answer


def _local(when: datetime) -> datetime:
    # A clock's answer may lack a millionth of the second that was worked out.
    return when.astimezone(scenes.studio().time_zone) + timedelta(milliseconds=500)


class PlainVoice:
    """Writes facts as briefly as they can be checked."""

    def translated(self, text: str) -> str:
        return text

    def moment(self, when: datetime) -> str:
        return f"{_local(when):%a %H:%M}"

    def clock(self, when: datetime) -> str:
        return f"{_local(when):%H:%M}"

    def day(self, day: date) -> str:
        return f"{day:%a} {day.day}"

    def degrees(self, celsius: float) -> str:
        return f"{celsius:.0f} °C"

    def step(self, celsius: float) -> str:
        return f"{celsius:.1f} °C"

    def lasting(self, hours: float) -> str:
        return f"{hours:.2f} h"


def steady_room(celsius: float = 25.0, humidity: float | None = 50.0) -> Place:
    room = replace(scenes.constant_room(celsius), band_celsius=0.0)
    return replace(room, pattern=(replace(room.pattern[0], humidity_pct=humidity),))


def steady_studio(room: Place | None = None) -> Studio:
    return scenes.planned(room or steady_room())


def steady(room: Place | None = None, now: datetime = scenes.NOW) -> DeskView:
    return DeskView(steady_studio(room), now)


def verdict(answer: Answer) -> str:
    return answer.verdict.words(PlainVoice())


def lines(answer: Answer) -> list[str]:
    return [line.words(PlainVoice()) for line in answer.lines]
