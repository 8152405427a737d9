"""Calculators for the sanitizer: how much, whether it is strong enough, and why its pH matters."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from decimal import Decimal

from kiosk.engine.prompt import Message, Number
from kiosk.reckoning.asking import (
    Args,
    finding,
    first_open,
    limit_source,
    measured,
    one_of,
    shown,
    temperature,
)
from kiosk.reckoning.calculator import (
    Answers,
    Bench,
    Calculator,
    Finding,
    NumberWanted,
    OneOf,
    Question,
    evenly,
    number,
)
from kiosk.reckoning.cannot import cannot
from kiosk.trade.available_chlorine import NotALabel
from kiosk.trade.dose import NO_RINSE_CAP, Dose, NoDose, dose, exact_amount, suiting
from kiosk.trade.hypochlorous import NoShare, hypochlorous
from kiosk.trade.product import Product, packets
from kiosk.trade.solution import Kind, Need, NotASolution, Solution, Verdict, Why, judge
from kiosk.trade.units import Quantity, litres

_UNITS = {"in-litres": "L", "in-gallons": "gal", "in-quarts": "qt"}
_SAID = {"L": "", "gal": "say-gallons", "qt": "say-quarts"}
_LIMIT = "sanitizer strength"

_WANTED = Question(
    "wanted", NumberWanted("mg/L", Decimal(1), Decimal(1000), evenly("50", "200", "25"))
)
_STRIP = Question(
    "strip",
    NumberWanted(
        "mg/L", Decimal(0), Decimal(1000),
        tuple(map(Decimal, (0, 10, 25, 50, 75, 100, 125, 150, 175, 200, 250, 300))),
    ),
)  # fmt: skip
_WANTS_PH = NumberWanted("pH", Decimal(0), Decimal(14), evenly("5", "11", "0.5"), said="say-ph")
_ACIDITY = Question("acidity", _WANTS_PH)
_NOT_MEASURED = "not-measured"
_ACIDITY_OR_NOT = Question("acidity", replace(_WANTS_PH, besides=(_NOT_MEASURED,)))
_HIGHEST_PH = Decimal(10)
"""What a pH that nobody measured is taken for: no row of 4-501.114(A) goes higher. READ."""


def product_of(bench: Bench) -> Product:
    """Return the site's product, as its label has it. Raises NotALabel."""
    label = bench.site.sanitizer
    return packets(label.packet_grams, label.available_chlorine * 100)


def _ask_dose(_: Bench, answers: Answers) -> Question | None:
    first = Question("unit", OneOf(tuple(_UNITS)), assumed="in-litres")
    if "unit" not in answers:
        return first
    unit = _UNITS[str(answers["unit"])]
    most = {"L": "500", "gal": "130", "qt": "520"}[unit]
    wants = NumberWanted(
        unit, Decimal("0.1"), Decimal(most), evenly("1", "40", "1"), said=_SAID[unit]
    )
    return first_open((Question("water", wants), _WANTED), answers)


def _dose(bench: Bench, answers: Answers) -> Finding:
    water = Quantity(number(answers, "water"), _UNITS[str(answers["unit"])])
    wanted, volume = number(answers, "wanted"), litres(water)
    try:
        product = product_of(bench)
        cap = bench.profile.solutions.cap(product.agent)
        most = NO_RINSE_CAP if cap is None else cap.most
        given = dose(product, volume, wanted, suiting(product)[0], most)
    except NotALabel as error:
        return cannot(error)
    except NoDose as error:
        return _no_dose(error, water)
    lines = [
        Message("dose-put-one" if given.count == 1 else "dose-put", {
            "count": shown(given.count), "water": shown(water.value, water.unit),
            "strength": shown(given.strength, "mg/L", 0),
        }),
        _rounding(given),
    ]  # fmt: skip
    good, judged, sources = _within(bench, given.strength)
    exact = exact_amount(product, volume, wanted)
    lines += [*judged, Message("dose-grams", {"grams": shown(exact.value, exact.unit)})]
    return finding(lines, good=good, sources=("mass balance, C1 V1 = C2 V2. CALC", *sources))


def _rounding(given: Dose) -> Message:
    if given.gained <= 0:
        return Message("dose-exact")
    gained = Number(shown(given.gained, places=0).value, "mg/L")
    return Message("dose-rounded", {"exact": shown(given.exact), "gained": gained})


def _within(bench: Bench, strength: Decimal) -> tuple[bool | None, list[Message], tuple[str, ...]]:
    """Hold a strength in mg/L against the profile's range; None where it has none."""
    limit = bench.profile.limits.get(_LIMIT)
    bounds = None if limit is None else limit.bounds.get("mg/L")
    if bounds is None or bounds.least is None or bounds.most is None:
        return None, [Message("dose-no-range")], ()
    ends: Args = {"least": shown(bounds.least, "mg/L"), "most": shown(bounds.most, "mg/L")}
    if strength < bounds.least:
        name, good = "dose-below-range", False
    elif strength > bounds.most:
        name, good = "dose-above-range", False
    else:
        name, good = "dose-in-range", True
    return good, [Message(name, ends)], (limit_source(bench, _LIMIT),)


def _no_dose(error: NoDose, water: Quantity) -> Finding:
    """Say why there is no dose, the water in the unit in which it was given."""
    told = error.values
    if error.key == "wanted-over-cap":
        args = _numbers(told, ("wanted", "cap"), "mg/L")
        return Finding((Message("dose-wanted-over-cap", args),), good=False)
    if error.key != "over-cap":
        return cannot(error)
    args = {"count": Number(str(told["count"])), "water": shown(water.value, water.unit)}
    args |= _numbers(told, ("strength", "cap"), "mg/L")
    needed = Decimal(str(told["least_water"])) / litres(Quantity(Decimal(1), water.unit))
    # Up, so that the water asked for is surely enough.
    args["needed"] = shown(needed + Decimal("0.05"), water.unit, 1)
    return Finding((Message("dose-over-cap", args),), good=False)


def _numbers(values: Mapping[str, object], names: Iterable[str], unit: str) -> dict[str, Number]:
    return {name: Number(str(values[name]), unit) for name in names}


def _ask_strength(bench: Bench, answers: Answers) -> Question | None:
    return first_open((_STRIP, _ACIDITY_OR_NOT, _solution_temperature(bench)), answers)


def _solution_temperature(bench: Bench) -> Question:
    return temperature(bench, "temperature", ("0", "60", "1"), ("32", "140", "1"))


def _strength(bench: Bench, answers: Answers) -> Finding:
    measured_ph = answers["acidity"] != _NOT_MEASURED
    try:
        agent = product_of(bench).agent
        solution = Solution(
            agent=agent, strength=number(answers, "strip"),
            ph=number(answers, "acidity") if measured_ph else _HIGHEST_PH,
            temperature=measured(bench, answers, "temperature"),
        )  # fmt: skip
        verdict = judge(solution, bench.profile.solutions)
    except (NotALabel, NotASolution) as error:
        return cannot(error)
    rows = [verdict.row, verdict.contact, verdict.cap]
    if verdict.why is Why.NO_ROW:
        rows = [one for one in bench.profile.solutions.rows if one.agent == agent]
    edition = bench.profile.edition
    sources = [
        f"{one.clause}, {one.edition or edition}; {one.source}. {one.tag}"
        for one in rows
        if one is not None
    ]
    told = () if measured_ph else (Message("strength-any-ph", {"most": shown(_HIGHEST_PH)}),)
    if verdict.passes:
        time = verdict.seconds or Decimal(0)
        name = "strength-passes" if time else "strength-passes-at-once"
        lines = [Message(name, {"time": shown(time, "s")} if time else {})]
        return finding(lines, told, Message("strength-label-first"), good=True, sources=sources)
    refused = _refused(verdict, bench, measured_ph=measured_ph)
    return finding(refused, told, good=False, sources=sources)


def _refused(verdict: Verdict, bench: Bench, *, measured_ph: bool) -> list[Message]:
    """Say why a solution does not pass, and each way to make it pass."""
    if verdict.why is Why.NO_ROW and not bench.profile.solutions.rows:
        return [Message("strength-no-table", {"profile": bench.profile.title})]
    lines = [Message(f"strength-{verdict.why.replace(' ', '-')}")]
    for place, way in enumerate(verdict.ways):
        lines.append(Message("strength-or" if place else "strength-to-mend"))
        lines += [_need(one, measured_ph=measured_ph) for one in way]
    return [*lines, Message("strength-test-again" if verdict.ways else "strength-ask")]


def _need(one: Need, *, measured_ph: bool) -> Message:
    name = f"need-{one.kind.lower().replace(' ', '-')}"
    if one.kind is Kind.LOWER_PH and not measured_ph:
        name = "need-measure-ph-up-to"
    if one.value is None:
        return Message(name)
    unit = "" if one.kind is Kind.LOWER_PH else one.value.unit
    return Message(name, {"value": shown(one.value.value, unit)})


def _ask_free_chlorine(bench: Bench, answers: Answers) -> Question | None:
    at = temperature(bench, "temperature", ("0", "49", "1"), ("32", "120", "1"))
    kind = one_of("kind", "bleach", "powder")
    return first_open((kind, _STRIP, _ACIDITY, at), answers)


def _free_chlorine(bench: Bench, answers: Answers) -> Finding:
    powder = answers["kind"] == "powder"
    try:
        found = hypochlorous(
            number(answers, "acidity"), measured(bench, answers, "temperature"), powder
        )
    except NoShare as error:
        return cannot(error)
    free = number(answers, "strip")
    args: Args = {
        "percent": shown(found.share * 100, places=1), "free": shown(free, "mg/L"),
        "acid": shown(found.share * free, "mg/L", 1), "ph": shown(number(answers, "acidity")),
    }  # fmt: skip
    lines = [Message("free-chlorine-share", args)]
    if found.at_most:
        lines.append(Message("free-chlorine-at-most"))
    if found.extrapolated:
        lines.append(Message("free-chlorine-extrapolated"))
    lines.append(Message("free-chlorine-explains"))
    source = "Morris 1966: pKa = 3000/T - 10.0686 + 0.0253 T. READ in public source files"
    return finding(lines, good=None, sources=(source,))


CALCULATORS = (
    Calculator("dose", _ask_dose, _dose),
    Calculator("strength", _ask_strength, _strength),
    Calculator("free-chlorine", _ask_free_chlorine, _free_chlorine),
)
