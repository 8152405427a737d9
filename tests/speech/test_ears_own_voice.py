"""What the kiosk says of a hold, heard by its own ear, never answers the hold.

The kiosk is deaf while it speaks. A loudspeaker that lags behind undoes that, and then this is what
keeps a hold from being confirmed with nobody there.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from kiosk.engine import commands as c
from kiosk.engine.offers import offers
from kiosk.engine.prompt import prompt
from kiosk.engine.state import Mode, Stage, State
from kiosk.languages.words import words
from kiosk.listening.grammar import grammar
from kiosk.listening.listener import hear_frames
from kiosk.listening.sources import WaveFile
from kiosk.procedure.plan import Hold
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.speech import Speech
from tests.speech.clips import ear_or_skip
from tests.unit.test_shipped_procedures import plans

pytest.importorskip("espeakng_loader", reason="espeakng-loader, which speaks, is missing")

NOW = c.Instant(0.0, 0.0, "this boot")
STAGES = {Stage.ASK: c.GivePhrase, Stage.READ_BACK: c.Yes, Stage.VERIFY: c.Yes}
"""Every question of a hold, and the act that would bring the hold further."""


@pytest.fixture(scope="module")
def prompts(tmp_path_factory: pytest.TempPathFactory) -> Iterator[PromptCache]:
    renderer = Renderer()
    yield PromptCache(tmp_path_factory.mktemp("prompts"), renderer)
    renderer.close()


def questions(language: str, stage: Stage) -> list[tuple[str, dict[str, c.Act]]]:
    """Return what is said in a stage of each shipped hold, and what may be answered to it."""
    said = words(language)
    found: dict[tuple[str, tuple[str, ...]], dict[str, c.Act]] = {}
    for plan in plans():
        for step in plan.steps:
            if not isinstance(step.task, Hold):
                continue
            if stage is Stage.VERIFY and step.task.verify is None:
                continue
            asked = State(mode=Mode.RUNNING, step=step.id, goal=step.id, stage=stage, since=NOW)
            allowed = grammar(plan, step.id, offers(plan, asked, NOW), said)
            found[said.spoken(prompt(plan, asked)), tuple(allowed)] = allowed
    return [(text, allowed) for (text, _), allowed in found.items()]


@pytest.mark.parametrize("stage", STAGES, ids=lambda stage: stage.value.replace(" ", "-"))
@pytest.mark.parametrize("language", ["en", "ko"])
def test_the_kiosks_own_question_does_not_answer_itself(prompts, language, stage):
    ear = ear_or_skip(language)
    asked = questions(language, stage)
    assert asked
    answered: list[tuple[str, str]] = []
    utterances = 0
    for text, allowed in asked:
        assert STAGES[stage] in map(type, allowed.values()), text
        wave: Path = prompts.wave(Speech(text, language))
        for heard in hear_frames(WaveFile(wave).frames(), ear, allowed):
            utterances += 1
            if heard.phrase is not None and isinstance(allowed[heard.phrase], STAGES[stage]):
                answered.append((heard.phrase, text))
    assert utterances >= len(asked)
    assert answered == [], f"{len(answered)} of {len(asked)} questions"
