from __future__ import annotations

import os
import socket
import subprocess
import sys
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from studio_planner import assembly
from studio_planner.terminal import screens
from studio_planner.terminal.screens import Screen, screen_of

if TYPE_CHECKING:
    from collections.abc import Iterator

ROOT = Path(__file__).resolve().parents[2]
YES = Screen(answers=True)
UNIX_ONLY = pytest.mark.skipif(sys.platform == "win32", reason="sockets that are files")


@contextmanager
def listening(path: str) -> Iterator[None]:
    """Something that answers at a socket of the file system."""
    with socket.socket(socket.AF_UNIX) as server:
        server.bind(path)
        server.listen()
        yield


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Where an X server keeps its sockets, for one test."""
    monkeypatch.setattr(screens, "_X11_FOLDER", str(tmp_path))
    return tmp_path


@pytest.mark.parametrize(
    ("system", "environment"),
    [
        ("darwin", {}),
        ("win32", {"DISPLAY": ":77"}),
        ("linux", {"QT_QPA_PLATFORM": "offscreen"}),
        ("linux", {"QT_QPA_PLATFORM": "vnc:size=800x600", "DISPLAY": ":77"}),
    ],
)
def test_where_no_display_is_needed_a_window_can_open(
    system: str, environment: dict[str, str]
) -> None:
    assert screen_of(system, environment) == YES


@pytest.mark.parametrize(
    "environment", [{}, {"DISPLAY": ""}, {"QT_QPA_PLATFORM": "xcb"}, {"XDG_RUNTIME_DIR": "/x"}]
)
def test_where_nothing_names_a_display_there_is_none(environment: dict[str, str]) -> None:
    assert screen_of("linux", environment) == Screen(answers=False)


@UNIX_ONLY
@pytest.mark.parametrize(
    "display",
    [
        ":4", ":4.0", "unix:4", "localhost:59000", "nowhere.invalid:4", "[::1]:59999", "four",
        "x" * 300 + ":4", ".." * 40 + ":4", "/no/such/socket", ":",
    ],
)  # fmt: skip
def test_a_display_without_a_server_does_not_answer(folder: Path, display: str) -> None:
    del folder
    found = screen_of("linux", {"DISPLAY": display})
    assert found == Screen(answers=False, silent=f"DISPLAY={display}")


@UNIX_ONLY
@pytest.mark.parametrize("display", [":4", ":4.0", "unix:4", "unix/:4"])
def test_a_display_is_asked_at_its_socket(folder: Path, display: str) -> None:
    with listening(str(folder / "X4")):
        assert screen_of("linux", {"DISPLAY": display}) == YES
    assert not screen_of("linux", {"DISPLAY": display}).answers  # the socket was left behind


def test_a_display_of_another_machine_is_asked_at_its_port(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    with socket.create_server(("127.0.0.1", 0)) as server:
        monkeypatch.setattr(screens, "_X11_PORT", server.getsockname()[1] - 4)
        monkeypatch.setattr(screens, "_LAST_PORT", 2**17)
        assert screen_of("linux", {"DISPLAY": "127.0.0.1:4"}) == YES


@UNIX_ONLY
def test_a_wayland_display_is_asked_at_its_socket(tmp_path: Path) -> None:
    named = {"WAYLAND_DISPLAY": "wayland-7", "XDG_RUNTIME_DIR": str(tmp_path)}
    whole = {"WAYLAND_DISPLAY": str(tmp_path / "wayland-7")}
    silent = Screen(answers=False, silent="WAYLAND_DISPLAY=wayland-7")
    assert screen_of("linux", named) == silent
    with listening(str(tmp_path / "wayland-7")):
        assert screen_of("linux", named) == screen_of("linux", whole) == YES
        assert screen_of("linux", named | {"QT_QPA_PLATFORM": "wayland-egl"}) == YES
        assert not screen_of("linux", named | {"QT_QPA_PLATFORM": "xcb"}).answers
    assert screen_of("linux", {"WAYLAND_DISPLAY": "wayland-7"}) == silent  # nowhere to look


@UNIX_ONLY
def test_two_displays_that_do_not_answer_are_both_named(folder: Path) -> None:
    both = {"DISPLAY": ":4", "WAYLAND_DISPLAY": "w", "XDG_RUNTIME_DIR": str(folder)}
    assert screen_of("linux", both).silent == "WAYLAND_DISPLAY=w and DISPLAY=:4"
    with listening(str(folder / "X4")):
        assert screen_of("linux", both) == YES


def test_the_screen_of_this_process_is_the_one_in_its_environment(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    assert assembly.this_screen() == YES


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="displays of Linux")
def test_the_program_does_not_abort_on_a_display_that_does_not_answer(sample: Path) -> None:
    environment = {**os.environ, "DISPLAY": "nowhere.invalid:77"}
    for name in ("WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        environment.pop(name, None)
    done = subprocess.run(  # noqa: S603 - our own program
        [sys.executable, "-m", "studio_planner", str(sample)],
        capture_output=True, text=True, check=False, env=environment, cwd=ROOT,
    )  # fmt: skip
    assert (done.returncode, done.stdout) == (2, "")
    assert "nowhere.invalid:77 does not answer" in done.stderr
    assert done.stderr.count("\n") == 1
