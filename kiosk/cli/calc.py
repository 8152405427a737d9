"""`kiosk calc`: the calculators on the command line, with the answers that a walk would give."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterable
from dataclasses import replace

from kiosk.cli.place import Failed, data
from kiosk.cli.place import library as library_of
from kiosk.clock import SystemClock
from kiosk.engine.prompt import Number
from kiosk.languages.words import Words, words
from kiosk.reckoning.asking import taken_in
from kiosk.reckoning.bench import bench
from kiosk.reckoning.calculator import NumberWanted, OneOf, Question
from kiosk.reckoning.interview import Interview, NotAnAnswer
from kiosk.reckoning.table import CALCULATORS
from kiosk.reckoning.typed import read_answers, unit_taken


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    calc = commands.add_parser(
        "calc",
        help="work out doses, strengths, dates and laboratory results",
        description="Without a calculator, the calculators are listed. Answers that are missing "
        "are asked for at the terminal.",
    )
    calc.add_argument("calculator", nargs="?", help="its name, as dose")
    calc.add_argument(
        "answers",
        nargs="*",
        metavar="NAME=VALUE",
        help="as water='2 gal'; a bare number is in the unit asked for",
    )
    calc.add_argument("--language", default="en", help="language of question and answer")
    calc.add_argument("--json", action="store_true", help="print what came out as JSON")
    calc.set_defaults(command=run)


def run(parsed: argparse.Namespace) -> int:
    """List the calculators, or work one out: 0 when it came out well, 1 when it did not."""
    say = words(parsed.language)
    if parsed.calculator is None:
        for name in CALCULATORS:
            print(f"{name:14} {say.say(f'reckon-{name}')}")
        return 0
    if parsed.calculator not in CALCULATORS:
        known = ", ".join(CALCULATORS)
        raise Failed(f"No calculator is called '{parsed.calculator}'. There are: {known}.")
    folder, site = data()
    now = bench(site, library_of(folder, site), SystemClock().now().utc)
    interview = Interview(CALCULATORS[parsed.calculator], now, {})
    given = _given(parsed.answers)
    while (question := interview.question) is not None:
        interview = _ask(interview, question, given, say)
    if given:
        names = ", ".join(given)
        raise Failed(f"'{parsed.calculator}' does not ask for: {names}.")
    finding = interview.finding()
    lines = [say.line(line) for line in finding.lines]
    if parsed.json:
        answers = {name: str(value) for name, value in interview.answers.items()}
        told = {"calculator": parsed.calculator, "answers": answers, "good": finding.good}
        told |= {"lines": lines, "sources": list(finding.sources)}
        print(json.dumps(told, ensure_ascii=False, indent=2))
    else:
        print(*lines, *(f"({source})" for source in finding.sources), sep="\n")
    return 1 if finding.good is False else 0


def _given(answers: list[str]) -> dict[str, str]:
    given: dict[str, str] = {}
    for one in answers:
        name, equals, value = one.partition("=")
        if not equals:
            raise Failed(f"'{one}' is no answer. Write NAME=VALUE, as water='8 L'.")
        if name in given:
            raise Failed(f"'{name}' is answered twice.")
        given[name] = value
    return given


def _ask(interview: Interview, question: Question, given: dict[str, str], say: Words) -> Interview:
    """Answer the open question from what was given, else from the terminal."""
    sentence = say.line(interview.line())
    text = given.pop(question.id, None)
    if text is None and question.assumed is not None:
        return interview.answer(question.assumed)
    asked = text is None
    if text is None:
        if not sys.stdin.isatty():
            stray = f" Nothing asked for: {', '.join(given)}." if given else ""
            wanted = f"{question.id}=VALUE, {_wanted(question, say)}"
            raise Failed(f"Missing: {wanted}. {sentence}{stray}")
        text = _typed(f"{sentence} {_wanted(question, say, told=True)} ")
    try:
        return _answered(interview, question, text)
    except NotAnAnswer as error:
        why = say.line(error.message)
        if asked:
            print(why)
            return interview
        raise Failed(f"{question.id}: {why} {_wanted(question, say)}") from error


def _typed(prompt: str) -> str:
    try:
        return input(prompt)
    except EOFError as error:
        raise Failed("Nothing more was typed, so nothing was worked out.") from error


def _answered(interview: Interview, question: Question, text: str) -> Interview:
    match question.wants:
        case OneOf():
            return interview.answer(text.strip())
        case NumberWanted(unit) as wants:
            taken = unit_taken(text, wants)
            if taken == unit:
                for answer in read_answers(text, wants):
                    interview = interview.answer(answer)
                return interview
            # Ask again as a site would whose thermometer shows the typed unit.
            other = replace(interview, bench=taken_in(interview.bench, taken))
            again = other.question
            return interview if again is None else _answered(other, again, text)


def _wanted(question: Question, say: Words, *, told: bool = False) -> str:
    """Return what fits a question; with `told`, each name with the words that it stands for."""
    match question.wants:
        case OneOf(names):
            return f"[{' | '.join(_names(names, say, told=told))}]"
        case NumberWanted(unit, least, most, besides=besides):
            ends = [say.number(Number(str(one), unit)) for one in (least, most)]
            return f"[{' | '.join([f'{ends[0]} - {ends[1]}', *_names(besides, say, told=told)])}]"


def _names(names: Iterable[str], say: Words, *, told: bool) -> list[str]:
    return [f"{name}: {say.say(f'pick-{name}')}" if told else name for name in names]
