"""The part kinds that can be put before the bench camera."""

from __future__ import annotations

from demo_shop.bench_camera import belt, brakes, cap, engine_parts, leads, plug, rotor, running_gear
from demo_shop.bench_camera.subject import Builder

BUILDERS: dict[str, Builder] = {
    "distributor-rotor": rotor.build,
    "distributor-cap": cap.build,
    "spark-plug": plug.build,
    "plug-wire": leads.build_lead,
    "ignition-coil": leads.build_coil,
    "brake-pads": brakes.build_pads,
    "brake-disc": brakes.build_disc,
    "serpentine-belt": belt.build,
    "oil-filter": engine_parts.build_filter,
    "thermostat": engine_parts.build_thermostat,
    "crank-cam-sensor": engine_parts.build_sensor,
    "relay": engine_parts.build_relay,
    "wheel-bearing-hub": running_gear.build_hub,
    "tie-rod-end": running_gear.build_tie_rod_end,
}
