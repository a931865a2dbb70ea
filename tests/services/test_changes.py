"""Every change is in the file at once, can be undone and done again, and loses nothing."""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule
from typing_extensions import override

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import Piece
from studio_planner.craft.pins import Pin
from studio_planner.craft.products import Product
from studio_planner.services.desk import DeskSession
from studio_planner.services.editing.changes import Change, bears_on_plan, fitting, made
from studio_planner.services.editing.nouns import (
    copy_of,
    free_key,
    free_name,
    moved_thing,
    with_thing,
    without_thing,
)
from studio_planner.storage.studio_file import create_studio, open_studio
from tests.desktop import scenes

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.studio import Studio

CLOCK = scenes.StillClock(scenes.NOW)


@pytest.fixture
def session(tmp_path: Path) -> Iterator[DeskSession]:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    made_session = DeskSession(path, CLOCK)
    yield made_session
    made_session.close()


def in_file(session: DeskSession) -> Studio:
    with open_studio(session.path) as file:
        return file.read()


def renamed(name: str) -> Change:
    return Change(f"Call it {name}", lambda studio: replace(studio, name=name))


def without_piece(key: str) -> Change:
    return Change(f"Remove {key}", lambda studio: without_thing(studio, Piece, key))


def test_a_change_is_in_the_file_at_once(session: DeskSession) -> None:
    assert session.apply(renamed("Gull loft"))
    assert in_file(session).name == "Gull loft"


def test_what_changes_nothing_is_no_step(session: DeskSession) -> None:
    assert not session.apply(renamed(session.studio.name))
    assert session.history.undoable is None


def test_a_change_that_breaks_a_rule_changes_nothing(session: DeskSession) -> None:
    before = session.studio
    with pytest.raises(InvalidEntry, match="give it a name"):
        session.apply(renamed(" "))
    assert session.studio == before == in_file(session)
    assert session.history.undoable is None


def test_undo_gives_back_the_studio_with_its_plan_and_redo_the_change(
    session: DeskSession,
) -> None:
    before = session.studio
    key = before.pieces[0].key
    session.apply(without_piece(key))
    after = session.studio
    assert after.plan_outdated
    step = session.undo()
    assert step is not None
    assert step.words == f"Remove {key}"
    assert session.studio == before == in_file(session)
    session.redo()
    assert session.studio == after == in_file(session)


def test_a_new_change_ends_what_could_be_done_again(session: DeskSession) -> None:
    session.apply(renamed("One"))
    session.undo()
    session.apply(renamed("Two"))
    assert session.redo() is None
    assert session.studio.name == "Two"


def test_a_plan_that_follows_a_change_is_undone_with_it(session: DeskSession) -> None:
    before = session.studio
    session.apply(without_piece(before.pieces[0].key))
    session.expect_plan(None)
    for minutes in (1, 2):
        with open_studio(session.path) as planner:
            plan = planner.read().plan
            assert plan is not None
            planner.keep_plan(replace(plan, made=plan.made + timedelta(minutes=minutes)))
        session.take_plan()
    assert not session.studio.plan_outdated
    session.undo()
    assert session.studio == before
    assert session.history.undoable is None


def test_planning_that_was_asked_for_is_one_step_however_many_plans_came(
    session: DeskSession,
) -> None:
    before = session.studio
    session.expect_plan("Plan again")
    for minutes in (1, 2):
        with open_studio(session.path) as planner:
            assert before.plan is not None
            planner.keep_plan(replace(before.plan, made=scenes.at(1, f"08:0{minutes}")))
        session.take_plan()
    step = session.undo()
    assert step is not None
    assert step.words == "Plan again"
    assert session.studio == before


def test_what_somebody_else_wrote_after_our_plan_is_never_undone(session: DeskSession) -> None:
    session.apply(renamed("Mine"))
    with open_studio(session.path) as other:
        other.keep_plan(None)
        other.write(replace(other.read(), currency="CHF"))
    session.take_plan()
    assert session.undo() is None
    assert (session.studio.currency, session.studio.name) == ("CHF", "Mine")


def test_two_processes_that_write_at_once_lose_nothing_and_refuse_nothing(
    session: DeskSession,
) -> None:
    script = (
        "import sys; from dataclasses import replace; from pathlib import Path\n"
        "from datetime import datetime, timezone\n"
        "from studio_planner.services.desk import DeskSession\n"
        "from studio_planner.services.editing.changes import Change\n"
        "class Still:\n"
        "    def now(self):\n"
        "        return datetime(2026, 5, 4, tzinfo=timezone.utc)\n"
        "session = DeskSession(Path(sys.argv[1]), Still())\n"
        "for _ in range(20):\n"
        "    session.apply(Change('', lambda s: replace(s, name=s.name + sys.argv[2])))\n"
    )
    before = session.studio.name
    writers = [
        subprocess.Popen(  # noqa: S603 - our own script
            [sys.executable, "-c", script, str(session.path), letter],
            env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
        )
        for letter in "ab"
    ]
    assert [writer.wait() for writer in writers] == [0, 0]
    written = in_file(session).name.removeprefix(before)
    assert (written.count("a"), written.count("b"), len(written)) == (20, 20, 40)


def test_what_somebody_else_changed_is_never_undone(session: DeskSession) -> None:
    session.apply(renamed("Mine"))
    with open_studio(session.path) as other:
        other.write(replace(other.read(), name="Theirs"))
    assert session.undo() is None
    assert session.studio.name == "Theirs"
    session.apply(renamed("Mine again"))
    session.undo()
    assert in_file(session).name == "Theirs"


def test_names_notes_and_units_leave_the_plan_as_it_is(session: DeskSession) -> None:
    studio = session.studio
    piece = replace(studio.pieces[0], name="Other", note="Handles in brass.")
    session.apply(Change("Rename", lambda before: with_thing(before, piece)))
    assert not session.studio.plan_outdated
    assert session.studio.plan == studio.plan
    deeper = replace(piece, body_mm=piece.body_mm + 1)
    assert bears_on_plan(studio, with_thing(studio, deeper))


def test_what_leaf_costs_leaves_the_plan_as_it_is(session: DeskSession) -> None:
    studio = session.studio
    gilded = replace(studio.products[0], leaf_mm=140.0, leaf_price=0.4)
    assert not bears_on_plan(studio, with_thing(studio, gilded))


def test_a_plan_without_a_piece_keeps_what_the_others_have() -> None:
    studio = scenes.planned()
    gone = studio.pieces[0].key
    after = made(without_piece(gone), studio)
    assert studio.plan is not None
    assert after.plan is not None
    assert after.plan.coats == tuple(c for c in studio.plan.coats if c.piece != gone)
    assert all(step.piece != gone for step in after.plan.steps)


def test_later_coats_go_with_one_whose_spot_is_gone() -> None:
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    first = min(plan.coats, key=lambda coat: coat.start)
    places = tuple(
        replace(place, spots=tuple(s for s in place.spots if s.key != first.spot))
        for place in studio.places
    )
    left = fitting(plan, replace(studio, places=places, poured=()))
    assert all(coat.piece != first.piece for coat in left.coats if coat.start >= first.start)
    assert all(coat.spot != first.spot for coat in left.coats)


def test_a_piece_leaves_its_order_and_an_empty_order_goes() -> None:
    studio = scenes.planned()
    for piece in studio.pieces:
        after = without_thing(studio, Piece, piece.key)
        assert all(piece.key not in order.pieces for order in after.orders)
        assert all(order.pieces for order in after.orders)


def test_a_product_in_use_cannot_go() -> None:
    studio = scenes.planned()
    used = studio.pieces[0].stack[0].product
    with pytest.raises(InvalidEntry, match="there is no product"):
        without_thing(studio, Product, used)


def test_a_copy_has_a_name_and_a_key_of_its_own() -> None:
    studio = scenes.planned()
    copy = copy_of(studio, studio.pieces[0])
    assert copy.key not in {piece.key for piece in studio.pieces}
    assert copy.name not in {piece.name for piece in studio.pieces}
    assert with_thing(studio, copy).pieces[-1] == copy


@pytest.mark.parametrize(
    ("taken", "name", "key"),
    [
        ((), "Möwe, blau!", "m-we-blau"),
        (("one",), "\u6f06", "one-2"),
        (("a", "a-2"), "A", "a-3"),
    ],
)
def test_keys_are_plain_and_free(taken: tuple[str, ...], name: str, key: str) -> None:
    assert free_key(taken, name) == key


def test_free_names_count_on() -> None:
    assert free_name(("Moon", "Moon 2"), "Moon 2") == "Moon 3"
    assert free_name((), "Moon") == "Moon"


class WildMaker(RuleBasedStateMachine):
    """Somebody who does anything in any order; beside it, what it should come to."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = TemporaryDirectory()
        self.path = Path(self.folder.name) / "wild.studio"
        create_studio(self.path, scenes.planned()).close()
        self.session = DeskSession(self.path, CLOCK)
        self.past = [self.session.studio]
        self.future: list[Studio] = []

    def do(self, change: Change) -> None:
        """Make a change; one that is refused changes nothing."""
        before = self.session.studio
        try:
            different = self.session.apply(change)
        except InvalidEntry:
            assert self.session.studio == before
            return
        if different:
            self.past.append(self.session.studio)
            self.future.clear()

    @rule(name=st.text(max_size=3))
    def rename(self, name: str) -> None:
        self.do(renamed(name))

    @rule(which=st.integers(0, 9))
    def copy_a_piece(self, which: int) -> None:
        pieces = self.session.studio.pieces
        if pieces:
            piece = pieces[which % len(pieces)]
            self.do(Change("Copy", lambda studio: with_thing(studio, copy_of(studio, piece))))

    @rule(which=st.integers(0, 9))
    def remove_a_piece(self, which: int) -> None:
        pieces = self.session.studio.pieces
        if pieces:
            self.do(without_piece(pieces[which % len(pieces)].key))

    @rule(which=st.integers(0, 9), to=st.integers(0, 9))
    def move_a_piece(self, which: int, to: int) -> None:
        pieces = self.session.studio.pieces
        if pieces:
            key = pieces[which % len(pieces)].key
            self.do(Change("Move", lambda studio: moved_thing(studio, Piece, key, to)))

    @rule(which=st.integers(0, 9), steps=st.integers(-120, 120))
    def pin_a_pour(self, which: int, steps: int) -> None:
        plan = self.session.studio.plan
        if plan is not None and plan.coats:
            coat = plan.coats[which % len(plan.coats)]
            pin = Pin(
                piece=coat.piece,
                coat=coat.coat,
                start=coat.start + timedelta(minutes=5 * steps),
            )
            self.do(Change("Pin", lambda studio: replace(studio, pins=(*studio.pins, pin))))

    @rule(which=st.integers(0, 9))
    def drop_an_order(self, which: int) -> None:
        orders = self.session.studio.orders
        if orders:
            key = orders[which % len(orders)].key
            self.do(Change("Drop", lambda studio: without_thing(studio, Order, key)))

    @rule(which=st.integers(0, 9))
    def drop_a_product(self, which: int) -> None:
        products = self.session.studio.products
        if products:
            key = products[which % len(products)].key
            self.do(Change("Drop", lambda studio: without_thing(studio, Product, key)))

    @rule(minutes=st.integers(1, 500), asked=st.booleans())
    def plan(self, minutes: int, asked: bool) -> None:
        self.session.expect_plan("Plan again" if asked else None)
        with open_studio(self.path) as planner:
            plan = planner.read().plan
            if plan is None:
                return
            planner.keep_plan(replace(plan, made=scenes.at(minutes, "08:00")))
        self.session.take_plan()
        if asked or len(self.past) == 1:
            self.past.append(self.session.studio)
            self.future.clear()
        else:
            self.past[-1] = self.session.studio

    @precondition(lambda self: len(self.past) > 1)
    @rule()
    def undo(self) -> None:
        self.session.undo()
        self.future.append(self.past.pop())

    @precondition(lambda self: self.future)
    @rule()
    def redo(self) -> None:
        self.session.redo()
        self.past.append(self.future.pop())

    @rule()
    def undo_all_and_redo_all(self) -> None:
        end = self.session.studio
        count = 0
        while self.session.undo() is not None:
            count += 1
        assert self.session.studio == self.past[0]
        for _ in range(count):
            assert self.session.redo() is not None
        assert self.session.studio == end

    @rule()
    def open_again(self) -> None:
        self.session.close()
        self.session = DeskSession(self.path, CLOCK)
        assert self.session.studio == self.past[-1]
        self.past = [self.session.studio]
        self.future.clear()

    @invariant()
    def the_file_holds_what_is_shown(self) -> None:
        assert self.session.studio == self.past[-1]
        assert in_file(self.session) == self.past[-1]

    @override
    def teardown(self) -> None:
        self.session.close()
        self.folder.cleanup()


TestWildMaker = WildMaker.TestCase
TestWildMaker.settings = settings(stateful_step_count=20, max_examples=15, deadline=None)
