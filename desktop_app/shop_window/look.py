"""The look of the window: light and dark palettes, the font that comes along, sizes for gloves."""

from __future__ import annotations

from functools import cache

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QPalette
from PySide6.QtWidgets import QApplication, QStyleFactory, QWidget

from desktop_app.shop_record.own_program.resource_folder import resource_path

# Two colours of the Okabe-Ito palette, always with a shape beside them: colour alone says nothing.
REMOVED = QColor("#E69F00")
REPLACEMENT = QColor("#0072B2")

_WEARS_FUSION = "wearsFusion"  # a property of the application
TOUCH = 40  # height in pixels of what is pressed with a glove

_LIGHT = {
    QPalette.ColorRole.Window: "#ECEAE4",
    QPalette.ColorRole.WindowText: "#1D2329",
    QPalette.ColorRole.Base: "#FBFAF7",
    QPalette.ColorRole.AlternateBase: "#F2F0EA",
    QPalette.ColorRole.Text: "#1D2329",
    QPalette.ColorRole.Button: "#DDDAD1",
    QPalette.ColorRole.ButtonText: "#1D2329",
    QPalette.ColorRole.ToolTipBase: "#FBFAF7",
    QPalette.ColorRole.ToolTipText: "#1D2329",
    QPalette.ColorRole.PlaceholderText: "#5F6469",
    QPalette.ColorRole.Highlight: "#0072B2",
    QPalette.ColorRole.HighlightedText: "#FFFFFF",
    QPalette.ColorRole.Mid: "#B9B5AA",
    QPalette.ColorRole.Link: "#005A8C",
}
_DARK = {
    QPalette.ColorRole.Window: "#22272C",
    QPalette.ColorRole.WindowText: "#ECEAE4",
    QPalette.ColorRole.Base: "#191D21",
    QPalette.ColorRole.AlternateBase: "#20252A",
    QPalette.ColorRole.Text: "#ECEAE4",
    QPalette.ColorRole.Button: "#353C43",
    QPalette.ColorRole.ButtonText: "#ECEAE4",
    QPalette.ColorRole.ToolTipBase: "#353C43",
    QPalette.ColorRole.ToolTipText: "#ECEAE4",
    QPalette.ColorRole.PlaceholderText: "#969DA3",
    QPalette.ColorRole.Highlight: "#56B4E9",
    QPalette.ColorRole.HighlightedText: "#10151A",
    QPalette.ColorRole.Mid: "#545C64",
    QPalette.ColorRole.Link: "#56B4E9",
}
# For eyes that need more: nothing is greyed but what is off, and every edge is drawn.
_STRONG_LIGHT = _LIGHT | {
    QPalette.ColorRole.Window: "#FFFFFF",
    QPalette.ColorRole.WindowText: "#000000",
    QPalette.ColorRole.Base: "#FFFFFF",
    QPalette.ColorRole.AlternateBase: "#FFFFFF",
    QPalette.ColorRole.Text: "#000000",
    QPalette.ColorRole.Button: "#FFFFFF",
    QPalette.ColorRole.ButtonText: "#000000",
    QPalette.ColorRole.ToolTipBase: "#FFFFFF",
    QPalette.ColorRole.ToolTipText: "#000000",
    QPalette.ColorRole.PlaceholderText: "#404040",
    QPalette.ColorRole.Highlight: "#003F6E",
    QPalette.ColorRole.Mid: "#000000",
    QPalette.ColorRole.Link: "#003F6E",
}
_STRONG_DARK = _DARK | {
    QPalette.ColorRole.Window: "#000000",
    QPalette.ColorRole.WindowText: "#FFFFFF",
    QPalette.ColorRole.Base: "#000000",
    QPalette.ColorRole.AlternateBase: "#000000",
    QPalette.ColorRole.Text: "#FFFFFF",
    QPalette.ColorRole.Button: "#000000",
    QPalette.ColorRole.ButtonText: "#FFFFFF",
    QPalette.ColorRole.ToolTipBase: "#000000",
    QPalette.ColorRole.ToolTipText: "#FFFFFF",
    QPalette.ColorRole.PlaceholderText: "#D0D0D0",
    QPalette.ColorRole.Highlight: "#8FD0FF",
    QPalette.ColorRole.HighlightedText: "#000000",
    QPalette.ColorRole.Mid: "#FFFFFF",
    QPalette.ColorRole.Link: "#8FD0FF",
}
#: By whether the window is dark, and whether it is of high contrast.
PALETTES = {
    (False, False): _LIGHT,
    (True, False): _DARK,
    (False, True): _STRONG_LIGHT,
    (True, True): _STRONG_DARK,
}

# Words larger than these points let what holds them grow.
_USUAL = 12
LARGE = 16  # points; what is larger leaves no room for all words above a page


def _buttons(touch: int, aside: int, close: int, tight: int) -> str:
    """Return the sheet of buttons, by the height to touch and the room beside their words.

    The ring of the focus takes the button's own room; on a fill it has the words' colour.
    """
    return f"""
QPushButton, QToolButton {{ min-height: {touch - 12}px; padding: 4px {aside}px;
  border-radius: 4px; border: 1px solid palette(mid); background: palette(button); }}
QToolButton {{ min-height: {touch - 15}px; }}
QPushButton:hover, QToolButton:hover {{ border-color: palette(highlight); }}
QPushButton:focus, QToolButton:focus {{ border: 2px solid palette(highlight);
  padding: 3px {aside - 1}px; }}
QPushButton:checked, QToolButton:checked {{ background: palette(highlight);
  color: palette(highlighted-text); }}
QPushButton:disabled, QToolButton:disabled {{ color: palette(mid); }}
QPushButton:checked:disabled, QToolButton:checked:disabled {{ color: palette(base);
  background: palette(placeholder-text); }}
QPushButton:checked:focus, QToolButton:checked:focus, QPushButton#next:focus {{
  border: 3px double palette(highlighted-text); padding: 2px {aside - 2}px; }}
QWidget#close QPushButton, QWidget#close QToolButton {{ padding: 4px {close}px; }}
QWidget#close QPushButton:focus, QWidget#close QToolButton:focus {{ padding: 3px {close - 1}px; }}
QWidget#tight QPushButton, QWidget#tight QToolButton {{ padding: 4px {tight}px; }}
QWidget#tight QPushButton:focus, QWidget#tight QToolButton:focus {{ padding: 3px {tight - 1}px; }}
QWidget#close QPushButton:checked:focus {{ padding: 2px {close - 2}px; }}
QWidget#tight QPushButton:checked:focus, QWidget#tight QToolButton:checked:focus {{
  padding: 2px {tight - 2}px; }}
QPushButton#next:enabled {{ background: palette(highlight); font-weight: bold;
  color: palette(highlighted-text); }}"""


def _sheet(text_size: int) -> str:
    """Return the style sheet for a text size; a frame that gets thicker takes its inside's room."""
    beyond = max(0, text_size - _USUAL)
    touch = TOUCH + beyond * 5 // 4
    arrow = 5 + beyond // 3
    aside = 14 if text_size <= LARGE else 10
    close, edge = aside - 5, "solid palette(highlight)"
    inside = "11px 16px 14px 16px" if text_size <= LARGE else "6px"
    tight = aside if text_size <= LARGE else close
    return f"""{_buttons(touch, aside, close, tight)}
QLineEdit, QPlainTextEdit, QComboBox {{ min-height: {touch - 10}px;
  padding: 3px 8px; border: 1px solid palette(mid); border-radius: 4px;
  background: palette(base); }}
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus {{ padding: 2px 7px;
  border: 2px solid palette(highlight); }}
QLineEdit[missing="true"], QPlainTextEdit[missing="true"] {{ border: 3px double palette(text);
  padding: 1px 6px; }}
QLineEdit#asked {{ min-height: {touch + 2}px; font-size: {text_size + 4}pt; }}
QComboBox {{ combobox-popup: 0; }}
QComboBox QAbstractItemView {{ background: palette(base); color: palette(text);
  selection-background-color: palette(highlight); selection-color: palette(highlighted-text);
  border: 1px solid palette(mid); }}
QComboBox QAbstractItemView::item {{ min-height: {touch - 10}px; padding: 0px 6px; }}
QComboBox::drop-down {{ border: none; width: {3 * arrow + 6}px; }}
QComboBox::down-arrow {{ width: 0px; height: 0px; border-top: {arrow + 1}px solid palette(text);
  border-left: {arrow}px solid palette(base); border-right: {arrow}px solid palette(base); }}
QComboBox::down-arrow:disabled {{ border-top-color: palette(mid); }}
QToolTip {{ padding: 4px; }}
QFrame#card {{ background: palette(base); border: 1px solid palette(mid); padding: {inside};
  border-radius: 6px; }}
QLabel#title {{ font-size: {max(20, text_size + 5)}pt; font-weight: bold; }}
QLabel#heading {{ font-size: {max(15, text_size + 3)}pt; font-weight: bold; }}
QLabel#quiet {{ color: palette(placeholder-text); }}
QLabel#beside {{ background: palette(tooltip-base); border: 1px solid palette(highlight);
  padding: 4px 8px; }}
QFrame#notice {{ background: palette(tooltip-base); border: 2px solid palette(highlight); }}
QFrame#question {{ background: palette(alternate-base); border-left: 4px {edge}; }}
QFrame#caution {{ background: palette(alternate-base); border: 2px solid palette(text); }}
QWidget#rail {{ background: palette(alternate-base); }}
QWidget#rail QPushButton {{ text-align: left; border: none; background: transparent;
  border-radius: 0; padding: 4px {aside}px; min-height: {TOUCH + beyond // 2}px; }}
QWidget#rail QPushButton:checked {{ background: palette(base); color: palette(text);
  border-left: 5px solid palette(highlight); font-weight: bold; padding-left: {aside - 5}px; }}
QWidget#rail QPushButton:focus {{ border: 2px {edge}; padding: 2px {aside - 2}px; }}
QWidget#rail[flat="true"] QPushButton {{ padding: 2px 8px; min-height: {TOUCH // 2 + beyond}px; }}
QWidget#rail[flat="true"] QPushButton:checked {{ padding-left: 3px; }}
QWidget#rail[flat="true"] QPushButton:focus {{ padding: 0px 6px; }}
"""


def dress_anew(widget: QWidget) -> None:
    """Let the look be asked again for a widget, and for what stands in it, called otherwise now."""
    for one in (widget, *widget.findChildren(QWidget)):
        one.style().unpolish(one)
        one.style().polish(one)


def larger(widget: QWidget) -> float:
    """Return how much larger a widget's text is than the usual one; never less than 1."""
    return max(1.0, widget.font().pointSizeF() / _USUAL)


def application(words: list[str]) -> QApplication:
    """Make the application for a command line of `words`, in the style that it is dressed in."""
    app = QApplication([*words[:1], "-style", "Fusion"])
    app.setProperty(_WEARS_FUSION, True)
    return app


@cache
def load_fonts() -> str:
    """Load the font that comes with the program and return its family name."""
    for name in ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf"):
        QFontDatabase.addApplicationFont(str(resource_path("fonts", name)))
    return "DejaVu Sans"


def dress(app: QApplication, look: str = "as the system", text_size: int = 12) -> None:
    """Give the application its style: `look` is a house rule, `text_size` in points."""
    if not app.property(_WEARS_FUSION):  # asking the style itself loads what knows of styles
        app.setStyle(QStyleFactory.create("Fusion"))
        app.setProperty(_WEARS_FUSION, True)
    if not app.styleSheet():
        # The first one keeps what has a style from taking the font.
        app.setStyleSheet(_sheet(text_size))
    dark = is_dark(app, look)
    strong = is_strong(app, look)
    # Said anew with each size and palette: what has a style takes font and colours when the style
    # is set, not before.
    sheet = f"{_sheet(text_size)}\n/* {text_size}{' dark' * dark}{' strong' * strong} */"
    if app.styleSheet() != sheet:
        app.setFont(QFont(load_fonts(), text_size))
        app.setPalette(_palette(PALETTES[dark, strong]))
        app.setStyleSheet(sheet)


def is_dark(app: QApplication, look: str) -> bool:
    """Tell whether the window is dark, by the house rule or else by the system."""
    if look in ("light", "dark"):
        return look == "dark"
    return app.styleHints().colorScheme() == Qt.ColorScheme.Dark


def is_strong(app: QApplication, look: str) -> bool:
    """Tell whether the window is of high contrast, by the house rule or else by the system."""
    if look != "as the system":
        return look == "high contrast"
    hints = app.styleHints()
    if not hasattr(hints, "accessibility"):  # Qt before 6.10 doesn't ask the system
        return False
    return hints.accessibility().contrastPreference() == Qt.ContrastPreference.HighContrast


def _palette(colours: dict[QPalette.ColorRole, str]) -> QPalette:
    palette = QPalette()
    for role, colour in colours.items():
        palette.setColor(role, QColor(colour))
    greyed = QColor(colours[QPalette.ColorRole.PlaceholderText])
    for role in (QPalette.ColorRole.Text, QPalette.ColorRole.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, role, greyed)
    return palette
