"""The most that may stay on a surface without a rinse: 40 CFR 180.940(a)."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.dose import NO_RINSE_CAP
from kiosk.trade.solution import Label, Why
from kiosk.trade.solution_table import Agent
from tests.outside.profiles import profile, verdict

DIDECYL = "didecyl dimethyl ammonium carbonate and bicarbonate"


def test_chlorine():
    """200 ppm total available chlorine. READ in two secondary summaries; primary row not seen."""
    assert NO_RINSE_CAP == 200
    assert verdict("200", "7", "24 °C").passes
    assert verdict("200.1", "7", "24 °C").why is Why.OVER_CAP


def test_iodine():
    """25 ppm titratable iodine. MEM."""
    assert verdict("25", "5", "20 °C", agent=Agent.IODINE).passes
    assert verdict("25.1", "5", "20 °C", agent=Agent.IODINE).why is Why.OVER_CAP


@pytest.mark.parametrize(("strength", "why"), [("400", Why.LISTED), ("401", Why.OVER_CAP)])
def test_didecyl_dimethyl_ammonium_carbonate(strength, why):
    """400 ppm, raised 22 Aug 2012. READ federal.elaws.us 2012-20663."""
    label = Label(agent=Agent.QUAT, least=Decimal(150), most=Decimal(500), compound=DIDECYL)
    found = verdict(strength, None, "24 °C", agent=Agent.QUAT, hardness="100", label=label)
    assert found.why is why


def test_another_quat_is_limited_by_its_label():
    """The cap depends on the compound. MEM."""
    label = Label(agent=Agent.QUAT, least=Decimal(150), most=Decimal(500))
    quat = {"agent": Agent.QUAT, "hardness": "100", "label": label}
    assert verdict("500", None, "24 °C", **quat).passes
    assert verdict("501", None, "24 °C", **quat).why is Why.OFF_LABEL


def test_the_section_is_in_force_since_28_april_2004():
    """Copied from 21 CFR 178.1010. READ FR 2004 final rule."""
    caps = profile("food-code-2022").solutions.caps
    dates = {one.agent: one.date for one in caps}
    assert dates[Agent.CHLORINE] == "in force since 28 Apr 2004"
    assert dates[Agent.QUAT] == "22 Aug 2012"
