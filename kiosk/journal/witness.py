"""Holds a journal against its checkpoints: shortened, exchanged, or rewritten with a new chain."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from kiosk.journal.chain import Verdict, Wrong
from kiosk.journal.checkpoints import Checkpoint
from kiosk.journal.verify import Checked, Seen, check


@dataclass(frozen=True, slots=True)
class Testimony:
    """A journal's verdict with what its checkpoints add."""

    checked: Checked
    vouched: Checkpoint | None
    """The last checkpoint that agrees and is signed by a trusted key."""
    doubts: tuple[str, ...] = ()
    """Checkpoints that disagree, but are signed by nobody trusted."""
    lost: tuple[str, ...] = ()
    """Rows that a kiosk signed and that were not in the backup with which another went on."""

    @property
    def verdict(self) -> Verdict:
        """The verdict on the chain, or what a checkpoint proves against it."""
        return self.checked.verdict

    @property
    def sound(self) -> bool:
        """True when the journal is whole and nothing disagrees with it."""
        return self.verdict.whole and not self.doubts and not self.lost


def judge(
    file: Path,
    checkpoints: Sequence[Checkpoint],
    keys: Iterable[str] = (),
    *,
    believe_journal: bool = True,
) -> Testimony:
    """Check a journal or an export, and hold it against checkpoints. Raises OSError.

    Trusted are `keys`, and those that the journal itself names if it is believed. A checkpoint that
    agrees needs no valid signature, except the last: the chain covers all rows before it.
    """
    said = sorted(set(checkpoints), key=lambda one: (one.seq, one.utc))
    checked = check(file, frozenset(one.seq for one in said))
    if not checked.verdict.whole:
        return Testimony(checked, None)
    seen = checked.seen
    trusted = frozenset([*keys, *(seen.keys if believe_journal else ())])
    agreeing: list[Checkpoint] = []
    doubts: list[str] = []
    lost: dict[str, str] = {}
    vouched: Checkpoint | None = None
    for one in said:
        against = _against(one, seen)
        if against is None:
            agreeing += [one] if one.seq in seen.hashes else []
        elif not one.genuine(trusted):
            doubts.append(
                f"the checkpoint of row {one.seq} of {one.utc} disagrees ({against}), but no "
                "trusted key signed it: find out who wrote it, or give its key"
            )
        elif against is Wrong.TRUNCATED and seen.kiosk not in ("", one.kiosk):
            lost[one.kiosk] = _signed(one) + _gone(one, seen)
        else:
            vouched = _last_genuine(agreeing, trusted)
            good = vouched.seq if vouched else seen.first - 1
            checked = replace(checked, verdict=_proven(checked.verdict, one, against, good, seen))
            break
    else:
        vouched = _last_genuine(agreeing, trusted)
    return Testimony(checked, vouched, tuple(doubts), tuple(lost.values()))


def _last_genuine(agreeing: list[Checkpoint], trusted: frozenset[str]) -> Checkpoint | None:
    return next((one for one in reversed(agreeing) if one.genuine(trusted)), None)


def _against(one: Checkpoint, seen: Seen) -> Wrong | None:
    """Tell how a checkpoint disagrees with a journal whose chain is whole; None when it does not.

    An export may begin after the checkpoint's row: then it can say nothing.
    """
    if one.seq in seen.hashes:
        kiosk, row_hash = seen.hashes[one.seq]
        if (kiosk, row_hash) == (one.kiosk, one.hash):
            return None
        if kiosk != one.kiosk and one.kiosk in seen.kiosks:
            return Wrong.TRUNCATED
        return Wrong.REWRITTEN if kiosk == one.kiosk else Wrong.SPLICED
    if one.seq == 0 or 0 < one.seq < seen.first:
        return None
    return Wrong.TRUNCATED if one.kiosk in seen.kiosks or not seen.kiosks else Wrong.SPLICED


def _proven(verdict: Verdict, one: Checkpoint, wrong: Wrong, good: int, seen: Seen) -> Verdict:
    if wrong is Wrong.TRUNCATED:
        bad, what = seen.last + 1, _gone(one, seen)
    elif wrong is Wrong.REWRITTEN:
        bad, what = good + 1, ", and another one stands there: from here on it was rewritten"
    else:
        bad, what = seen.first, ", and no row here is of that kiosk: this is another journal"
    return replace(verdict, bad_seq=bad, what=_signed(one) + what, wrong=wrong)


def _signed(one: Checkpoint) -> str:
    return f"kiosk {one.kiosk} signed row {one.seq} on {one.utc}"


def _gone(one: Checkpoint, seen: Seen) -> str:
    return f", and its rows {seen.kiosks.get(one.kiosk, 0) + 1} to {one.seq} are not here"
