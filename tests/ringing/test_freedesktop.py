"""Notices on a real message bus, with a service that shows them and presses their buttons."""

from __future__ import annotations

import shutil
import sys
from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.reminders import Means
from studio_planner.services.ports import Button, CannotRing, Notice, Pressed
from studio_planner.services.reminding.notices import DONE, OPEN

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

pytestmark = [
    pytest.mark.skipif(
        not sys.platform.startswith("linux"), reason="this notification service is Linux's"
    ),
    pytest.mark.skipif(
        shutil.which("dbus-daemon") is None,
        reason="dbus-daemon is not installed: sudo apt-get install dbus-daemon",
    ),
]

_SECONDS = 10.0
WEIGH = Notice(
    key="one",
    title="Weigh now: Tide tray",
    body="Planned for 18:00 & not later",
    buttons=(Button(key=DONE, words="Done"), Button(key="snooze", words="At 18:40")),
)


@pytest.fixture
def bus(tmp_path: Path) -> Iterator[str]:
    from tests.ringing.notice_server import private_bus  # noqa: PLC0415 - only on Linux

    with private_bus(tmp_path) as address:
        yield address


def test_a_notice_is_shown_and_its_button_is_heard(bus: str) -> None:
    from studio_planner.ringing.freedesktop import FreedesktopNotifier  # noqa: PLC0415
    from tests.ringing.notice_server import notice_server  # noqa: PLC0415

    with notice_server(bus) as server:
        notifier = FreedesktopNotifier({"DBUS_SESSION_BUS_ADDRESS": bus})
        assert notifier.means == Means.NOTIFICATION
        assert notifier.pressed(0.0) == ()
        notifier.ring(WEIGH)
        shown = server.shown.get(timeout=_SECONDS)
        assert (shown.title, shown.body) == (WEIGH.title, WEIGH.body)
        assert shown.actions == ["default", "Open", "done", "Done", "snooze", "At 18:40"]
        assert shown.hints == {
            "urgency": 1,
            "desktop-entry": "studio-planner",
            "sound-name": "message",
        }
        assert notifier.pressed(0.0) == ()
        server.press(shown.number, "snooze")
        assert notifier.pressed(_SECONDS) == (Pressed("one", "snooze"),)
        server.press(shown.number + 7, "done")  # somebody else's notice
        server.press(shown.number, "default")
        while not (heard := notifier.pressed(_SECONDS)):
            pass
        assert heard == (Pressed("one", OPEN),)
        notifier._leave()


def test_a_notice_of_the_same_key_takes_the_place_of_the_old_one(bus: str) -> None:
    from studio_planner.ringing.freedesktop import FreedesktopNotifier  # noqa: PLC0415
    from tests.ringing.notice_server import notice_server  # noqa: PLC0415

    with notice_server(bus, capabilities=["body", "body-markup"]) as server:
        notifier = FreedesktopNotifier({"DBUS_SESSION_BUS_ADDRESS": bus})
        notifier.ring(replace(WEIGH, strong=True, sound=False))
        first = server.shown.get(timeout=_SECONDS)
        notifier.ring(WEIGH)
        second = server.shown.get(timeout=_SECONDS)
        assert (first.replaces, second.replaces) == (0, first.number)
        assert first.body == "Planned for 18:00 &amp; not later"
        assert first.actions == []
        assert (first.lasts, second.lasts) == (0, -1)
        assert first.hints["urgency"] == 2
        assert first.hints["suppress-sound"] is True
        notifier._leave()


def test_without_a_service_the_failure_is_a_sentence(bus: str) -> None:
    from studio_planner.ringing.freedesktop import FreedesktopNotifier  # noqa: PLC0415

    notifier = FreedesktopNotifier({"DBUS_SESSION_BUS_ADDRESS": bus})
    with pytest.raises(CannotRing, match="has no notification service"):
        notifier.ring(WEIGH)


def test_a_service_that_refuses_is_quoted_and_joined_again_later(bus: str) -> None:
    from studio_planner.ringing.freedesktop import FreedesktopNotifier  # noqa: PLC0415
    from tests.ringing.notice_server import notice_server  # noqa: PLC0415

    with notice_server(bus, refuses=True) as server:
        notifier = FreedesktopNotifier({"DBUS_SESSION_BUS_ADDRESS": bus})
        with pytest.raises(CannotRing, match="no room on the screen"):
            notifier.ring(WEIGH)
        server.refuses = False
        notifier.ring(WEIGH)
        assert server.shown.get(timeout=_SECONDS).title == WEIGH.title
        notifier._leave()


def test_a_bus_that_went_away_is_noticed(tmp_path: Path) -> None:
    from studio_planner.ringing.freedesktop import FreedesktopNotifier  # noqa: PLC0415
    from tests.ringing.notice_server import notice_server, private_bus  # noqa: PLC0415

    with private_bus(tmp_path) as address:
        notifier = FreedesktopNotifier({"DBUS_SESSION_BUS_ADDRESS": address})
        with notice_server(address) as server:
            notifier.ring(WEIGH)
            server.shown.get(timeout=_SECONDS)
    assert notifier.pressed(_SECONDS) == ()
    with pytest.raises(CannotRing, match="this session has no message bus"):
        notifier.ring(WEIGH)


@pytest.mark.parametrize(
    "environment", [{}, {"XDG_RUNTIME_DIR": "/nowhere"}, {"DBUS_SESSION_BUS_ADDRESS": "odd"}]
)
def test_without_a_bus_the_failure_is_a_sentence(environment: dict[str, str]) -> None:
    from studio_planner.ringing.freedesktop import FreedesktopNotifier  # noqa: PLC0415

    with pytest.raises(CannotRing, match="No notification could be shown: "):
        FreedesktopNotifier(environment).ring(WEIGH)
