"""Notices through the system's own service on Windows and macOS.

The service calls back from a loop of its own, which runs in a thread beside the program. On
macOS it serves only programs that are signed; whoever is refused is told so.
"""

from __future__ import annotations

import asyncio
from concurrent.futures import TimeoutError as TookTooLong
from queue import Empty, SimpleQueue
from threading import Thread
from typing import TYPE_CHECKING, Any

from studio_planner.craft.reminders import Means
from studio_planner.craft.tongue import translate
from studio_planner.services.ports import CannotRing, Notice, Pressed
from studio_planner.services.reminding.notices import OPEN

if TYPE_CHECKING:
    from collections.abc import Callable, Coroutine

APPLICATION = "Studio planner"
_SECONDS = 8.0


class NativeNotifier:
    """Shows notices in the system's own way and hears which button was pressed."""

    means = Means.NOTIFICATION.value

    def __init__(self, package: Callable[[], Any] | None = None) -> None:
        """Take the notifying package when it is first needed; `package` gives another one."""
        self._package = package or _desktop_notifier
        self._pressed: SimpleQueue[Pressed] = SimpleQueue()
        self._loop: asyncio.AbstractEventLoop | None = None
        self._thread: Thread | None = None
        self._service: Any = None
        self._shown: dict[str, Any] = {}

    def ring(self, notice: Notice) -> None:
        """Show a notice, in place of one of the same key; CannotRing when it is refused."""
        try:
            self._in_loop(self._show(notice))
        except TookTooLong as error:
            raise CannotRing(
                translate(
                    "ringing",
                    "No notification could be shown: the system's notification service does "
                    "not answer.",
                )
            ) from error
        except _RefusedError as error:
            raise CannotRing(
                translate(
                    "ringing",
                    "No notification could be shown: the system does not allow it; allow "
                    "notifications of this program in the system's settings.",
                )
            ) from error
        except Exception as error:
            raise CannotRing(
                translate("ringing", "No notification could be shown: {error}.").format(
                    error=error
                )
            ) from error

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:
        """The buttons pressed since the last call; waits for the first up to so long."""
        found: list[Pressed] = []
        wait = seconds if self._shown else 0.0
        while True:
            try:
                found.append(self._pressed.get(block=wait > 0.0, timeout=wait or None))
            except Empty:
                return tuple(found)
            wait = 0.0

    async def _show(self, notice: Notice) -> None:
        package = self._package()
        if self._service is None:
            service = package.DesktopNotifier(app_name=APPLICATION)
            if not await service.request_authorisation():
                raise _RefusedError
            self._service = service
        before = self._shown.get(notice.key)
        if before is not None:
            await self._service.clear(before)
        urgency = package.Urgency.Critical if notice.strong else package.Urgency.Normal
        self._shown[notice.key] = await self._service.send(
            title=notice.title,
            message=notice.body,
            urgency=urgency,
            buttons=[
                package.Button(title=one.words, on_pressed=self._noting(notice.key, one.key))
                for one in notice.buttons
            ],
            on_clicked=self._noting(notice.key, OPEN),
            sound=package.DEFAULT_SOUND if notice.sound else None,
        )

    def _noting(self, notice: str, button: str) -> Callable[[], None]:
        return lambda: self._pressed.put(Pressed(notice, button))

    def _in_loop(self, doing: Coroutine[Any, Any, None]) -> None:
        if self._loop is None:
            self._loop = asyncio.new_event_loop()
            self._thread = Thread(target=_run, args=(self._loop,), name="notices", daemon=True)
            self._thread.start()
        asyncio.run_coroutine_threadsafe(doing, self._loop).result(_SECONDS)

    def close(self) -> None:
        """End the loop."""
        if self._loop is not None and self._thread is not None:
            self._loop.call_soon_threadsafe(self._loop.stop)
            self._thread.join(_SECONDS)
            self._loop = self._thread = None


def _run(loop: asyncio.AbstractEventLoop) -> None:
    loop.run_forever()
    loop.close()


class _RefusedError(Exception):
    """The maker, or the system, allows no notifications."""


def _desktop_notifier() -> Any:  # noqa: ANN401 - a module
    import desktop_notifier  # noqa: PLC0415 - only on the systems that need it

    return desktop_notifier
