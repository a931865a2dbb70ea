"""A notification service on a bus of its own: it takes notices and presses their buttons."""

from __future__ import annotations

import subprocess
from contextlib import contextmanager
from dataclasses import dataclass, field
from queue import SimpleQueue
from threading import Event, Thread
from typing import TYPE_CHECKING, Any

from jeepney import (
    DBusAddress,
    HeaderFields,
    MessageType,
    new_error,
    new_method_return,
    new_signal,
)
from jeepney.bus_messages import message_bus
from jeepney.io.blocking import Proxy, open_dbus_connection

from studio_planner.ringing.freedesktop import NAME, PATH

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

_SECONDS = 10.0
_CONFIGURATION = """<!DOCTYPE busconfig PUBLIC
 "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <type>session</type>
  <listen>unix:path={socket}</listen>
  <policy context="default">
    <allow send_destination="*" eavesdrop="true"/>
    <allow eavesdrop="true"/>
    <allow own="*"/>
  </policy>
</busconfig>
"""


@contextmanager
def private_bus(folder: Path) -> Iterator[str]:
    """A message bus that nobody else knows; gives its address."""
    socket = folder / "bus"
    configuration = folder / "bus.conf"
    configuration.write_text(_CONFIGURATION.format(socket=socket), encoding="utf-8")
    command = ["dbus-daemon", f"--config-file={configuration}", "--nofork", "--print-address"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as daemon:  # noqa: S603 - ours
        try:
            assert daemon.stdout is not None
            yield daemon.stdout.readline().strip()
        finally:
            daemon.terminate()


@dataclass
class Shown:
    """A notice as the service was asked to show it."""

    number: int
    replaces: int
    title: str
    body: str
    actions: list[str]
    hints: dict[str, Any]
    lasts: int


@dataclass
class NoticeServer:
    """Takes notices in a thread of its own until it is told to stop."""

    address: str
    capabilities: list[str] = field(default_factory=lambda: ["actions", "body"])
    refuses: bool = False
    shown: SimpleQueue[Shown] = field(default_factory=SimpleQueue)

    def __post_init__(self) -> None:
        self._last = 0
        self._connection = open_dbus_connection(self.address)
        Proxy(message_bus, self._connection, timeout=_SECONDS).RequestName(NAME)
        self._over = Event()
        self._thread = Thread(target=self._serve, daemon=True)
        self._thread.start()

    def press(self, number: int, action: str) -> None:
        """Say that a button was pressed, as a service does, from a connection of its own."""
        emitter = DBusAddress(PATH, interface=NAME)
        signal = new_signal(emitter, "ActionInvoked", "us", (number, action))
        self._connection.send(signal)

    def stop(self) -> None:
        self._over.set()
        self._thread.join(_SECONDS)
        self._connection.close()

    def _serve(self) -> None:
        while not self._over.is_set():
            try:
                message = self._connection.receive(timeout=0.05)
            except TimeoutError:
                continue
            if message.header.message_type is MessageType.method_call:
                self._connection.send(self._answer(message))

    def _answer(self, message: Any) -> Any:  # noqa: ANN401 - the package has no types
        if self.refuses:
            return new_error(message, f"{NAME}.Error", "s", ("no room on the screen",))
        if message.header.fields[HeaderFields.member] == "GetCapabilities":
            return new_method_return(message, "as", (self.capabilities,))
        _, replaces, _, title, body, actions, hints, lasts = message.body
        self._last += 1
        number = replaces or self._last
        plain = {name: value for name, (_, value) in hints.items()}
        self.shown.put(Shown(number, replaces, title, body, actions, plain, lasts))
        return new_method_return(message, "u", (number,))


@contextmanager
def notice_server(address: str, **more: Any) -> Iterator[NoticeServer]:  # noqa: ANN401 - fields
    server = NoticeServer(address, **more)
    try:
        yield server
    finally:
        server.stop()
