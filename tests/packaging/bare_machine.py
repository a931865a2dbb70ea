"""A machine that exists in memory only, for the decisions of the bootstrap."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from bootstrap.machine import Answer

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from pathlib import Path


@dataclass(slots=True)
class BareMachine:
    """What it has is listed; what it is asked to run is kept in ``ran``, in order.

    ``answers`` maps a word of a command to how that command ends; the first match counts.
    ``brings`` maps a word of a command to the libraries and commands it adds.
    """

    system: str = "linux"
    python: str = "/usr/bin/python3 3.11.2"
    is_root: bool = False
    glibc: tuple[int, ...] | None = (2, 36)
    environment: dict[str, str] = field(default_factory=dict)
    modules: set[str] = field(default_factory=lambda: {"venv", "ensurepip"})
    commands: set[str] = field(default_factory=set)
    libraries: set[str] = field(default_factory=set)
    answers: dict[str, Answer] = field(default_factory=dict)
    brings: dict[str, set[str]] = field(default_factory=dict)
    ran: list[str] = field(default_factory=list)
    became: list[str] = field(default_factory=list)

    def has_module(self, name: str) -> bool:
        """Whether it is listed."""
        return name in self.modules

    def has_command(self, name: str) -> bool:
        """Whether it is listed."""
        return name in self.commands

    def has_library(self, name: str) -> bool:
        """Whether it is listed."""
        return name in self.libraries

    def ask(self, command: Sequence[str], extra: Mapping[str, str] | None = None) -> Answer:
        """Keep the command; end as `answers` says, else well."""
        del extra
        self.ran.append(" ".join(command))
        for word, answer in self.answers.items():
            if word in self.ran[-1]:
                return answer
        for word, names in self.brings.items():
            if word in self.ran[-1]:
                self.libraries |= names
                self.commands |= names
        return Answer(0)

    def show(self, command: Sequence[str], extra: Mapping[str, str] | None = None) -> Answer:
        """As `ask`."""
        return self.ask(command, extra)

    def become(self, command: Sequence[str], folder: Path | None = None) -> int:
        """Keep the command, and where it was started."""
        self.became = [*command, str(folder)]
        return 0
