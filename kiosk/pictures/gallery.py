"""Every picture, by its name."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from kiosk.pictures import of_barrel, of_door, of_hopper, of_pump, of_work
from kiosk.pictures.shapes import Strokes
from kiosk.pictures.stroke import Picture
from kiosk.procedure.plan import Step

_DRAWN: Final[Mapping[str, Strokes]] = {
    # The door.
    "door": of_door.DOOR,
    "twin-door": of_door.TWIN_DOOR,
    "door-knobs": of_door.KNOBS,
    "door-gasket": of_door.GASKET,
    "gasket-groove": of_door.GASKET_GROOVE,
    "draw-valve": of_door.VALVE,
    "valve-rings": of_door.VALVE_RINGS,
    "valve-in": of_door.VALVE_IN,
    "relief-plug": of_door.RELIEF_PLUG,
    "o-rings": of_door.RINGS,
    "lubricate": of_door.LUBRICATE,
    # The barrel.
    "beater": of_barrel.BEATER,
    "scraper-blades": of_barrel.BLADES,
    "fitted-blades": of_barrel.BLADES_ON,
    "beater-in": of_barrel.BEATER_IN,
    "drive-shaft": of_barrel.SHAFT,
    "drive-seal": of_barrel.SEAL,
    "shaft-seal": of_barrel.SHAFT_SEAL,
    "shaft-in": of_barrel.SHAFT_IN,
    "barrel": of_barrel.BARREL,
    "barrel-brush": of_barrel.BARREL_BRUSH,
    "rear-brush": of_barrel.REAR_BRUSH,
    # The pump.
    "pump-body": of_pump.BODY,
    "pump-piston": of_pump.PISTON,
    "check-band": of_pump.CHECK_BAND,
    "pump-small-parts": of_pump.SMALL_PARTS,
    "pump-seals": of_pump.SEALS,
    "pump-in": of_pump.PUMP_IN,
    "lock-pin": of_pump.LOCK_PIN,
    "feed-hose": of_pump.HOSE,
    "fitted-hose": of_pump.HOSE_ON,
    # The hopper.
    "hopper-lid": of_hopper.LID,
    "lid-gasket": of_hopper.LID_GASKET,
    "air-tube": of_hopper.AIR_TUBE,
    "air-tube-in": of_hopper.AIR_TUBE_IN,
    "inlet": of_hopper.INLET,
    "pour-mix": of_hopper.POUR_MIX,
    "thermometer": of_hopper.THERMOMETER,
    "drip-trays": of_hopper.TRAYS,
    # Around the machine.
    "machine": of_work.SINGLE_MACHINE,
    "twin-machine": of_work.TWIN_MACHINE,
    "plug": of_work.PLUG,
    "plug-in": of_work.PLUG_IN,
    "lockout": of_work.LOCKOUT,
    "drain": of_work.DRAIN_SINGLE,
    "twin-drain": of_work.DRAIN_TWIN,
    "brushes": of_work.BRUSHES,
    "wash-sink": of_work.WASH,
    "three-sinks": of_work.THREE_SINKS,
    "running-water": of_work.RINSE,
    "sanitizing-sink": of_work.SANITIZE,
    "sanitizer-bucket": of_work.STRIP_BUCKET,
    "test-strip": of_work.STRIP,
    "drying-rack": of_work.RACK,
    "hand-wash": of_work.HAND_WASH,
    "protection": of_work.PROTECTION,
    "sample-cup": of_work.CUP,
    "cups-on-ice": of_work.ICE,
}

PICTURES: Final[Mapping[str, Picture]] = MappingProxyType(
    {name: Picture(name, strokes) for name, strokes in _DRAWN.items()}
)


def picture(name: str) -> Picture:
    """Return a picture. Raises KeyError for a name that has none."""
    return PICTURES[name]


def part_of(step: Step) -> str | None:
    """Return the name of the picture that a step points at; None when there is none."""
    return step.shows if step.shows in PICTURES else None
