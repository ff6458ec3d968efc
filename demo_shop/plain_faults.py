"""The everyday faults that plain jobs of the demo are made of; words and figures are invented."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class PlainFault:
    """One everyday fault: what customers say, when (words and the condition ids), what it was.

    `cents` and `hours` are from-to; `fixes` pairs a cause with what was done about it.
    """

    name: str
    system: str
    kind: str
    heads: tuple[str, ...]
    whens: tuple[tuple[str, tuple[str, ...]], ...]
    fixes: tuple[tuple[str, str], ...]
    codes: tuple[str, ...] = ()
    terms: tuple[str, ...] = ()
    hours: tuple[float, float] = (0.5, 2.0)
    cents: tuple[int, int] = (6_000, 24_000)


F = PlainFault

ENGINE_FAULTS = (
    F("coil", "ignition", "ignition-coil",
      ("It misses", "Runs rough and the lamp blinks", "Shakes like a tractor", "Coughs and skips"),
      (("when I pull away", ("take-up",)), ("going uphill", ("pulling",)),
       ("in the rain", ("rain",)), ("with the car full", ("passengers",))),
      (("Coil breaks down under load; the fault moved with it", "Coil renewed, plugs measured"),
       ("Coil body cracked, spark to the side", "Coil and its boot renewed")),
      ("P0301", "P0302", "P0304"), ("breaks down hot", "cracked case"),
      (0.5, 1.2), (9_000, 21_000)),
    F("plugs", "ignition", "spark-plug",
      ("Rough at idle", "Shakes at lights", "Hesitates and stumbles", "Lumpy tick-over"),
      (("when cold", ("cold",)), ("at idle", ("idle",)), ("on a light press", ("light-press",)),
       ("in the first minute", ("first-minute",))),
      (("Plug gaps burned wide, 1.4 mm and more", "Set of plugs renewed and gapped"),
       ("One plug fouled, insulator cracked", "Set of plugs renewed, leads wiped and measured")),
      ("P0300", "P0303"), ("worn electrode", "cracked insulator"), (0.6, 1.4), (7_500, 19_000)),
    F("leads", "ignition", "plug-wire",
      ("It skips a beat", "Misses like mad", "Splutters", "Breaks up"),
      (("after a wash", ("wash",)), ("on damp mornings", ("damp", "first-start")),
       ("in fog and rain", ("damp", "rain"))),
      (("Lead burned on the manifold", "Set of leads renewed and clipped clear of the heat"),
       ("Boot torn, spark to ground seen in the dark", "Set of leads renewed")),
      ("P0300",), ("burned on the manifold", "torn boot"), (0.5, 1.0), (8_000, 16_000)),
    F("idle-air", "intake", "",
      ("Revs go up and down by itself", "It hunts", "Idle surges"),
      (("at lights", ("idle",)), ("once it is hot", ("hot",)), ("with the A/C on", ("ac-on",))),
      (("Throttle body gummed up", "Throttle body cleaned, idle learned anew"),
       ("Split hose behind the throttle", "Vacuum hose renewed")),
      ("P0505", "P0171", "P0507"), (), (0.6, 1.5), (6_500, 15_500)),
    F("air-meter", "intake", "maf-sensor",
      ("Gutless", "Hangs back and bogs", "No poke"),
      (("up hills", ("pulling",)), ("when I put my foot down", ("pulling",)),
       ("on the motorway", ("high-speed",))),
      (("Air meter dirty, reads low under load", "Air meter renewed, filter too"),
       ("Air meter's element oil-fouled", "Air meter renewed")),
      ("P0101", "P0171"), ("dirty element", "oil-fouled"), (0.4, 1.0), (11_000, 24_000)),
    F("crank", "engine-control", "crank-cam-sensor",
      ("Just shuts off while driving", "Cuts out with no warning", "Won't restart hot"),
      (("in traffic", ("hot",)), ("after a long drive", ("hot", "after-minutes")),
       ("and then goes again after a coffee", ("restart-hot",))),
      (("Crankshaft sensor fades when hot", "Crankshaft sensor renewed, gap looked at"),
       ("Lead of the sensor chafed on a bracket", "Sensor with its lead renewed and clipped")),
      ("P0335", "P0339"), ("weak when hot", "chafed lead"), (0.7, 1.6), (9_500, 21_000)),
    F("pump", "fuel", "fuel-pump",
      ("Cranks forever before it starts", "Takes three tries to start", "Long crank"),
      (("in the morning", ("first-start",)), ("after standing", ("after-standing",)),
       ("with the tank low", ("tank-low",))),
      (("Pump's check valve leaks down", "Pump module renewed, strainer clean"),
       ("Pump worn, delivers half", "Pump module renewed, filter too")),
      ("P0087",), ("check valve leaks", "worn brushes"), (1.4, 2.8), (29_000, 52_000)),
    F("thermostat", "cooling", "thermostat",
      ("Heater blows cold", "Never gets warm", "The gauge stays low"),
      (("on the highway", ("high-speed",)), ("in frost", ("freezing",)), ("all week", ("always",))),
      (("Thermostat stuck open", "Thermostat and seal renewed, bled"),
       ("Thermostat opens at 68 °C, stamped 88", "Thermostat renewed, coolant filled and bled")),
      ("P0128",), ("stuck open",), (0.7, 1.6), (8_000, 19_000)),
    F("hose", "cooling", "coolant-hose",
      ("I have to add water", "Sweet smell and a puddle", "It runs hot and steams"),
      (("after a hill", ("pulling", "hot")), ("in slow traffic", ("low-speed", "hot")),
       ("every few days", ())),
      (("Lower hose split at the clamp", "Hose and clamps renewed, pressed and bled"),
       ("Heater hose rubbed through on a bracket", "Hose renewed and clipped clear")),
      ("P0217",), ("cracked", "rubbed through", "soft"), (0.6, 1.5), (6_500, 16_000)),
    F("belt", "belt-drive", "serpentine-belt",
      ("Squeals from the front", "Screech on start", "It chirps"),
      (("when it is cold", ("cold",)), ("in the wet", ("rain",)),
       ("on full lock", ("full-lock", "parking"))),
      (("Belt glazed and cracked across the ribs", "Belt renewed, tensioner looked at"),
       ("Belt worn and slack, tensioner at its end", "Belt and tensioner renewed")),
      (), ("glazed", "cracked ribs", "worn ribs"), (0.5, 1.3), (6_000, 18_000)),
    F("filler-cap", "evaporative", "gasket-seal-oring",
      ("Engine lamp on, drives fine", "Check light came on", "The little engine is lit"),
      (("after filling up", ("just-filled",)), ("since the weekend", ())),
      (("Filler cap's seal pressed flat", "Filler cap renewed, leak test run"),
       ("Vapour hose loose at the canister", "Hose and seal renewed, leak test run")),
      ("P0442", "P0455", "P0456"), ("flattened", "hard"), (0.3, 1.2), (4_000, 13_000)),
    F("oil-leak", "oil", "gasket-seal-oring",
      ("Spots on the drive", "It drips oil", "Leaking oil at the front"),
      (("overnight", ("after-standing",)), ("after a long drive", ("hot",))),
      (("Cover gasket hard and flat", "Gasket renewed, cleaned, looked at again hot"),
       ("Filter seat wet, old ring left on", "Filter and ring renewed, cleaned")),
      (), ("hard", "flattened"), (0.6, 2.2), (7_000, 22_000)),
)  # fmt: skip
