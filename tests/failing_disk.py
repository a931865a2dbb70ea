"""A disk that takes no more, for as long as a test wants it so."""

from __future__ import annotations

import sys
from contextlib import contextmanager
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from collections.abc import Iterator

NEEDS_LIMITS = pytest.mark.skipif(sys.platform == "win32", reason="needs limits of a process")


@contextmanager
def no_room() -> Iterator[None]:
    """No byte can be written into any file of this process meanwhile."""
    from resource import RLIMIT_FSIZE, getrlimit, setrlimit  # noqa: PLC0415 - not on Windows

    before = getrlimit(RLIMIT_FSIZE)
    setrlimit(RLIMIT_FSIZE, (0, before[1]))
    try:
        yield
    finally:
        setrlimit(RLIMIT_FSIZE, before)
