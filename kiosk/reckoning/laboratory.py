"""Calculators for single laboratory results: plates, tubes, and the samples of a lot."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from math import isfinite

from kiosk.engine.prompt import Message, Number
from kiosk.procedure.model import Text
from kiosk.reckoning import bounds
from kiosk.reckoning.asking import Args, as_written, count, finding, first_open, one_of
from kiosk.reckoning.calculator import (
    Answers,
    Bench,
    Calculator,
    Finding,
    Question,
    evenly,
    in_turn,
    number,
)
from kiosk.reckoning.cannot import cannot
from kiosk.trade.authorities import LotPlan, NoSuchLimit, lot_plan
from kiosk.trade.most_probable_number import (
    MostProbableNumber,
    NotADesign,
    Tubes,
    most_probable_number,
)
from kiosk.trade.plate_count import BAM, ISO_7218, Mark, NotAPlate, Plate, count_plates
from kiosk.trade.rounding import Amount, NotAResult, significant
from kiosk.trade.sampling_plan import ABSENT, PRESENT, NotAPlan, judge

PLATES = 12
"""Most plates that are asked for; our choice."""

_RULES = {"fda-rule": BAM, "iso-rule": ISO_7218}
_MARKS = {"too-full": Mark.TOO_MANY, "overgrown": Mark.SPREADER, "spoiled-plate": Mark.ACCIDENT}


def amount_line(prefix: str, amount: Amount) -> Message:
    """Return the sentence `PREFIX-QUALIFIER` for a result, with its number where it has one."""
    name = f"{prefix}-{amount.qualifier.replace(' ', '-')}"
    return Message(name, {} if amount.value is None else {"amount": as_written(amount.value)})


def _ask_plates(_: Bench, answers: Answers) -> Question | None:
    return first_open(_plates(answers), answers)


def _plates(answers: Answers) -> Iterator[Question]:
    yield one_of("rule", *_RULES)
    for plate in range(1, PLATES + 1):
        yield count(f"exponent-{plate}", 0, 9, "say-number")
        yield one_of(f"kind-{plate}", "counted", *_MARKS)
        if answers[f"kind-{plate}"] == "counted":
            yield count(f"colonies-{plate}", 0, 10_000, "say-colonies", "100")
        if plate < PLATES:
            yield one_of(f"more-{plate}", "another-plate", "no-more")
            if answers[f"more-{plate}"] == "no-more":
                return


def _plate(answers: Answers, place: int) -> Plate:
    dilution = Decimal(1).scaleb(-int(number(answers, f"exponent-{place}")))
    mark = _MARKS.get(str(answers[f"kind-{place}"]))
    return Plate(dilution, mark or int(number(answers, f"colonies-{place}")))


def _count(_: Bench, answers: Answers) -> Finding:
    rule = _RULES[str(answers["rule"])]
    places = [place for place in range(1, PLATES + 1) if f"kind-{place}" in answers]
    try:
        found = count_plates([_plate(answers, place) for place in places], rule)
    except NotAPlate as error:
        return cannot(error)
    why = [
        Message(f"plate-why-{one.why.replace(' ', '-')}", _range(rule.least, rule.most))
        for one in found.reasons
    ]
    good = None if found.value is not None else False
    source = f"{rule.source}. {rule.tag}"
    return finding(amount_line("plate", found.reported), why, good=good, sources=(source,))


def _range(least: int, most: int) -> Args:
    return {"least": Number(str(least)), "most": Number(str(most))}


_TUBES = (("tenth", "0.1"), ("hundredth", "0.01"), ("thousandth", "0.001"))
_MPN_SOURCE = "FDA BAM appendix 2, Blodgett 2010; likelihood READ in the R package MPN"


def _mpn(_: Bench, answers: Answers) -> Finding:
    try:
        found = most_probable_number(
            [Tubes(Decimal(grams), 3, int(number(answers, name))) for name, grams in _TUBES]
        )
    except NotADesign as error:
        return cannot(error)
    lines = [amount_line("mpn", found.reported), _limits(found)]
    if found.improbable:
        lines.append(Message("mpn-improbable"))
    # Improbable tubes stand for an error in the laboratory: they are no result to rely on.
    good = False if found.improbable else None
    return finding(lines, good=good, sources=(_MPN_SOURCE, f"limits: {found.method}. CALC"))


def _limits(found: MostProbableNumber) -> Message:
    low = _two_digits(found.low)
    if not isfinite(found.high):
        return Message("mpn-limit-below", {"low": low})
    return Message("mpn-limits", {"low": low, "high": _two_digits(found.high)})


def _two_digits(value: float) -> Text:
    return as_written(significant(Decimal(repr(value))))


def _ask_lot(bench: Bench, answers: Answers) -> Question | None:
    return first_open(_lot_questions(bench, answers), answers)


def _lot_questions(bench: Bench, answers: Answers) -> Iterator[Question]:
    yield one_of("plan", *(one.id for one in bench.authorities.lot_plans))
    plan = _plan(bench, answers)
    for sample in range(1, plan.n + 1):
        if plan.m == 0:
            yield one_of(f"found-{sample}", "found", "not-found")
        else:
            yield from bounds.about(answers, "count", sample, evenly("0", "100", "1"))


def _plan(bench: Bench, answers: Answers) -> LotPlan:
    return lot_plan(bench.authorities, str(answers["plan"]))


def _sample(answers: Answers, place: int) -> Amount:
    found = answers.get(f"found-{place}")
    if found is not None:
        return PRESENT if found == "found" else ABSENT
    return bounds.amount(answers, "count", place)


def _lot(bench: Bench, answers: Answers) -> Finding:
    try:
        law = _plan(bench, answers)
        samples = [_sample(answers, place) for place in range(1, law.n + 1)]
        judged = judge(law.plan, samples)
    except (NotAPlan, NotAResult, NoSuchLimit) as error:
        return cannot(error)
    args: Args = {"above": Number(str(judged.above_m)), "of": Number(str(law.n))}
    args["may"] = Number(str(law.c))
    lines = [Message(f"lot-{judged.verdict}")]
    if law.m == 0:
        lines.append(Message("lot-presence", {"found": args["above"], "of": args["of"]}))
    else:
        lines.append(Message("lot-above", {**args, "limit": Number(str(law.m))}))
    if law.top is not None:
        top: Args = {"above": Number(str(judged.above_top)), "limit": Number(str(law.top))}
        lines.append(Message("lot-above-top", top))
    if law.m > 0:
        lines += bounds.left_open(samples, law.m)
    good = judged.verdict in ("satisfactory", "acceptable")
    return finding(lines, good=good, sources=(f"{law.law}; {law.source}. {law.tag}",))


CALCULATORS = (
    Calculator("plate-count", _ask_plates, _count),
    Calculator("mpn", in_turn(*(count(name, 0, 3, "say-tubes") for name, _ in _TUBES)), _mpn),
    Calculator("lot", _ask_lot, _lot),
)
