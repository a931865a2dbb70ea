"""The system libraries that Qt needs on Linux: found, installed, or named in a sentence.

The Debian names were found by adding one package at a time to a bare Debian 13; those of
Fedora and Arch are from memory.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from bootstrap.machine import Trouble

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from bootstrap.machine import Machine

OLDEST_GLIBC = (2, 34)


@dataclass(frozen=True, slots=True)
class Library:
    """A shared library, and the packages that bring it: Debian's, Fedora's, Arch's."""

    name: str
    debian: str
    fedora: str
    arch: str


WINDOWS = (
    Library("libEGL.so.1", "libegl1", "libglvnd-egl", "libglvnd"),
    Library("libGL.so.1", "libgl1", "libglvnd-glx", "libglvnd"),
    Library("libxkbcommon.so.0", "libxkbcommon0", "libxkbcommon", "libxkbcommon"),
    Library("libdbus-1.so.3", "libdbus-1-3", "dbus-libs", "dbus"),
    Library(
        "libfontconfig.so.1",
        "libfontconfig1 fonts-dejavu-core",
        "fontconfig dejavu-sans-fonts",
        "fontconfig ttf-dejavu",
    ),
    # Newer Debians call it libglib2.0-0t64, which answers to the old name too.
    Library("libglib-2.0.so.0", "libglib2.0-0", "glib2", "glib2"),
    Library("libgssapi_krb5.so.2", "libgssapi-krb5-2", "krb5-libs", "krb5"),
)
SCREEN = (
    Library("libxcb-cursor.so.0", "libxcb-cursor0", "xcb-util-cursor", "xcb-util-cursor"),
    Library("libxcb-icccm.so.4", "libxcb-icccm4", "xcb-util-wm", "xcb-util-wm"),
    Library("libxcb-keysyms.so.1", "libxcb-keysyms1", "xcb-util-keysyms", "xcb-util-keysyms"),
    Library(
        "libxkbcommon-x11.so.0", "libxkbcommon-x11-0", "libxkbcommon-x11", "libxkbcommon-x11"
    ),
    Library("libxcb-shape.so.0", "libxcb-shape0", "libxcb", "libxcb"),
)


def provide(machine: Machine, libraries: Iterable[Library]) -> None:
    """Have every one of ``libraries``: install what is missing, or say how to.

    Raises
    ------
    Trouble
        Something is missing and could not be installed here; names the command.
    """
    if machine.system != "linux":
        return
    _require_glibc(machine)
    missing = [one for one in libraries if not machine.has_library(one.name)]
    if not missing:
        return
    if machine.is_root and machine.has_command("apt-get"):
        install(machine, words(one.debian for one in missing))
    still = [one for one in missing if not machine.has_library(one.name)]
    if still:
        raise Trouble(_sentence(machine, still))


def provide_virtual_screen(machine: Machine) -> None:
    """Have what the one test on a virtual screen needs, where it can be had unasked."""
    unasked = machine.system == "linux" and machine.is_root and machine.has_command("apt-get")
    missing = [one.debian for one in SCREEN if not machine.has_library(one.name)]
    if not machine.has_command("Xvfb"):
        missing.append("xvfb")
    if unasked and missing:
        install(machine, words(missing))


def install(machine: Machine, packages: Sequence[str]) -> None:
    """Install Debian ``packages`` as root; whether it worked is for the caller to look at."""
    print(f"Installing {' '.join(packages)} ...", flush=True)
    quietly = {"DEBIAN_FRONTEND": "noninteractive"}
    command = ["apt-get", "install", "-y", "--no-install-recommends", *packages]
    if machine.ask(command, quietly).code:  # on a fresh machine the lists are empty
        machine.ask(["apt-get", "update"], quietly)
        machine.ask(command, quietly)


def words(groups: Iterable[str]) -> list[str]:
    """Every word of ``groups`` once, in order."""
    return list(dict.fromkeys(word for group in groups for word in group.split()))


def _require_glibc(machine: Machine) -> None:
    found = machine.glibc
    if found is None or found < OLDEST_GLIBC:
        have = "another C library" if found is None else f"glibc {'.'.join(map(str, found))}"
        sentence = f"Qt needs a Linux with glibc 2.34 or newer and this one has {have}: use"
        raise Trouble(f"{sentence} Debian 12, Ubuntu 22.04 or anything newer.")


def _sentence(machine: Machine, missing: Sequence[Library]) -> str:
    names = ", ".join(one.name for one in missing)
    cure = _command(machine, missing)
    return f"Qt needs system libraries that are missing here ({names}): run {cure}"


def _command(machine: Machine, missing: Sequence[Library]) -> str:
    debian = " ".join(words(one.debian for one in missing))
    sudo = "" if machine.is_root else "sudo "
    if machine.has_command("apt-get"):
        return f"{sudo}apt-get update && {sudo}apt-get install -y {debian}"
    if machine.has_command("dnf"):
        return f"{sudo}dnf install -y {' '.join(words(one.fedora for one in missing))}"
    if machine.has_command("pacman"):
        return f"{sudo}pacman -S --needed {' '.join(words(one.arch for one in missing))}"
    return f"your system's package installer for what Debian calls {debian}"
