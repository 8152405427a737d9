"""Each rule finds what it is for, in a folder that is sound but for one change."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from kiosk.checking.rules import RULES
from kiosk.speaking.voices import SpeechFailed
from tests.checking.shop import INSTRUMENTS, Told, shop

Change = dict[str, tuple[str, str]]

JOG = """      - id: jog
        say: {en: Let it turn., es: Hágala girar., ko: 돌리세요.}
        hold:
          phrase: {en: ready to turn on, es: listo para conectar, ko: 사람이 없어요}
          verify: {en: It is lit., es: Está encendida., ko: 켜져 있습니다.}
        requires: [power isolated]
        establishes: [power on]
        ends: [power isolated]
"""

FAULTY: list[tuple[str, Change, str]] = [
    ("file", {"evening": ("count: {part", "counts: {part")}, "evening.yaml:45: error file: "),
    ("fit", {"evening": ("least: 1, most: 3", "least: 4, most: 3")}, "flush.repeat: 'least'"),
    ("limit-missing", {"morning": ("limit: cold", "limit: cool")}, "has no 'cool'"),
    ("time-under-limit", {"tiny": ("2 min", "5 s")}, "5 s is out of the limit 'contact time'"),
    (
        "unknown-condition",
        {"morning": ("requires: [guards on]", "requires: [guards]")},
        "plug-in.requires: the condition 'guards' is not known",
    ),
    ("unknown-part", {"evening": ("part: seals", "part: seal")}, "has no 'seal'"),
    (
        "unknown-setting",
        {"evening": ("at_least: soak_time", "at_least: soaking")},
        "no setting is called 'soaking'",
    ),
    (
        "not-in-force",
        {"evening": ("requires: [solution mixed]", "requires: [guards on]")},
        "soak.requires: it requires 'guards on', which no step before it establishes",
    ),
    (
        "not-in-force",
        {"evening": ("when: {isolation: lock}", "when: {isolation: plug}")},
        "(with isolation lock)",
    ),
    (
        "hold-idle",
        {"morning": ("requires: [guards on]", "requires: [power isolated]")},
        "close.establishes: no step requires 'guards on'",
    ),
    (
        "release-unguarded",
        {"morning": ("requires: [power on]", "requires: [power on]\n        ends: [power on]")},
        "cold.ends: it ends 'power on'",
    ),
    (
        "need-undercut",
        {
            "common": ("power on: {lapses", "power on: {needs: [guards on], lapses"),
            "morning": ("requires: [power on]", "requires: [power on]\n        ends: [guards on]"),
        },
        "cold.ends: it ends 'guards on', which 'power on' needs, and 'power on' goes on",
    ),
    (
        "need-outlived",
        {"common": ("mixed: {name", "mixed: {needs: [hands clean], name")},
        "'solution mixed' needs 'hands clean', which lapses, and does not lapse itself",
    ),
    (
        "waives-nothing",
        {
            "evening": (
                "requires: [solution mixed]",
                "requires: [solution mixed]\n        regardless: [guards on]",
            )
        },
        "soak.regardless: it would not require 'guards on' without this line",
    ),
    (
        "waives-nothing",
        {
            "evening": (
                "[power isolated]\n      - id: flush",
                "[power isolated]\n        regardless: [power isolated]\n      - id: flush",
            )
        },
        "count.regardless: it requires 'power isolated' and is done regardless of it",
    ),
    (
        "unknown-condition",
        {"common": ("power on: {lapses", "power on: {needs: [guard on], lapses")},
        "'power on' needs 'guard on', and the condition 'guard on' is not known",
    ),
    (
        "danger-unguarded",
        {"evening": ("requires: [power isolated, hands clean]", "requires: [hands clean]")},
        "open.establishes: it brings about the danger 'machine open'",
    ),
    (
        "released-in-danger",
        {"morning": ("      - id: close\n", JOG + "      - id: close\n")},
        "jog.ends: it ends 'power isolated' while the danger 'machine open' is still there",
    ),
    (
        "danger-left",
        {"morning": ("requires: [power on]", "requires: [power on]\n        establishes: [wet]")},
        "cold.establishes: the machine goes into service while the danger 'wet'",
    ),
    (
        "verify-missing",
        {"evening": ("verify: {en: It is dark., es: Está apagada., ko: 꺼져 있습니다.}", "")},
        "isolate-plug.hold: 'open' has a caution and relies on 'power isolated'",
    ),
    (
        "missing-translation",
        {"evening": ("Empty the sink., es: Vacíe el fregadero.,", "Empty the sink.,")},
        "empty.say: the sentence is not there in: es",
    ),
    (
        "empty-text",
        {"evening": ("avoid: {en: Wear gloves.", 'avoid: {en: "..."')},
        "open.caution.avoid.en: the text in 'en' has no letter",
    ),
    (
        "places-differ",
        {"evening": ('"Vierta {flush_volume} encima."', "Vierta agua encima.")},
        "flush.say.es: 'es' has no place, and 'en' has {flush_volume}",
    ),
    (
        "place-not-filled",
        {"evening": ("until: {en: Is it clear?", 'until: {en: "Is {flush volume} clear?"')},
        "flush.repeat.until.en: {flush volume} is no place",
    ),
    (
        "place-not-filled",
        {
            "evening": (
                "until: {en: Is it clear?, es: ¿Está clara?, ko: 맑습니까?}",
                'until: {en: "{flush_volume}?", es: "¿{flush_volume}?", ko: "{flush_volume}?"}',
            )
        },
        "flush.repeat.until.en: {flush_volume} is not filled in here",
    ),
    (
        "quantity-in-sentence",
        {"evening": ("ko: 싱크대를 비우세요.", "ko: 싱크대를 30초 뒤에 비우세요.")},
        "empty.say.ko: '30초' is written into the sentence",
    ),
    (
        "digits-in-sentence",
        {"evening": ("en: Lift off the lid.", "en: Lift off 1 lid.")},
        "open.say.en: the number '1' stands in the sentence",
    ),
    (
        "dose-without-contact",
        {
            "evening": (
                "wait: {at_least: soak_time, limit: contact time}",
                "wait: {at_least: soak_time}",
            )
        },
        "mix.mix: no wait with 'limit: contact time' follows this mix before 'solution mixed' ends",
    ),
    (
        "choices-hide-limit",
        {"morning": ("choices: [2, 4, 6, 8]", "choices: [2, 4]")},
        "cold: of the choices none lies above it (5 °C or less)",
    ),
    (
        "part-left-out",
        {"morning": ("{en: Put the lid on., es: Ponga la tapa., ko: 뚜껑을 덮으세요.}",
                     "{en: Shut it., es: Ciérrela., ko: 닫으세요.}")},
        "the part 'lid' (lid), though 'evening' does",
    ),
    (
        "part-unused",
        {"tiny": ("settings:", "  pin: {name: {en: pin, es: clavo, ko: 핀}, count: 1}\nsettings:")},
        "parts.pin: no procedure of this machine counts, inspects or names 'pin'",
    ),
    (
        "unknown-picture",
        {"evening": ("- id: empty\n", "- id: empty\n        shows: test-strips\n")},
        "empty.shows: there is no picture of 'test-strips'. To mend: write 'test-strip'.",
    ),
    (
        "unknown-picture",
        {"tiny": ("ko: 뚜껑}, count: 1", "ko: 뚜껑}, count: 1, picture: hopper-lids")},
        "parts.lid.picture: there is no picture 'hopper-lids'. To mend: write 'hopper-lid'.",
    ),
    (
        "option-unused",
        {"tiny": ("[plug, lock]", "[plug, lock]\n  sink: [three, two]")},
        "options.sink: the option 'sink' changes no step",
    ),
    (
        "option-unused",
        {"tiny": ("[plug, lock]", "[plug, lock, valve]")},
        "options.isolation: the option 'isolation' with the value 'valve' changes no step",
    ),
    (
        "setting-unused",
        {"tiny": ("flush_volume: 4 L", "flush_volume: 4 L\n  rinse_volume: 4 L")},
        "settings.rinse_volume: no step of any procedure uses",
    ),
    (
        "condition-unused",
        {"common": ("problems:", "  wet: {name: {en: wet, es: mojada, ko: 젖음}}\nproblems:")},
        "conditions.wet: no step requires, establishes or ends 'wet'",
    ),
    (
        "limit-unused",
        {"invented": ("  cold:", "  warm: {bounds: {°C: {least: 9}}, clause: D, source: invented, "
                      "tag: MEM}\n  cold:")},
        "limits.warm: no step is judged by the limit 'warm'",
    ),
    (
        "ambiguous-phrase",
        {"evening": ("phrase: {en: power is cut, es", "phrase: {en: Go on!, es")},
        "",
    ),
    (
        "phrase-too-alike",
        {"evening": ("phrase: {en: power is cut, es", "phrase: {en: next steps, es")},
        "isolate-plug.hold.phrase.en: 'next steps' sounds like 'next step'",
    ),
    (
        "too-long-to-say",
        {"evening": ("en: Empty the sink.", "en: Empty the sink" + " and the sink" * 12 + ".")},
        "empty.say.en: it takes 11.4 s to say, and 9 s is the most",
    ),
]  # fmt: skip

WITH: dict[str, Change] = {
    "danger-left": {
        "common": ("problems:", "  wet: {name: {en: wet, es: mojada, ko: 젖음}, present: "
                   "{en: It is wet., es: Está mojada., ko: 젖었습니다.}}\nproblems:"),
        "morning": ("requires: [power on]",
                    "requires: [power on, guards on]\n        establishes: [wet]"),
    },
    "ambiguous-phrase": {
        "evening": ("phrase: {en: power is cut, es", "phrase: {en: Next step!, es")
    },
}  # fmt: skip
"""Changes of more than one file."""

ALSO: dict[str, set[str]] = {
    "limit-missing": {"limit-unused"},
    "not-in-force": {"option-unused"},
    "option-unused": {"not-in-force"},
    "unknown-setting": {"setting-unused"},
    "dose-without-contact": {"limit-unused"},
}
"""What else follows from the change."""


def test_nothing_stands_against_the_folder_that_the_changes_are_made_in(tmp_path: Path) -> None:
    told = Told(shop(tmp_path))
    assert told.found == []
    assert told.status == 0
    assert told.text.endswith("2 procedures, 3 plans: no errors, no warnings.")


@pytest.mark.parametrize(("rule", "change", "words"), FAULTY, ids=[one[0] for one in FAULTY])
def test_a_rule_finds_what_it_is_for(rule: str, change: Change, words: str, tmp_path: Path) -> None:
    told = Told(shop(tmp_path, **WITH.get(rule, change)))
    assert f"{RULES[rule].severity} {rule}: " in told.text
    assert words in told.text
    assert {name for _, name in told.found} - {rule} <= ALSO.get(rule, set()), told.text
    assert told.status == (1 if told.errors else 0)


def test_every_rule_is_tried() -> None:
    elsewhere = {"unknown-option", "setting-without-unit", "unknown-word", "proof",
                 "reading-never-passes", "missing-message", "translation-behind",
                 "hold-taken-out"}  # fmt: skip
    assert {one[0] for one in FAULTY} | elsewhere == set(RULES)


def test_an_option_value_that_never_comes_is_named_with_the_step(tmp_path: Path) -> None:
    told = Told(shop(tmp_path, evening=("when: {isolation: lock}", "when: {isolation: padlock}")))
    assert "isolate-lock.when: the option 'isolation' is never 'padlock'" in told.text
    assert "unknown-option" in told.errors


def test_a_setting_without_its_unit_is_told_at_the_kind_and_at_the_step(tmp_path: Path) -> None:
    told = Told(shop(tmp_path, tiny=("soak_volume: 8 L", "soak_volume: 8")))
    assert told.errors == {"setting-without-unit"}
    assert "tiny.yaml:8: error setting-without-unit: settings.soak_volume: " in told.text
    assert "evening.yaml:53: error setting-without-unit: mix.mix.volume: " in told.text


def test_a_reading_that_never_passes_is_found_by_looking_and_by_the_search(tmp_path: Path) -> None:
    told = Told(shop(tmp_path, morning=("least: -10", "least: 6")))
    assert told.errors == {"proof", "reading-never-passes"}
    assert (
        "cold: a reading from 6 to 40 °C never passes the limit 'cold' (5 °C or less)" in told.text
    )


def test_a_word_that_the_recogniser_lacks_is_told_where_it_stands(tmp_path: Path) -> None:
    def lacking(language: str, phrases: object) -> list[tuple[str, str]] | None:
        return [("전원 껐음", "껐음"), ("맞습니다", "맞습니다")] if language == "ko" else None

    told = Told(shop(tmp_path), instruments=replace(INSTRUMENTS, unknown=lacking))
    assert told.errors == {"unknown-word"}
    assert "evening.yaml:22: error unknown-word: isolate-plug.hold.phrase.ko: " in told.text
    assert "note: Words in en, es cannot be looked up here" in told.text


def test_where_nothing_can_be_spoken_a_note_says_so_and_no_error_is_made(tmp_path: Path) -> None:
    def broken(*_: object) -> float:
        raise SpeechFailed("the speech worker could not be started")

    mute = replace(INSTRUMENTS, seconds=broken, sounds=broken)
    told = Told(shop(tmp_path), instruments=mute)
    assert told.status == 0
    assert "note: Whether phrases sound alike was not looked at: the speech worker" in told.text
    assert "note: How long the sentences take to say was not looked at: the speech" in told.text


def test_caution_and_step_together_may_not_take_too_long(tmp_path: Path) -> None:
    told = Told(
        shop(tmp_path), instruments=replace(INSTRUMENTS, seconds=lambda _, text: len(text) / 2)
    )
    assert told.warnings == {"too-long-to-say"}
    assert "open.caution: caution and step together take " in told.text
