"""Where strata lie in a section: to scale, level, around the edge, and never over the words."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPointF

from studio_planner.craft.pieces import Coat, CoatKind, Piece
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.piece_pages.section_drag import Drag, dragged_film
from studio_planner.desktop.piece_pages.section_picture import SectionPicture
from studio_planner.desktop.piece_pages.section_shape import (
    BODY,
    LEAST,
    SectionShape,
    drawn_order,
    fitting_scale,
    section_shape,
)
from tests.desktop import scenes

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

SCALE, WIDTH, EDGE_FILM = 50.0, 260.0, 0.4


def coat(key: str, film_mm: float, *faces: str, kind: CoatKind = CoatKind.COLOUR) -> Coat:
    return Coat(
        key=key, kind=kind, product="slow", film_mm=film_mm, faces=frozenset(faces or {"top"})
    )


def piece(*coats: Coat, rim_mm: float = 0.0) -> Piece:
    return replace(scenes.PIECES[0], stack=coats, rim_mm=rim_mm)


def shape_of(*coats: Coat, rim_mm: float = 0.0, scale: float = SCALE) -> SectionShape:
    return section_shape(piece(*coats, rim_mm=rim_mm), scale, WIDTH, EDGE_FILM)


def thickness(shape: SectionShape, key: str) -> float:
    stratum = shape.stratum(key)
    assert stratum is not None
    return abs(stratum.grip.y1() - stratum.seat.y1())


def test_coats_are_drawn_top_edge_underside() -> None:
    coats = coat("a", 1, "top"), coat("e", 1, "edge"), coat("u", 1, "underside"), coat("b", 1)
    assert [one.key for one in drawn_order(piece(*coats))] == ["b", "a", "e", "u"]


def test_every_film_is_as_thick_as_the_scale_says_and_the_thinnest_a_line() -> None:
    shape = shape_of(coat("a", 0.01), coat("b", 2.0), coat("u", 0.3, "underside"))
    assert thickness(shape, "a") == LEAST
    assert thickness(shape, "b") == 100.0
    assert thickness(shape, "u") == pytest.approx(15.0)
    assert shape.bottom == pytest.approx(shape.body.bottom() + 15.0)


def test_a_pour_over_an_area_is_level_and_keeps_its_volume() -> None:
    shape = shape_of(coat("a", 1.0, "moon"), coat("b", 2.0))
    stratum = shape.stratum("b")
    assert stratum is not None
    box = stratum.path.boundingRect()
    tops = {round(box.top(), 6), round(stratum.grip.y1(), 6)}
    assert len(tops) == 1
    volume = sum((seat.y1() - box.top()) * (seat.x2() - seat.x1()) for seat in stratum.seats)
    assert volume == pytest.approx(100.0 * box.width())


def test_a_thin_coat_follows_what_is_under_it() -> None:
    shape = shape_of(coat("a", 1.0, "moon"), coat("b", 0.3))
    stratum = shape.stratum("b")
    assert stratum is not None
    assert len({seat.y1() for seat in stratum.seats}) == 2
    assert stratum.path.boundingRect().height() == pytest.approx(50.0 + 15.0)


def test_a_coat_on_top_and_edge_goes_round_the_corner() -> None:
    shape = shape_of(coat("a", 0.2, "top", "edge"))
    stratum = shape.stratum("a")
    assert stratum is not None
    box = stratum.path.boundingRect()
    assert box.left() == pytest.approx(shape.body.left() - 10.0)
    assert box.right() == pytest.approx(shape.body.right() + 10.0)
    assert box.bottom() == pytest.approx(shape.body.bottom())
    assert stratum.path.contains(QPointF(box.left() + 1.0, shape.body.top() - 1.0))


def test_an_edge_holds_no_more_than_an_edge_holds_unless_it_is_meant_alone() -> None:
    both, alone = shape_of(coat("a", 2.0, "top", "edge")), shape_of(coat("a", 1.0, "edge"))
    assert both.right - both.body.right() == pytest.approx(EDGE_FILM * SCALE)
    assert alone.right - alone.body.right() == pytest.approx(SCALE)


def test_a_rim_stands_around_the_flood_and_is_cut_where_it_is_high() -> None:
    low = shape_of(coat("a", 2.0), rim_mm=2.2)
    assert not low.rim_cut
    assert low.rims[0].height() == pytest.approx(110.0)
    high = shape_of(coat("a", 2.0), rim_mm=40.0)
    assert high.rim_cut
    flood = high.stratum("a")
    assert flood is not None
    assert high.rims[0].right() == pytest.approx(flood.path.boundingRect().left())
    assert high.rims[0].height() < 40.0 * SCALE


def test_a_stack_fits_its_room_and_a_thin_one_is_not_blown_up_without_end() -> None:
    deep = piece(coat("a", 3.0), coat("b", 2.0), rim_mm=9.0)
    assert fitting_scale(deep, 300.0) == pytest.approx(60.0)
    assert fitting_scale(piece(coat("a", 0.05)), 300.0) == 90.0


@pytest.mark.parametrize("scale", [20.0, 90.0, 400.0])
def test_words_never_lie_over_the_section_however_near(
    qapp: QApplication, scale: float
) -> None:
    coats = coat("e", 0.8, "edge"), coat("s", 0.2, "top", "edge"), coat("m", 0.5, "moon")
    picture = SectionPicture(
        scenes.studio(), piece(*coats), {}, (), fonts_from(qapp.font()), (500.0, scale)
    )
    assert all(block.rect.left() > picture.shape.right for block in picture.blocks)
    assert all(block.rect.right() <= picture.width for block in picture.blocks)
    assert picture.shape.body.height() == BODY
    assert picture.shape.body.left() > 0


def test_a_drag_goes_in_tenths_outwards_and_never_under_one() -> None:
    drag = Drag("a", QPointF(0, 100), film_start=0.5, scale=50.0)
    drag.at = QPointF(0, 93)
    assert dragged_film(drag, QPointF(0, -1), 0.1) == pytest.approx(0.6)
    assert dragged_film(drag, QPointF(0, 1), 0.1) == pytest.approx(0.4)
    drag.at = QPointF(0, 400)
    assert dragged_film(drag, QPointF(0, -1), 0.1) == pytest.approx(0.1)
