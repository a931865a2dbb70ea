"""The two looks of the desk, warm paper by day and the same workshop at night.

Every colour that is painted comes from a Theme. Text keeps a contrast of 4.5 to 1 and signs
one of 3 to 1 with all that they may lie on (WCAG 2.2, 1.4.3 and 1.4.11), as do the outlines of
fields; a test holds both.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtGui import QColor, QPalette

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

_TONES = 1024
"""As many tones of film are told apart; no screen shows more."""


_OUTLINED = (
    "QLineEdit",
    "QAbstractSpinBox",
    "QComboBox",
    "QCheckBox",
    "QRadioButton",
    "QPlainTextEdit",
    "QTextEdit",
    "QPushButton",
)
"""What is drawn with an outline, and nothing else, in the colour of its window."""

_DARKER = 140
"""By how many per cent the style darkens that colour for an outline."""


class Look(Enum):
    """Which of the two looks is on."""

    LIGHT = "light"
    DARK = "dark"


@dataclass(frozen=True, slots=True, kw_only=True)
class Theme:
    """All colours of one look, as #rrggbb; `film` runs from wet to hard as (tone, colour)."""

    look: Look
    paper: str
    field: str
    panel: str
    night: str
    outline: str
    rule: str
    faint_rule: str
    ink: str
    quiet: str
    window: str
    window_wash: str
    now: str
    hands: str
    dew: str
    warmth: str
    warmth_band: str
    film: tuple[tuple[float, str], ...]
    film_edge: str
    ripple: str
    wood: str
    selected: str
    selected_text: str

    def colour(self, name: str) -> QColor:
        """The colour of a field, such as "ink"."""
        return QColor(getattr(self, name))

    def film_colour(self, tone: float) -> QColor:
        """The colour of a film from 0 (wet) to 1 (hard), blended straight between its steps."""
        return _film_colour(self.film, round(tone * _TONES))

    @property
    def palette(self) -> QPalette:
        """The palette for the ordinary widgets."""
        palette = QPalette()
        role = QPalette.ColorRole
        roles = {
            role.Window: "paper",
            role.Base: "field",
            role.AlternateBase: "panel",
            role.Button: "panel",
            role.ToolTipBase: "panel",
            role.WindowText: "ink",
            role.Text: "ink",
            role.ButtonText: "ink",
            role.ToolTipText: "ink",
            role.PlaceholderText: "quiet",
            role.Link: "window",
            role.Highlight: "selected",
            role.HighlightedText: "selected_text",
            role.Accent: "selected",
            role.Light: "panel",
            role.Midlight: "faint_rule",
            role.Mid: "rule",
            role.Dark: "quiet",
            role.Shadow: "ink",
        }
        for which, name in roles.items():
            palette.setColor(which, self.colour(name))
        for which in (role.WindowText, role.Text, role.ButtonText):
            palette.setColor(QPalette.ColorGroup.Disabled, which, self.colour("quiet"))
        return palette

    @property
    def outlined(self) -> QPalette:
        """The palette for fields, ticks and buttons, so that their outlines stand out."""
        palette = self.palette
        window = self.colour("outline").lighter(_DARKER)
        palette.setColor(QPalette.ColorRole.Window, window)
        return palette


LIGHT = Theme(
    look=Look.LIGHT,
    paper="#fbf8f2",
    field="#fffdf9",
    panel="#f4efe5",
    night="#e9e5dc",
    outline="#82796b",
    rule="#cfc8ba",
    faint_rule="#e0dacd",
    ink="#26221d",
    quiet="#5d564c",
    window="#00568c",
    window_wash="#cfe2ef",
    now="#ab4100",
    hands="#1f7758",
    dew="#00568c",
    warmth="#93550f",
    warmth_band="#ecd8b8",
    film=((0.0, "#9c4f0b"), (0.34, "#d58d36"), (0.7, "#edcf97"), (1.0, "#f4ecdb")),
    film_edge="#75603f",
    ripple="#6f3504",
    wood="#c2a37a",
    selected="#26221d",
    selected_text="#fbf8f2",
)

DARK = Theme(
    look=Look.DARK,
    paper="#1c1b1a",
    field="#3a3733",
    panel="#272523",
    night="#121110",
    outline="#968e81",
    rule="#4a4641",
    faint_rule="#33302c",
    ink="#f3eee4",
    quiet="#b0a89b",
    window="#74bdec",
    window_wash="#1d3d52",
    now="#ff8a58",
    hands="#58bd98",
    dew="#74bdec",
    warmth="#e6a14c",
    warmth_band="#4d3a22",
    film=((0.0, "#f2a33f"), (0.34, "#bd762b"), (0.7, "#75573a"), (1.0, "#47423b")),
    film_edge="#a08d70",
    ripple="#ffd79b",
    wood="#7a6244",
    selected="#f3eee4",
    selected_text="#1c1b1a",
)


def wear(application: QApplication, theme: Theme) -> None:
    """Let all ordinary widgets of an application have the colours of a theme."""
    application.setPalette(theme.palette)
    for kind in _OUTLINED:
        # The stub asks for bytes, which PySide6 itself does not take.
        application.setPalette(theme.outlined, kind)  # type: ignore[arg-type]


def theme_for(look: Look) -> Theme:
    """The theme of a look."""
    return DARK if look is Look.DARK else LIGHT


@lru_cache(maxsize=4 * _TONES)
def _film_colour(film: tuple[tuple[float, str], ...], step: int) -> QColor:
    tone = step / _TONES
    after = min(max(bisect_right([step for step, _ in film], tone), 1), len(film) - 1)
    (low, from_name), (high, to_name) = film[after - 1], film[after]
    share = min(max((tone - low) / (high - low), 0.0), 1.0)
    one, other = QColor(from_name), QColor(to_name)
    red = one.red() + (other.red() - one.red()) * share
    green = one.green() + (other.green() - one.green()) * share
    blue = one.blue() + (other.blue() - one.blue()) * share
    return QColor(round(red), round(green), round(blue))
