"""The texts of each folder, gathered with Qt's own tools, and what Spanish says for them."""

from __future__ import annotations

import json
import re
import subprocess
import sys
import tempfile
from collections.abc import Iterable, Mapping
from html import escape, unescape
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SPOKEN = ROOT / "resources" / "spoken"
#: The codes of the languages whose texts lie there.
CODES = sorted(folder.name for folder in SPOKEN.iterdir() if folder.is_dir())
_MESSAGE = re.compile(
    r"(<source>(?P<source>.*?)</source>.*?)<translation(?P<state>[^>]*?)(?:/>|>(?P<said>.*?)</translation>)",
    re.S,
)


def rooms() -> dict[str, list[Path]]:
    """Return the files of each folder with texts; those beside the folders are the program's."""
    found: dict[str, list[Path]] = {}
    for file in sorted((ROOT / "desktop_app").rglob("*.py")):
        inside = file.relative_to(ROOT / "desktop_app").parts
        found.setdefault(inside[0] if len(inside) > 1 else "program", []).append(file)
    return found


def _tool(name: str, *words: str | Path) -> None:
    tool = Path(sys.executable).parent / f"pyside6-{name}"
    done = subprocess.run([tool, *words], cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr


def gather(files: list[Path], into: Path, language: str) -> None:
    """Bring a file of texts up to date: new ones are added unsaid, those gone are taken out."""
    into.parent.mkdir(parents=True, exist_ok=True)
    options = ("-tr-function-alias", "QT_TR_NOOP=marked", "-locations", "none", "-no-obsolete")
    _tool("lupdate", *files, *options, "-target-language", language, "-silent", "-ts", into)


def gather_words(texts: Iterable[str], into: Path, language: str) -> None:
    """Bring texts up to date that stand in no code: Qt's tool gets them as a file of it."""
    with tempfile.TemporaryDirectory() as folder:
        code = Path(folder) / "words.py"
        lines = (f"marked({json.dumps(text, ensure_ascii=False)})\n" for text in texts)
        code.write_text("".join(lines), "utf-8")
        gather([code], into, language)


def release(language: str, into: Path) -> None:
    """Write what the program reads of a language."""
    _tool("lrelease", "-silent", *sorted((SPOKEN / language).glob("*.ts")), "-qm", into)


def said_in(file: Path) -> dict[str, str]:
    """Return each text of a file with its translation; "" where there is none yet."""
    text = file.read_text("utf-8") if file.exists() else ""
    return {
        unescape(one["source"]): "" if "unfinished" in one["state"] else unescape(one["said"] or "")
        for one in _MESSAGE.finditer(text)
    }


def put(file: Path, said: Mapping[str, str]) -> None:
    """Write translations into a file that has been gathered."""

    def with_words(one: re.Match[str]) -> str:
        words = said.get(unescape(one["source"]))
        if not words:
            return one[0]
        return f"{one[1]}<translation>{escape(words)}</translation>"

    file.write_text(_MESSAGE.sub(with_words, file.read_text("utf-8")), "utf-8")
