"""Figures of hearing through a prompt: `python -m tests.bench.bench_echo [--rooms 0 3] [--all]`.

The room is made up: a delay beside the device's own, a decaying response, the loudspeaker at -6,
-12 and -20 dB at the microphone, clean and driven into distortion. The worker speaks half a second
into a prompt, with a root mean square of -26 dB.
"""

from __future__ import annotations

import argparse
import tempfile
import time
from collections.abc import Mapping
from concurrent.futures import Future
from pathlib import Path

import numpy as np

from kiosk.engine.offers import offers
from kiosk.engine.prompt import prompt
from kiosk.languages.words import words
from kiosk.listening.cut_short import CUTS, cuts
from kiosk.listening.ear import Ear, Heard, Utterance
from kiosk.listening.echo import Cleaned, SpeechBeside
from kiosk.listening.endpoint import FRAME_S, Gate
from kiosk.listening.grammar import Grammar, grammar
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.turn import Turn
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.speech import Speech
from tests.speech.echoes import BEFORE_S, Kiosk, Room, Sound, decibels, rms
from tests.speech.material import VOICES
from tests.speech.moments import NOW, _states
from tests.speech.synth import speaker
from tests.unit.test_shipped_procedures import plans

PROCEDURE = "open-single-pump"
WORKER = 10 ** (-26 / 20)
INTO_S = 0.5
ROOMS = (
    Room(20, -6), Room(60, -12), Room(60, -20), Room(60, -6, driven=3.0),
    Room(150, -6, 0.5, driven=3.0),
)  # fmt: skip
Prompts = list[tuple[str, Grammar, Path]]


def heard_in(
    frames: list[tuple[Sound, Cleaned]], ear: Ear, allowed: Mapping[str, object], *, cleaned: bool
) -> list[Heard]:
    """Return what an ear makes of the frames, cleaned or as they came."""

    def begin(utterance: Utterance) -> Future[Heard]:
        begun: Future[Heard] = Future()
        begun.set_result(ear.hear(utterance, tuple(allowed)))
        return begun

    beside = SpeechBeside()
    turn = Turn(Gate(detector=beside), begin, lambda: allowed)
    found = []
    for frame, clean in frames:
        beside.listen_to(clean.for_gate if cleaned else frame)
        found.append(turn.feed(clean.for_ear if cleaned else frame))
    return [one[1] for one in [*found, turn.flush()] if one is not None]


def own_voice(prompts: Prompts, ear: Ear, room: Room, *, cleaned: bool) -> str:
    """Say every prompt to nobody."""
    kiosk, reduced = Kiosk(room), []
    utterances = taken = cutting = 0
    for text, allowed, wave in prompts:
        frames = list(kiosk.play(wave))
        came = np.concatenate([frame for frame, _ in frames])
        for_ear = np.concatenate([one.for_ear for _, one in frames])
        for_gate = np.concatenate([one.for_gate for _, one in frames])
        level = decibels(came)
        reduced.append((level - decibels(for_gate), level - decibels(for_ear)))
        for heard in heard_in(frames, ear, allowed, cleaned=cleaned):
            utterances += 1
            taken += heard.phrase is not None
            cutting += heard.phrase in cuts(allowed, text)
    gate, for_ear_db = np.median(reduced[3:], axis=0)
    return (
        f"{len(prompts)} prompts: gate opened {utterances}, taken {taken}, cut short {cutting}; "
        f"echo less by {gate:.0f} dB for the gate, {for_ear_db:.0f} dB for the ear"
    )


def recall(prompts: Prompts, ear: Ear, room: Room, *, cleaned: bool, times: int) -> str:
    """Let a worker say what may cut a prompt short, in several voices."""
    language, kiosk = ear.language, Kiosk(room)
    long = [one for one in prompts if one[2].stat().st_size > 3 * 44_100]
    for _, _, wave in long[:2]:
        list(kiosk.play(wave))
    right: dict[str, list[int]] = {}
    all_of_them = turn = wrong = 0
    for text, allowed, wave in long * 20:
        acts = {type(act): phrase for phrase, act in reversed(allowed.items())}
        wanted = [acts[kind] for kind in CUTS if kind in acts and acts[kind] in cuts(allowed, text)]
        if not wanted:
            continue
        phrase = wanted[turn % len(wanted)]
        voice, rate, pitch = VOICES[language][turn % len(VOICES[language])]
        turn += 1
        word = speaker().say(phrase, voice, rate, pitch)[4_800:-12_800]
        word = word * (WORKER / rms(word[np.abs(word) > 0.01]))
        start = round((BEFORE_S + INTO_S) * 16_000)

        def beside(count: int, word: Sound = word, start: int = start) -> Sound:
            sound = np.zeros(count, dtype=np.float32)
            sound[start : start + len(word)] += word[: count - start]
            return sound

        frames = list(kiosk.play(wave, beside))
        found = [one.phrase for one in heard_in(frames, ear, allowed, cleaned=cleaned)]
        acts_heard = [allowed[one] for one in found if one in cuts(allowed, text)]
        understood = allowed[phrase] in acts_heard
        said = right.setdefault(phrase, [0, 0])
        said[0] += understood
        said[1] += 1
        wrong += sum(one != allowed[phrase] for one in acts_heard)
        all_of_them += understood
        if turn == times:
            break
    each = ", ".join(f"{phrase} {hit}/{of}" for phrase, (hit, of) in right.items())
    return f"heard {all_of_them} of {turn} ({each}); wrong {wrong}"


def prompts_of(cache: PromptCache, language: str) -> Prompts:
    """Return what one procedure says, with what may be answered to it."""
    said = words(language)
    plan = next(one for one in plans() if one.procedure == PROCEDURE)
    found: dict[str, tuple[str, Grammar, Path]] = {}
    for state in _states(plan):
        text = said.spoken(prompt(plan, state))
        allowed = grammar(plan, state.step, offers(plan, state, NOW), said)
        if text and allowed:
            found.setdefault(text, (text, allowed, cache.wave(Speech(text, language))))
    return list(found.values())


def cost(prompts: Prompts) -> str:
    """Return the filter's share of a core."""
    kiosk = Kiosk(Room())
    frames = list(kiosk.frames(prompts[0][2]))
    began = time.perf_counter()
    for frame in frames:
        kiosk.filter.clean(frame)
    return f"{100 * (time.perf_counter() - began) / (len(frames) * FRAME_S):.1f} % of a core"


def main() -> None:
    """Print the figures of one language."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--language", default="en", choices=("en", "ko"))
    asked.add_argument("--times", type=int, default=42, help="phrases said in each room")
    asked.add_argument("--rooms", type=int, nargs="+", default=range(len(ROOMS)), help="by number")
    asked.add_argument("--all", action="store_true", help="without the filter, too")
    given = asked.parse_args()
    ear = open_ear(given.language)
    if isinstance(ear, Missing):
        raise SystemExit(ear.mend)
    renderer = Renderer()
    with tempfile.TemporaryDirectory() as folder:
        prompts = prompts_of(PromptCache(Path(folder), renderer), given.language)
        print(f"{given.language}, {PROCEDURE}, {ear.name}; the filter takes {cost(prompts)}")
        for room in (ROOMS[number] for number in given.rooms):
            for cleaned in (False, True) if given.all else (True,):
                print(room, "filtered" if cleaned else "as it came")
                print(" ", own_voice(prompts, ear, room, cleaned=cleaned))
                print(
                    " ", recall(prompts, ear, room, cleaned=cleaned, times=given.times), flush=True
                )
    renderer.close()


if __name__ == "__main__":
    main()
