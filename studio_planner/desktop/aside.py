"""A process that nobody waits for goes behind what the maker does meanwhile."""

from __future__ import annotations

import os
import sys
from contextlib import suppress

_STEPS_BACK = 5
_MAY_SET, _BELOW_NORMAL = 0x0200, 0x4000
"""PROCESS_SET_INFORMATION and BELOW_NORMAL_PRIORITY_CLASS of the Windows API."""


def send_back(process: int) -> None:
    """Let the window, and all other programs, go before a process and all that it starts.

    The desk answers while plans are looked for, even where there are fewer cores than
    searches. A system that refuses is left as it is.
    """
    with suppress(OSError):
        if sys.platform == "win32":
            import ctypes  # noqa: PLC0415 - there only

            kernel = ctypes.windll.kernel32
            handle = kernel.OpenProcess(_MAY_SET, False, process)  # noqa: FBT003 - the API's own
            kernel.SetPriorityClass(handle, _BELOW_NORMAL)
            kernel.CloseHandle(handle)
        else:
            now = os.getpriority(os.PRIO_PROCESS, 0)
            os.setpriority(os.PRIO_PROCESS, process, now + _STEPS_BACK)
