"""Which coats may share a mix, how long their block is then, and how much a mix may weigh."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from itertools import combinations
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import UNDERSIDE
from studio_planner.planning.exact.lanes import Lane
from studio_planner.planning.exact.sharing import Sharing, portions_of, sharing
from studio_planner.planning.problem import build_chains
from tests.planning.benchmark_studios import make_studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio


def _studio(pieces: int, setups: tuple[int, ...] = (20,), limit: float = 800.0) -> Studio:
    """So many pieces with one coat each, all of one product and alike but for their set-up."""
    studio = make_studio(3, 8, 1, 1)
    first = studio.pieces[0]
    made = tuple(
        replace(
            first,
            key=f"p{n}",
            name=f"Piece {n}",
            stack=(
                replace(
                    first.stack[0], setup_minutes=setups[n % len(setups)], piece_minutes=10 + n
                ),
            ),
        )
        for n in range(pieces)
    )
    products = tuple(replace(one, mix_limit_g=limit) for one in studio.products)
    order = Order(
        key="o", name="Order", pieces=tuple(p.key for p in made), promised=date(2026, 4, 1)
    )
    return replace(studio, pieces=made, orders=(order,), products=products)


def _sharing(studio: Studio) -> Sharing:
    chains, _ = build_chains(studio, twins=False)
    return sharing(studio, [Lane(chain, None) for chain in chains], all_pairs=True)


def _grams(studio: Studio) -> float:
    chains, _ = build_chains(studio, twins=False)
    return portions_of(studio, [Lane(chain, None) for chain in chains])[0, 0].grams


def test_a_block_may_be_as_long_as_any_coats_that_share_need_together() -> None:
    studio = _studio(3)
    shared = _sharing(studio)
    alone = [shared.portions[at, 0].alone for at in range(3)]
    own = [shared.portions[at, 0].own for at in range(3)]
    led = {
        alone[0] + sum(own[at] for at in group)
        for size in (1, 2)
        for group in combinations((1, 2), size)
    }
    assert set(shared.lengths((0, 0))) == {alone[0], *led}


def test_the_length_of_a_coat_by_itself_comes_first() -> None:
    shared = _sharing(_studio(3))
    for at in range(3):
        assert shared.lengths((at, 0))[0] == shared.portions[at, 0].alone


def test_the_coat_that_takes_longest_to_set_up_leads() -> None:
    shared = _sharing(_studio(3, setups=(10, 30, 20)))
    assert {leader for leader, _ in shared.pairs} == {(1, 0), (2, 0)}


def test_coats_whose_mass_does_not_fit_one_mix_do_not_share() -> None:
    grams = _grams(_studio(1))
    assert not _sharing(_studio(2, limit=1.9 * grams)).pairs
    assert _sharing(_studio(2, limit=2.1 * grams)).pairs


def test_a_mix_may_weigh_its_limit_to_the_gram() -> None:
    grams = _grams(_studio(1))
    assert _sharing(_studio(2, limit=grams + grams)).pairs


def test_three_do_not_share_where_only_two_fit() -> None:
    grams = _grams(_studio(1))
    shared = _sharing(_studio(3, limit=2.5 * grams))
    own = [shared.portions[at, 0].own for at in range(3)]
    alone = shared.portions[0, 0].alone
    assert alone + own[1] + own[2] not in shared.lengths((0, 0))


def test_coats_of_one_piece_never_share() -> None:
    studio = _studio(1)
    piece = studio.pieces[0]
    twice = replace(piece, stack=(piece.stack[0], replace(piece.stack[0], key="again")))
    assert not _sharing(replace(studio, pieces=(twice,))).pairs


def test_coats_of_other_products_or_colours_never_share() -> None:
    studio = _studio(2)
    other = next(
        one.key for one in studio.products if one.key != studio.pieces[0].stack[0].product
    )
    second = studio.pieces[1]
    changed = replace(second, stack=(replace(second.stack[0], product=other),))
    assert not _sharing(replace(studio, pieces=(studio.pieces[0], changed))).pairs


def test_a_coat_that_its_piece_is_turned_for_is_poured_by_itself() -> None:
    studio = _studio(2)
    turned = tuple(
        replace(
            piece,
            stack=(
                piece.stack[0],
                replace(piece.stack[0], key="under", faces=frozenset({UNDERSIDE})),
            ),
        )
        for piece in studio.pieces
    )
    shared = _sharing(replace(studio, pieces=turned))
    assert all(one[1] == 0 and other[1] == 0 for one, other in shared.pairs)
