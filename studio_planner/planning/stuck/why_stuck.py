"""Why a chain found no start: the coat, and the rule that stops it, in the maker's nouns."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import stage_said
from studio_planner.craft.plans import Unplanned
from studio_planner.craft.saying import Saying, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.placing.chain_search import ChainSearch, Dead, Look
from studio_planner.planning.placing.chain_times import Allow
from studio_planner.planning.placing.placements import Placement
from studio_planner.planning.placing.placer import Placer
from studio_planner.planning.problem import gate_coats, gate_stage
from studio_planner.planning.saying import length_said, moment_said
from studio_planner.planning.stuck.why_awake import why_nobody_is_awake
from studio_planner.planning.stuck.why_coat import longest_hands, starts_with_hands, why_coat
from studio_planner.planning.stuck.why_no_hands import why_no_hands

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Ground, Means
    from studio_planner.planning.placing.placer import Stuck
    from studio_planner.planning.problem import Chain


DAYS_ASKED_FOR = marked(
    "stuck", "does not fit into the days that were asked for; ask for more."
)

CROWDED = marked(
    "stuck",
    "the other pieces take the spots and the hands for all the time looked at; alone it could "
    "be made, so add a spot or hours, or take another piece out.",
)

_NEVER_CURES = marked(
    "stuck",
    "it never cures far enough to be packed in the time looked at; a warmer room or another "
    "product would help.",
)

_MANY = 400


def why_stuck(placer: Placer, stuck: Stuck) -> list[Unplanned]:
    """One row for each piece of a stuck chain.

    The chain is placed once more on the placer's workshop, which holds only what is poured:
    what stops it there is the reason; where nothing does, the other pieces are.
    """
    coat, reason = _reason(placer, stuck)
    return [
        Unplanned(
            piece=piece.key,
            coat=coat,
            reason=saying("stuck", "{piece}: {words}", piece=piece.name, words=reason),
        )
        for piece in stuck.chain.pieces
    ]


def _reason(placer: Placer, stuck: Stuck) -> tuple[str | None, Saying]:
    means, chain = placer.means, stuck.chain
    if not longest_hands(means):
        return None, why_no_hands(placer.studio, means)
    short = means.until < means.end
    if short:
        means = replace(means, until=means.end)
        placer = Placer(placer.studio, means)
    alone = placer.place(chain)
    if isinstance(alone, Placement):
        coat = None if stuck.dead is None else chain.tasks[stuck.dead.index].coat.key
        return coat, _days_words(chain, coat) if short else saying("stuck", CROWDED)
    if alone.ground is None:
        return None, _no_spot(placer.studio, chain)
    if not alone.cured:
        return _never_packed(placer, chain, alone.ground)
    if alone.dead is None:
        return None, saying(
            "stuck",
            "no order of its pours was found that keeps every rule; more hours, or a coat that "
            "can be sanded, would help.",
        )
    dead = _last_word(means, chain, alone.ground) or alone.dead
    return _dead_end(placer, chain, alone.ground, dead)


def _last_word(means: Means, chain: Chain, ground: Ground) -> Dead | None:
    """Where the search ends that may use every joint; one that may not can end sooner."""
    allow = Allow(test_first=True, scuff=True)
    found = ChainSearch(means, chain, ground, allow, Look(_MANY)).solve()
    return found if isinstance(found, Dead) else None


def _days_words(chain: Chain, coat: str | None) -> Saying:
    if coat is None:
        return saying("stuck", "it {words}", words=saying("stuck", DAYS_ASKED_FOR))
    return _of_coat(chain, coat, saying("stuck", DAYS_ASKED_FOR))


def _dead_end(
    placer: Placer, chain: Chain, ground: Ground, dead: Dead
) -> tuple[str | None, Saying]:
    """The coat at which a search ended, and the rule."""
    piece, index = chain.pieces[0], dead.index
    if dead.each_alone:
        asleep = _asleep(placer.means, chain, ground)
        if asleep is not None:
            return asleep
        index = _first_that_fails(placer.means, chain, ground)
        name = piece.coat_name_said(chain.tasks[index].coat.key)
        return chain.tasks[index].coat.key, (
            saying(
                "stuck",
                "each coat alone could be poured, but no choice of pours brings the {name} "
                "into its window; more waking hours, a warmer night or a coat that can be "
                "sanded would help.",
                name=name,
            )
        )
    task = chain.tasks[index]
    pinned = task.pinned_from(placer.means.now)
    if pinned is not None:
        name = piece.coat_name_said(task.coat.key)
        when = moment_said(placer.studio.time_zone, pinned)
        return task.coat.key, (
            saying(
                "stuck",
                "the {name} is pinned to {when}, and cannot be poured then; pin it to "
                "another time, or let it go.",
                name=name,
                when=when,
            )
        )
    words = why_coat(placer, chain, ground, dead)
    return task.coat.key, _of_coat(chain, task.coat.key, words)


def _of_coat(chain: Chain, coat: str, words: Saying) -> Saying:
    """A rule that follows the name of its coat."""
    name = chain.pieces[0].coat_name_said(coat)
    return saying("stuck", "the {coat} {words}", coat=name, words=words)


def _asleep(means: Means, chain: Chain, ground: Ground) -> tuple[str, Saying] | None:
    """The first coat whose tape or drips nobody can ever be awake for."""
    for task in chain.tasks[chain.first :]:
        handy = starts_with_hands(means, task, ground.place)
        words = why_nobody_is_awake(means, task, ground.place, handy)
        if words:
            return task.coat.key, _of_coat(chain, task.coat.key, words)
    return None


def _first_that_fails(means: Means, chain: Chain, ground: Ground) -> int:
    """The first coat that no choice of the pours before it serves."""
    for index in range(chain.first, len(chain.tasks)):
        part = replace(chain, tasks=chain.tasks[: index + 1])
        if _last_word(means, part, ground) is not None:
            return index
    return len(chain.tasks) - 1


def _no_spot(studio: Studio, chain: Chain) -> Saying:
    fitting = [spot for spot in studio.spots if all(piece.fits(spot) for piece in chain.pieces)]
    if fitting:
        # Twins stand side by side in one place.
        return saying(
            "stuck",
            "its set needs {count} spots in one place, and there are fewer; add spots, or "
            "divide the order.",
            count=len(chain.pieces),
        )
    piece = next(p for p in chain.pieces if not any(map(p.fits, studio.spots)))
    length, width = piece.footprint
    wide = [spot for spot in studio.spots if spot.holds(piece.footprint, 0.0)]
    if wide:
        highest = max(wide, key=lambda spot: spot.height_mm)
        return saying(
            "stuck",
            "no spot is high enough; it needs {height:.0f} mm of height with its cover, and "
            "where it has room to lie, {highest} is the highest with {height_mm:.0f} mm; make "
            "room above it, or take a lower cover.",
            height=piece.covered_mm,
            highest=highest.name,
            height_mm=highest.height_mm,
        )
    largest = max(studio.spots, key=lambda spot: spot.length_mm * spot.width_mm)
    return saying(
        "stuck",
        "no spot is large enough; it needs {length:.0f} by {width:.0f} mm, and the largest, "
        "{largest}, has {length_mm:.0f} by {width_mm:.0f} mm; add a larger spot, or give it "
        "less clearance.",
        length=length,
        width=width,
        largest=largest.name,
        length_mm=largest.length_mm,
        width_mm=largest.width_mm,
    )


def _never_packed(placer: Placer, chain: Chain, ground: Ground) -> tuple[str | None, Saying]:
    """Nobody has the time to pack it, or a coat never cures so far."""
    order, means = chain.order, placer.means
    if order is None:
        return None, saying("stuck", _NEVER_CURES)
    packing = order.packing_minutes * 60
    if packing > longest_hands(means):
        return None, (
            saying(
                "stuck",
                "packing it takes {packing} of hands on end, and nobody works longer than "
                "{longest} in one go; give somebody longer hours on one day.",
                packing=length_said(packing),
                longest=length_said(longest_hands(means)),
            )
        )
    piece, place = chain.pieces[0], ground.place
    for coat in gate_coats(placer.studio, piece, order.gate.stage):
        task = chain.tasks[piece.position(coat.key)]
        stage = gate_stage(task.product, order.gate.stage)
        clock = None if stage is None else means.edges.not_before(task.product, place, stage)
        if stage is None or clock is None or clock.at(means.now + task.block) is None:
            return coat.key, (
                saying(
                    "stuck",
                    "the {coat} never gets to {stage} in the time looked at, so the piece "
                    "cannot be packed; a warmer room or another product would help.",
                    coat=piece.coat_name_said(coat.key),
                    stage=stage_said(order.gate.stage),
                )
            )
    return None, saying("stuck", _NEVER_CURES)
