"""Speaking another language where no Qt is: the words come from the list of texts itself."""

from __future__ import annotations

from xml.etree import ElementTree as ET

from studio_planner.craft import tongue
from studio_planner.craft.resources import resource_path

ENGLISH = "en"
"""What everything is written in."""


def speak(language: str) -> bool:
    """Say everything in a language from now on, such as "de"; False when it is not known."""
    if language == ENGLISH:
        tongue.speak_with(None)
        return True
    if not language.isalpha():
        return False
    try:
        texts = resource_path(f"translations/studio_planner_{language}.ts")
    except FileNotFoundError:
        return False
    said = {
        (context.findtext("name"), message.findtext("source")): message.findtext("translation")
        for context in ET.parse(texts).getroot().iter("context")  # noqa: S314 - our own file
        for message in context.iter("message")
    }
    tongue.speak_with(lambda context, text: said.get((context, text)) or text)
    return True
