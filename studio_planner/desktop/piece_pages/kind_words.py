"""The craft's own values in words: kinds of coats, joints, materials, outlines and faces."""

from __future__ import annotations

from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE, CoatKind, Joint, Material
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.pieces import Outline


def kind_word(kind: CoatKind) -> str:
    """What a kind of coat is called."""
    return {
        CoatKind.PRIME: translate("pieces", "prime"),
        CoatKind.SEAL: translate("pieces", "seal"),
        CoatKind.FLOOD: translate("pieces", "flood"),
        CoatKind.COLOUR: translate("pieces", "colour pour"),
        CoatKind.GLITTER: translate("pieces", "glitter"),
        CoatKind.SIZE: translate("pieces", "size"),
        CoatKind.LEAF: translate("pieces", "leaf"),
        CoatKind.LOCK: translate("pieces", "lock coat"),
        CoatKind.TOP_COAT: translate("pieces", "top coat"),
    }[kind]


def joint_word(joint: Joint) -> str:
    """How a coat meets the one below."""
    return {
        Joint.BARE: translate("pieces", "on bare"),
        Joint.WET_IN_WET: translate("pieces", "wet in wet"),
        Joint.IN_WINDOW: translate("pieces", "in the window"),
        Joint.SCUFFED: translate("pieces", "scuffed"),
        Joint.ON_DRY: translate("pieces", "on dry"),
    }[joint]


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
