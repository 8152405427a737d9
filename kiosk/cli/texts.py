"""`kiosk texts`: what was drafted by machine, and the word of those who speak the language."""

from __future__ import annotations

import argparse
from collections import Counter
from datetime import datetime
from typing import Final
from zoneinfo import ZoneInfo

from kiosk import home
from kiosk.cli.place import Failed, data
from kiosk.cli.place import library as library_of
from kiosk.clock import SystemClock
from kiosk.languages.signed import (
    Draft,
    SignedFailed,
    drafts,
    sign,
    signatures,
    unsigned,
    withdraw,
)
from kiosk.languages.words import SOURCE, languages, words
from kiosk.procedure.fault import harmless

_MOST_NAME: Final = 80
"""Letters of a name that is believed; our choice."""


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    texts = commands.add_parser("texts", help="texts drafted by machine, and who has checked them")
    group = texts.add_subparsers(required=True, metavar="COMMAND")
    listing = group.add_parser("list", help="what is drafted, who signed, and what is not signed")
    listing.add_argument("language", nargs="?", choices=_drafted(), help="one language only")
    listing.set_defaults(command=_list)
    showing = group.add_parser("show", help="print drafted texts beside the English ones")
    showing.add_argument("--all", action="store_true", help="those that are signed too")
    showing.set_defaults(command=_show)
    signing = group.add_parser(
        "sign",
        help="sign that the texts of a language are right",
        description="For a fluent speaker who has read them with 'kiosk texts show'. A text that "
        "changes afterwards, here or in English, is not signed any more.",
    )
    signing.add_argument("--by", required=True, metavar="NAME", help="who has read them")
    signing.set_defaults(command=_sign)
    taking = group.add_parser("withdraw", help="take every signature of a language back")
    taking.set_defaults(command=_withdraw)
    for one in (showing, signing, taking):
        one.add_argument("language", choices=_drafted())
    for one in (showing, signing):
        one.add_argument(
            "--only", action="append", default=[], metavar="FILE", help="one file, as walk.ftl"
        )


def _drafted() -> list[str]:
    return [one for one in languages() if one != SOURCE]


def _list(parsed: argparse.Namespace) -> int:
    folder, site = data()
    library = library_of(folder, site)
    try:
        found = signatures(folder)
    except SignedFailed as error:
        raise Failed(str(error)) from error
    for language in [parsed.language] if parsed.language else _drafted():
        say = words(language).say
        every = drafts(language, library)
        left = unsigned(language, library, folder)
        name = f"{language} · {say('language-name')}"
        print(say("texts-drafted", language=name, n=_count(every), left=_count(left)))
        mine = [one for one in found if one.language == language]
        for one in mine:
            who, at = harmless(one.by), harmless(one.at)
            print(f"  {say('texts-signed-by', who=who, at=at, n=len(one.texts))}")
        if mine:
            # What changed since somebody signed: few, so each is named.
            print(*(f"  {say('texts-left', where=_place(one))}" for one in left), sep="\n")
        else:
            for part, n in Counter(one.part for one in left).items():
                print(f"  {part}: {n}")
    return 0


def _show(parsed: argparse.Namespace) -> int:
    for one in _chosen(parsed, signed_too=parsed.all):
        print(f"{_place(one)}\n  {SOURCE}: {one.english}\n  {parsed.language}: {one.text}\n")
    return 0


def _sign(parsed: argparse.Namespace) -> int:
    by = parsed.by.strip()
    if not by or not by.isprintable() or len(by) > _MOST_NAME:
        raise Failed(f"--by is {parsed.by!r}; write the name of who has read the texts.")
    folder, site = data()
    chosen = _chosen(parsed, signed_too=False)
    say = words(parsed.language).say
    if not chosen:
        print(say("texts-nothing-left"))
        return 0
    at = datetime.fromtimestamp(SystemClock().now().utc, ZoneInfo(site.time_zone))
    try:
        with home.take(folder):
            made = sign(parsed.language, chosen, by, at, folder)
    except SignedFailed as error:
        raise Failed(str(error)) from error
    left = unsigned(parsed.language, library_of(folder, site), folder)
    print(say("texts-signed", who=by, n=len(made.texts), left=_count(left), mark=say("drafted")))
    return 0


def _withdraw(parsed: argparse.Namespace) -> int:
    folder, _ = data()
    try:
        with home.take(folder):
            count = withdraw(parsed.language, folder)
    except SignedFailed as error:
        raise Failed(str(error)) from error
    print(words(parsed.language).say("texts-withdrawn", n=count))
    return 0


def _chosen(parsed: argparse.Namespace, *, signed_too: bool) -> tuple[Draft, ...]:
    """Return the texts of the files that were named. Raises Failed for one that is none."""
    folder, site = data()
    library = library_of(folder, site)
    every = drafts(parsed.language, library)
    known = tuple(dict.fromkeys(one.part for one in every))
    for part in parsed.only:
        if part not in known:
            raise Failed(f"'{part}' has no drafted text. There are: {', '.join(known)}.")
    found = every if signed_too else unsigned(parsed.language, library, folder)
    return tuple(one for one in found if not parsed.only or one.part in parsed.only)


def _count(texts: tuple[Draft, ...]) -> int:
    """Return how many different texts there are: some stand in several files."""
    return len({one.digest for one in texts})


def _place(one: Draft) -> str:
    return f"{one.part} {one.name}"
