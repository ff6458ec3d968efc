"""What the first form has on a server alone: the words of jobs, and guards of the history."""

from __future__ import annotations

# Porter's stemmer and no stop words, as the embedded search has it; whole words, folded before.
_CONFIGURATION = (
    "CREATE TEXT SEARCH DICTIONARY shop_stem (TEMPLATE = snowball, Language = porter)",
    "CREATE TEXT SEARCH CONFIGURATION shop_words (COPY = simple)",
    "ALTER TEXT SEARCH CONFIGURATION shop_words ALTER MAPPING FOR asciiword, word, numword, "
    "asciihword, hword, numhword, hword_asciipart, hword_part, hword_numpart WITH shop_stem",
)

_COLUMNS = ("concern", "cause", "correction", "conditions", "codes", "parts", "vehicle", "people")

# More letters of one column than this are not searched: a word list has its bounds on a server.
_MOST_LETTERS = 50_000
# Classes A to D weigh 3, 2, 1.5 and 1: the weights of the columns in the embedded search.
_CLASSES = {"concern": "A", "codes": "A", "conditions": "C", "people": "D"}

_WORDS = " || ".join(
    f"setweight(to_tsvector('shop_words', left({name}, {_MOST_LETTERS})), "
    f"'{_CLASSES.get(name, 'B')}')"
    for name in _COLUMNS
)

_JOB_TEXT = (
    "CREATE TABLE job_text (id bigint PRIMARY KEY, "
    + ", ".join(f"{name} text NOT NULL" for name in _COLUMNS)
    + f", words tsvector GENERATED ALWAYS AS ({_WORDS}) STORED)",
    "CREATE INDEX ix_job_text_words ON job_text USING gin (words)",
)

# Who may add to the history may not change it: the server refuses, and the chain finds it out.
_GUARDS = (
    "CREATE FUNCTION history_stays() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
    "RAISE EXCEPTION 'the history is only ever added to' USING ERRCODE = 'insufficient_privilege'; "
    "END $$",
    "CREATE TRIGGER history_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON history "
    "FOR EACH STATEMENT EXECUTE FUNCTION history_stays()",
    "CREATE FUNCTION tell_others() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
    "PERFORM pg_notify('benchwitness', NEW.seq::text); RETURN NULL; END $$",
    "CREATE TRIGGER tell_others AFTER INSERT ON history "
    "FOR EACH ROW EXECUTE FUNCTION tell_others()",
)

# Originals of photos, where the shop keeps them on the server; and what was chosen at set-up.
_PHOTOS = (
    "CREATE TABLE photo_content (sha256 text PRIMARY KEY "
    "CHECK (sha256 = encode(sha256(content), 'hex')), content bytea NOT NULL)",
    "ALTER TABLE photo_content ALTER COLUMN content SET STORAGE EXTERNAL",
    "CREATE TABLE set_up (name text PRIMARY KEY, value text NOT NULL)",
)

ON_A_SERVER = (*_CONFIGURATION, *_JOB_TEXT, *_GUARDS, *_PHOTOS)
