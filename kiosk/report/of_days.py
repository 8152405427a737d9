"""The parts of a report on some days: what was due, who did what, parts, people, procedures."""

from __future__ import annotations

from collections.abc import Sequence

from kiosk.report.desk import Desk
from kiosk.report.gathered import Gathered
from kiosk.report.paper import Cell, Row, Seqs, Sheet, Table
from kiosk.report.signing import signed_cell
from kiosk.review.ledger_lines import Line, PartLine, Stood
from kiosk.review.record import Ended
from kiosk.review.schedule import Kept, Stand

_AS_IT_SHOULD = (Stand.DONE, Stand.NOT_YET, Stand.DUE, Stand.NOT_OPENED)


def summary(of: Gathered, desk: Desk) -> Sheet:
    """Return the days in figures; each has the rows that it counts."""
    lines, span = of.lines, of.span
    complete = [one for one in lines if one.ended is Ended.COMPLETE]
    signed = [one for one in lines if one.signed and one.signed.what is Stood.SIGNED_OFF]
    back = [one for one in lines if one.signed and one.signed.what is Stood.SENT_BACK]
    off = [one for one in of.readings if one.kept is False]
    in_time = [one for one in of.kept if one.stand is Stand.DONE]
    missed = [x for x in of.kept if x.stand is Stand.MISSED]
    begun = desk.say(
        "days-begun", first=desk.moment(span.from_utc), until=desk.moment(span.until_utc)
    )
    return Sheet(
        (
            (desk.say("shop"), Cell(desk.site.name)),
            (desk.say("days"), Cell(f"{span.first} – {span.last}")),
            (desk.say("days-mean"), Cell(begun)),
            (desk.say("sessions"), _count("sessions", [one.first_seq for one in lines])),
            (desk.say("sessions-complete"), _count("complete", [x.last_seq for x in complete])),
            (desk.say("sessions-signed"), _count("signed", _signing(signed))),
            (desk.say("sessions-sent-back"), _count("sent-back", _signing(back))),
            (desk.say("due"), Cell(str(len(of.kept)), key="due")),
            (desk.say("due-in-time"), Cell(str(len(in_time)), _ends(of, in_time), "in-time")),
            (desk.say("due-missed"), Cell(str(len(missed)), key="missed")),
            (desk.say("readings"), _count("readings", [one.seq for one in of.readings])),
            (desk.say("readings-off"), _count("readings-off", [one.seq for one in off])),
            (desk.say("deviations"), _deviations(of)),
        )
    )  # fmt: skip


def _ends(of: Gathered, kept: Sequence[Kept]) -> Seqs:
    """Return the last rows of the sessions that count for something due."""
    named = {one.session for one in kept}
    return tuple(one.last_seq for one in of.lines if one.session in named)


def _deviations(of: Gathered) -> Cell:
    seqs = {seq for _, rows in of.deviations for seq in rows}
    return Cell(str(len(of.deviations)), tuple(sorted(seqs)), "deviations")


def _signing(lines: Sequence[Line]) -> list[int]:
    return [one.signed.seq for one in lines if one.signed is not None]


def _count(key: str, seqs: Sequence[int]) -> Cell:
    return Cell(str(len(seqs)), tuple(sorted(seqs)), key)


def due(of: Gathered, desk: Desk, *, all_of_it: bool) -> Table:
    """Return what was due and what became of it; not what was done in its time, unless asked."""
    spans = {one.session: (one.first_seq, one.last_seq) for one in of.lines}
    found = [one for one in of.kept if all_of_it or one.stand not in _AS_IT_SHOULD]
    return desk.table(
        id="due", caption=desk.say("due-caption" if all_of_it else "due-caption-off"),
        columns={"day": 14, "due": 28, "its-time": 36, "became": 20, "session": 24},
        rows=(_due(one, spans.get(one.session, ()), desk) for one in found),
        empty=desk.say("none"),
    )  # fmt: skip


def _due(one: Kept, seqs: Seqs, desk: Desk) -> Row:
    machine = desk.machine(one.due.machine)
    stand = desk.say("stand", stand=one.stand.replace(" ", "-").replace(",", ""))
    cells = (
        one.due.day.isoformat(),
        desk.words.say(f"due-{one.due.duty.value}", machine=machine),
        f"{desk.moment(one.due.from_utc)} – {desk.moment(one.due.until_utc)}",
        f"{stand}\n{desk.moment(one.at_utc)}" if one.session else stand,
        one.session or "–",
    )
    return Row(tuple(Cell(x) for x in cells), seqs, off=one.stand not in _AS_IT_SHOULD)


def sessions(of: Gathered, desk: Desk) -> Table:
    """Return the sessions in a line each."""
    return desk.table(
        id="sessions", caption=desk.say("sessions-caption"),
        columns={
            "begun": 18, "work": 28, "who": 17, "length": 16, "ended": 17, "deviations": 19,
            "signed": 22,
        },
        rows=(_session(one, desk) for one in of.lines), empty=desk.say("sessions-none"),
    )  # fmt: skip


def _session(one: Line, desk: Desk) -> Row:
    title = desk.text(one.title, one.procedure)
    usual = "" if one.usual_s is None else f"\n({one.usual_s / 60:.0f})"
    signed = signed_cell(one, desk)
    cells = (
        Cell(desk.moment(one.begun_utc), (one.first_seq,)),
        Cell(f"{desk.machine(one.machine)}\n{title}\n{one.session}"),
        Cell(desk.people(one.workers)),
        Cell(f"{one.length_s / 60:.1f}{usual}"),
        Cell(desk.say("ended", how=one.ended.replace(" ", "-")), (one.last_seq,)),
        Cell(str(one.deviations)),
        Cell(signed.text, signed.seqs),
    )
    return Row(cells, (one.first_seq, one.last_seq), off=one.ended is not Ended.COMPLETE)


def parts(of: Gathered, desk: Desk) -> Table:
    """Return the parts that were replaced, worn, or of which some were missing."""
    found = [
        one
        for one in of.parts
        if one.finding not in ("", "good") or (one.counted != one.expected and not one.finding)
    ]
    return desk.table(
        id="parts", caption=desk.say("parts-caption"),
        columns={"time": 19, "machine": 20, "part": 24, "found": 26, "session": 26},
        rows=(_part(one, desk) for one in found), empty=desk.say("none"),
    )  # fmt: skip


def _part(one: PartLine, desk: Desk) -> Row:
    found = desk.say("counted", counted=str(one.counted), expected=str(one.expected))
    if one.finding:
        found = desk.say("finding", finding=one.finding.replace(" ", "-"), other=one.finding)
    if one.by:
        remark = f", {desk.remark(one.remark)}" if one.remark else ""
        found = f"{found}; {desk.person(one.by)}{remark}"
    cells = (
        desk.moment(one.at_utc), desk.machine(one.machine), desk.part(one.machine, one.part),
        found, one.session or "–",
    )  # fmt: skip
    return Row(tuple(Cell(x) for x in cells), (one.seq,), off=one.finding == "none left")


def people(of: Gathered, desk: Desk) -> Table:
    """Return who took part, and in how many sessions."""
    groups: dict[str, list[Line]] = {}
    for one in of.lines:
        for worker in one.workers:
            groups.setdefault(worker, []).append(one)
    return desk.table(
        id="people", caption=desk.say("people-caption"),
        columns={"who": 30, "count": 14, "procedures": 60},
        rows=(
            Row(
                (
                    Cell(desk.person(worker)),
                    Cell(str(len(lines)), key=f"walked-{worker}"),
                    Cell(", ".join(sorted({desk.procedure(one.procedure) for one in lines}))),
                ),
                tuple(one.first_seq for one in lines),
            )
            for worker, lines in sorted(groups.items())
        ),
        empty=desk.say("sessions-none"),
    )  # fmt: skip


def procedures(of: Gathered, desk: Desk) -> Table:
    """Return which texts were walked, each by its version and digest."""
    groups: dict[tuple[str, int, str], list[int]] = {}
    for one in of.lines:
        digest = str(desk.rows.started(one.session).get("digest", ""))
        groups.setdefault((one.procedure, one.version, digest), []).append(one.first_seq)
    return desk.table(
        id="procedures", caption=desk.say("procedures-caption"),
        columns={"procedure": 40, "version": 12, "digest": 50, "count": 14},
        rows=(
            Row(
                (
                    Cell(f"{desk.procedure(procedure)} ({procedure})"),
                    Cell(str(version)),
                    Cell(digest),
                    Cell(str(len(seqs)), key=f"text-{digest[:12]}"),
                ),
                tuple(seqs),
            )
            for (procedure, version, digest), seqs in sorted(groups.items())
        ),
        empty=desk.say("sessions-none"),
    )  # fmt: skip
