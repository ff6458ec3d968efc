"""The part kinds that can be put before the bench camera."""

from __future__ import annotations

from demo_shop.bench_camera.parts import (
    belt,
    cap,
    coil,
    crank_sensor,
    disc,
    hub,
    lead,
    oil_filter,
    pads,
    plug,
    relay,
    rotor,
    thermostat,
    tie_rod_end,
)
from demo_shop.bench_camera.subject import Builder

BUILDERS: dict[str, Builder] = {
    "distributor-rotor": rotor.build,
    "distributor-cap": cap.build,
    "spark-plug": plug.build,
    "plug-wire": lead.build,
    "ignition-coil": coil.build,
    "brake-pads": pads.build,
    "brake-disc": disc.build,
    "serpentine-belt": belt.build,
    "oil-filter": oil_filter.build,
    "thermostat": thermostat.build,
    "crank-cam-sensor": crank_sensor.build,
    "relay": relay.build,
    "wheel-bearing-hub": hub.build,
    "tie-rod-end": tie_rod_end.build,
}
