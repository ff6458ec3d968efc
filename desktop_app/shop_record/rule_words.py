"""How the house rules and their values are said; they are kept and typed by their English names."""

from __future__ import annotations

from desktop_app.language import as_shown, marked, tr

NAMES = (
    marked("shop name"),
    marked("length unit"),
    marked("distance unit"),
    marked("window days"),
    marked("window months"),
    marked("window miles"),
    marked("window rule"),
    marked("sale ends window"),
    marked("early days"),
    marked("early miles"),
    marked("long days"),
    marked("long miles"),
    marked("ask after days"),
    marked("sure percent"),
    marked("hour cost"),
    marked("hour cost cents"),
    marked("names in book"),
    marked("second backup folder"),
    marked("days without backup"),
    marked("currency"),
    marked("paper"),
    marked("look"),
    marked("text size"),
)
SHOP = marked("The shop")
#: The headings under which the rules stand, in their order.
HEADINGS = {
    SHOP: ("shop_name", "length_unit", "distance_unit", "currency", "paper"),
    marked("Early and long windows"): (
        "sale_ends_window",
        "early_days",
        "early_miles",
        "long_days",
        "long_miles",
        "ask_after_days",
    ),
    marked("Verdicts and the weekly book"): ("sure_percent", "hour_cost_cents", "names_in_book"),
    marked("Backups"): ("second_backup_folder", "days_without_backup"),
    marked("The look"): ("look", "text_size"),
}
VALUES = (
    marked("inch"),
    marked("miles"),
    marked("first"),
    marked("both"),
    marked("yes"),
    marked("no"),
    marked("Letter"),
    marked("as the system"),
    marked("light"),
    marked("dark"),
    marked("high contrast"),
)


def rule_words(name: str) -> str:
    """Return how a house rule is said, by its name; money is not said to be in cents."""
    return tr(name.removesuffix("_cents").replace("_", " "))


def value_words(value: object) -> str:
    """Return how a value is shown: one of those that are offered in the language spoken."""
    return as_shown(str(value), VALUES)
