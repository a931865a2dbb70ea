"""What the planning process says, line by line, and what the maker gets to hear of it."""

from __future__ import annotations

from studio_planner.desktop.tongue import translate

_STEP = '{"progress"'


class PlanningWords:
    """Everything a planning process has written so far.

    A line with the key "progress" tells of a better plan; the rest is its answer.
    """

    def __init__(self) -> None:
        """Nothing has been said yet."""
        self._begun = ""
        self._rest: list[str] = []
        self.kept = False

    def take(self, text: str) -> list[str]:
        """Take more text, in whole lines or not; gives one line of words per better plan."""
        *lines, self._begun = (self._begun + text).split("\n")
        found = []
        for line in lines:
            words = self._step_words(line) if line.startswith(_STEP) else None
            if words is None:
                self._rest.append(line)
            else:
                found.append(words)
        return found

    def _step_words(self, line: str) -> str | None:
        found = _json(line)
        step = found.get("progress") if isinstance(found, dict) else None
        if not isinstance(step, dict):
            return None
        self.kept = self.kept or step.get("kept") is True
        return str(step.get("words", ""))

    @property
    def rest(self) -> str:
        """What was written beside the better plans."""
        return "\n".join([*self._rest, self._begun])

    def planned(self, code: int) -> bool:
        """Whether a process that ended with that code has kept a plan, if only of some."""
        if code != 1:
            return code == 0
        found = _json(self.rest)
        return isinstance(found, dict) and found.get("kept") is True


def reason_of(said: str, wrong: str) -> str:
    """What the planner said, its reasons or the error; its traces are not for the maker."""
    reasons = _reasons_in(said)
    if reasons:
        return " ".join(reasons)
    lines = [line for line in wrong.splitlines() if line.strip()]
    if lines and not wrong.startswith("Traceback"):
        return lines[-1].strip()
    return translate("planning", "Planning stopped unexpectedly; the plan was left as it is.")


def _reasons_in(said: str) -> list[str]:
    found = _json(said)
    if found is None:
        return [line.strip() for line in said.splitlines() if line.strip()][:3]
    reasons = found.get("reasons", []) if isinstance(found, dict) else []
    return [str(reason) for reason in reasons]


def _json(said: str) -> object:
    from json import JSONDecodeError, loads  # noqa: PLC0415 - only once something was planned

    try:
        return loads(said)
    except JSONDecodeError:
        return None


def text_of(data: object) -> str:
    """The text that came from a process."""
    return (
        bytes(data).decode("utf-8", "replace")
        if isinstance(data, bytes | bytearray | memoryview)
        else ""
    )
