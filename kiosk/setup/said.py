"""Words for what a file names: a limit, an option, a setting; its own name where there are none."""

from __future__ import annotations

from pathlib import Path

from kiosk.languages.words import MissingMessage, Words
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import MachineKind
from kiosk.procedure.site import TRAINEE_ALONE
from kiosk.procedure.site_fault import MISSING
from kiosk.setup.check import NO_KIND
from kiosk.setup.document import Document
from kiosk.setup.questions import Question
from kiosk.trade.units import NotAQuantity, quantity


def limit_name(name: str, words: Words) -> str:
    """Return the name of a limit."""
    return _said(f"limit-{name}", words) or name


def option_name(option: str, words: Words) -> str:
    """Return what an option is about."""
    return _said(f"about-{option}", words) or option


def value_name(option: str, value: str, words: Words) -> str:
    """Return what one value of an option is called."""
    return _said(f"option-{option}-{value}", words) or value


def value_told(option: str, value: str, words: Words) -> str:
    """Return a plain sentence on one value of an option; empty where there is none."""
    return _said(f"option-{option}-{value}-is", words)


def setting_name(setting: str, words: Words) -> str:
    """Return what an amount or a time is for."""
    return _said(f"setting-{setting}", words) or setting


def setting_told(text: str, words: Words) -> str:
    """Return an amount or a time with its unit written out; the text itself where it is none."""
    try:
        return words.quantity(quantity(text))
    except NotAQuantity:
        return text


def kind_name(kind: MachineKind | None, given: str, words: Words) -> str:
    """Return the name of a kind of machine; what the site file says where nobody knows it."""
    return given if kind is None else words.text(kind.title)


def reason_told(fault: Fault) -> str:
    """Return what is wrong in a file, and where, in a line; what is wrong is told in English."""
    place = f"{Path(fault.file).name}:{fault.line}" if fault.line else Path(fault.file).name
    return f"{place}: {fault.what}"


def fault_told(fault: Fault, document: Document, words: Words) -> str:
    """Return what is wrong with the answers: in the reader's language what can be mended on the
    screen, and in English what only an editor can mend."""
    if fault.rule == TRAINEE_ALONE:
        return words.say("setup-trainee-alone")
    question = next((one for one in Question if one.path == fault.field), None)
    if fault.rule == MISSING and question is not None:
        return f"{words.say(f'setup-about-{question}')}: {words.say('setup-not-answered')}"
    if fault.rule == NO_KIND:
        machine = document.listed("machines")[int(fault.field.split(".")[1]) - 1]
        name, kind = str(machine.get("name", "")), str(machine.get("kind", ""))
        return words.say("setup-kind-gone", who=name, kind=kind)
    return str(fault)


def note_told(question: str, words: Words, **args: object) -> str:
    """Return what there is to know about a question; empty where nothing is."""
    return _said(f"note-{question}", words, **args)


def _said(name: str, words: Words, **args: object) -> str:
    try:
        return words.say(f"setup-{name.replace('_', '-').replace(' ', '-')}", **args)
    except MissingMessage:
        return ""
