"""Notices through the notification service of the desktop, as on Linux.

Desktop Notifications Specification 1.2 (freedesktop.org): Notify, GetCapabilities, and the
signals ActionInvoked and NotificationClosed of org.freedesktop.Notifications.
"""

from __future__ import annotations

from collections import deque
from html import escape
from typing import TYPE_CHECKING, Any

from studio_planner.craft.reminders import Means
from studio_planner.craft.tongue import translate
from studio_planner.services.ports import CannotRing, Notice, Pressed
from studio_planner.services.reminding.notices import OPEN

if TYPE_CHECKING:
    from collections.abc import Mapping

NAME = "org.freedesktop.Notifications"
PATH = "/org/freedesktop/Notifications"
APPLICATION = "studio-planner"

_SECONDS = 5.0
_MOST_SIGNALS = 200
_MOST_SHOWN = 500
_DEFAULT_ACTION = "default"
_NORMAL, _CRITICAL = 1, 2
_SERVER_DECIDES, _NEVER = -1, 0


class FreedesktopNotifier:
    """Shows notices in the desktop's own way and hears which button was pressed.

    The bus is joined when it is first needed, and again when it was lost. Not to be used by
    two threads at once.
    """

    means = Means.NOTIFICATION.value

    def __init__(self, environment: Mapping[str, str]) -> None:
        """Find the bus by the variables of the session."""
        self._environment = environment
        self._bus: _Bus | None = None
        self._shown: dict[int, str] = {}

    def ring(self, notice: Notice) -> None:
        """Show a notice, in place of one of the same key; CannotRing when nobody takes it."""
        try:
            number = self._joined().notify(notice, self._replaced(notice.key))
        except Exception as error:
            self._leave()
            raise CannotRing(_sentence(error)) from error
        self._shown[number] = notice.key
        for old in list(self._shown)[:-_MOST_SHOWN]:
            del self._shown[old]

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:
        """The buttons pressed since the last call; waits for the first up to so long."""
        if self._bus is None or not self._shown:
            return ()
        try:
            signals = self._bus.signals(seconds)
        except Exception:  # noqa: BLE001 - the bus is gone: nothing can be pressed any more
            self._leave()
            return ()
        found = (self._answer(number, action) for number, action in signals)
        return tuple(answer for answer in found if answer is not None)

    def _answer(self, number: int, action: str) -> Pressed | None:
        key = self._shown.get(number)
        if key is None:  # somebody else's notice
            return None
        return Pressed(key, OPEN if action == _DEFAULT_ACTION else action)

    def _replaced(self, key: str) -> int:
        """The number of the notice of that key that is there already; 0 for none."""
        return next((number for number, shown in self._shown.items() if shown == key), 0)

    def _joined(self) -> _Bus:
        if self._bus is None:
            self._bus = _Bus(_address(self._environment))
        return self._bus

    def _leave(self) -> None:
        if self._bus is not None:
            self._bus.close()
        self._bus = None
        self._shown.clear()


class _NoBusError(Exception):
    """The session has no message bus."""


class _RefusedError(Exception):
    """The other side answered with an error."""


class _Bus:
    """A connection to the session's bus."""

    def __init__(self, address: str) -> None:
        from jeepney import DBusAddress  # noqa: PLC0415 - only where there is a bus
        from jeepney.io.blocking import open_dbus_connection  # noqa: PLC0415

        self._connection = open_dbus_connection(address, auth_timeout=_SECONDS)
        self._service = DBusAddress(PATH, bus_name=NAME, interface=NAME)
        self._signals: deque[Any] = deque(maxlen=_MOST_SIGNALS)
        try:
            self._listen()
            self._can = frozenset(self._call("GetCapabilities")[0])
        except BaseException:
            self._connection.close()
            raise

    def _listen(self) -> None:
        from jeepney import MatchRule  # noqa: PLC0415 - as above
        from jeepney.bus_messages import message_bus  # noqa: PLC0415
        from jeepney.io.blocking import Proxy  # noqa: PLC0415

        rule = MatchRule(type="signal", interface=NAME, path=PATH, member="ActionInvoked")
        Proxy(message_bus, self._connection, timeout=_SECONDS).AddMatch(rule)
        self._connection.filter(rule, queue=self._signals)

    def notify(self, notice: Notice, replaces: int) -> int:
        """Show a notice and give its number."""
        actions = []
        if "actions" in self._can:
            actions = [_DEFAULT_ACTION, translate("reminders", "Open")]
            actions += [part for b in notice.buttons for part in (b.key, b.words)]
        body = escape(notice.body, quote=False) if "body-markup" in self._can else notice.body
        hints: dict[str, tuple[str, Any]] = {
            "urgency": ("y", _CRITICAL if notice.strong else _NORMAL),
            "desktop-entry": ("s", APPLICATION),
        }
        if notice.sound:
            hints["sound-name"] = ("s", "alarm-clock-elapsed" if notice.strong else "message")
        else:
            hints["suppress-sound"] = ("b", True)
        lasts = _NEVER if notice.strong else _SERVER_DECIDES
        words = (APPLICATION, replaces, "", notice.title, body, actions, hints, lasts)
        return int(self._call("Notify", "susssasa{sv}i", words)[0])

    def signals(self, seconds: float) -> list[tuple[int, str]]:
        """The buttons pressed so far: the notice's number, and the action."""
        found: list[tuple[int, str]] = []
        wait = seconds
        while True:
            try:
                message = self._connection.recv_until_filtered(self._signals, timeout=wait)
            except TimeoutError:
                return found
            number, action = message.body
            found.append((int(number), str(action)))
            wait = 0.0

    def close(self) -> None:
        """Leave the bus."""
        self._connection.close()

    def _call(self, method: str, signature: str = "", body: tuple[Any, ...] = ()) -> Any:  # noqa: ANN401
        from jeepney import MessageType, new_method_call  # noqa: PLC0415 - as above

        message = new_method_call(self._service, method, signature, body)
        reply = self._connection.send_and_get_reply(message, timeout=_SECONDS)
        if reply.header.message_type is MessageType.error:
            raise _RefusedError(str(reply.body[0]) if reply.body else "")
        return reply.body


def _address(environment: Mapping[str, str]) -> str:
    address = environment.get("DBUS_SESSION_BUS_ADDRESS", "")
    folder = environment.get("XDG_RUNTIME_DIR", "")
    if address or folder:
        return address or f"unix:path={folder}/bus"  # where a session's own services find it
    raise _NoBusError


def _sentence(error: Exception) -> str:
    if isinstance(error, ImportError):
        return translate(
            "ringing",
            "No notification could be shown: the package jeepney is missing; install the "
            "program again.",
        )
    if isinstance(error, _NoBusError | FileNotFoundError | ConnectionError):
        return translate(
            "ringing",
            "No notification could be shown: this session has no message bus; open the window "
            "instead.",
        )
    if isinstance(error, TimeoutError):
        return translate(
            "ringing",
            "No notification could be shown: the desktop's notification service does not "
            "answer.",
        )
    if isinstance(error, _RefusedError):
        return translate(
            "ringing",
            "No notification could be shown: the desktop has no notification service, or it "
            "refuses: {error}",
        ).format(error=error)
    return translate("ringing", "No notification could be shown: {error}.").format(error=error)
