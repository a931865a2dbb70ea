"""The style of the desk in which nothing glides, for those who want that; loaded only then."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QProxyStyle, QStyle
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtWidgets import QStyleHintReturn, QStyleOption, QWidget

_Hint = QStyle.StyleHint
_STILL = {_Hint.SH_Widget_Animation_Duration, _Hint.SH_Widget_Animate}


class StillStyle(QProxyStyle):
    """A style whose parts change at once instead of sliding or fading."""

    @override
    def styleHint(
        self,
        hint: QStyle.StyleHint,
        option: QStyleOption | None = None,
        widget: QWidget | None = None,
        returnData: QStyleHintReturn | None = None,
    ) -> int:
        return 0 if hint in _STILL else super().styleHint(hint, option, widget, returnData)
