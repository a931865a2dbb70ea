"""The solver's own words, each on a problem whose answer is plain."""

from __future__ import annotations

import pytest

from studio_planner.planning.solver import Answer, Model, Search, Status

QUICK = Search(seconds=20)


def test_the_smallest_value_is_found_and_proved() -> None:
    model = Model()
    one, other = model.between(0, 10), model.between(0, 10)
    model.at_least(one + other, 7)
    model.aim(2 * one + 3 * other)
    found = model.solve(QUICK)
    assert found.status is Status.PROVED
    assert (found.value, found.bound) == (14, 14)
    assert (found.of(one), found.of(other), found.of(one + other)) == (7, 0, 7)


def test_without_a_goal_an_answer_has_no_value() -> None:
    model = Model()
    number = model.between(3, 3)
    found = model.solve(QUICK)
    assert found.found
    assert (found.value, found.bound, found.of(number)) == (None, None, 3)


def test_what_contradicts_itself_is_impossible() -> None:
    model = Model()
    number = model.between(0, 5)
    model.at_least(number, 6)
    model.aim(number)
    found = model.solve(QUICK)
    assert found.status is Status.IMPOSSIBLE
    assert not found.found
    assert (found.value, found.bound) == (None, None)


def test_no_work_allowed_finds_nothing_out() -> None:
    model = Model()
    numbers = [model.between(0, 200) for _ in range(40)]
    spans = [model.span(n, 5, n + 5) for n in numbers]
    model.one_at_a_time(spans)
    model.aim(model.largest(numbers, 0, 200))
    assert model.solve(Search(seconds=20, work=0.0)).status is Status.UNKNOWN


def test_a_number_among_stretches_takes_none_between() -> None:
    model = Model()
    number = model.among([(1, 3), (8, 9)])
    model.at_least(number, 4)
    model.aim(number)
    assert model.solve(QUICK).of(number) == 8


@pytest.mark.parametrize(("asked", "expected"), [(0, 0), (1, 5)])
def test_what_holds_when_a_flag_is_set_is_free_when_it_is_not(
    asked: int, expected: int
) -> None:
    model = Model()
    flag, number, twin, inside = model.flag(), *(model.between(0, 9) for _ in range(3))
    model.equal(flag, asked)
    model.at_least(number, 5, [flag])
    model.equal(twin, 5, [flag])
    model.inside(inside, [(5, 6)], [flag])
    model.aim(number + twin + inside)
    found = model.solve(QUICK)
    assert [found.of(n) for n in (number, twin, inside)] == [expected] * 3


def test_one_of_the_flags_is_set() -> None:
    model = Model()
    flags = [model.flag() for _ in range(3)]
    model.exactly_one(flags)
    model.aim(3 * flags[0] + 2 * flags[1] + 4 * flags[2])
    found = model.solve(QUICK)
    assert [found.of(flag) for flag in flags] == [0, 1, 0]


def test_at_most_one_and_some_of_the_flags_are_set() -> None:
    model = Model()
    flags = [model.flag() for _ in range(3)]
    model.at_most_one(flags[:2])
    model.some(flags[:2], [model.yes])
    model.aim(0 - flags[0] - flags[1] - flags[2])
    assert model.solve(QUICK).value == -2


def test_some_of_no_set_condition_asks_for_nothing() -> None:
    model = Model()
    condition, flag = model.flag(), model.flag()
    model.some([flag], [condition])
    model.aim(flag)
    assert model.solve(QUICK).value == 0


def test_spans_one_at_a_time_follow_each_other_and_around_what_is_fixed() -> None:
    model = Model()
    starts = [model.between(0, 30) for _ in range(2)]
    spans = [model.span(start, 4, start + 4) for start in starts]
    model.one_at_a_time([*spans, model.fixed_span(3, 2)])
    top = model.largest(starts, 0, 30)
    model.aim(top)
    assert model.solve(QUICK).value == 9  # 5 to 9, then 9 to 13


def test_a_span_that_is_not_there_takes_up_nothing() -> None:
    model = Model()
    there, start = model.flag(), model.between(0, 30)
    spans = [model.span(start, 4, start + 4), model.fixed_span(0, 10, there)]
    spans.append(model.span(0, 8, 8, there))
    model.one_at_a_time(spans[:2])
    model.capacity(spans, [1, 1, 1], 1)
    model.equal(there, 0)
    model.aim(start)
    assert model.solve(QUICK).value == 0


def test_capacity_is_kept_at_any_time() -> None:
    model = Model()
    starts = [model.between(0, 30) for _ in range(3)]
    spans = [model.span(start, 5, start + 5) for start in starts]
    model.capacity(spans, [2, 1, 1], 3)
    model.aim(model.largest([start + 5 for start in starts], 0, 40))
    assert model.solve(QUICK).value == 10


@pytest.mark.parametrize("sums", [0, 1, 2, None])
@pytest.mark.parametrize("apart", [False, True])
def test_however_it_is_searched_the_best_is_the_best(apart: bool, sums: int | None) -> None:
    model = Model()
    starts = [model.between(0, 40) for _ in range(5)]
    ends = [start + 2 + i for i, start in enumerate(starts)]
    spans = [model.span(starts[i], 2 + i, ends[i]) for i in range(5)]
    model.one_at_a_time(spans)
    model.at_least(starts[0], ends[4] + 1)
    model.aim(model.largest(ends, 0, 60))
    found = model.solve(Search(seconds=20, apart=apart, sums=sums))
    assert (found.status, found.value) == (Status.PROVED, 20)


def test_the_last_goal_and_the_last_hint_count() -> None:
    model = Model()
    number = model.between(0, 9)
    model.hint([(number, 4)])
    model.hint([(number, 9)])
    model.aim(number)
    model.aim(9 - number)
    found = model.solve(Search(seconds=20))
    assert (found.value, found.of(number)) == (0, 9)


def test_better_answers_are_told_and_may_end_the_search() -> None:
    model = Model()
    starts = [model.between(0, 90) for _ in range(12)]
    lengths = [model.span(s, 3 + i % 5, s + 3 + i % 5) for i, s in enumerate(starts)]
    model.capacity(lengths, [1 + i % 3 for i in range(12)], 4)
    model.aim(model.largest(starts, 0, 90))
    told: list[tuple[float | None, int]] = []

    def enough(answer: Answer) -> bool:
        told.append((answer.value, max(answer.of(start) for start in starts)))
        return True

    found = model.solve(QUICK, enough)
    assert found.found
    assert told
    assert all(value == last for value, last in told)


def test_one_worker_with_the_same_seed_and_work_finds_the_same() -> None:
    def answers() -> list[int]:
        model = Model()
        starts = [model.between(0, 200) for _ in range(15)]
        spans = [model.span(s, 3 + i % 7, s + 3 + i % 7) for i, s in enumerate(starts)]
        model.capacity(spans, [1 + i % 3 for i in range(15)], 4)
        model.aim(sum(starts[1:], start=starts[0] + 0))
        found = model.solve(Search(seconds=60, work=0.05, seed=7))
        return [found.of(start) for start in starts]

    assert answers() == answers()


def test_the_size_counts_unknowns_and_constraints() -> None:
    model = Model()
    number = model.between(0, 5)
    model.at_least(number, 2)
    model.at_least(number, 3)
    assert model.size == (1, 2)
