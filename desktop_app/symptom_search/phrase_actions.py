"""What the shop says of its customers' words: what a phrase means here, changed, taken away."""

from __future__ import annotations

from desktop_app.repair_jobs.stored import OwnPhrase
from desktop_app.shop_record.as_shown import change_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown
from desktop_app.symptom_search.own_phrases import accepted, kept_as, named_group
from desktop_app.symptom_search.stored_phrases import read_phrase, read_phrases
from desktop_app.symptom_search.vocabulary import Vocabulary


def add_phrase(record: ShopRecord, words: Vocabulary, phrase: str, symptom: str) -> Done:
    """Let a phrase mean a symptom in this shop, from the next question on.

    `words` are the vocabulary as the shop has it so far. Raises ShopTrouble where the phrase is
    not accepted (see own_phrases.py) or the shop has it already, perhaps in another form.
    """
    kept = accepted(phrase, symptom, words)

    def work(deed: Deed) -> None:
        same = kept_as(kept, words, read_phrases(deed.connection))
        if same is not None:
            raise ShopTrouble(
                f"“{kept}” means {words.plain(same.symptom)} here already, as “{same.phrase}”.",
                kept="Nothing was changed.",
                do="Choose it in the list of the shop's own phrases to change what it means.",
            )
        deed.add(OwnPhrase, phrase=kept, symptom=symptom)

    return record.do(f"Let “{kept}” mean {words.plain(symptom)} here", work)


def change_phrase(
    record: ShopRecord,
    words: Vocabulary,
    phrase_id: int,
    symptom: str,
    shown: Shown[str] | None = None,
) -> Done:
    """Let one of the shop's phrases mean another symptom.

    `shown` is the symptom that a page showed for it. Raises WrittenMeanwhile where it is another.
    """
    group = named_group(symptom, words)
    return record.do(
        f"Let a phrase mean {group.plain} here",
        lambda deed: change_as_shown(
            deed, OwnPhrase, phrase_id, shown, words.plain, symptom=symptom
        ),
    )


def take_phrase_away(record: ShopRecord, phrase_id: int) -> Done:
    """Let one of the shop's phrases mean again what it means everywhere, or nothing."""
    with record.reading() as connection:
        kept = read_phrase(connection, phrase_id)
    said = "a phrase of the shop" if kept is None else f"“{kept.phrase}”"
    return record.do(f"Take {said} away", lambda deed: deed.remove(OwnPhrase, phrase_id))
