"""How much of a product a coat takes: the studio's nouns turned into grams and hands.

What stays in cups is no part of a coat's grams: it belongs to the mix, which knows its cups.
What is too much for one cup is weighed and mixed in portions, one after the other.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE, CoatKind
from studio_planner.craft.products import ProductKind, RatioBy
from studio_planner.science.masses import edge_grams, film_grams
from studio_planner.science.mix_ratio import MassError, MixRatio

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Settings

_EDGE_DRINKS = 2.0
"""What the bare edge of a porous blank drinks, in parts of its thin coat (common practice)."""

_A_GRAIN = 1e-6
"""Grams by which a mix may be too heavy: weighing no scales could do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatParts:
    """What a coat takes on a whole piece or set, by where it goes, in grams.

    `film` lies on the faces, `edges` on the outer edge and the walls of a rim, `drips` run off,
    `absorbed` is drunk by a bare porous blank, and `reserve` is put by on all of these.
    `cups` is what would stay in the cups of its colours if it were mixed by itself; in a shared
    mix it stays there once, so it is not counted in `grams`.
    """

    film: float = 0.0
    edges: float = 0.0
    drips: float = 0.0
    absorbed: float = 0.0
    reserve: float = 0.0
    cups: float = 0.0

    @property
    def grams(self) -> float:
        """All that the coat takes, without what stays in cups."""
        return self.film + self.edges + self.drips + self.absorbed + self.reserve

    @property
    def mixed(self) -> float:
        """All that is mixed for the coat by itself, with what stays in its cups."""
        return self.grams + self.cups


def coat_grams(piece: Piece, coat: Coat, product: Product, settings: Settings) -> float:
    """Give the mixed mass in grams that a coat takes on a whole piece or set.

    Area times film times density, the edge or the walls of a rim, what drips off, what a bare
    porous blank drinks under its first coat, and the reserve of the settings. Cup losses are
    not in it. Leaf weighs nothing: 0.0.

    Examples
    --------
    >>> from studio_planner.craft.pieces import Coat, CoatKind, Material, Piece
    >>> from studio_planner.craft.products import Product, ProductKind
    >>> from studio_planner.craft.settings import Settings
    >>> from studio_planner.craft.shapes import Rectangle
    >>> film = Coat(key="seal", kind=CoatKind.SEAL, product="p", film_mm=0.1)
    >>> tile = Piece(key="t", name="Tile", shape=Rectangle(length_mm=100, width_mm=100),
    ...              material=Material.SLATE, body_mm=8, stack=(film,))
    >>> paint = Product(key="p", name="P", kind=ProductKind.PRIMER, sheet=(), density=1.10)
    >>> round(coat_grams(tile, film, paint, Settings(reserve_pct=0)), 3)
    1.1
    """
    return coat_parts(piece, coat, product, settings).grams


def coat_parts(piece: Piece, coat: Coat, product: Product, settings: Settings) -> CoatParts:
    """Give what a coat takes on a whole piece or set by where it goes; leaf takes nothing."""
    if coat.kind is CoatKind.LEAF:
        return CoatParts()
    density, count = product.density, piece.count
    film = _flat_grams(piece, coat, density) * count
    edge = _edge_grams(piece, coat, settings, density) * count
    walls = _wall_grams(piece, coat, settings, density) * count
    drips = (film + edge) * _drip_pct(piece, coat, settings) / 100.0
    absorbed = _drunk_grams(piece, coat, settings, density) * count
    taken = film + edge + walls + drips + absorbed
    return CoatParts(
        film=film,
        edges=edge + walls,
        drips=drips,
        absorbed=absorbed,
        reserve=taken * settings.reserve_pct / 100.0,
        cups=max(len(coat.colours), 1) * settings.cup_loss_g if taken > 0.0 else 0.0,
    )


def portion_room(coat: Coat, product: Product, settings: Settings) -> float:
    """Give the grams of a coat that are mixed at once, without what stays in the cups.

    As much as can be spread in time, and of what heats itself no more than one cup may hold.
    Coats of one mix share product and colours, and with them the room.

    Examples
    --------
    A cup of 200 g of which 4 g stay in it, for a mix of which 600 g can be spread in time:

    >>> from studio_planner.craft.pieces import Coat, CoatKind
    >>> from studio_planner.craft.products import MixRatio, Product
    >>> from studio_planner.craft.settings import Settings
    >>> mix = Product(key="p", name="P", kind=ProductKind.TWO_PART, sheet=(),
    ...               ratio=MixRatio(a=2, b=1), cup_limit_g=200.0, mix_limit_g=600.0)
    >>> flood = Coat(key="flood", kind=CoatKind.FLOOD, product="p", film_mm=2)
    >>> portion_room(flood, mix, Settings(cup_loss_g=4))
    196.0
    """
    room = product.mix_limit_g
    if product.kind is ProductKind.TWO_PART:
        lost = max(len(coat.colours), 1) * settings.cup_loss_g
        room = min(room, product.cup_limit_g - lost)
    return max(room, 1.0)


def portions_for(grams: float, room: float) -> int:
    """Give the portions in which so many grams are mixed, with room for so many in each.

    Examples
    --------
    >>> portions_for(200.0, 100.0), portions_for(200.1, 100.0), portions_for(0.0, 100.0)
    (2, 3, 1)
    """
    return max(1, math.ceil((grams - _A_GRAIN) / room))


def attended_minutes(
    coats: Sequence[tuple[Piece, Coat]], product: Product, settings: Settings
) -> int:
    """Give the attended minutes of coats that are poured from one mix: their hands-on block.

    The longest set-up once for each portion, and the minutes of every single piece.
    """
    grams = sum(coat_grams(piece, coat, product, settings) for piece, coat in coats)
    portions = portions_for(grams, portion_room(coats[0][1], product, settings))
    set_up = max(coat.setup_minutes for _, coat in coats)
    return portions * set_up + sum(coat.piece_minutes * piece.count for piece, coat in coats)


def ratio_by_weight(product: Product) -> MixRatio:
    """Give the ratio of A to B by weight; MassError for a product that is not mixed.

    A ratio by volume is turned into weight through the densities of both parts; one of which
    nobody has said what it counts is taken as by weight.
    """
    ratio = product.ratio
    if ratio is None:
        message = f"{product.name} is not mixed from two parts."
        raise MassError(message)
    if ratio.by is not RatioBy.VOLUME:
        return MixRatio.by_weight(ratio.a, ratio.b)
    density_a, density_b = product.density_a or 0.0, product.density_b or 0.0
    return MixRatio.by_volume(ratio.a, ratio.b, a_density=density_a, b_density=density_b)


def coat_area_cm2(piece: Piece, coat: Coat) -> float:
    """Give the flat area in cm² that a coat covers on one single piece, without its edge.

    A measured area of the coat wins over the blank's; a coat on the edge alone has none.
    """
    if coat.faces == frozenset({EDGE}):
        return 0.0
    return piece.shape.area_cm2 if coat.area_cm2 is None else coat.area_cm2


def edge_area_cm2(piece: Piece, coat: Coat) -> float:
    """Give the area in cm² of the outer edge that a coat covers on one single piece."""
    if EDGE not in coat.faces:
        return 0.0
    if coat.faces == frozenset({EDGE}) and coat.area_cm2 is not None:
        return coat.area_cm2
    return piece.shape.perimeter_mm * piece.body_mm / 100.0


def _flat_grams(piece: Piece, coat: Coat, density: float) -> float:
    return film_grams(coat_area_cm2(piece, coat), coat.film_mm, density)


def _edge_grams(piece: Piece, coat: Coat, settings: Settings, density: float) -> float:
    alone = coat.faces == frozenset({EDGE})
    film = coat.film_mm if alone else min(coat.film_mm, settings.edge_film_mm)
    return film_grams(edge_area_cm2(piece, coat), film, density)


def _drip_pct(piece: Piece, coat: Coat, settings: Settings) -> float:
    # A film that an upright edge would hold does not run off, nor does one inside the top.
    if coat.film_mm <= settings.edge_film_mm or not {TOP, UNDERSIDE} & coat.faces:
        return 0.0
    return settings.rim_drip_loss_pct if _held(piece, coat) else settings.drip_loss_pct


def _wall_grams(piece: Piece, coat: Coat, settings: Settings, density: float) -> float:
    if not _held(piece, coat):
        return 0.0
    film = min(coat.film_mm, settings.wall_film_mm)
    return edge_grams(piece.shape.perimeter_mm / 10.0, piece.rim_mm, film, density)


def _held(piece: Piece, coat: Coat) -> bool:
    return TOP in coat.faces and piece.rim_mm > 0.0


def _drunk_grams(piece: Piece, coat: Coat, settings: Settings, density: float) -> float:
    if not piece.material.porous or piece.below(piece.position(coat.key)) is not None:
        return 0.0
    # Only what lies against the wood is drunk: a deep flood drinks no more than a thin coat.
    film = min(coat.film_mm, settings.edge_film_mm)
    face = coat_area_cm2(piece, coat) * settings.absorption_face_pct / 100.0
    return film_grams(face + edge_area_cm2(piece, coat) * _EDGE_DRINKS, film, density)
