"""One tap on a mix at a time, also where two windows are at the same scale."""

from __future__ import annotations

from functools import wraps
from typing import TYPE_CHECKING, Concatenate, ParamSpec, Protocol, TypeVar

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.services.mix_run.kept_file import KeptMix


class AloneWork(Protocol):
    """Work on a mix: the file that keeps it, whether it is being done, and what went wrong."""

    kept: Callable[[], KeptMix | None]
    at_work: bool
    trouble: str


_Work = TypeVar("_Work", bound=AloneWork)
_Given = ParamSpec("_Given")
_Done = TypeVar("_Done")


def alone(
    does: Callable[Concatenate[_Work, _Given], _Done],
) -> Callable[Concatenate[_Work, _Given], _Done]:
    """Let a method look at the mix, keep it and tell the log before another window may.

    What went wrong before is forgotten. What it calls of its own kind belongs to it.
    """

    @wraps(does)
    def done_alone(work: _Work, /, *args: _Given.args, **more: _Given.kwargs) -> _Done:
        kept = work.kept()
        if work.at_work:
            return does(work, *args, **more)
        work.at_work, work.trouble = True, ""
        try:
            if kept is None:
                return does(work, *args, **more)
            with kept.alone():
                return does(work, *args, **more)
        finally:
            work.at_work = False

    return done_alone
