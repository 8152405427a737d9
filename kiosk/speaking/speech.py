"""What the synthesiser is to say, and how."""

from __future__ import annotations

from dataclasses import dataclass, replace

from kiosk.speaking.voices import USUAL, checked_rate, checked_text


@dataclass(frozen=True, slots=True)
class Speech:
    """One text in one manner: all that shapes its sound.

    The fields are those of an utterance in the W3C's Web Speech API (MEM), in units of our own.
    """

    text: str
    language: str
    voice: str | None = None
    """Identifier such as 'gmw/en-us+f3'; None takes the language's own."""
    rate: int | None = None
    """Words per minute; None takes the language's own."""
    pitch: int = USUAL
    """Percent, as the volume."""
    volume: int = USUAL

    def checked(self) -> Speech:
        """Return it with its blanks made single and with a rate. Raises SpeechFailed where it
        cannot be said."""
        rate = checked_rate(self.language, self.rate)
        return replace(self, text=checked_text(self.text), rate=rate)
