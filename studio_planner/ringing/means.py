"""Which ways out there are on this system."""

from __future__ import annotations

from typing import TYPE_CHECKING, TextIO

from studio_planner.ringing.bell import TerminalBell
from studio_planner.ringing.freedesktop import FreedesktopNotifier
from studio_planner.ringing.native import NativeNotifier

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from studio_planner.services.ports import Notifier

_NATIVE = ("win32", "darwin")


def notifier_of(system: str, environment: Mapping[str, str]) -> Notifier:
    """The notifications of a system (as `sys.platform` names it), joined when first used."""
    return NativeNotifier() if system in _NATIVE else FreedesktopNotifier(environment)


def notifiers_of(
    system: str, environment: Mapping[str, str], stream: Callable[[], TextIO]
) -> tuple[Notifier, ...]:
    """Every means of a system outside the window, the best first.

    The terminal's bell is one only where somebody looks at a terminal.
    """
    seen = stream().isatty()
    bell = (TerminalBell(stream),) if seen else ()
    return (notifier_of(system, environment), *bell)
