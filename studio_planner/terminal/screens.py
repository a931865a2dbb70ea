"""Whether a window can open here: asked of the display itself, before anything of Qt is loaded.

Qt ends the whole process when the display that the environment names does not answer.
"""

from __future__ import annotations

import re
import socket
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

_X11_DISPLAY = re.compile(r"(?:(?P<protocol>\w+)/)?(?P<host>.*):(?P<number>\d{1,5})(?:\.\d+)?")
_X11_FOLDER = "/tmp/.X11-unix"  # noqa: S108 - where every X server keeps its sockets
_X11_PORT = 6000
_LAST_PORT = 65535
_SECONDS = 3.0
_OF_PLATFORM = {"xcb": ("DISPLAY",), "wayland": ("WAYLAND_DISPLAY",)}
_BOTH = ("WAYLAND_DISPLAY", "DISPLAY")


@dataclass(frozen=True, slots=True)
class Screen:
    """Whether a window can open; `silent` names the display that was set but does not answer.

    Examples
    --------
    >>> Screen(answers=False, silent="DISPLAY=:77").silent
    'DISPLAY=:77'
    """

    answers: bool
    silent: str = ""


def screen_of(system: str, environment: Mapping[str, str]) -> Screen:
    """Look for a screen; off Linux there always is one.

    A platform that Qt is told to use and that needs no display, such as "offscreen", counts.
    """
    if not system.startswith("linux"):
        return Screen(answers=True)
    platform = environment.get("QT_QPA_PLATFORM", "").partition(":")[0].partition(";")[0]
    wanted = next((v for k, v in _OF_PLATFORM.items() if platform.startswith(k)), _BOTH)
    if platform and wanted is _BOTH:
        return Screen(answers=True)
    named = {name: environment[name] for name in wanted if environment.get(name)}
    if any(_answers(name, value, environment) for name, value in named.items()):
        return Screen(answers=True)
    silent = " and ".join(f"{name}={value}" for name, value in named.items())
    return Screen(answers=False, silent=silent)


def _answers(name: str, value: str, environment: Mapping[str, str]) -> bool:
    if name == "DISPLAY":
        return _x11_answers(value)
    folder = environment.get("XDG_RUNTIME_DIR", "")
    path = Path(folder, value)  # an absolute name stands alone
    return path.is_absolute() and _socket_answers(str(path))


def _x11_answers(display: str) -> bool:
    if "/" in display and _socket_answers(display.removeprefix("unix:")):
        return True  # the name of a socket itself, as some servers hand it out
    found = _X11_DISPLAY.fullmatch(display)
    if found is None:
        return False
    host, number = found["host"], int(found["number"])
    if host in {"", "unix"} and any(map(_socket_answers, _x11_sockets(number))):
        return True
    return found["protocol"] != "unix" and _port_answers(host or "localhost", number)


def _x11_sockets(number: int) -> Iterator[str]:
    path = f"{_X11_FOLDER}/X{number}"
    yield from (path, f"\0{path}")  # Linux has a second, nameless place for it


def _socket_answers(path: str) -> bool:
    with suppress(OSError, ValueError):  # ValueError: a name too long for a socket
        with socket.socket(socket.AF_UNIX, socket.SOCK_STREAM) as line:
            line.settimeout(_SECONDS)
            line.connect(path)
        return True
    return False


def _port_answers(host: str, number: int) -> bool:
    if host == "unix" or _X11_PORT + number > _LAST_PORT:
        return False
    with suppress(OSError, UnicodeError):  # UnicodeError: no name of a machine
        socket.create_connection((host.strip("[]"), _X11_PORT + number), _SECONDS).close()
        return True
    return False
