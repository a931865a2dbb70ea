"""Sizes in pixels that several parts of the desk keep to."""

from __future__ import annotations

LANE_HEAD_WIDTH = 196
"""How wide the names of the pieces are, left of the time axis."""

LINE_HEIGHT = 36
"""How high the line over the timeline is; it never changes under the pointer."""

ROOM_HEIGHT = 156
"""How high the room under the timeline is."""

SIDE_WIDTH = 316
"""How wide the side of the desk is."""

LEAST_WIDTH, LEAST_HEIGHT = 640, 400
"""How small the window may become; a screen of 1400 by 900 at 200 % has room for it."""
