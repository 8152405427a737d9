"""The table of rules: every name that a finding can have."""

from __future__ import annotations

from collections.abc import Mapping
from importlib import resources
from types import MappingProxyType

from kiosk.checking import (
    copies,
    dangers,
    doses,
    hearing,
    messages,
    needs,
    parts,
    phrases,
    pictures,
    sentences,
    spoken,
    unused,
)
from kiosk.checking.rule import Rule, Severity

_ERROR, _WARNING = Severity.ERROR, Severity.WARNING

_FOUND_BEFORE = (
    Rule("file", _ERROR),
    Rule("fit", _ERROR),
    Rule("limit-missing", _ERROR),
    Rule("time-under-limit", _ERROR),
    Rule("unknown-condition", _ERROR),
    Rule("unknown-option", _ERROR),
    Rule("unknown-part", _ERROR),
    Rule("unknown-setting", _ERROR),
    Rule("not-in-force", _ERROR),
    Rule("proof", _ERROR),
    Rule("hold-idle", _ERROR),
    Rule("release-unguarded", _ERROR),
)
"""Found while the files are read, fitted and proven."""

_FOUND_BY_LOOKING = (
    Rule("danger-unguarded", _ERROR, dangers.danger_unguarded),
    Rule("released-in-danger", _ERROR, dangers.released_in_danger),
    Rule("danger-left", _ERROR, dangers.danger_left),
    Rule("verify-missing", _WARNING, dangers.verify_missing),
    Rule("need-undercut", _ERROR, needs.need_undercut),
    Rule("need-outlived", _ERROR, needs.need_outlived),
    Rule("waives-nothing", _ERROR, needs.waives_nothing),
    Rule("missing-translation", _ERROR, sentences.missing_translation),
    Rule("translation-behind", _ERROR, copies.translation_behind),
    Rule("hold-taken-out", _WARNING, copies.hold_taken_out),
    Rule("missing-message", _ERROR, messages.missing_message),
    Rule("empty-text", _ERROR, sentences.empty_text),
    Rule("places-differ", _ERROR, sentences.places_differ),
    Rule("place-not-filled", _ERROR, sentences.place_not_filled),
    Rule("quantity-in-sentence", _ERROR, sentences.quantity_in_sentence),
    Rule("digits-in-sentence", _WARNING, sentences.digits_in_sentence),
    Rule("setting-without-unit", _ERROR, doses.setting_without_unit),
    Rule("dose-without-contact", _ERROR, doses.dose_without_contact),
    Rule("reading-never-passes", _ERROR, doses.reading_never_passes),
    Rule("choices-hide-limit", _ERROR, doses.choices_hide_limit),
    Rule("part-left-out", _ERROR, parts.part_left_out),
    Rule("part-unused", _WARNING, parts.part_unused),
    Rule("unknown-picture", _ERROR, pictures.unknown_picture),
    Rule("option-unused", _ERROR, unused.option_unused),
    Rule("setting-unused", _WARNING, unused.setting_unused),
    Rule("condition-unused", _WARNING, unused.condition_unused),
    Rule("limit-unused", _WARNING, unused.limit_unused),
    Rule("ambiguous-phrase", _ERROR, phrases.ambiguous_phrase),
    Rule("phrase-too-alike", _ERROR, phrases.phrase_too_alike),
    Rule("unknown-word", _ERROR, hearing.unknown_word),
    Rule("too-long-to-say", _WARNING, spoken.too_long_to_say),
)

RULES: Mapping[str, Rule] = MappingProxyType(
    {rule.name: rule for rule in (*_FOUND_BEFORE, *_FOUND_BY_LOOKING)}
)
"""Every rule by its name."""


def page(name: str) -> str:
    """Return the page of a rule. Raises KeyError for a name that is no rule."""
    rule = RULES[name]
    place = resources.files("kiosk.checking") / "pages" / f"{rule.name}.md"
    return place.read_text("utf-8").rstrip()
