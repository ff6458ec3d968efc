"""What people call the columns of a table of jobs; the division is our own, from everyday words."""

from __future__ import annotations

import re
import unicodedata

FIELDS = (
    "job_number",
    "opened_on",
    "closed_on",
    "vin",
    "plate",
    "vehicle",
    "odometer",
    "odometer_unit",
    "technician",
    "concern",
    "cause",
    "correction",
    "codes",
    "system",
    "part_kind",
    "part_number",
    "supplier",
    "part_origin",
    "price",
    "hours",
    "return_of",
    "judgement",
)

# In the order of preference; the contract's own name comes before all of them.
_NAMES: dict[str, str] = {
    "job_number": "job number|job|job id|job card|job card number|ro number|ro|repair order|"
    "repair order number|work order|work order number|wo|wo number|order number|order|"
    "ticket number|ticket|invoice number|invoice|reference|ref|case number",
    "opened_on": "opened|date opened|opened date|open date|date in|in date|received|received on|"
    "date received|arrived|arrival|arrival date|booked in|check in|started|start date|job date|"
    "repair date|service date|date of repair|ro date|order date|visit date|in|date",
    "closed_on": "closed|date closed|closed date|close date|date out|out date|handed over|"
    "handed over on|hand over|handover date|completed|completed on|date completed|"
    "completion date|finished|finish date|delivered|delivery date|collected|picked up|"
    "end date|date done|invoice date|out",
    "vin": "vin number|vehicle identification number|chassis number|chassis|frame number",
    "plate": "reg|reg number|registration|registration number|registration plate|license plate|"
    "licence plate|number plate|plate number|license number|licence number|license|licence|"
    "rego|tag|vrm",
    "vehicle": "vehicle description|car|make and model|make model|car model|model|make",
    "odometer": "odometer reading|odometer in|mileage|mileage in|odo|odo in|miles|miles in|km|kms|"
    "km in|kilometres|kilometers|kilometrage|mi",
    "odometer_unit": "unit|units|distance unit|mi km|km mi",
    "technician": "tech|technician name|tech name|mechanic|mechanic name|fitter|worked by|done by|"
    "repaired by|assigned to",
    "concern": "complaint|customer concern|customer complaint|customer states|customer says|"
    "reported fault|reported|symptom|symptoms|problem|fault|reason for visit|request|"
    "job description|description",
    "cause": "root cause|diagnosis|fault found|found|finding|findings",
    "correction": "repair|repair done|fix|work done|work performed|work carried out|work|remedy|"
    "action|action taken|resolution|service performed",
    "codes": "code|dtc|dtcs|trouble codes|trouble code|fault codes|fault code|error codes|"
    "diagnostic codes|codes found",
    "system": "vehicle system|area",
    "part_kind": "kind of part|part type|part name|part|part description|part replaced|"
    "component|parts|parts used",
    "part_number": "pn|p n|article number|item number",
    "supplier": "vendor|parts supplier|bought from|part supplier",
    "part_origin": "origin|part condition|new or used|new used|part quality",
    "price": "total|total price|price total|amount|total amount|cost|total cost|charged|billed|"
    "invoice total|sum",
    "hours": "labor hours|labour hours|hrs|billed hours|hours billed|labor time|labour time|"
    "time spent",
    "return_of": "comeback of|came back from|earlier job|previous job|original job|original ro|"
    "original ro number",
    "judgement": "judgment|comeback reason|return reason",
}
HEADERS = {field: (field.replace("_", " "), *_NAMES[field].split("|")) for field in FIELDS}
KNOWN_HEADERS = frozenset(name for names in HEADERS.values() for name in names)
# A vehicle is often written over several columns, in this order.
VEHICLE_PARTS = (("year", "model year", "yr"), ("make", "maker"), ("model", "car model"), ("trim",))

_SHORT = {"no": "number", "nr": "number", "num": "number", "nbr": "number", "dt": "date"}


def header_words(header: str) -> str:
    """Return a header as it is compared: lower case, without signs, brackets and accents."""
    plain = re.sub(r"\(.*?\)|\[.*?\]", " ", header) or header
    plain = unicodedata.normalize("NFKD", plain.replace("#", " number ").replace("&", " and "))
    bare = "".join(c for c in plain if not unicodedata.combining(c))
    words = re.findall(r"[^\W_]+", bare.casefold())
    return " ".join(_SHORT.get(word, word) for word in words)


def header_unit(header: str) -> str:
    """Return the unit that an odometer's header names: "mi", "km" or ""."""
    words = re.findall(r"[a-z]+", header.casefold())
    if {"km", "kms", "kilometres", "kilometers"} & set(words):
        return "" if {"mi", "miles"} & set(words) else "km"
    return "mi" if {"mi", "miles"} & set(words) else ""
