"""The system's own notifications, with a package that stands in for them, and the bell."""

from __future__ import annotations

import io
import sys
from dataclasses import dataclass, field, replace
from types import SimpleNamespace
from typing import TYPE_CHECKING, Any

import pytest
from typing_extensions import override

from studio_planner.ringing.bell import TerminalBell
from studio_planner.ringing.freedesktop import FreedesktopNotifier
from studio_planner.ringing.means import notifiers_of
from studio_planner.ringing.native import NativeNotifier
from studio_planner.services.ports import Button, CannotRing, Notice, Pressed
from studio_planner.services.reminding.notices import DONE, OPEN

if TYPE_CHECKING:
    from collections.abc import Iterator

_SECONDS = 10.0
WEIGH = Notice(
    key="one", title="Weigh now", body="At 18:00", buttons=(Button(key=DONE, words="Done"),)
)


@dataclass
class Package:
    """Stands in for the package that knows the services of Windows and macOS."""

    allowed: bool = True
    sent: list[dict[str, Any]] = field(default_factory=list)
    cleared: list[str] = field(default_factory=list)
    fault: Exception | None = None

    DEFAULT_SOUND = "ping"
    Urgency = SimpleNamespace(Critical="critical", Normal="normal")
    Button = staticmethod(SimpleNamespace)

    def DesktopNotifier(self, app_name: str) -> Package:  # noqa: N802 - as it is called there
        assert app_name == "Studio planner"
        return self

    async def request_authorisation(self) -> bool:
        return self.allowed

    async def clear(self, identifier: str) -> None:
        self.cleared.append(identifier)

    async def send(self, **facts: Any) -> str:  # noqa: ANN401 - whatever is sent
        if self.fault is not None:
            raise self.fault
        self.sent.append(facts)
        return f"id {len(self.sent)}"


@pytest.fixture
def package() -> Package:
    return Package()


@pytest.fixture
def native(package: Package) -> Iterator[NativeNotifier]:
    notifier = NativeNotifier(lambda: package)
    yield notifier
    notifier.close()


def test_a_notice_is_sent_and_its_button_is_heard(
    native: NativeNotifier, package: Package
) -> None:
    native.ring(WEIGH)
    (sent,) = package.sent
    assert (sent["title"], sent["message"], sent["urgency"]) == (
        "Weigh now",
        "At 18:00",
        "normal",
    )
    assert sent["sound"] == "ping"
    assert native.pressed(0.0) == ()
    sent["buttons"][0].on_pressed()
    assert native.pressed(_SECONDS) == (Pressed("one", DONE),)
    sent["on_clicked"]()
    assert native.pressed(0.0) == (Pressed("one", OPEN),)


def test_a_notice_of_the_same_key_takes_the_old_one_away(
    native: NativeNotifier, package: Package
) -> None:
    native.ring(replace(WEIGH, strong=True, sound=False))
    native.ring(WEIGH)
    assert package.cleared == ["id 1"]
    assert [(one["urgency"], one["sound"]) for one in package.sent] == [
        ("critical", None),
        ("normal", "ping"),
    ]


def test_what_the_system_does_not_allow_is_said(
    native: NativeNotifier, package: Package
) -> None:
    package.allowed = False
    with pytest.raises(CannotRing, match="allow notifications of this program"):
        native.ring(WEIGH)


def test_a_service_that_fails_or_does_not_answer_is_said(
    native: NativeNotifier, package: Package
) -> None:
    package.fault = RuntimeError("the service is off")
    with pytest.raises(CannotRing, match="the service is off"):
        native.ring(WEIGH)
    package.fault = TimeoutError()
    with pytest.raises(CannotRing, match="does not answer"):
        native.ring(WEIGH)


@pytest.mark.skipif(sys.platform in {"win32", "darwin"}, reason="the package is there")
def test_where_the_package_is_missing_that_is_said() -> None:
    notifier = NativeNotifier()
    with pytest.raises(CannotRing, match="desktop_notifier"):
        notifier.ring(WEIGH)
    notifier.close()


class Screen(io.StringIO):
    """A terminal that somebody looks at."""

    @override
    def isatty(self) -> bool:
        return True


def test_the_bell_rings_and_writes_on_a_terminal() -> None:
    screen = Screen()
    bell = TerminalBell(lambda: screen)
    bell.ring(replace(WEIGH, body="At 18:00\nHurry\x1b[2J"))
    assert screen.getvalue() == "\aWeigh now\n  At 18:00\n  Hurry [2J\n"
    assert bell.pressed(1.0) == ()
    silent = Screen()
    TerminalBell(lambda: silent).ring(replace(WEIGH, sound=False))
    assert silent.getvalue().startswith("Weigh now")


def test_a_bell_that_nobody_hears_says_so() -> None:
    with pytest.raises(CannotRing, match="no terminal"):
        TerminalBell(io.StringIO).ring(WEIGH)

    class Full(Screen):
        @override
        def write(self, text: str, /) -> int:
            raise OSError(28, "No space left on device")

    with pytest.raises(CannotRing, match="No space left on device"):
        TerminalBell(Full).ring(WEIGH)


def test_each_system_has_its_own_means_and_a_terminal_its_bell() -> None:
    linux = notifiers_of("linux", {}, Screen)
    assert [type(one) for one in linux] == [FreedesktopNotifier, TerminalBell]
    for system in ("win32", "darwin"):
        (native,) = notifiers_of(system, {}, io.StringIO)
        assert isinstance(native, NativeNotifier)
