"""Which voice speaks a language, how fast, and what text can be spoken at all."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from types import MappingProxyType

SLOWEST_RATE = 80
FASTEST_RATE = 450
"""Words per minute; outside this espeak-ng clips the rate without a word."""

LONGEST_TEXT = 2_000
"""Characters. About two and a half minutes of speech: a longer prompt is a mistake."""


class SpeechFailed(Exception):
    """A text could not be spoken; the message is a sentence that says what to mend."""


@dataclass(frozen=True, slots=True)
class VoiceChoice:
    """The voice and the pace of one language."""

    voice: str
    """Identifier of the voice in espeak-ng."""
    rate: int
    """Words per minute as espeak-ng counts them."""
    regions: tuple[str, ...]
    """Language tags to look for, in this order, among the voices of macOS or Windows."""


# About 150 words a minute is a usual pace for plain instructions to adults; the figure is recalled
# from memory, and no standard for it was found. espeak-ng counts its words by a nominal length, the
# same for every language, so one figure gives about one tempo of syllables everywhere. Korean,
# Vietnamese and Mandarin are given a tenth less: a Korean word carries its grammar in its last
# syllable, and the other two are tonal. That tenth is a guess which no listener has checked.
VOICES: Mapping[str, VoiceChoice] = MappingProxyType(
    {
        "en": VoiceChoice("gmw/en-us", 150, ("en-us", "en")),
        "es": VoiceChoice("roa/es-419", 150, ("es-419", "es-us", "es-mx", "es")),
        "ko": VoiceChoice("ko", 135, ("ko-kr", "ko")),
        "vi": VoiceChoice("aav/vi", 135, ("vi-vn", "vi")),
        "cmn": VoiceChoice("sit/cmn", 135, ("cmn-cn", "zh-cn", "cmn", "zh")),
        "pt-br": VoiceChoice("roa/pt-br", 150, ("pt-br", "pt")),
    }
)


def choice_for(language: str) -> VoiceChoice:
    """Return the voice of `language`; raises SpeechFailed when there is none."""
    try:
        return VOICES[language]
    except KeyError:
        known = ", ".join(VOICES)
        raise SpeechFailed(
            f"there is no voice for the language '{language}'; there are voices for {known}"
        ) from None


def checked_text(text: str) -> str:
    """Return `text` with its white space made single; raises SpeechFailed if nothing can be said.

    Control characters become spaces: the driver hands the text on as a C string, which a NUL ends.
    """
    plain = " ".join("".join(mark if mark.isprintable() else " " for mark in text).split())
    if not any(mark.isalnum() for mark in plain):
        raise SpeechFailed(
            f"the text {text!r} is empty: there is no letter and no digit to speak in it"
        )
    if len(plain) > LONGEST_TEXT:
        raise SpeechFailed(
            f"the text {plain[:40]!r}... has {len(plain)} characters; split it, "
            f"{LONGEST_TEXT} is the most that is spoken at once"
        )
    return plain


def checked_rate(language: str, rate: int | None) -> int:
    """Return `rate`, or the language's own; words per minute. Raises SpeechFailed out of range."""
    if rate is None:
        return choice_for(language).rate
    if not SLOWEST_RATE <= rate <= FASTEST_RATE:
        raise SpeechFailed(
            f"the rate {rate} is outside {SLOWEST_RATE} to {FASTEST_RATE} words per minute"
        )
    return rate


def is_voice(asked: str, speaking: str) -> bool:
    """Tell whether the voice that was read back is the one asked for.

    The driver lowers the letters and puts the family before the language: 'en-us+f3' is read back
    as 'gmw/en-us+f3'. An unknown variant is dropped without an error, so it must match as well.
    """
    wanted, got = asked.lower(), speaking.lower()
    return got == wanted or got.endswith(f"/{wanted}")


def native_voice(language: str, voices: Iterable[tuple[str, Iterable[str]]]) -> str:
    """Return the identifier of the computer's own voice that suits `language` best.

    `voices` holds pairs of an identifier and its language tags ('ko_KR', 'es-MX'). Raises
    SpeechFailed when none suits.
    """
    tagged = [
        (name, [tag.lower().replace("_", "-") for tag in tags if tag]) for name, tags in voices
    ]
    for region in choice_for(language).regions:
        for name, tags in tagged:
            if any(tag == region or tag.startswith(f"{region}-") for tag in tags):
                return name
    raise SpeechFailed(
        f"this computer has no voice for the language '{language}'; add one in its speech settings"
    )
