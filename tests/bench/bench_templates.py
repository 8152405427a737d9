"""Measure the ear for a worker's own words: `python -m tests.bench.bench_templates`.

Prints, clean and at 10 dB of kitchen noise, how many words were understood, taken for another one
of the seven, and how many foreign words were taken for one of them. People's clips are used where
they lie beside the project; the digits there were said twice by each speaker, so that there is one
sample a word to learn from, where a worker gives three.
"""

from __future__ import annotations

import statistics
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from kiosk.languages.words import words
from kiosk.listening.ear import Utterance
from kiosk.listening.own_words import TEACHABLE
from kiosk.listening.template_ear import TemplateEar
from kiosk.listening.templates import Sample, sample_of
from tests.speech.clips import FOREIGN, RECORDINGS, Sound, of_file, utterances
from tests.speech.kitchen import in_kitchen
from tests.speech.synth import speaker

NAMES = tuple(TEACHABLE)
PHRASES = {name: words("en").phrases(act)[0] for name, act in TEACHABLE.items()}
VOICES = ("en-us", "en-us+f3", "en-gb-scotland", "en+f4", "en-us+m3", "en-029")
LESSON = ((150, 50), (165, 45), (140, 55))
"""Words a minute and pitch of the three samples."""
LATER = ((158, 42), (172, 56), (132, 48), (150, 60))
"""Of what is said to the ear after that."""
OTHERS = (*FOREIGN, "continue", "stop here", "close the machine", "change language", "not yet")


@dataclass(slots=True)
class Tally:
    """What became of the words of one kind."""

    said: int = 0
    right: int = 0
    wrong: int = 0
    doubtful: int = 0
    times: list[float] = field(default_factory=list)

    def take(self, ear: TemplateEar, said: Sequence[Utterance], meant: str) -> None:
        """Let an ear hear a word; '' for one that was not taught."""
        found = [ear.hear(one, tuple(PHRASES.values())) for one in said]
        phrase = next((one.phrase for one in found if one.phrase is not None), None)
        self.said += 1
        self.right += phrase is not None and phrase == meant
        self.wrong += phrase is not None and phrase != meant
        self.doubtful += phrase is None and any(one.why == "doubtful" for one in found)
        self.times += [one.decode_s for one in found]


Taught = Mapping[str, Sequence[Sample]]


def learned(sounds: Mapping[str, Sequence[Sound]]) -> Taught:
    """Return the samples of each word, cut out by the gate."""
    cut = {
        name: [sample_of(one.samples) for sound in said for one in utterances(sound)[:1]]
        for name, said in sounds.items()
    }
    return {name: [one for one in samples if one is not None] for name, samples in cut.items()}


def synthetic() -> Iterator[tuple[str, Taught, list[tuple[str, Sound]], list[Sound]]]:
    """Yield for each voice what it taught, what it says later, and what is none of it."""
    for voice in VOICES:
        taught = learned(
            {n: [speaker().say(p, voice, r, h) for r, h in LESSON] for n, p in PHRASES.items()}
        )
        later = [(p, speaker().say(p, voice, r, h)) for p in PHRASES.values() for r, h in LATER]
        others = [speaker().say(text, voice, *LATER[0]) for text in OTHERS]
        yield voice, taught, later, others


def people() -> Iterator[tuple[str, Taught, list[tuple[str, Sound]], list[Sound]]]:
    """Yield the same of each speaker of the digits: 0 to 6 are taught, 7 to 9 are none of it."""
    files = sorted((RECORDINGS / "fsdd").glob("*.wav"))
    clips = {tuple(path.stem.split("_")): of_file(path) for path in files}
    for name in sorted({who for _, who, _ in clips}):
        for lesson, test in (("0", "1"), ("1", "0")):
            digits = dict(zip(NAMES, "0123456", strict=True))
            sounds = {
                n: [clips[d, name, lesson]] for n, d in digits.items() if (d, name, lesson) in clips
            }
            later = [
                (PHRASES[n], clips[d, name, test])
                for n, d in digits.items()
                if (d, name, test) in clips
            ]
            others = [clips[d, name, test] for d in "789" if (d, name, test) in clips]
            yield name, learned(sounds), later, others


def foreign() -> dict[bool, list[list[Utterance]]]:
    """Return people's clips of other words as the gate cuts them, clean and in noise."""
    clips = [of_file(path) for path in sorted((RECORDINGS / "gsc" / "unknown").glob("*.wav"))]
    return {
        False: [utterances(sound) for sound in clips],
        True: [utterances(in_kitchen(sound, 10, seed)) for seed, sound in enumerate(clips)],
    }


def measure(
    title: str,
    speakers: Iterator[tuple[str, Taught, list[tuple[str, Sound]], list[Sound]]],
    strangers: Mapping[bool, Sequence[Sequence[Utterance]]],
) -> None:
    """Print the figures of one kind of speaker."""
    kinds = ("taught words", "own other words", "strangers' words")
    tallies = {(kind, noisy): Tally() for kind in kinds for noisy in (False, True)}
    for _, taught, later, others in speakers:
        ear = TemplateEar(taught, "en")
        material = [
            *((kinds[0], meant, sound) for meant, sound in later),
            *((kinds[1], "", sound) for sound in others),
        ]
        for seed, (kind, meant, sound) in enumerate(material):
            tallies[kind, False].take(ear, utterances(sound), meant)
            tallies[kind, True].take(ear, utterances(in_kitchen(sound, 10, seed)), meant)
        for noisy, cut in strangers.items():
            for said in cut:
                tallies[kinds[2], noisy].take(ear, said, "")
    print(title)
    for (kind, noisy), tally in tallies.items():
        if tally.said:
            where = "10 dB" if noisy else "clean"
            print(
                f"  {kind:17} {where}: {tally.said:5} said, right {tally.right / tally.said:.3f}, "
                f"taken for another {tally.wrong / tally.said:.3f}, "
                f"doubtful {tally.doubtful / tally.said:.3f}"
            )
    times = [one for tally in tallies.values() for one in tally.times]
    if times:
        slow = sorted(times)[round(0.95 * (len(times) - 1))]
        print(
            f"  decode: median {1000 * statistics.median(times):.1f} ms, p95 {1000 * slow:.1f} ms"
        )


if __name__ == "__main__":
    strangers = foreign()
    measure("Synthetic voices, three samples a word", synthetic(), strangers)
    if (RECORDINGS / "fsdd").is_dir():
        measure("People's digits, one sample a word", people(), strangers)
    else:
        print(f"People's digits: not beside the project, in {RECORDINGS}")
