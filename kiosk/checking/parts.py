"""Rules for the parts list: what is taken out must be accounted for, evening and morning."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from kiosk.checking.subject import Subject, blocks, sentences
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import Part, Procedure, Standing, StepBlock, Text

NOUN_FIRST = frozenset({"es", "fr", "it", "pt", "vi"})
"""Languages in which the noun of a name such as `puerta del cilindro` comes first."""


def part_left_out(subject: Subject) -> Iterator[Fault]:
    """A part is dealt with in other procedures of its machine, and passed over in this one.

    Looked at are the procedures that leave a machine apart, and those that begin from there.
    """
    for kind in subject.library.kinds.values():
        same_kind = {one.id: one for one in subject.of_kind(kind)}
        looked_at = [one for one in subject.procedures() if one.id in same_kind and _apart(one)]
        for name, part in kind.parts.items() if looked_at else ():
            dealing = {one.id: _dealing(one, name, part) for one in same_kind.values()}
            for procedure in looked_at:
                plans = subject.plans.get(procedure.id, ())
                passed_over = any(dealing[procedure.id].isdisjoint(plan.index) for plan in plans)
                others = [one for one, steps in dealing.items() if steps]
                if passed_over and others:
                    yield _left_out(subject, procedure, name, part, others)


def _left_out(
    subject: Subject, procedure: Procedure, name: str, part: Part, others: list[str]
) -> Fault:
    where = f", though '{others[0]}' does"
    if procedure.id in others:
        where = " with every choice of options"
    what = f"no step counts, inspects or names the part '{name}' ({_shown(part.name)}){where}"
    mend = "count or inspect it, or name it in the sentence of the step that handles it"
    return subject.fault(procedure.file, ("phases",), what, mend)


def part_unused(subject: Subject) -> Iterator[Fault]:
    """A part of the list that no procedure of its machine counts, inspects or names."""
    for kind, file in subject.whole_kinds():
        procedures = subject.of_kind(kind)
        for name, part in kind.parts.items():
            if not any(_dealing(one, name, part) for one in procedures):
                what = f"no procedure of this machine counts, inspects or names '{name}'"
                mend = "add it to the steps that handle it, or take it off the list"
                yield subject.fault(file, ("parts", name), what, mend)


def _apart(procedure: Procedure) -> bool:
    return procedure.leaves is Standing.DRYING or Standing.DRYING in procedure.begins_from


def _dealing(procedure: Procedure, name: str, part: Part) -> set[str]:
    """Return the ids of the steps that deal with a part, whatever the options."""
    return {block.id for _, block in blocks(procedure) if _deals_with(block, name, part)}


def _deals_with(block: StepBlock, name: str, part: Part) -> bool:
    counted = (task.part for task in (block.count, block.inspect) if task is not None)
    return name in counted or any(names(one.text, part.name) for one in sentences(block))


def names(sentence: Text, part: Text) -> bool:
    """True when a sentence has the noun of a part's name, in any language of both.

    The noun is the last word of the name, or the first one in some languages; a plural and a
    singular are the same.
    """
    return any(
        language in sentence and _noun(language, name).search(sentence[language])
        for language, name in part.items()
    )


@lru_cache(maxsize=1024)
def _noun(language: str, name: str) -> re.Pattern[str]:
    split = name.split() or [name]
    noun = split[0] if language in NOUN_FIRST else split[-1]
    if not noun.isascii() and language not in NOUN_FIRST:
        return re.compile(re.escape(noun))
    stem = re.sub(r"(?<=sh|ch|ss)es$|(?<=x)es$|s$", "", noun)
    return re.compile(rf"\b{re.escape(stem)}(?:s|es)?\b", re.IGNORECASE)


def _shown(name: Text) -> str:
    return name.get("en") or next(iter(name.values()), "")
