"""What the shop says of its customers' words: what a phrase means here, changed, taken away."""

from __future__ import annotations

from desktop_app.language import tr
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
                tr(
                    "“{typed}” means {symptom} here already, as “{phrase}”.",
                    typed=kept,
                    symptom=words.shown(same.symptom),
                    phrase=same.phrase,
                ),
                kept=tr("Nothing was changed."),
                do=tr("Choose it in the list of the shop's own phrases to change what it means."),
            )
        deed.add(OwnPhrase, phrase=kept, symptom=symptom)

    said = tr("Let “{phrase}” mean {symptom} here", phrase=kept, symptom=words.shown(symptom))
    return record.do(said, work)


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
        tr("Let a phrase mean {symptom} here", symptom=group.shown),
        lambda deed: change_as_shown(
            deed, OwnPhrase, phrase_id, shown, words.shown, symptom=symptom
        ),
    )


def take_phrase_away(record: ShopRecord, phrase_id: int) -> Done:
    """Let one of the shop's phrases mean again what it means everywhere, or nothing."""
    with record.reading() as connection:
        kept = read_phrase(connection, phrase_id)
    said = (
        tr("Take a phrase of the shop away")
        if kept is None
        else tr("Take “{phrase}” away", phrase=kept.phrase)
    )
    return record.do(said, lambda deed: deed.remove(OwnPhrase, phrase_id))
