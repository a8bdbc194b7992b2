-- The first schema: one table a kind of record, columns with their units. Keys are UUIDv7 text.
-- Rules of the domain are repeated as CHECKs; nothing cascades; the bench log, the ledger and
-- issued reports refuse deletion by trigger.

CREATE TABLE workshop (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name TEXT NOT NULL,
    address TEXT NOT NULL,
    telephone TEXT NOT NULL,
    email TEXT NOT NULL,
    letterhead_note TEXT NOT NULL,
    currency TEXT NOT NULL
) STRICT;


CREATE TABLE person (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name TEXT NOT NULL,
    initials TEXT NOT NULL,
    role TEXT NOT NULL,
    active INTEGER NOT NULL CHECK (active IN (0, 1)),
    note TEXT NOT NULL
) STRICT;


CREATE TABLE owner (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    kind TEXT NOT NULL CHECK (kind IN ('private', 'institution', 'dealer')),
    name TEXT NOT NULL,
    contact TEXT NOT NULL,
    authority TEXT NOT NULL,
    address TEXT NOT NULL,
    email TEXT NOT NULL,
    telephone TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;


CREATE TABLE item (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    owner TEXT NOT NULL REFERENCES owner(id) DEFERRABLE INITIALLY DEFERRED,
    part_of TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    nature TEXT NOT NULL CHECK (nature IN ('volume', 'set', 'batch')),
    volume_label TEXT NOT NULL,
    author TEXT NOT NULL,
    title TEXT NOT NULL,
    short_title TEXT NOT NULL,
    imprint TEXT NOT NULL,
    date TEXT,
    format TEXT NOT NULL,
    language TEXT NOT NULL,
    height_nm INTEGER CHECK (height_nm >= 0),
    width_nm INTEGER CHECK (width_nm >= 0),
    thickness_nm INTEGER CHECK (thickness_nm >= 0),
    binding TEXT NOT NULL,
    marks TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX item_owner ON item(owner);
CREATE INDEX item_part_of ON item(part_of);

CREATE TABLE work (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    item TEXT NOT NULL REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    author TEXT NOT NULL,
    title TEXT NOT NULL,
    imprint TEXT NOT NULL,
    date TEXT,
    leaves TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX work_item ON work(item);

CREATE TABLE job (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    number TEXT NOT NULL,
    item TEXT NOT NULL REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    owner TEXT NOT NULL REFERENCES owner(id) DEFERRABLE INITIALLY DEFERRED,
    state TEXT NOT NULL CHECK (state IN ('received', 'surveyed', 'proposed', 'approved', 'at_the_bench', 'passed', 'reported', 'returned', 'on_hold', 'declined', 'withdrawn')),
    received_on TEXT NOT NULL CHECK (received_on GLOB '????-??-??'),
    due_on TEXT CHECK (due_on GLOB '????-??-??'),
    request TEXT NOT NULL,
    purpose TEXT NOT NULL,
    received_as TEXT NOT NULL,
    kept_at TEXT NOT NULL,
    earlier_records TEXT NOT NULL CHECK (earlier_records IN ('not_asked', 'asked', 'received', 'none_exist')),
    earlier_records_note TEXT NOT NULL,
    value_minor INTEGER,
    value_currency TEXT CHECK (length(value_currency) = 3),
    advice TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX job_item ON job(item);
CREATE INDEX job_owner ON job(owner);

CREATE TABLE state_change (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    from_state TEXT NOT NULL CHECK (from_state IN ('received', 'surveyed', 'proposed', 'approved', 'at_the_bench', 'passed', 'reported', 'returned', 'on_hold', 'declined', 'withdrawn')),
    to_state TEXT NOT NULL CHECK (to_state IN ('received', 'surveyed', 'proposed', 'approved', 'at_the_bench', 'passed', 'reported', 'returned', 'on_hold', 'declined', 'withdrawn')),
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    why TEXT NOT NULL
) STRICT;

CREATE INDEX state_change_job ON state_change(job);
CREATE INDEX state_change_who ON state_change(who);
CREATE TRIGGER state_change_is_permanent BEFORE DELETE ON state_change
BEGIN
    SELECT RAISE(ABORT, 'state_change is never deleted');
END;

CREATE TABLE piece (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    count INTEGER NOT NULL,
    what TEXT NOT NULL,
    kept_at TEXT NOT NULL,
    returned TEXT NOT NULL
) STRICT;

CREATE INDEX piece_job ON piece(job);

CREATE TABLE custody_move (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    from_place TEXT NOT NULL,
    to_place TEXT NOT NULL,
    why TEXT NOT NULL
) STRICT;

CREATE INDEX custody_move_job ON custody_move(job);
CREATE INDEX custody_move_who ON custody_move(who);
CREATE TRIGGER custody_move_is_permanent BEFORE DELETE ON custody_move
BEGIN
    SELECT RAISE(ABORT, 'custody_move is never deleted');
END;

CREATE TABLE hazard (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    item TEXT NOT NULL REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    term TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('not_tested', 'suspected', 'confirmed', 'cleared')),
    place TEXT NOT NULL,
    method TEXT NOT NULL,
    on_day TEXT CHECK (on_day GLOB '????-??-??'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX hazard_item ON hazard(item);
CREATE INDEX hazard_who ON hazard(who);

CREATE TABLE notice (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    subject TEXT NOT NULL CHECK (subject IN ('receipt', 'collation', 'condition', 'hazard', 'proposal', 'change', 'incident', 'ready', 'other')),
    means TEXT NOT NULL CHECK (means IN ('letter', 'email', 'telephone', 'in_person')),
    on_day TEXT NOT NULL CHECK (on_day GLOB '????-??-??'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    told_to TEXT NOT NULL,
    text TEXT NOT NULL,
    answer TEXT NOT NULL,
    answered_on TEXT CHECK (answered_on GLOB '????-??-??')
) STRICT;

CREATE INDEX notice_job ON notice(job);
CREATE INDEX notice_who ON notice(who);

CREATE TABLE follow_up (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    what TEXT NOT NULL,
    due_on TEXT CHECK (due_on GLOB '????-??-??'),
    why TEXT NOT NULL,
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    done_on TEXT CHECK (done_on GLOB '????-??-??'),
    outcome TEXT NOT NULL
) STRICT;

CREATE INDEX follow_up_job ON follow_up(job);
CREATE INDEX follow_up_who ON follow_up(who);

CREATE TABLE attachment (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    subject_kind TEXT NOT NULL,
    subject_id TEXT NOT NULL CHECK (length(subject_id) = 36),
    file_name TEXT NOT NULL,
    media_type TEXT NOT NULL,
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    bytes INTEGER NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX attachment_job ON attachment(job);

CREATE TABLE examination (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    on_day TEXT NOT NULL CHECK (on_day GLOB '????-??-??'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    method TEXT NOT NULL,
    not_examined TEXT NOT NULL
) STRICT;

CREATE INDEX examination_job ON examination(job);
CREATE INDEX examination_part ON examination(part);
CREATE INDEX examination_who ON examination(who);

CREATE TABLE finding (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    component TEXT NOT NULL,
    term TEXT NOT NULL,
    place TEXT NOT NULL,
    extent TEXT NOT NULL,
    area_um2 INTEGER CHECK (area_um2 >= 0),
    severity INTEGER NOT NULL,
    activity TEXT NOT NULL CHECK (activity IN ('unknown', 'stable', 'active')),
    handling TEXT NOT NULL CHECK (handling IN ('yes', 'with_care', 'no')),
    observed TEXT NOT NULL,
    inferred TEXT NOT NULL,
    earlier_repair INTEGER NOT NULL CHECK (earlier_repair IN (0, 1))
) STRICT;

CREATE INDEX finding_job ON finding(job);
CREATE INDEX finding_part ON finding(part);

CREATE TABLE test (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    on_day TEXT NOT NULL CHECK (on_day GLOB '????-??-??'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    place TEXT NOT NULL,
    purpose TEXT NOT NULL,
    method TEXT NOT NULL,
    result TEXT NOT NULL,
    sample_taken INTEGER NOT NULL CHECK (sample_taken IN (0, 1)),
    consent TEXT NOT NULL,
    kept TEXT NOT NULL
) STRICT;

CREATE INDEX test_job ON test(job);
CREATE INDEX test_part ON test(part);
CREATE INDEX test_who ON test(who);

CREATE TABLE collation (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    formula TEXT NOT NULL,
    extent TEXT NOT NULL,
    authority TEXT NOT NULL,
    statement TEXT NOT NULL,
    method TEXT NOT NULL,
    not_examined TEXT NOT NULL,
    leaves_called_for INTEGER NOT NULL,
    leaves_present INTEGER NOT NULL,
    plates_called_for INTEGER NOT NULL,
    plates_present INTEGER NOT NULL,
    finished_on TEXT CHECK (finished_on GLOB '????-??-??'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE INDEX collation_job ON collation(job);
CREATE INDEX collation_part ON collation(part);
CREATE INDEX collation_who ON collation(who);

CREATE TABLE collation_finding (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('lacking', 'loose', 'detached', 'misbound', 'duplicated', 'cancel', 'inserted', 'supplied', 'facsimile', 'misnumbered', 'missigned', 'torn_with_loss', 'torn', 'trimmed_into_text', 'blank_lacking', 'folded_plate', 'other')),
    place TEXT NOT NULL,
    note TEXT NOT NULL,
    on_arrival INTEGER NOT NULL CHECK (on_arrival IN (0, 1)),
    decision TEXT NOT NULL CHECK (decision IN ('undecided', 'left_as_is', 'to_be_supplied', 'sought', 'made_good', 'not_needed')),
    decision_note TEXT NOT NULL,
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE INDEX collation_finding_job ON collation_finding(job);
CREATE INDEX collation_finding_part ON collation_finding(part);
CREATE INDEX collation_finding_who ON collation_finding(who);

CREATE TABLE facsimile (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('facsimile', 'original_leaf')),
    place TEXT NOT NULL,
    institution TEXT NOT NULL,
    shelfmark TEXT NOT NULL,
    edition TEXT NOT NULL,
    source_date TEXT,
    address TEXT NOT NULL,
    consulted_on TEXT CHECK (consulted_on GLOB '????-??-??'),
    permission TEXT NOT NULL,
    provenance TEXT NOT NULL,
    verification TEXT NOT NULL,
    verdict TEXT NOT NULL CHECK (verdict IN ('not_established', 'same_setting', 'pages_agree', 'contradicted')),
    printing TEXT NOT NULL,
    printed_on TEXT REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    attached_with TEXT REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    attachment TEXT NOT NULL,
    marking TEXT NOT NULL,
    removal TEXT NOT NULL,
    step TEXT REFERENCES step(id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE INDEX facsimile_job ON facsimile(job);
CREATE INDEX facsimile_part ON facsimile(part);
CREATE INDEX facsimile_printed_on ON facsimile(printed_on);
CREATE INDEX facsimile_attached_with ON facsimile(attached_with);
CREATE INDEX facsimile_step ON facsimile(step);

CREATE TABLE proposal (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    version INTEGER NOT NULL,
    made_on TEXT NOT NULL CHECK (made_on GLOB '????-??-??'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    aim TEXT NOT NULL,
    not_included TEXT NOT NULL,
    risks TEXT NOT NULL,
    sent_on TEXT CHECK (sent_on GLOB '????-??-??'),
    note TEXT NOT NULL
) STRICT;

CREATE INDEX proposal_job ON proposal(job);
CREATE INDEX proposal_who ON proposal(who);

CREATE TABLE proposal_option (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    proposal TEXT NOT NULL REFERENCES proposal(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    name TEXT NOT NULL,
    effect TEXT NOT NULL,
    risk TEXT NOT NULL,
    irreversible TEXT NOT NULL
) STRICT;

CREATE INDEX proposal_option_job ON proposal_option(job);
CREATE INDEX proposal_option_proposal ON proposal_option(proposal);

CREATE TABLE proposal_line (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    option TEXT NOT NULL REFERENCES proposal_option(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    technique TEXT NOT NULL,
    place TEXT NOT NULL,
    description TEXT NOT NULL,
    materials TEXT NOT NULL,
    minutes_min INTEGER NOT NULL CHECK (minutes_min >= 0),
    price_minor INTEGER,
    price_currency TEXT CHECK (length(price_currency) = 3)
) STRICT;

CREATE INDEX proposal_line_job ON proposal_line(job);
CREATE INDEX proposal_line_option ON proposal_line(option);

CREATE TABLE decision (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    proposal TEXT NOT NULL REFERENCES proposal(id) DEFERRABLE INITIALLY DEFERRED,
    option TEXT REFERENCES proposal_option(id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('approved', 'approved_with_limits', 'declined', 'more_asked')),
    limits TEXT NOT NULL,
    by_name TEXT NOT NULL,
    authority TEXT NOT NULL,
    on_day TEXT NOT NULL CHECK (on_day GLOB '????-??-??'),
    means TEXT NOT NULL CHECK (means IN ('signature', 'letter', 'email', 'spoken')),
    note TEXT NOT NULL
) STRICT;

CREATE INDEX decision_job ON decision(job);
CREATE INDEX decision_proposal ON decision(proposal);
CREATE INDEX decision_option ON decision(option);

CREATE TABLE step (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z'),
    who TEXT NOT NULL REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('treatment', 'examination', 'removal', 'uncovering', 'incident')),
    technique TEXT NOT NULL,
    place TEXT NOT NULL,
    description TEXT NOT NULL,
    minutes_min INTEGER NOT NULL CHECK (minutes_min >= 0),
    reversibility TEXT NOT NULL CHECK (reversibility IN ('unknown', 'yes', 'with_care', 'no')),
    undoing TEXT NOT NULL,
    removed TEXT NOT NULL,
    removed_fate TEXT NOT NULL,
    sets_until TEXT CHECK (sets_until GLOB '????-??-??T??:??:??.???Z'),
    line TEXT REFERENCES proposal_line(id) DEFERRABLE INITIALLY DEFERRED,
    corrects TEXT REFERENCES step(id) DEFERRABLE INITIALLY DEFERRED,
    struck_at TEXT CHECK (struck_at GLOB '????-??-??T??:??:??.???Z'),
    struck_by TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    struck_why TEXT NOT NULL
) STRICT;

CREATE INDEX step_job ON step(job);
CREATE INDEX step_part ON step(part);
CREATE INDEX step_who ON step(who);
CREATE INDEX step_line ON step(line);
CREATE INDEX step_corrects ON step(corrects);
CREATE INDEX step_struck_by ON step(struck_by);
CREATE TRIGGER step_is_permanent BEFORE DELETE ON step
BEGIN
    SELECT RAISE(ABORT, 'step is never deleted');
END;

CREATE TABLE material_use (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    step TEXT NOT NULL REFERENCES step(id) DEFERRABLE INITIALLY DEFERRED,
    lot TEXT REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    material TEXT NOT NULL,
    amount_count INTEGER,
    amount_unit TEXT CHECK (amount_unit IN ('g', 'ml', 'mm2', 'm', 'sheet', 'piece')),
    role TEXT NOT NULL,
    stays INTEGER NOT NULL CHECK (stays IN (0, 1)),
    place TEXT NOT NULL,
    removal TEXT NOT NULL,
    override_reason TEXT NOT NULL
) STRICT;

CREATE INDEX material_use_job ON material_use(job);
CREATE INDEX material_use_step ON material_use(step);
CREATE INDEX material_use_lot ON material_use(lot);
CREATE TRIGGER material_use_is_permanent BEFORE DELETE ON material_use
BEGIN
    SELECT RAISE(ABORT, 'material_use is never deleted');
END;

CREATE TABLE material (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('paper', 'tissue', 'board', 'leather', 'vellum', 'cloth', 'thread', 'adhesive_dry', 'adhesive_prepared', 'solvent', 'consolidant', 'ink', 'consumable')),
    unit TEXT NOT NULL CHECK (unit IN ('g', 'ml', 'mm2', 'm', 'sheet', 'piece')),
    composition TEXT NOT NULL,
    grammage_mg_m2 INTEGER NOT NULL,
    thickness_nm INTEGER CHECK (thickness_nm >= 0),
    standard TEXT NOT NULL,
    shelf_life_days INTEGER NOT NULL,
    removal TEXT NOT NULL,
    reversibility TEXT NOT NULL CHECK (reversibility IN ('unknown', 'yes', 'with_care', 'no')),
    caution TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;


CREATE TABLE lot (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    number TEXT NOT NULL,
    material TEXT NOT NULL REFERENCES material(id) DEFERRABLE INITIALLY DEFERRED,
    origin TEXT NOT NULL CHECK (origin IN ('bought', 'saved', 'mixed', 'offcut')),
    supplier TEXT NOT NULL,
    maker TEXT NOT NULL,
    product TEXT NOT NULL,
    batch TEXT NOT NULL,
    received_on TEXT CHECK (received_on GLOB '????-??-??'),
    opened_on TEXT CHECK (opened_on GLOB '????-??-??'),
    cost_minor INTEGER,
    cost_currency TEXT CHECK (length(cost_currency) = 3),
    saved_from TEXT NOT NULL,
    saved_in TEXT REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    why_free TEXT NOT NULL,
    watermark TEXT NOT NULL,
    mixed_on TEXT CHECK (mixed_on GLOB '????-??-??'),
    mixed_by TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    recipe TEXT NOT NULL,
    strength_ppm INTEGER CHECK (strength_ppm >= 0),
    strength_basis TEXT CHECK (strength_basis IN ('w/v', 'w/w', 'v/v')),
    good_until TEXT CHECK (good_until GLOB '????-??-??'),
    kept_at TEXT NOT NULL,
    sheet_width_nm INTEGER CHECK (sheet_width_nm >= 0),
    sheet_height_nm INTEGER CHECK (sheet_height_nm >= 0),
    grain TEXT NOT NULL CHECK (grain IN ('none', 'along_height', 'along_width')),
    parent TEXT REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    finished INTEGER NOT NULL CHECK (finished IN (0, 1)),
    note TEXT NOT NULL
) STRICT;

CREATE INDEX lot_material ON lot(material);
CREATE INDEX lot_saved_in ON lot(saved_in);
CREATE INDEX lot_mixed_by ON lot(mixed_by);
CREATE INDEX lot_parent ON lot(parent);

CREATE TABLE lot_part (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    lot TEXT NOT NULL REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    source TEXT NOT NULL REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    amount_count INTEGER NOT NULL,
    amount_unit TEXT NOT NULL CHECK (amount_unit IN ('g', 'ml', 'mm2', 'm', 'sheet', 'piece'))
) STRICT;

CREATE INDEX lot_part_lot ON lot_part(lot);
CREATE INDEX lot_part_source ON lot_part(source);

CREATE TABLE ledger_entry (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    lot TEXT NOT NULL REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('received', 'saved', 'mixed_in', 'mixed_out', 'used', 'cut', 'discarded', 'counted', 'contrary')),
    amount_count INTEGER NOT NULL,
    amount_unit TEXT NOT NULL CHECK (amount_unit IN ('g', 'ml', 'mm2', 'm', 'sheet', 'piece')),
    use TEXT REFERENCES material_use(id) DEFERRABLE INITIALLY DEFERRED,
    contrary_of TEXT REFERENCES ledger_entry(id) DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX ledger_entry_lot ON ledger_entry(lot);
CREATE INDEX ledger_entry_who ON ledger_entry(who);
CREATE INDEX ledger_entry_use ON ledger_entry(use);
CREATE INDEX ledger_entry_contrary_of ON ledger_entry(contrary_of);
CREATE TRIGGER ledger_entry_is_permanent BEFORE DELETE ON ledger_entry
BEGIN
    SELECT RAISE(ABORT, 'ledger_entry is never deleted');
END;

CREATE TABLE photograph (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    role TEXT NOT NULL CHECK (role IN ('before', 'during', 'after', 'detail')),
    position INTEGER NOT NULL,
    caption TEXT NOT NULL,
    place TEXT NOT NULL,
    finding TEXT REFERENCES finding(id) DEFERRABLE INITIALLY DEFERRED,
    step TEXT REFERENCES step(id) DEFERRABLE INITIALLY DEFERRED,
    facsimile TEXT REFERENCES facsimile(id) DEFERRABLE INITIALLY DEFERRED,
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    media_type TEXT NOT NULL,
    file_name TEXT NOT NULL,
    bytes INTEGER NOT NULL,
    width_px INTEGER NOT NULL,
    height_px INTEGER NOT NULL,
    taken_at TEXT CHECK (taken_at GLOB '????-??-??T??:??:??.???Z'),
    added_at TEXT NOT NULL CHECK (added_at GLOB '????-??-??T??:??:??.???Z'),
    in_report INTEGER NOT NULL CHECK (in_report IN (0, 1)),
    figure_width TEXT NOT NULL CHECK (figure_width IN ('column', 'full'))
) STRICT;

CREATE INDEX photograph_job ON photograph(job);
CREATE INDEX photograph_part ON photograph(part);
CREATE INDEX photograph_finding ON photograph(finding);
CREATE INDEX photograph_step ON photograph(step);
CREATE INDEX photograph_facsimile ON photograph(facsimile);

CREATE TABLE issued_report (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    version INTEGER NOT NULL,
    issued_at TEXT NOT NULL CHECK (issued_at GLOB '????-??-??T??:??:??.???Z'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    file_name TEXT NOT NULL,
    bytes INTEGER NOT NULL,
    journal_head TEXT NOT NULL,
    changes TEXT NOT NULL
) STRICT;

CREATE INDEX issued_report_job ON issued_report(job);
CREATE INDEX issued_report_who ON issued_report(who);
CREATE TRIGGER issued_report_is_permanent BEFORE DELETE ON issued_report
BEGIN
    SELECT RAISE(ABORT, 'issued_report is never deleted');
END;
