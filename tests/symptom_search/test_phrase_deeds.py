"""A shop adds, changes and takes away its own phrases: each a deed, each counts at once."""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.shop_place import open_place
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile
from desktop_app.symptom_search.find import find
from desktop_app.symptom_search.phrase_actions import (
    add_phrase,
    change_phrase,
    take_phrase_away,
)
from desktop_app.symptom_search.stored_phrases import read_phrases
from desktop_app.symptom_search.stored_shop_words import ShopWords
from tests.symptom_search.conftest import OldJobs

SAID = "it gobbles like a turkey"


@pytest.fixture
def words_here(shop: ShopRecord) -> ShopWords:
    return ShopWords(shop)


def heard(words: ShopWords) -> list[str]:
    return [group.id for group in words().groups_in(SAID)]


def kept(shop: ShopRecord) -> list[tuple[str, str]]:
    with shop.reading() as connection:
        return [(one.phrase, one.symptom) for one in read_phrases(connection)]


def test_a_phrase_is_added_changed_and_taken_away(shop: ShopRecord, words_here: ShopWords) -> None:
    made = add_phrase(shop, words_here(), f" {SAID}. ", "hesitation").made
    assert made is not None
    assert kept(shop) == [(SAID, "hesitation")]
    assert heard(words_here) == ["hesitation"]
    change_phrase(shop, words_here(), made, "jerking")
    assert heard(words_here) == ["jerking"]
    assert take_phrase_away(shop, made).words == f"Take “{SAID}” away"
    assert heard(words_here) == []


def test_each_is_undone_and_done_again(shop: ShopRecord, words_here: ShopWords) -> None:
    made = add_phrase(shop, words_here(), SAID, "hesitation").made
    assert made is not None
    assert shop.can_undo() == f"Let “{SAID}” mean hesitation here"
    change_phrase(shop, words_here(), made, "jerking")
    take_phrase_away(shop, made)
    seen = [heard(words_here)]
    for _ in range(3):
        shop.undo()
        seen.append(heard(words_here))
    assert seen == [[], ["jerking"], ["hesitation"], []]
    shop.redo()
    assert heard(words_here) == ["hesitation"]


def test_the_same_phrase_is_not_kept_twice(shop: ShopRecord, words_here: ShopWords) -> None:
    before = words_here()  # as a desk has it that does not know of the other yet
    add_phrase(shop, before, SAID, "hesitation")
    with pytest.raises(ShopTrouble, match=f"means hesitation here already, as “{SAID}”"):
        add_phrase(shop, before, "gobbling like turkeys", "jerking")
    assert kept(shop) == [(SAID, "hesitation")]


def test_what_another_desk_made_of_it_is_not_written_over(
    shop: ShopRecord, words_here: ShopWords
) -> None:
    made = add_phrase(shop, words_here(), SAID, "hesitation").made
    assert made is not None
    change_phrase(shop, words_here(), made, "jerking", Shown("hesitation"))
    with pytest.raises(WrittenMeanwhile, match="Written at another desk meanwhile: jerking"):
        change_phrase(shop, words_here(), made, "low-power", Shown("hesitation"))
    take_phrase_away(shop, made)
    for late in (
        lambda: change_phrase(shop, words_here(), made, "jerking"),
        lambda: take_phrase_away(shop, made),
    ):
        with pytest.raises(ShopTrouble, match="no longer there"):
            late()


def test_another_window_on_the_shop_hears_it_at_its_next_reading(
    shop: ShopRecord, words_here: ShopWords
) -> None:
    other = open_shop(shop.folder, shop.clock)
    elsewhere = ShopWords(other)
    assert heard(elsewhere) == []
    made = add_phrase(shop, words_here(), SAID, "hesitation").made
    assert heard(elsewhere) == ["hesitation"]
    assert made is not None
    take_phrase_away(other, made)
    assert heard(words_here) == []
    other.close()


def test_jobs_of_the_symptom_are_found_by_the_shops_word(old_jobs: OldJobs) -> None:
    old_jobs.job("hesitates uphill", correction="Hose renewed.")
    words = ShopWords(old_jobs.record)

    def found() -> list[str]:
        return [hit.number for hit in find(old_jobs.record, words(), old_jobs.kinds, SAID).hits]

    assert found() == []
    add_phrase(old_jobs.record, words(), SAID, "hesitation")
    assert found() == ["J-001"]


def command(*words: str) -> int:
    return run(words, lambda folder: 0, lambda folder, file: None)


def test_the_shell_reads_them_and_an_export_carries_them(
    shop: ShopRecord, words_here: ShopWords, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    add_phrase(shop, words_here(), SAID, "hesitation")
    place, out, other = str(shop.folder), str(tmp_path / "out"), str(tmp_path / "other")
    assert command("check", "--shop", place) == 0
    assert command("export", out, "--shop", place) == 0
    assert SAID in next(Path(out).rglob("own_phrases.csv")).read_text("utf-8-sig")
    assert command("new-shop", other) == 0
    assert command("import", out, "--shop", other) == 0
    assert command("check", "--shop", other) == 0
    for folder in (place, other):
        capsys.readouterr()
        assert command("find", SAID, "--shop", folder) == 0
        assert "Read as: hesitation" in capsys.readouterr().out
    record = open_place(Path(other))
    assert kept(record) == [(SAID, "hesitation")]
    record.close()


def test_imported_rows_are_read_with_the_shops_words(
    shop: ShopRecord, words_here: ShopWords, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    add_phrase(shop, words_here(), SAID, "hesitation")
    table = tmp_path / "old.csv"
    table.write_text(f"job,date,plate,concern\nA-1,2025-03-04,AB12CDE,{SAID}\n", "utf-8")
    assert command("import", str(table), "--shop", str(shop.folder)) == 0
    capsys.readouterr()
    assert command("find", "hesitates", "--shop", str(shop.folder)) == 0
    assert "same symptom: hesitation" in capsys.readouterr().out
