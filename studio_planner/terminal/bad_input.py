"""What the maker typed cannot be used: one sentence, exit code 2."""

from __future__ import annotations


class BadInput(Exception):  # noqa: N818 - reads as a sentence where it is raised
    """An argument that cannot be used; the text says what, where, and what to do."""
