from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from typing_extensions import override

from studio_planner.craft.reminders import Means, Reminding, sign_of
from studio_planner.ringing.carrying import Ran
from studio_planner.ringing.scheduling import Around, Systemd
from studio_planner.services.ports import Notifier, Pressed
from studio_planner.services.reminding.notices import DONE, OPEN
from studio_planner.storage.studio_file import create_studio, open_studio
from studio_planner.terminal import remind_command
from studio_planner.terminal.entry import run
from studio_planner.terminal.surroundings import Surroundings
from tests.desktop.scenes import at
from tests.services.questions.steady import steady_studio
from tests.services.reminding.kept import SILENT, Bell
from tests.services.small_studios import StoppedClock
from tests.terminal.conftest import Answer

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path

    from tests.terminal.conftest import Terminal

SEAL = "weigh-now/c/seal"


class Reminded:
    """Runs remind at a moment, with means and a scheduler that note what they are asked."""

    def __init__(self, capsys: pytest.CaptureFixture[str], folder: Path) -> None:
        self._capsys = capsys
        self.file = folder / "steady.studio"
        create_studio(self.file, steady_studio()).close()
        self.home = folder / "home"
        self.now = at(0, "20:00")
        self.bells: tuple[Notifier, ...] = (Bell(), Bell("sound"))
        self.ran: list[tuple[str, ...]] = []
        self.opened: list[Path] = []

    def __call__(self, *words: str | Path) -> Answer:
        around = Surroundings(
            clock=StoppedClock(self.now),
            screen=lambda: pytest.fail("no screen is needed"),
            data_folder=lambda: self.home,
            open_desk=self._open,
            notifiers=lambda: self.bells,
            scheduler=lambda: Systemd(
                Around(home=self.home, environment={}, user=1, program=("planner",)),
                self._run,
            ),
        )
        code = run(["remind", str(self.file), *map(str, words)], around)
        printed = self._capsys.readouterr()
        return Answer(code, printed.out, printed.err)

    def _run(self, command: Sequence[str]) -> Ran:
        self.ran.append(tuple(command))
        return Ran(0, "")

    def _open(self, path: Path) -> int:
        self.opened.append(path)
        return 7


@pytest.fixture
def remind(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> Reminded:
    return Reminded(capsys, tmp_path)


def listed(answer: Answer) -> list[str]:
    return [row["uid"] for row in answer.json["due"]]


def test_what_is_due_is_told_once_and_listed_until_it_is_done(remind: Reminded) -> None:
    first = remind()
    assert first.code == 0
    assert "Told by notification: Weigh now: Slate coasters, seal" in first.out
    assert sign_of(SEAL) in first.out
    again = remind()
    assert "Told by" not in again.out
    assert "Slate coasters" in again.out
    done = remind("--done", SEAL)
    assert done.out == "Off the list: Weigh now, Slate coasters, seal.\n"
    assert SEAL not in listed(remind("--json"))


def test_json_has_every_fact_of_what_is_due(remind: Reminded) -> None:
    found = remind("--json").json
    assert found["at"] == "2026-12-08T20:00:00+01:00"
    row = next(one for one in found["due"] if one["uid"] == SEAL)
    assert row == {
        "uid": SEAL,
        "sign": sign_of(SEAL),
        "kind": "weigh now",
        "what": "Weigh now",
        "about": "Slate coasters, seal",
        "urgency": "can wait",
        "due": "2026-12-08T20:00:00+01:00",
        "meant": "2026-12-08T20:00:00+01:00",
        "moment": "2026-12-08T20:10:00+01:00",
        "saved_until": None,
        "can_be_saved": True,
        "state": "due",
        "came_due": "2026-12-08T20:00:00+01:00",
        "late": False,
        "rings_at": None,
    }
    assert found["next"]["uid"] == "weigh-now/f/prime"
    assert {told["means"] for told in found["told"]} == {"notification", "sound"}
    assert all(told["failure"] is None for told in found["told"])


def test_when_nothing_is_due_the_next_is_named(remind: Reminded) -> None:
    remind.now = at(0, "08:00")
    answer = remind()
    assert answer.out.startswith("Nothing is due at Tue 8 Dec 08:00.\nNext: Weigh now, ")
    assert remind("--json").json["due"] == []


def test_what_was_not_done_after_all_is_put_back_and_what_never_came_due_is_not(
    remind: Reminded,
) -> None:
    remind()
    remind("--done", sign_of(SEAL))
    assert remind("--undone", sign_of(SEAL)).out.startswith("On the list: Weigh now, Slate")
    assert SEAL in [row["uid"] for row in remind("--json").json["due"]]
    ahead = remind("--undone", "weigh-now/f/prime").out
    assert ahead.startswith("Not on the list: Weigh now")


def test_it_is_put_off_by_its_sign_and_told_again_then(remind: Reminded) -> None:
    remind()
    put_off = remind("--snooze", sign_of(SEAL))
    assert put_off.out == "Told again Tue 8 Dec 20:10: Weigh now, Slate coasters, seal.\n"
    assert "again Tue 20:10" in remind().out
    remind.now = at(0, "20:10")
    assert "Told by notification" in remind().out


def test_what_cannot_be_put_off_says_why(remind: Reminded) -> None:
    remind()
    early = remind("--snooze", "weigh-now/f/prime")
    assert (early.code, early.one_sentence) == (
        2,
        "weigh-now/f/prime is not due, so it cannot be put off.",
    )
    remind.now = at(1, "22:04")
    remind()
    last = remind("--snooze", "weigh-now/h1/tide")
    assert "no later moment would help; it stays on the list." in " ".join(last.out.split())


@pytest.mark.parametrize("option", ["--done", "--snooze"])
def test_a_name_that_there_is_not_is_refused(remind: Reminded, option: str) -> None:
    wrong = remind(option, "nothing")
    assert wrong.code == 2
    assert wrong.one_sentence == "There is no reminder “nothing”; remind FILE lists them."


def test_what_is_too_late_is_cleared_in_one_go(remind: Reminded) -> None:
    remind.now = at(2, "12:00")
    assert "too late" in remind().out
    assert "Off the list: " in remind("--clear").out
    assert remind("--clear").out == "Nothing on the list is too late; it stays as it is.\n"
    assert "too late" not in remind().out


def test_a_means_that_fails_says_why_and_nobody_reached_is_an_exit_code(
    remind: Reminded,
) -> None:
    remind.bells = (Bell(broken=SILENT), Bell("sound"))
    half = remind()
    assert half.code == 0
    assert "It is broken." in half.out
    remind.now += timedelta(minutes=55)
    remind.bells = (Bell(broken=SILENT),)
    assert remind().code == 1


def test_every_means_is_tried_now(remind: Reminded) -> None:
    remind.bells = (Bell(broken=SILENT), Bell("sound"))
    tried = remind("--test")
    assert (tried.code, tried.out) == (
        0,
        "notification: It is broken.\nsound: rang just now.\n",
    )
    assert remind("--test", "--json").json == {
        "told": [
            {"means": "notification", "failure": "It is broken."},
            {"means": "sound", "failure": None},
        ]
    }
    remind.bells = ()
    assert (remind("--test").code, remind("--test").out) == (
        1,
        "There is no means here that could ring.\n",
    )


def test_a_means_that_is_switched_off_says_so_in_the_test(remind: Reminded) -> None:
    with open_studio(remind.file) as file:
        off = Reminding(means_off=frozenset({Means.SOUND}))
        file.write(replace(file.read(), reminding=off))
    assert "sound: rang just now. It is switched off in this studio." in remind("--test").out


def test_what_the_system_will_do_is_said_and_asked_before(
    remind: Reminded, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = remind("--install")
    assert asked.code == 2
    assert asked.err == "Nobody can be asked here; say --yes to have it done.\n"
    monkeypatch.setattr(remind_command, "_agreed", lambda: False)
    left = remind("--install")
    assert left.out.endswith("Nothing was done.\n")
    assert (remind.ran, remind.home.exists()) == ([], False)
    assert "each minute while you are logged in" in " ".join(left.out.split())
    assert "It runs: systemctl --user daemon-reload" in left.out


def test_it_is_installed_and_removed(remind: Reminded) -> None:
    done = remind("--install", "--yes")
    assert (done.code, done.out.endswith("Done.\n")) == (0, True)
    folder = remind.home / ".config" / "systemd" / "user"
    assert len(list(folder.iterdir())) == 2
    assert remind("--remove", "--yes").code == 0
    assert list(folder.iterdir()) == []


def test_the_maker_is_asked_on_a_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin.isatty", lambda: True, raising=False)
    monkeypatch.setattr("builtins.input", lambda _: " Yes ")
    assert remind_command._agreed()
    monkeypatch.setattr("builtins.input", lambda _: "")
    assert not remind_command._agreed()


def test_nothing_is_installed_for_a_file_that_is_not_there(
    remind: Reminded, tmp_path: Path
) -> None:
    remind.file = tmp_path / "gone.studio"
    answer = remind("--install", "--yes")
    assert answer.code == 2
    assert "is not there" in answer.one_sentence
    assert remind.ran == []


def test_a_button_is_waited_for_and_done(remind: Reminded) -> None:
    class Pressing(Bell):
        @override
        def pressed(self, seconds: float) -> tuple[Pressed, ...]:
            if self.answers or not self.shown:
                return ()
            self.answers = [Pressed(self.shown[-1].key, DONE)]
            return tuple(self.answers)

    remind.bells = (Pressing(),)
    heard = remind("--listen", "5")
    assert "Off the list: Weigh now, Slate coasters, seal." in heard.out
    assert SEAL not in listed(remind("--json"))


def test_open_opens_the_desk(remind: Reminded, monkeypatch: pytest.MonkeyPatch) -> None:
    class Opening(Bell):
        @override
        def pressed(self, seconds: float) -> tuple[Pressed, ...]:
            return (Pressed(self.shown[-1].key, OPEN),)

    remind.bells = (Opening(),)
    shown = []

    def desk(path: str, around: Surroundings) -> int:
        shown.append((path, around.clock.now()))
        return 7

    monkeypatch.setattr("studio_planner.terminal.desk_command.desk", desk)
    assert remind("--listen", "5").code == 7
    assert shown == [(str(remind.file), remind.now)]


def test_listening_needs_seconds(remind: Reminded) -> None:
    wrong = remind("--listen", "soon")
    assert (wrong.code, wrong.one_sentence) == (
        2,
        "--listen “soon” is not a whole number from 1 to 600.",
    )


def test_a_studio_without_a_plan_has_nothing_due(terminal: Terminal, unplanned: Path) -> None:
    answer = terminal("remind", unplanned)
    assert (answer.code, answer.out.count("\n")) == (0, 1)
    assert answer.out.startswith("Nothing is due at ")
    refused = terminal("remind", unplanned, "--install", "--yes")
    assert refused.one_sentence == "This system has no scheduler that is known here."


def test_answers_are_refused_together(remind: Reminded) -> None:
    both = remind("--done", SEAL, "--test")
    assert both.code == 2
    assert "not allowed with" in both.one_sentence
