"""The log and tracing, as a maker types them."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.services.log_book.pours import with_pour
from studio_planner.services.studio_files import create, read_studio
from tests.services.questions.steady import steady_studio

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal

TIDE, COAT = "tide-tray", "flood"


def words(text: str) -> str:
    return " ".join(text.split())


def listed(terminal: Terminal, path: Path) -> list[dict[str, Any]]:
    entries: list[dict[str, Any]] = terminal("log", path, "--json").json["entries"]
    return entries


@pytest.fixture
def next_pour(sample: Path) -> tuple[str, str, str]:
    """Number, piece and coat of the next coat of the sample's plan whose below is poured."""
    studio = read_studio(sample)
    assert studio.plan is not None
    for coat in studio.plan.coats:
        stack = studio.piece(coat.piece).stack
        if not coat.poured and len(studio.pours_of(coat.piece)) == stack.index(
            studio.piece(coat.piece).coat(coat.coat)
        ):
            return str(coat.number), coat.piece, coat.coat
    raise AssertionError


def test_an_empty_log_says_how_to_write_in_it(terminal: Terminal, unplanned: Path) -> None:
    studio = read_studio(unplanned)
    unplanned.unlink()
    create(unplanned, replace(studio, log=(), poured=()))
    assert "Nothing is written down yet." in terminal("log", unplanned).out
    assert listed(terminal, unplanned) == []


def test_a_whole_mix_of_the_plan_is_poured_by_one_number(
    terminal: Terminal, sample: Path, next_pour: tuple[str, str, str]
) -> None:
    number, piece, coat = next_pour
    answer = terminal("log", sample, "poured", number)
    assert answer.code == 0
    assert "Written down as entry" in answer.out
    assert "plan FILE --keep plans again" in words(answer.out)
    studio = read_studio(sample)
    pour = studio.pours_of(piece)[-1]
    assert pour.coat == coat
    assert pour.end == terminal.now


def test_what_is_carried_into_the_warm_box_says_how_its_window_moves(
    terminal: Terminal, tmp_path: Path
) -> None:
    studio = steady_studio()
    assert studio.plan is not None
    seal = next(c for c in studio.plan.coats if (c.piece, c.coat) == ("h1", "seal"))
    path = tmp_path / "steady.studio"
    create(path, with_pour(studio, (seal,), seal.start, seal.end))
    terminal.now = seal.end + timedelta(hours=1)
    answer = terminal("log", path, "moved", "h1", "W1")
    assert answer.code == 0
    assert "The window of Harbour board 1, flood moved. It opens" in words(answer.out)
    assert "The window of" not in terminal("log", path, "moved", "h2", "W1").out


def test_a_pour_a_touch_test_and_a_correction_are_listed_as_they_stand(
    terminal: Terminal, sample: Path, next_pour: tuple[str, str, str]
) -> None:
    _, piece, coat = next_pour
    name = read_studio(sample).piece(piece).name
    assert terminal("log", sample, "poured", name, coat, "--at", "2026-02-02T05:00").code == 0
    assert terminal("log", sample, "touched", piece, coat, "tack", "not-yet").code == 0
    ours = {"piece": piece, "coat": coat}.items()
    number = next(e["number"] for e in listed(terminal, sample) if ours <= e.items())
    done = terminal(
        "log", sample, "correct", str(number), "--at", "2026-02-02T05:10", "--words", "late"
    )
    assert done.code == 0
    entries = [e for e in listed(terminal, sample) if ours <= e.items()]
    assert [(e["kind"], e["stands"], e["corrects"]) for e in entries] == [
        ("poured", False, None), ("touched", True, None), ("poured", True, number),
    ]  # fmt: skip
    assert set(entries[0]) == {
        "number", "kind", "at", "end", "written", "piece", "coat", "order", "spot", "joint",
        "batch", "touch", "verdict", "words", "corrects", "about", "says", "stands",
    }  # fmt: skip
    table = words(terminal("log", sample).out)
    assert f"corrects {number}" in table
    assert f"see {entries[2]['number']}" in table
    assert "1 earlier entries" not in table
    few = terminal("log", sample, "--last", "1").out
    assert "earlier entries are not shown" in few


def test_what_is_weighed_is_traced_both_ways(
    terminal: Terminal, sample: Path, next_pour: tuple[str, str, str]
) -> None:
    _, piece, coat = next_pour
    studio = read_studio(sample)
    product = studio.product(studio.piece(piece).coat(coat).product)
    grams = ("100", "50") if product.ratio is not None else ("100",)
    weighed = terminal(
        "log", sample, "weighed", product.key, *grams, "--for", f"{piece}/{coat}",
        "--lot-a", "L 7", "--at", "2026-02-02T04:55", "--json",
    ).json  # fmt: skip
    batch = weighed["entries"][0]["batch"]
    assert batch == max(mix.batch for mix in studio.mixes) + 1
    terminal("log", sample, "poured", piece, coat, "--at", "2026-02-02T05:00")
    text = words(terminal("trace", sample, piece).out)
    assert f"Mix {batch}, Mon 2 Feb 04:55: {product.name}, 100.0 g" in text
    assert "A of lot L 7" in text
    found = terminal("trace", sample, "l 7", "--json").json
    assert [(one["piece"], one["coat"]) for one in found["coats"]] == [(piece, coat)]
    assert found["mixes"][0]["lot_a"] == "L 7"
    assert terminal("trace", sample, str(batch), "--json").json == found
    assert "same mix" in terminal("trace", sample, f"#{batch}").out
    assert terminal("trace", sample, f"mix {batch}", "--json").json == found
    pours = terminal("trace", sample, piece, "--json").json["pieces"][0]["pours"]
    assert [one["batch"] for one in pours[-1]["mixes"]] == [batch]


def test_what_can_hardly_be_right_is_written_down_and_said(
    terminal: Terminal, unplanned: Path
) -> None:
    studio = read_studio(unplanned)
    product = next(one for one in studio.products if one.ratio is not None)
    told = ("log", unplanned, "weighed", product.key, "80", "2")
    answer = terminal(*told)
    assert answer.code == 0
    assert "Written down as entry" in answer.out
    assert f"% too little B for {product.name}" in words(answer.out)
    found = terminal(*told, "--json").json
    assert len(found["entries"]) == 1
    assert "too little B" in found["doubts"][0]


def test_an_order_is_traced_to_all_its_pieces(terminal: Terminal, sample: Path) -> None:
    order = read_studio(sample).orders[0]
    found = terminal("trace", sample, order.name, "--json").json["pieces"]
    assert [one["piece"] for one in found] == list(order.pieces)
    assert terminal("trace", sample, order.key).code == 0


def test_steps_are_written_down_by_their_words(terminal: Terminal, sample: Path) -> None:
    studio = read_studio(sample)
    poured = studio.poured[0]
    spot = studio.spots[0].key
    for told in (
        ("taped", poured.piece, poured.coat),
        ("turned", poured.piece),
        ("sanded", poured.piece, studio.piece(poured.piece).stack[-1].key),
        ("moved", poured.piece, spot),
        ("spoiled", poured.piece, "--words", "fish eyes"),
        ("stripped", poured.piece),
        ("shipped", studio.orders[0].key),
    ):
        assert terminal("log", sample, *told).err == ""
    kinds = [e["kind"] for e in listed(terminal, sample)]
    assert {"tape pulled", "turned over", "washed and sanded", "moved", "spoiled"} <= set(kinds)
    assert "shipped" in kinds
    assert read_studio(sample).pours_of(poured.piece) == ()


def test_a_withdrawn_entry_is_kept_and_marked(terminal: Terminal, sample: Path) -> None:
    piece = read_studio(sample).pieces[0].key
    told = terminal("log", sample, "turned", piece, "--json").json["entries"]
    number = told[-1]["number"]
    assert terminal("log", sample, "withdraw", str(number)).code == 0
    assert [e["stands"] for e in listed(terminal, sample)][-2:] == [False, False]
    assert f"see {number + 1}" in terminal("log", sample).out


@pytest.mark.parametrize(
    ("told", "sentence"),
    [
        (("danced", "x"), "nothing that can be written down"),
        (("poured",), "write the number of a coat in the plan, or PIECE and perhaps COAT"),
        (("poured", "nobody"), "There is no piece called “nobody”"),
        (("poured", "998"), "is not in the kept plan"),
        (("poured", "nobody", "flood"), "There is no piece called “nobody”"),
        (("poured", TIDE, "moon"), "There is no coat of Tide tray called “moon”"),
        (("poured", TIDE, COAT, "--at", "2036-01-01T10:00"), "--at: it lies ahead"),
        (
            ("poured", TIDE, COAT, "--at", "soon"),
            "2026-02-02T18:00, 18:30 or 'yesterday 18:30'",
        ),
        (("poured", TIDE, COAT, "--at", "25:10"), "“25:10” is not a time; write it as 18:30."),
        (("taped", TIDE, "9"), "Tide tray has no coat 9; from the first on they are:"),
        (("reading", "19.5"), "“19.5” is not a temperature"),
        (("reading", "19.5C", "nowhere"), "There is no place called “nowhere”"),
        (("reading", "19.5C", "here", "there"), "“here” and “there” can't both be its place"),
        (("reading", "19.5C", "145%"), "“145%” is not a percentage"),
        (("reading", "85C", "--at", "2036-01-01T10:00"), "it lies ahead"),
        (("poured", TIDE, COAT, "--batch", "9"), "no mix 9 was weighed"),
        (("touched", TIDE, COAT, "nose"), "“nose” is not a touch test"),
        (("touched", TIDE, COAT, "tack", "perhaps"), "“perhaps” is not an answer"),
        (("taped", TIDE), "write PIECE COAT"),
        (("moved", TIDE, "moon"), "There is no spot called “moon”"),
        (("shipped", "nobody"), "There is no order called “nobody”"),
        (("weighed", "nothing", "1"), "There is no product called “nothing”"),
        (("withdraw", "99"), "no entry 99"),
        (("correct", "99"), "ENTRY 99 is not in the log"),
        (("correct", "x"), "not a whole number"),
    ],
)
def test_what_cannot_be_written_down_is_told_in_a_sentence(
    terminal: Terminal, sample: Path, told: tuple[str, ...], sentence: str
) -> None:
    before = read_studio(sample)
    answer = terminal("log", sample, *told)
    assert answer.code == 2
    assert sentence in answer.one_sentence
    assert read_studio(sample) == before


def test_a_piece_alone_is_poured_with_its_next_coat(
    terminal: Terminal, sample: Path, next_pour: tuple[str, str, str]
) -> None:
    _, piece, coat = next_pour
    name = read_studio(sample).piece(piece).name
    answer = terminal("log", sample, "poured", name)
    assert answer.code == 0
    after = read_studio(sample)
    assert after.pours_of(piece)[-1].coat == coat
    assert f"{name}, {after.piece(piece).coat_name(coat)}: poured" in words(answer.out)
    entry = after.log[-1].number
    again = terminal("log", sample, "poured", piece, coat).one_sentence
    assert f"it is written down already; correct entry {entry} instead." in again
    while terminal("log", sample, "poured", piece).code == 0:
        terminal.now += timedelta(hours=1)
    assert "is written down as poured" in terminal("log", sample, "poured", piece).one_sentence


def test_a_time_of_day_alone_is_the_latest_that_has_come(
    terminal: Terminal, sample: Path
) -> None:
    zone = read_studio(sample).time_zone
    here = terminal.now.astimezone(zone)
    before, after = here - timedelta(hours=1), here + timedelta(hours=1)
    for told, day in (
        (f"{before:%H:%M}", here),
        (f"{after:%H:%M}", here - timedelta(days=1)),
        (f"yesterday {before:%H:%M}", here - timedelta(days=1)),
    ):
        assert terminal("log", sample, "turned", TIDE, "--at", told).code == 0
        at = read_studio(sample).log[-1].at.astimezone(zone)
        assert at.date() == day.date()
        assert f"{at:%H:%M}" == told[-5:]


@pytest.mark.parametrize(
    "typed",
    [
        ("--at", "06:30", "turned", "{name}"),
        ("turned", "--at", "06:30", "{name}"),
        ("--words", "a note", "--at", "06:30", "turned", "{name}"),
    ],
)
def test_options_may_stand_before_words(
    terminal: Terminal, sample: Path, typed: tuple[str, ...]
) -> None:
    name = read_studio(sample).pieces[0].name
    words_ = [word.format(name=name) for word in typed]
    done = terminal("log", sample, *words_)
    assert done.code == 0
    last = listed(terminal, sample)[-1]
    assert (last["kind"], last["at"][11:16]) == ("turned over", "06:30")


def test_a_time_ahead_is_told_of_the_option_that_was_typed_and_no_other(
    terminal: Terminal, sample: Path
) -> None:
    ahead = (terminal.now + timedelta(days=300)).isoformat()
    answer = terminal("log", sample, "poured", "7", "--at", ahead)
    assert answer.code == 2
    assert "--at: " in answer.one_sentence
    assert "--end" not in answer.one_sentence
    both = terminal("log", sample, "poured", "7", "--at", ahead, "--end", ahead)
    assert "--end: " in both.one_sentence


def test_an_option_that_is_none_is_told(terminal: Terminal, sample: Path) -> None:
    done = terminal("log", sample, "--when", "06:30", "turned", "Tide tray")
    assert done.code == 2
    assert "unrecognized arguments: --when" in done.err


def test_a_long_note_goes_on_below_and_is_not_cut(terminal: Terminal, sample: Path) -> None:
    note = "the second half was slow, and a hair came off the rim before the torch was there"
    name = read_studio(sample).pieces[0].name
    assert terminal("log", sample, "turned", name, "--words", note).code == 0
    told = terminal("log", sample, "--last", "1").out
    assert "\N{HORIZONTAL ELLIPSIS}" not in told
    said = " ".join(told.split())
    assert all(word in said for word in note.split())
    assert max(map(len, told.splitlines())) <= 100


def test_a_coat_is_named_by_its_place_in_the_stack(terminal: Terminal, sample: Path) -> None:
    studio = read_studio(sample)
    poured = studio.poured[0]
    place = studio.piece(poured.piece).position(poured.coat) + 1
    told = ("touched", poured.piece, str(place), "tack")
    assert terminal("log", sample, *told).code == 0
    assert read_studio(sample).log[-1].coat == poured.coat


def test_what_the_thermometer_says_is_kept_in_either_unit(
    terminal: Terminal, sample: Path
) -> None:
    room = read_studio(sample).places[0]
    answer = terminal("log", sample, "reading", "68F", "45%")
    assert f"Kept: {room.name}, 20 °C, 45 % humid, " in answer.out
    last = read_studio(sample).places[0].readings[-1]
    assert last.celsius == pytest.approx(20.0)
    assert last.humidity_pct == 45
    assert last.when == terminal.now.replace(second=0, microsecond=0)
    terminal.now += timedelta(minutes=1)
    leap = terminal("log", sample, "reading", "35C", room.name)
    assert "no room changes so fast" in words(leap.out)


def test_a_correction_of_what_was_corrected_says_which_entry_stands(
    terminal: Terminal, sample: Path
) -> None:
    assert terminal("log", sample, "turned", TIDE).code == 0
    first = read_studio(sample).log[-1].number
    same = terminal("log", sample, "correct", str(first)).one_sentence
    assert same == f"log: nothing is different from entry {first}; change what was wrong."
    assert terminal("log", sample, "correct", str(first), "--words", "slowly").code == 0
    again = terminal("log", sample, "correct", str(first), "--words", "fast").one_sentence
    assert again == (f"log: entry {first} was corrected already; correct entry {first + 1}.")


def test_a_weighing_needs_coats_that_are_named_whole_and_is_not_corrected(
    terminal: Terminal, sample: Path
) -> None:
    studio = read_studio(sample)
    product = studio.product(studio.piece(TIDE).coat(COAT).product).key
    bad = terminal("log", sample, "weighed", product, "1", "1", "--for", TIDE)
    assert "write it as PIECE/COAT" in bad.one_sentence
    assert terminal("log", sample, "weighed", product, "100", "50").code == 0
    assert "written down anew" in terminal("log", sample, "correct", "1").one_sentence


def test_a_name_that_leads_nowhere_is_told(terminal: Terminal, sample: Path) -> None:
    assert "is no piece, order" in terminal("trace", sample, "nobody").one_sentence
    assert "is no piece, order" in terminal("trace", sample, "77").one_sentence


def test_a_piece_of_which_nothing_was_poured_says_so(terminal: Terminal, sample: Path) -> None:
    studio = read_studio(sample)
    piece = next(one for one in studio.pieces if not studio.pours_of(one.key))
    assert "Nothing of it was poured yet." in terminal("trace", sample, piece.key).out
