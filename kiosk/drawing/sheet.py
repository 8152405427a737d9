"""One procedure as a printable HTML sheet for the wall, in one language."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import resources

from kiosk.drawing.asked import asked, findings, signal
from kiosk.drawing.markup import Child, Element, add, as_html, element
from kiosk.languages.words import Words
from kiosk.pictures.gallery import part_of, picture
from kiosk.pictures.svg import drawn
from kiosk.procedure.model import Caution, Strength
from kiosk.procedure.plan import Count, Hold, Inspect, Measure, Plan, Repeat, Step, Wait

DIGEST_LENGTH = 12
"""Characters of the digest that tell two texts apart on paper."""

_COLUMNS = 4

_ON_PAPER = {"mg/L": "ppm"}
"""Test strips are printed in ppm; in water that is mg/L."""

_PICTURE = 26.0, 15.0
"""Room for a picture, in mm."""

_WORTH_WRITING = 60.0
"""Shortest wait in seconds whose begin and end are written down."""


def sheet(plan: Plan, words: Words) -> str:
    """Return the wall sheet of a plan: one HTML document that needs no other file."""
    return as_html(_Sheet(plan, words).page())


class _Sheet:
    def __init__(self, plan: Plan, words: Words) -> None:
        self._plan, self._words = plan, words

    def _say(self, name: str, **args: str) -> str:
        return self._words.say(name, **args)

    def page(self) -> Element:
        title = self._words.text(self._plan.title)
        style = resources.files("kiosk.drawing").joinpath("sheet.css").read_text("utf-8")
        viewport = element("meta", name="viewport", content="width=device-width")
        head = element(
            "head",
            element("meta", charset="utf-8"),
            viewport,
            element("title", f"{title} – {self._plan.machine_name}"),
            element("style", style),
        )
        body = element(
            "body", *self._top(title), self._steps(title), *self._problems(), self._end()
        )
        return element("html", head, body, lang=self._words.language)

    # Above the steps.

    def _top(self, title: str) -> Iterator[Element]:
        plan = self._plan
        yield element("p", self._say("sheet-kind"), class_="kind")
        yield element("h1", title)
        yield element(
            "p",
            element("strong", f"{self._say('sheet-machine')}: {plan.machine_name}"),
            " · ",
            element("span", self._text(), class_="version"),
        )
        if plan.practice:
            yield element("p", self._say("sheet-practice"), class_="notice")
        if self._words.language in plan.drafted:
            yield element("p", self._say("sheet-drafted"), class_="notice")
        yield element(
            "div",
            element("p", self._words.text(plan.follow)),
            element("p", self._say("sheet-no-lockout"), class_="no-lockout"),
            class_="follow",
        )
        rules = ("sheet-in-order", "sheet-stop-at-holds", "sheet-after-break")
        yield element("ul", *(element("li", self._say(name)) for name in rules), class_="rules")
        yield self._blanks("sheet-name", "sheet-date", "sheet-begun")

    def _text(self) -> str:
        digest = self._plan.digest[:DIGEST_LENGTH]
        return self._say("sheet-text", version=str(self._plan.version), digest=digest)

    def _blank(self, label: str) -> Element:
        return element("span", label, element("i"), class_="blank")

    def _blanks(self, *names: str) -> Element:
        return element("div", *(self._blank(self._say(name)) for name in names), class_="blanks")

    # The steps.

    def _steps(self, title: str) -> Element:
        # The running line is part of the table's head, which browsers print again on each page.
        running = f"{title} · {self._plan.machine_name} · {self._text()}"
        named = ("sheet-done", "", "sheet-step", "sheet-write-down")
        head = element(
            "thead",
            element("tr", element("th", running, colspan=_COLUMNS), class_="running"),
            element(
                "tr", *(element("th", name and self._say(name), scope="col") for name in named)
            ),
        )
        table = element("table", head)
        body = table
        phase = ""
        for number, step in enumerate(self._plan.steps, start=1):
            if step.phase != phase:
                phase = step.phase
                name = self._words.text(self._plan.phases[phase])
                band = element("th", name, colspan=_COLUMNS, scope="rowgroup")
                body = element("tbody", element("tr", band, class_="phase"))
                add(table, body)
            add(body, self._step(number, step))
        return table

    def _step(self, number: int, step: Step) -> Element:
        row = element(
            "tr",
            element("td", _box(), class_="tick"),
            element("td", str(number), class_="number"),
            element("td", *self._what_to_do(step), class_="say"),
            element("td", *self._what_to_write(step), class_="write"),
        )
        if isinstance(step.task, Hold):
            row.set("class", "hold")
        return row

    def _what_to_do(self, step: Step) -> Iterator[Element]:
        words = self._words
        shown = part_of(step)
        if shown is not None:
            yield drawn(picture(shown), words, *_PICTURE)
        if step.caution is not None:
            yield self._caution(step.caution)
        if isinstance(step.task, Hold):
            yield element("span", self._say("safety-hold"), class_="hold-word")
        yield element("p", words.text(step.say), class_="sentence")
        line = asked(step.task, words)
        match step.task:
            case Hold(verify=verify):
                yield element("p", line, class_="phrase")
                if verify is not None:
                    yield self._labelled("sheet-try-out", words.text(verify))
            case Repeat(until=until):
                yield element("p", line, class_="detail")
                yield element("p", words.text(until), class_="detail")
            case _ if line:
                yield element("p", line, class_="detail")
        if isinstance(step.task, Measure) and step.task.judged_by is not None:
            source = self._say("sheet-limit-source", source=step.task.judged_by.source)
            yield element("p", source, class_="source")
        if step.corrective is not None:
            yield self._labelled("sheet-if-off", words.text(step.corrective))

    def _labelled(self, name: str, text: str) -> Element:
        return element("p", element("strong", f"{self._say(name)}:"), f" {text}", class_="detail")

    def _caution(self, caution: Caution) -> Element:
        words = self._words
        parts = (caution.hazard, caution.consequence, caution.avoid)
        word = element("span", signal(caution, words), class_="signal")
        text = " ".join(words.text(part) for part in parts)
        sort = {"caution": "caution-word", "notice": "notice-word"}
        named = sort.get(caution.signal, str(caution.signal))
        return element("p", word, f" {text}", class_=f"caution {named}")

    def _what_to_write(self, step: Step) -> Iterator[Element]:
        match step.task:
            case Hold(strength=strength, verify=verify):
                if verify is not None:
                    yield _choices(self._say("sheet-it-is-so"))
                yield self._blank(self._say("sheet-name"))
                if strength is Strength.SECOND_PERSON:
                    yield self._blank(self._say("sheet-second-person"))
            case Measure(unit=unit):
                yield element("span", element("i"), _ON_PAPER.get(unit, unit), class_="blank")
            case Wait(seconds=seconds) if seconds >= _WORTH_WRITING:
                yield self._blank(self._say("sheet-begun"))
                yield self._blank(self._say("sheet-ended"))
            case Repeat(most=most):
                yield _choices(*(f"{self._say('sheet-pass')} {n}" for n in range(1, most + 1)))
                yield _choices(self._say("sheet-it-is-so"))
            case Count():
                yield self._blank(self._say("sheet-counted"))
            case Inspect():
                yield _choices(*findings(self._words))
            case _:
                return

    # Below the steps.

    def _problems(self) -> Iterator[Element]:
        if not self._plan.problems:
            return
        yield element("h2", self._say("sheet-problems"))
        table = element("table", class_="problems")
        for problem in self._plan.problems.values():
            text = self._words.text(problem.corrective)
            cell: list[Child] = [text]
            if problem.stops_service:
                cell += [" ", element("strong", self._say("sheet-stops-service"))]
            name = element("th", self._words.text(problem.name), scope="row")
            add(table, element("tr", name, element("td", *cell)))
        yield table

    def _end(self) -> Element:
        return element(
            "section",
            element("h2", self._say("sheet-end-of-work")),
            self._blanks("sheet-ended", "sheet-name", "sheet-signature"),
            self._blanks("sheet-left-at", "sheet-told-to"),
            self._blanks("sheet-supervisor", "sheet-date", "sheet-signature"),
            class_="end",
        )


def _box() -> Element:
    return element("span", class_="box")


def _choices(*names: str) -> Element:
    return element("div", *(element("span", _box(), name, class_="choice") for name in names))
