"""A made language: English with an accent on every letter, longer, and in brackets.

A letter without an accent on a screen was not translated; a bracket that is not closed was cut.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import fields, is_dataclass, replace
from pathlib import Path
from types import SimpleNamespace
from typing import Any, Final

import pytest
from fluent.syntax import FluentParser, FluentSerializer
from fluent.syntax.ast import Message, Pattern, TextElement
from fluent.syntax.visitor import Transformer
from textual import events
from textual.geometry import Size
from textual.widget import Widget

from kiosk.languages import words as spoken
from kiosk.procedure import load_review
from kiosk.screens.target import Target
from tests.screens.scene import Kiosk

QPS: Final = "qps"
"""BCP 47 keeps qaa to qtz for private use; this one is usual for made languages."""
KEYS: Final = ("Esc", "Enter", "Space", "PgUp", "PgDn", "F1", "F2")
_OPEN, _SHUT = "⟦", "⟧"
_ACCENTED = str.maketrans(
    "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ",
    "áƀçđéƒğĥíĵķłɱñóþɋřšŧúṽŵẋýžÁɃÇĐÉƑĞĤÍĴĶŁⱮÑÓÞɊŘŠŦÚṼŴẊÝŽ",
)
_VOWEL = re.compile(r"([aeiou])", re.I)
_PLACE = re.compile(r"(\{\w+\})")
_OTHER_SYNTAX = re.compile(r"^[\w-]+ =|\{ \$\w+( ->)?( \})?|^ *\*?\[\w+\]", re.M)
_WORDS = re.compile(r"[A-Za-z]")
_LETTERS = re.compile(r"[A-Za-z]{2,}")
_NOT_READ = re.compile(r"“[^”]*”|\b[0-9a-f]{12,16}\b")
"""What was said, and hashes."""
_STATUS = ("ear", "voice")
_FRAME = str.maketrans(dict.fromkeys("▀━─┃┏┓┗┛│▁▂▃▄▅▆▇█«»", " "))


def accented(text: str) -> str:
    """Return a text with every vowel doubled, which adds two fifths, and every letter changed."""
    return _VOWEL.sub(r"\1\1", text).translate(_ACCENTED)


def pseudo(text: str) -> str:
    """Return a text in the made language; `{places}` stay as they are."""
    parts = [part if _PLACE.fullmatch(part) else accented(part) for part in _PLACE.split(text)]
    return f"{_OPEN}{''.join(parts)}{_SHUT}"


class _Pseudo(Transformer):
    def visit_TextElement(self, node: TextElement) -> TextElement:  # noqa: N802
        return TextElement(accented(node.value))


def messages() -> str:
    """Return the kiosk's own words in the made language, in Fluent's syntax."""
    resource = FluentParser().parse(spoken.message_text("en"))
    for one in resource.body:
        if isinstance(one, Message) and one.value is not None and _WORDS.search(_plain(one)):
            ways = one.id.name.startswith("say-")
            one.value = _bracketed(_Pseudo().visit(one.value), ways=ways)
    return FluentSerializer().serialize(resource)


def _plain(message: Message) -> str:
    """Return the words of a message that are not its name, its places or its choices."""
    return _OTHER_SYNTAX.sub("", FluentSerializer().serialize_entry(message))


def _bracketed(pattern: Pattern, *, ways: bool) -> Pattern:
    """Put a pattern in brackets; each way of saying something in its own."""
    inner = list(pattern.elements)
    if ways:
        between = f"{_SHUT} / {_OPEN}"
        for one in inner:
            if isinstance(one, TextElement):
                one.value = one.value.replace(" / ", between)
    return Pattern([TextElement(_OPEN), *inner, TextElement(_SHUT)])


def in_pseudo(thing: Any) -> Any:
    """Return something loaded from the procedures with every text in the made language too."""
    if is_dataclass(thing) and not isinstance(thing, type):
        changed = {
            one.name: in_pseudo(getattr(thing, one.name)) for one in fields(thing) if one.init
        }
        return replace(thing, **changed)
    if isinstance(thing, Mapping):
        if isinstance(thing.get("en"), str):
            return {**thing, QPS: pseudo(thing["en"])}
        return {key: in_pseudo(one) for key, one in thing.items()}
    if isinstance(thing, tuple):
        return tuple(in_pseudo(one) for one in thing)
    return thing


@contextmanager
def spoken_here(folder: Path) -> Iterator[None]:
    """Let the kiosk speak the made language, and a test press what it reads in English."""
    target = Kiosk.target
    for language in spoken.languages():
        (folder / language).symlink_to(Path(spoken.__file__).parent / language)
    (folder / QPS).mkdir()
    (folder / QPS / "all.ftl").write_text(messages(), encoding="utf-8")
    spoken.words.cache_clear()
    record = load_review.load_record

    def found(it: Kiosk, what: object) -> object:
        try:
            return target(it, what)
        except LookupError:
            return target(it, pseudo(str(what)))

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(spoken, "resources", SimpleNamespace(files=lambda _: folder))
        patch.setitem(spoken._REGIONS, QPS, "en")
        patch.setattr(load_review, "load_record", lambda *of: in_pseudo(record(*of)))
        patch.setattr(Kiosk, "target", found)
        yield
    spoken.words.cache_clear()


async def resize(it: Kiosk, size: tuple[int, int]) -> None:
    """Give the screen so many columns and rows."""
    it.app.post_message(events.Resize(Size(*size), Size(*size)))
    while it.app.screen._compositor.size != size:
        await it.calm()
    await it.settle()


def texts(it: Kiosk) -> Iterator[tuple[Widget, str, bool]]:
    """Yield each widget that shows a text, the text in one line, and whether all of it is seen."""
    rows = it.seen().split("\n")
    for widget, (region, clip) in it.app.screen._compositor.visible_widgets.items():
        if any(one.display for one in widget.children):
            continue
        seen = region.intersection(clip)
        lines = [row[seen.x : seen.right] for row in rows[seen.y : seen.bottom]]
        text = " ".join(" ".join(lines).translate(_FRAME).split())
        if text:
            yield widget, text, clip.contains_region(region)


def _said_to_be_cut(widget: Widget, text: str) -> bool:
    """True where it is marked that a text goes on: a target's detail under its whole label, or why
    voice and ear are off, which a worker does not mend."""
    named = widget.face.label in text if isinstance(widget, Target) else widget.id in _STATUS
    return named and text.endswith("…")


def faults(it: Kiosk, data: Iterable[str]) -> list[str]:
    """Return what is not translated, or cut off, on the screen; the texts of `data` are in no
    language: names, keys, sources of limits."""
    none = re.compile("|".join(map(re.escape, sorted({*data, *KEYS}, key=len, reverse=True))))
    found = []
    for widget, text, whole in texts(it):
        plain = _LETTERS.findall(none.sub(" ", _NOT_READ.sub(" ", text)))
        if plain:
            found.append(f"untranslated {plain}: {widget!r} {text}")
        if whole and text.count(_OPEN) != text.count(_SHUT) and not _said_to_be_cut(widget, text):
            found.append(f"cut: {widget!r} {text}")
    return found
