"""A small procedures folder with one machine, evening and morning, against which nothing stands."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from pathlib import Path

from kiosk.checking.check import check
from kiosk.checking.instruments import Instruments, Sounds

SPOKEN = ("en", "es", "ko")
"""The languages that the sentences of this folder are in."""

COMMON = """
conditions:
  hands clean: {lapses: true, name: {en: hands clean, es: manos limpias, ko: 깨끗한 손}}
  power isolated: {name: {en: isolated, es: cortada, ko: 차단}}
  power on: {lapses: true, name: {en: power on, es: corriente, ko: 전원}}
  guards on: {name: {en: guards on, es: protecciones, ko: 덮개}}
  solution mixed: {name: {en: mixed, es: preparada, ko: 용액}}
  machine open:
    name: {en: open, es: abierta, ko: 열림}
    present: {en: It is open., es: Está abierta., ko: 열려 있습니다.}
problems:
  leak:
    name: {en: the machine is leaking, es: hay una fuga, ko: 누수가 있어요}
    corrective: {en: Wipe it., es: Séquelo., ko: 닦으세요.}
    source: common practice, no source
"""

KIND = """
id: tiny
title: {en: Tiny, es: Pequeña, ko: 작은 기계}
hoppers: 1
parts:
  seals: {name: {en: rubber seals, es: sellos de goma, ko: 고무 씰}, count: 2}
  lid: {name: {en: lid, es: tapa, ko: 뚜껑}, count: 1}
settings:
  soak_volume: 8 L
  soak_time: 2 min
  flush_volume: 4 L
  thermometer_unit: °C
options:
  isolation: [plug, lock]
"""

LIMITS = """
id: invented
title: {en: Invented, es: Inventado, ko: 가상}
edition: first
date: 2020
limits:
  contact time: {bounds: {s: {least: 10}}, clause: A, source: invented, tag: MEM}
  strength: {bounds: {mg/L: {least: 50, most: 200}}, clause: B, source: invented, tag: MEM}
  cold: {bounds: {°C: {most: 5}}, clause: C, source: invented, tag: MEM}
"""

EVENING = """
id: evening
version: 1
title: {en: Evening, es: Noche, ko: 저녁}
machine_kind: tiny
limits: invented
drafted: [es, ko]
follow: {en: The manual comes first., es: El manual manda., ko: 설명서가 먼저입니다.}
begins_from: [in service]
during: being taken apart
leaves: apart and drying
phases:
  - id: work
    title: {en: Work, es: Trabajo, ko: 작업}
    steps:
      - id: hands
        say: {en: Wash your hands., es: Lávese las manos., ko: 손을 씻으세요.}
        establishes: [hands clean]
      - id: isolate-plug
        when: {isolation: plug}
        say: {en: Pull the plug., es: Desenchufe., ko: 플러그를 뽑으세요.}
        hold:
          phrase: {en: power is cut, es: corriente cortada, ko: 전원 껐음}
          verify: {en: It is dark., es: Está apagada., ko: 꺼져 있습니다.}
        establishes: [power isolated]
        ends: [power on]
      - id: isolate-lock
        when: {isolation: lock}
        say: {en: Lock it., es: Póngale candado., ko: 잠그세요.}
        hold:
          phrase: {en: power is cut, es: corriente cortada, ko: 전원 껐음}
          verify: {en: It is dark., es: Está apagada., ko: 꺼져 있습니다.}
        establishes: [power isolated]
        ends: [power on]
      - id: open
        say: {en: Lift off the lid., es: Quite la tapa., ko: 뚜껑을 여세요.}
        caution:
          signal: caution
          hazard: {en: It is sharp., es: Corta., ko: 날카롭습니다.}
          consequence: {en: It cuts., es: Le corta., ko: 베입니다.}
          avoid: {en: Wear gloves., es: Use guantes., ko: 장갑을 끼세요.}
        requires: [power isolated, hands clean]
        establishes: [machine open]
      - id: count
        say: {en: How many seals are there?, es: ¿Cuántos sellos hay?, ko: 씰이 몇 개입니까?}
        count: {part: seals}
        requires: [power isolated]
      - id: flush
        say:
          en: "Pour {flush_volume} over it."
          es: "Vierta {flush_volume} encima."
          ko: "{flush_volume} 부으세요."
        repeat: {least: 1, most: 3, until: {en: Is it clear?, es: ¿Está clara?, ko: 맑습니까?}}
      - id: mix
        say: {en: What does the strip read?, es: ¿Qué marca la tira?, ko: 시험지가 얼마입니까?}
        mix: {volume: soak_volume, limit: strength, choices: [0, 50, 100, 300]}
        establishes: [solution mixed]
      - id: soak
        say: {en: "Wait for {time}.", es: "Espere {time}.", ko: "{time} 기다리세요."}
        wait: {at_least: soak_time, limit: contact time}
        requires: [solution mixed]
      - id: empty
        say: {en: Empty the sink., es: Vacíe el fregadero., ko: 싱크대를 비우세요.}
        ends: [solution mixed]
"""

MORNING = """
id: morning
version: 1
title: {en: Morning, es: Mañana, ko: 아침}
machine_kind: tiny
limits: invented
drafted: [es, ko]
follow: {en: The manual comes first., es: El manual manda., ko: 설명서가 먼저입니다.}
begins_from: [apart and drying]
during: being put together
leaves: in service
phases:
  - id: work
    title: {en: Work, es: Trabajo, ko: 작업}
    steps:
      - id: isolate
        say: {en: Look at the plug., es: Mire el enchufe., ko: 플러그를 보세요.}
        hold:
          phrase: {en: power is cut, es: corriente cortada, ko: 전원 껐음}
          verify: {en: It is dark., es: Está apagada., ko: 꺼져 있습니다.}
        establishes: [power isolated, machine open]
      - id: look
        say: {en: Look at both of them., es: Mire los dos., ko: 둘을 보세요.}
        inspect: {part: seals}
        requires: [power isolated]
      - id: close
        say: {en: Put the lid on., es: Ponga la tapa., ko: 뚜껑을 덮으세요.}
        hold:
          phrase: {en: everything is in place, es: todo en su lugar, ko: 제자리에 있어요}
          verify: {en: Pull at it., es: Jale de ella., ko: 당겨 보세요.}
        establishes: [guards on]
        ends: [machine open]
      - id: plug-in
        say: {en: Plug it in., es: Enchufe., ko: 플러그를 꽂으세요.}
        hold:
          phrase: {en: ready to turn on, es: listo para conectar, ko: 사람이 없어요}
          verify: {en: It is lit., es: Está encendida., ko: 켜져 있습니다.}
        requires: [guards on]
        establishes: [power on]
        ends: [power isolated]
      - id: cold
        say: {en: How cold is it?, es: ¿Qué temperatura hay?, ko: 몇 도입니까?}
        measure:
          quantity: mix temperature
          unit: thermometer_unit
          limit: cold
          least: -10
          most: 40
          choices: [2, 4, 6, 8]
        corrective: {en: Let it cool., es: Deje enfriar., ko: 더 식히세요.}
        requires: [power on]
"""

FILES = {
    "common.yaml": COMMON,
    "machines/tiny.yaml": KIND,
    "limits/invented.yaml": LIMITS,
    "evening.yaml": EVENING,
    "morning.yaml": MORNING,
}


def letters(phrases: Mapping[str, Sequence[str]]) -> Sounds:
    """Letters in place of phonemes: enough to tell phrases apart."""
    return {
        (language, phrase): tuple(phrase) for language, said in phrases.items() for phrase in said
    }


INSTRUMENTS = Instruments(
    sounds=letters, seconds=lambda _, text: len(text) / 15, unknown=lambda *_: None
)
"""Quick stand-ins; the real ones have tests of their own."""


def shop(folder: Path, **changed: tuple[str, str]) -> Path:
    """Write the folder; `changed` maps a file's stem to a text in it and what replaces it."""
    for name, text in FILES.items():
        path = folder / name
        path.parent.mkdir(exist_ok=True)
        old, new = changed.get(path.stem, ("", ""))
        if text.count(old) < 1:
            raise LookupError(f"{name} has no {old!r}")
        text = text.replace(old, new, 1) if old else text
        path.write_text(text.lstrip(), encoding="utf-8")
    return folder


class Told:
    """What a check printed, and what it returned."""

    def __init__(
        self,
        folder: Path,
        *files: Path,
        instruments: Instruments = INSTRUMENTS,
        explain: str = "",
    ) -> None:
        lines: list[str] = []
        self.status = check(
            files, folder, lines.append, explain, instruments=instruments, spoken=SPOKEN
        )
        self.text = "\n".join(lines)
        self.found = re.findall(r": (error|warning) ([a-z-]+): ", self.text)
        self.errors = {rule for severity, rule in self.found if severity == "error"}
        self.warnings = {rule for severity, rule in self.found if severity == "warning"}
