"""Materials, outlines and faces in words."""

from __future__ import annotations

from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE, Material
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.pieces import Outline


def material_word(material: Material) -> str:
    """What a blank is of."""
    return {
        Material.MDF: translate("pieces", "MDF"),
        Material.TIMBER: translate("pieces", "timber"),
        Material.PLYWOOD: translate("pieces", "plywood"),
        Material.SLATE: translate("pieces", "slate"),
        Material.STONE: translate("pieces", "stone"),
        Material.METAL: translate("pieces", "metal"),
        Material.GLASS: translate("pieces", "glass"),
        Material.PLASTIC: translate("pieces", "plastic"),
    }[material]


def outline_word(outline: Outline) -> str:
    """The outline of a blank."""
    return {
        Outline.RECTANGLE: translate("pieces", "rectangle"),
        Outline.ROUND: translate("pieces", "round"),
        Outline.OVAL: translate("pieces", "oval"),
        Outline.MEASURED: translate("pieces", "measured outline"),
    }[outline]


def face_word(face: str) -> str:
    """A face; an area that the maker has named is called that."""
    return {
        TOP: translate("pieces", "top"),
        EDGE: translate("pieces", "edge"),
        UNDERSIDE: translate("pieces", "underside"),
    }.get(face, face)
