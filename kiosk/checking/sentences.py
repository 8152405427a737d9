"""Rules for every sentence: its languages, its places, its numbers."""

from __future__ import annotations

import re
from collections.abc import Iterator

from kiosk.checking.subject import Sentence, Subject, sentences
from kiosk.procedure.fault import Fault
from kiosk.procedure.yaml_source import Where

PLACE = re.compile(r"\{([a-z_]+)\}")
"""What is filled in: the name of a setting, or `time`, `volume`, `packets`."""

FILLED = ("say", "corrective")
"""Fields of a step whose places are filled in."""

_BRACE = re.compile(r"\{[^{}]*\}?|\}")
_DIGITS = re.compile(r"\d+(?:[.,]\d+)?")
_MEASURED = re.compile(
    r"(?P<number>\d+(?:[.,]\d+)?)\s*-?\s*(?:"
    r"(?:milli)?lit(?:re|er)s?|gallons?|quarts?|(?:fluid )?ounces?|minutes?|seconds?|hours?|grams?"
    r"|degrees?|parts per million"
    r"|(?:mili)?litros?|galon(?:es)?|galón|cuartos?|onzas?|minutos?|segundos?|horas?|grados?|gramos?"
    r"|partes por millón"
    r"|밀리리터|리터|갤런|쿼트|온스|분|초|시간|도|그램"
    r"|galõe?s?|galão|quartos?|onças?|gramas?|graus?|partes por milhão"
    r"|mi ?li ?lít|lít|ga lông|phút|giây|giờ|độ|gam|phần triệu"
    r"|毫升|升|加仑|夸脱|液量盎司|分钟|秒|小时|摄氏度|华氏度|度|克|毫克每升"
    r"|mL|ml|L|fl oz|gal|qt|oz|min|s|h|g|°\s?[CF]|ppm|mg/L)(?![A-Za-zÁ-ÿ])",
    re.IGNORECASE,
)


def missing_translation(subject: Subject) -> Iterator[Fault]:
    """A sentence lacks one of the languages that the kiosk speaks."""
    for file, sentence in _all(subject):
        lacking = [one for one in subject.languages if one not in sentence.text]
        if lacking:
            names = ", ".join(lacking)
            what, mend = f"the sentence is not there in: {names}", f"add it in: {names}"
            yield subject.fault(file, sentence.where, what, mend)


def empty_text(subject: Subject) -> Iterator[Fault]:
    """A sentence has nothing in it that could be said."""
    for file, where, language, text in _each(subject):
        if not any(mark.isalnum() for mark in text):
            what = f"the text in '{language}' has no letter and no digit"
            yield subject.fault(file, where, what, "write the sentence")


def places_differ(subject: Subject) -> Iterator[Fault]:
    """The languages of a sentence do not have the same places to fill in."""
    for file, sentence in _all(subject):
        first = next(iter(sentence.text), "")
        wanted = _places(sentence.text.get(first, ""))
        for language, text in sentence.text.items():
            if (found := _places(text)) != wanted:
                what = f"'{language}' has {_list(found)}, and '{first}' has {_list(wanted)}"
                mend = "use the same places in every language"
                yield subject.fault(file, (*sentence.where, language), what, mend)


def place_not_filled(subject: Subject) -> Iterator[Fault]:
    """A brace would be read out as it stands."""
    for file, where, _, text in _each(subject):
        filled = len(where) > 2 and "steps" in where and where[-2] in FILLED
        for brace in _BRACE.findall(PLACE.sub("", text) if filled else text):
            if PLACE.fullmatch(brace):
                what = f"{brace} is not filled in here, and would be read out as it stands"
                mend = "move it into 'say' or 'corrective', where places are filled in"
            else:
                what = f"{brace} is no place, and would be read out as it stands"
                mend = "write the setting's name in small letters, as {flush_volume}"
            yield subject.fault(file, where, what, mend)


def quantity_in_sentence(subject: Subject) -> Iterator[Fault]:
    """A volume, a time or a temperature is written out where a site cannot change it."""
    for file, where, _, text in _steps(subject):
        for found in _MEASURED.finditer(PLACE.sub("", text)):
            what = f"'{found[0]}' is written into the sentence, so no site can change it"
            mend = "make a setting of it in the machine kind, and write its name in braces"
            yield subject.fault(file, where, what, mend)


def digits_in_sentence(subject: Subject) -> Iterator[Fault]:
    """A bare number in digits."""
    for file, where, _, text in _steps(subject):
        for found in _DIGITS.finditer(_MEASURED.sub("", PLACE.sub("", text))):
            what = f"the number '{found[0]}' stands in the sentence"
            mend = "write a count as a word, and anything measured as a setting"
            yield subject.fault(file, where, what, mend)


def _all(subject: Subject) -> Iterator[tuple[str, Sentence]]:
    for file, record in subject.records():
        for sentence in sentences(record):
            yield file, sentence


def _each(subject: Subject) -> Iterator[tuple[str, Where, str, str]]:
    """Yield each text in each language: file, where, language, text."""
    for file, sentence in _all(subject):
        for language, text in sentence.text.items():
            yield file, (*sentence.where, language), language, text


def _steps(subject: Subject) -> Iterator[tuple[str, Where, str, str]]:
    """Yield each text that belongs to a step."""
    for file, where, language, text in _each(subject):
        if "steps" in where:
            yield file, where, language, text


def _places(text: str) -> list[str]:
    return sorted(PLACE.findall(text))


def _list(places: list[str]) -> str:
    return ", ".join(f"{{{one}}}" for one in places) or "no place"
