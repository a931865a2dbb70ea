"""What pip, Qt and the disk complain about, told again in one sentence."""

from __future__ import annotations

import errno
import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pathlib import Path

AGAIN = "then run the same command again."
AGAIN_THERE = "and run the same command there."

_NOT_OURS = {errno.EACCES, errno.EPERM, errno.EROFS}

_NETWORK = re.compile(
    r"NewConnectionError|NameResolutionError|ConnectTimeout|ReadTimeout|Read timed out"
    r"|ProxyError|SSLError|Max retries exceeded|Connection (?:refused|reset|aborted|broken)"
    r"|Temporary failure in name resolution|getaddrinfo|Network is unreachable"
)
_FULL = re.compile(r"No space left on device|Errno 28|not enough space", re.IGNORECASE)
_SHUT = re.compile(r"Permission denied|Read-only file system|Access is denied", re.IGNORECASE)
_CHANGED = re.compile(r"DO NOT MATCH THE HASHES")
_ERROR = re.compile(r"(?:ERROR|\w*Error): ")
_LIBRARY = re.compile(r"(lib[\w.+-]+\.so[\w.]*): cannot open shared object file")


def pip_sentence(text: str) -> str:
    """Why pip gave up, and what to do, from all that it complained about."""
    if _FULL.search(text):
        return f"The disk is full: free about 1 GB (df -h . shows the room left), {AGAIN}"
    if _SHUT.search(text):
        return f"pip may not write into .venv: make this folder your own (ls -ld .), {AGAIN}"
    if _CHANGED.search(text):
        return (
            "A fetched package differs from the lock file and was not installed: empty pip's"
            f" cache with python3 -m pip cache purge, {AGAIN}"
        )
    if _NETWORK.search(text):
        return (
            "The packages can't be fetched, the network does not answer pip: connect it, or set"
            f" HTTPS_PROXY to your proxy or PIP_INDEX_URL to your mirror, {AGAIN}"
        )
    return f"pip could not install the packages: {_last_line(text)}"


def qt_sentence(text: str) -> str:
    """Why Qt does not start, from what the loader or Qt printed."""
    library = _LIBRARY.search(text)
    if library:
        return (
            f"Qt needs the system library {library[1]}, which is missing here: install the"
            f" package that holds it (apt-file search {library[1]} names it), {AGAIN}"
        )
    return f"Qt does not start on this machine: {_last_line(text)}"


def disk_sentence(root: Path, error: OSError) -> str:
    """Why the checkout can't be written to."""
    if error.errno == errno.ENOSPC or _FULL.search(str(error)):
        return pip_sentence("No space left on device")
    reason = error.strerror or _last_line(str(error))
    begun = f"The environment can't be made in {root} ({reason}):"
    if error.errno in _NOT_OURS or _SHUT.search(reason):
        return f"{begun} copy this folder to a place where you may write, {AGAIN_THERE}"
    return f"{begun} run the same command again; if that does not help, remove its .venv first."


def _last_line(text: str) -> str:
    lines = [line.strip() for line in text.splitlines() if line.strip()]
    errors = [line for line in lines if _ERROR.match(line)]
    return (errors or lines or ["it gave no reason"])[-1]
