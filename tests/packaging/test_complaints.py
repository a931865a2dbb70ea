"""Every failure of pip, Qt and the disk becomes one sentence that says what to do."""

from __future__ import annotations

import errno
from pathlib import Path

import pytest
from bootstrap.complaints import disk_sentence, pip_sentence, qt_sentence

NO_NETWORK = """\
WARNING: Retrying (Retry(total=4)) after connection broken by 'NewConnectionError('
<pip._vendor.urllib3.connection.HTTPSConnection object>: Failed to establish a new connection:
[Errno -3] Temporary failure in name resolution')': /simple/editables/
ERROR: Could not find a version that satisfies the requirement editables==0.6
ERROR: No matching distribution found for editables==0.6
"""
CHANGED = "ERROR: THESE PACKAGES DO NOT MATCH THE HASHES FROM THE REQUIREMENTS FILE."


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        (NO_NETWORK, "the network does not answer pip: connect it, or set HTTPS_PROXY"),
        ("OSError: [Errno 28] No space left on device", "The disk is full: free about 1 GB"),
        ("ERROR: [Errno 13] Permission denied: 'x'", "make this folder your own"),
        (CHANGED, "differs from the lock file and was not installed"),
        ("  note\nERROR: No matching distribution found for a==1\nhint: see", "for a==1"),
        ("", "it gave no reason"),
    ],
)
def test_pip_is_understood(text: str, sentence: str) -> None:
    assert sentence in pip_sentence(text)
    assert "\n" not in pip_sentence(text)


def test_the_library_that_qt_misses_is_named() -> None:
    loader = "ImportError: libXi.so.6: cannot open shared object file: No such file"
    assert "Qt needs the system library libXi.so.6" in qt_sentence(loader)


def test_anything_else_that_qt_says_is_passed_on() -> None:
    assert qt_sentence("first\nlast\n") == "Qt does not start on this machine: last"


def test_the_disk_tells_full_from_shut() -> None:
    root = Path("checkout")
    assert "The disk is full" in disk_sentence(root, OSError(errno.ENOSPC, "full"))
    shut = disk_sentence(root, OSError(errno.EROFS, "Read-only file system"))
    assert shut.startswith("The environment can't be made in checkout (Read-only file system)")
    assert "copy this folder to a place where you may write" in shut
    told = disk_sentence(root, OSError("a\nPermissionError: [Errno 13] Permission denied\n"))
    assert "copy this folder" in told
    assert "(Error: no room)" in disk_sentence(root, OSError("a\nError: no room\n"))


def test_a_disturbed_folder_is_not_taken_for_a_shut_one() -> None:
    error = OSError(errno.ENOTEMPTY, "Directory not empty")
    told = disk_sentence(Path("checkout"), error)
    assert "copy this folder" not in told
    assert told.endswith(
        "run the same command again; if that does not help, remove its .venv first."
    )
