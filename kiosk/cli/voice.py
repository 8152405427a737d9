"""`kiosk voice`: which speech models are there, and how one is added or removed."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Final

from rich.console import Console, JustifyMethod
from rich.markup import escape
from rich.progress import (
    BarColumn,
    DownloadColumn,
    Progress,
    TaskID,
    TextColumn,
    TimeRemainingColumn,
    TransferSpeedColumn,
)
from rich.table import Table

from kiosk import home
from kiosk.cli import voice_record, voice_teach, voice_test
from kiosk.cli.place import Failed
from kiosk.listening import model_store
from kiosk.listening.model_list import BadList, Model
from kiosk.listening.model_store import Shelved, State, StoreFailed, Watcher
from kiosk.listening.models import MODELS

CLEAR_WORD: Final = "trust"
"""What is typed to take a download whose checksum nobody told."""
_DOING: Final = {"fetch": "Fetching", "unpack": "Unpacking"}
_PIP: Final = "pip"


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    voice = commands.add_parser(
        "voice", help="speech models, the microphone, words and prompts of one's own"
    )
    verbs = voice.add_subparsers(required=True, metavar="COMMAND")
    for part in _PARTS:
        part(verbs)


def _add_list(verbs: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    listed = verbs.add_parser("list", help="list the speech models and how they stand")
    listed.set_defaults(command=_list)


def _add_add(verbs: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    added = verbs.add_parser(
        "add",
        help="fetch a speech model, or take it from a file, and install it",
        description="The only command that uses the network, and only when it is given. A cut "
        "download goes on where it stopped when the command is run again.",
    )
    added.add_argument("language", metavar="LANG", help="language tag, as es")
    added.add_argument(
        "--from", dest="source", default="", metavar="URL-or-file", help="another address, or a zip"
    )
    added.add_argument(
        "--sha256", default="", metavar="HEX", help="what the zip must have (default: as listed)"
    )
    added.set_defaults(command=_add)


def _add_remove(verbs: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    removed = verbs.add_parser("remove", help="remove a speech model that was added")
    removed.add_argument("language", metavar="LANG", help="language tag, as es")
    removed.set_defaults(command=_remove)


_PARTS: Final[tuple[Callable[[argparse._SubParsersAction[argparse.ArgumentParser]], None], ...]] = (
    _add_list,
    _add_add,
    _add_remove,
    voice_test.add,
    voice_teach.add,
    voice_record.add,
)


def _list(_: argparse.Namespace) -> int:
    table = Table(caption=_TAGS, caption_justify="left")
    for column in ("Language", "Engine", "Model", "From", "Size", "Licence", "State", "Tag"):
        side: JustifyMethod = "right" if column == "Size" else "left"
        table.add_column(column, justify=side, overflow="fold")
    with _failing_in_words():
        shelved = model_store.shelf(home.home_folder())
    for one in shelved:
        table.add_row(*map(escape, _row(one)))
    Console().print(table)
    for one in shelved:
        if one.trouble:
            print(one.trouble, file=sys.stderr)
    return 1 if any(one.state is State.BROKEN for one in shelved) else 0


_TAGS: Final = (
    "Tag: SEEN read off the package; PUB as several public projects pin it, file not seen; "
    "MEM at least one figure from memory"
)


def _row(one: Shelved) -> tuple[str, ...]:
    model = one.model
    origin = _PIP if model.wheel else model.url.split("/")[2] if model.url else "unpacked by hand"
    state = f"{one.state}: {model.mend}" if one.state is State.BY_PIP else str(one.state)
    return (
        model.language,
        model.engine,
        model.name,
        origin,
        _size(model),
        model.licence,
        state,
        model.tag,
    )


def _size(model: Model) -> str:
    return f"{model.bytes / 1e6:.0f} MB" if model.bytes else "?"


def _add(parsed: argparse.Namespace) -> int:
    folder = home.home_folder()
    with _failing_in_words():
        model = model_store.addable(parsed.language, folder)
        _explain(model, parsed.source, parsed.sha256)
        with _bar() as progress:
            watcher = Watcher(
                progress=_shown(progress),
                say=lambda text: progress.console.print(escape(text)),
                accept=lambda sha256: _accept(progress, sha256),
            )
            place = model_store.add(model, folder, watcher, parsed.source, parsed.sha256)
    print(f"{model.name} is installed in {place}. Remove it: kiosk voice remove {model.language}")
    return 0


def _explain(model: Model, source: str, sha256: str) -> None:
    memory = " (from memory: look at the model's own page)" if model.tag == "MEM" else ""
    print(f"Language   {model.language}")
    print(f"Model      {model.name}, for the {model.engine} engine")
    if source:
        print(f"From       {source}")
    else:
        print(f"From       {model.url} ({_size(model)} to fetch)")
    print(f"Licence    {model.licence}{memory}")
    print(f"Into       {home.home_folder() / MODELS}")
    print(f"Checksum   {sha256 or model.sha256 or 'not known; you will be asked'}")
    print("Its work   to hear, on this machine, the phrases that the screen shows, and no others")


def _accept(progress: Progress, sha256: str) -> bool:
    progress.stop()
    print("No checksum is known for this model, so nobody vouches for what was fetched.")
    print(f"Its SHA-256 is {sha256}")
    if not sys.stdin.isatty():
        return False
    try:
        said = input(f"Compare it with a source you trust. Type {CLEAR_WORD} to install it: ")
    except EOFError:
        return False
    progress.start()
    return said.strip().lower() == CLEAR_WORD


def _remove(parsed: argparse.Namespace) -> int:
    with _failing_in_words():
        for place in model_store.remove(parsed.language, home.home_folder()):
            print(f"{place} is removed.")
    return 0


@contextmanager
def _failing_in_words() -> Iterator[None]:
    try:
        yield
    except (StoreFailed, BadList) as error:
        raise Failed(str(error)) from error


def _bar() -> Progress:
    return Progress(
        TextColumn("{task.description}"),
        BarColumn(),
        DownloadColumn(),
        TransferSpeedColumn(),
        TimeRemainingColumn(),
        console=Console(stderr=True),
    )


def _shown(progress: Progress) -> Callable[[str, int, int], None]:
    tasks: dict[str, TaskID] = {}

    def show(what: str, done: int, in_all: int) -> None:
        if what not in tasks:
            tasks[what] = progress.add_task(_DOING[what], total=None)
        progress.update(tasks[what], completed=done, total=in_all or None)

    return show
