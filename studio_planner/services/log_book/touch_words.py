"""How each touch test is done, and what its two answers mean: common practice of the trade."""

from __future__ import annotations

from studio_planner.craft.tongue import marked, translate
from studio_planner.craft.touches import Touch

_FELT = {
    Touch.STRING: marked(
        "touches",
        "Touch the film lightly and lift the finger. Not yet: it draws a string and is too wet "
        "for the next coat. Already: it draws none any more, which alone says little.",
    ),
    Touch.TACK: marked(
        "touches",
        "Press a knuckle on it and lift it. Already: it clings like tape, draws no string and "
        "leaves the glove clean, and takes the next coat. Not yet: it still leaves something.",
    ),
    Touch.NO_MARK: marked(
        "touches",
        "Lay a fingertip on it lightly. Already: no mark stays, it is tack-free. Not yet: a "
        "mark stays, and it can't be laid on its face.",
    ),
    Touch.THUMBNAIL: marked(
        "touches",
        "Press a thumbnail into it. Already: no mark stays, and what lies on it prints "
        "nothing into it. Not yet: the nail leaves its mark.",
    ),
}


def how_felt(touch: Touch) -> str:
    """How a touch test is done and what is meant by its answers, in sentences."""
    return " ".join(
        (
            translate("touches", _FELT[touch]),
            translate(
                "touches",
                "Wear a glove and test where it does not show; the data sheet comes first.",
            ),
        )
    )
