"""Which voice speaks a language, how fast, and what text can be spoken at all."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from kiosk.languages.notice import Told
from kiosk.languages.words import notice

SLOWEST_RATE = 80
FASTEST_RATE = 450
"""Words per minute; outside this espeak-ng clips the rate without a word."""

USUAL = 100
"""Percent of a voice's own pitch and volume."""

LONGEST_TEXT = 2_000
"""Characters. About two and a half minutes of speech: a longer prompt is a mistake."""


class SpeechFailed(Told):
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
    gap: int = 0
    """Silence between words, in espeak-ng's units of about 10 ms; longer where it speaks slowly."""


# About 150 words a minute is a usual pace for plain instructions to adults; the figure is recalled
# from memory, and no standard for it was found. espeak-ng counts its words by a nominal length, the
# same for every language, so one figure gives about one tempo of syllables everywhere. Korean,
# Vietnamese and Mandarin are given a tenth less: a Korean word carries its grammar in its last
# syllable, and the other two are tonal. That tenth is a guess which no listener has checked.
#
# The gap parts English words that run into one another: 'put them in the tray' was 'but now in the
# trade'. Measured for English alone (INTELLIGIBLE.md).
VOICES: Mapping[str, VoiceChoice] = MappingProxyType(
    {
        "en": VoiceChoice("gmw/en-us", 150, ("en-us", "en"), gap=3),
        "es": VoiceChoice("roa/es-419", 150, ("es-419", "es-us", "es-mx", "es")),
        "ko": VoiceChoice("ko", 135, ("ko-kr", "ko")),
        "vi": VoiceChoice("aav/vi", 135, ("vi-vn", "vi")),
        "zh": VoiceChoice("sit/cmn", 135, ("cmn-cn", "zh-cn", "cmn", "zh")),
        "pt": VoiceChoice("roa/pt-br", 150, ("pt-br", "pt")),
    }
)


def choice_for(language: str) -> VoiceChoice:
    """Return the voice of `language`; raises SpeechFailed when there is none."""
    try:
        return VOICES[language]
    except KeyError:
        known = ", ".join(VOICES)
        raise SpeechFailed(notice("speech-no-voice", language=language, known=known)) from None


def checked_text(text: str) -> str:
    """Return `text` with its white space made single; raises SpeechFailed if nothing can be said.

    Control characters become spaces: the driver hands the text on as a C string, which a NUL ends.
    """
    plain = " ".join("".join(mark if mark.isprintable() else " " for mark in text).split())
    if not any(mark.isalnum() for mark in plain):
        raise SpeechFailed(notice("speech-no-letter", text=repr(text)))
    if len(plain) > LONGEST_TEXT:
        length, most = str(len(plain)), str(LONGEST_TEXT)
        raise SpeechFailed(
            notice("speech-too-long", text=repr(plain[:40]), length=length, most=most)
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


def paced(rate: int, percent: int) -> int:
    """Return a rate made slower or faster, in words per minute, within what can be spoken."""
    return min(FASTEST_RATE, max(SLOWEST_RATE, round(rate * percent / USUAL)))


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
