"""Missing system libraries are installed by root on Debian, and otherwise named."""

from __future__ import annotations

import pytest
from bootstrap.libraries import SCREEN, WINDOWS, provide, provide_virtual_screen
from bootstrap.machine import Answer, Trouble

from tests.packaging.bare_machine import BareMachine

ALL = {library.name for library in WINDOWS + SCREEN}
INSTALL = "apt-get install -y --no-install-recommends"


@pytest.mark.parametrize("system", ["darwin", "win32"])
def test_only_linux_lacks_any(system: str) -> None:
    provide(BareMachine(system=system, glibc=None), WINDOWS)


def test_nothing_is_done_where_nothing_is_missing() -> None:
    machine = BareMachine(libraries=ALL, is_root=True, commands={"apt-get"})
    provide(machine, WINDOWS + SCREEN)
    assert machine.ran == []


def test_root_on_debian_installs_just_what_is_missing() -> None:
    machine = BareMachine(
        libraries=ALL - {"libEGL.so.1", "libfontconfig.so.1"},
        is_root=True,
        commands={"apt-get"},
        brings={INSTALL: {"libEGL.so.1", "libfontconfig.so.1"}},
    )
    provide(machine, WINDOWS)
    assert machine.ran == [f"{INSTALL} libegl1 libfontconfig1 fonts-dejavu-core"]


def test_a_fresh_machine_reads_its_lists_first() -> None:
    machine = BareMachine(
        is_root=True, commands={"apt-get"}, answers={INSTALL: Answer(100, "no such package")}
    )
    with pytest.raises(Trouble):
        provide(machine, WINDOWS)
    assert [line.split()[1] for line in machine.ran] == ["install", "update", "install"]


@pytest.mark.parametrize(
    ("command", "is_root", "cure"),
    [
        ("apt-get", False, "run sudo apt-get update && sudo apt-get install -y libegl1 libgl1"),
        ("apt-get", True, "run apt-get update && apt-get install -y libegl1 libgl1"),
        ("dnf", False, "run sudo dnf install -y libglvnd-egl libglvnd-glx"),
        ("pacman", False, "run sudo pacman -S --needed libglvnd"),
        ("zypper", False, "what Debian calls libegl1 libgl1"),
    ],
)
def test_what_is_missing_is_named_with_the_command(
    command: str, is_root: bool, cure: str
) -> None:
    machine = BareMachine(
        libraries=ALL - {"libEGL.so.1", "libGL.so.1"}, is_root=is_root, commands={command}
    )
    with pytest.raises(Trouble) as trouble:
        provide(machine, WINDOWS)
    sentence = str(trouble.value)
    assert sentence.startswith("Qt needs system libraries that are missing here (libEGL.so.1, ")
    assert sentence.endswith(cure)


@pytest.mark.parametrize(
    ("glibc", "have"), [((2, 31), "glibc 2.31"), (None, "another C library")]
)
def test_a_linux_too_old_for_qt_is_told(glibc: tuple[int, ...] | None, have: str) -> None:
    with pytest.raises(Trouble, match=f"this one has {have}: use Debian 12"):
        provide(BareMachine(glibc=glibc), WINDOWS)


def test_a_virtual_screen_is_installed_by_root_only() -> None:
    root = BareMachine(libraries=ALL, is_root=True, commands={"apt-get"})
    provide_virtual_screen(root)
    assert root.ran == [f"{INSTALL} xvfb"]
    other = BareMachine(commands={"apt-get"})
    provide_virtual_screen(other)
    assert other.ran == []


def test_a_virtual_screen_that_is_there_is_taken() -> None:
    machine = BareMachine(libraries=ALL, is_root=True, commands={"apt-get", "Xvfb"})
    provide_virtual_screen(machine)
    assert machine.ran == []
