-- What the store keeps beside the records: the journal of every change, the search index, and a
-- few facts about the workshop itself. None of these tables is in a change set.

-- One entry a change. hash is SHA-256 over the hash before and the digest of this entry.
CREATE TABLE journal (
    sequence INTEGER PRIMARY KEY CHECK (sequence > 0),
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z'),
    who TEXT,
    kind TEXT NOT NULL CHECK (kind IN ('change', 'undo', 'redo', 'migration')),
    sentence TEXT NOT NULL,
    reverses INTEGER REFERENCES journal(sequence),
    schema_version INTEGER NOT NULL CHECK (schema_version > 0),
    change_set BLOB NOT NULL,
    hash TEXT NOT NULL CHECK (length(hash) = 64)
) STRICT;

CREATE INDEX journal_who ON journal(who, sequence);
CREATE INDEX journal_reverses ON journal(reverses) WHERE reverses IS NOT NULL;

-- The records an entry touched, as JSON before and after. The greatest sequence of a record is
-- its revision.
CREATE TABLE journal_record (
    sequence INTEGER NOT NULL REFERENCES journal(sequence) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    kind TEXT NOT NULL,
    record_id TEXT NOT NULL CHECK (length(record_id) = 36),
    before TEXT,
    after TEXT,
    PRIMARY KEY (sequence, position),
    CHECK (before IS NOT NULL OR after IS NOT NULL)
) STRICT, WITHOUT ROWID;

CREATE INDEX journal_record_record ON journal_record(record_id, sequence);

CREATE TRIGGER journal_is_not_edited BEFORE UPDATE ON journal
BEGIN
    SELECT RAISE(ABORT, 'the journal is never changed');
END;
CREATE TRIGGER journal_is_permanent BEFORE DELETE ON journal
BEGIN
    SELECT RAISE(ABORT, 'the journal is never changed');
END;
CREATE TRIGGER journal_record_is_not_edited BEFORE UPDATE ON journal_record
BEGIN
    SELECT RAISE(ABORT, 'the journal is never changed');
END;
CREATE TRIGGER journal_record_is_permanent BEFORE DELETE ON journal_record
BEGIN
    SELECT RAISE(ABORT, 'the journal is never changed');
END;

-- Derived: the folded words of each record, and the index over them.
CREATE TABLE search_text (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL,
    record_id TEXT NOT NULL UNIQUE,
    words TEXT NOT NULL
) STRICT;

CREATE VIRTUAL TABLE search USING fts5(
    words, content='search_text', content_rowid='id', detail='none', columnsize=0,
    prefix='1 2 3 4 5', tokenize='unicode61 remove_diacritics 0');

CREATE TABLE meta (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;

CREATE UNIQUE INDEX job_number ON job(number);
CREATE UNIQUE INDEX lot_number ON lot(number) WHERE number <> '';
CREATE UNIQUE INDEX issued_report_version ON issued_report(job, version);
CREATE INDEX job_in_the_house ON job(number)
    WHERE state NOT IN ('returned', 'declined', 'withdrawn');
CREATE INDEX follow_up_due ON follow_up(due_on) WHERE done_on IS NULL;
CREATE INDEX attachment_subject ON attachment(subject_id);
CREATE INDEX photograph_digest ON photograph(digest);
CREATE INDEX attachment_digest ON attachment(digest);
