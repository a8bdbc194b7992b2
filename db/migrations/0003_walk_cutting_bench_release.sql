-- Going through a book leaf by leaf, cuttings and recipes, clocks and settings at the bench, the
-- release of a book; and further columns of what was there. New columns stand at a table's end.
CREATE TABLE walk (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL CHECK (kind IN ('against_make_up', 'inferring')),
    started_at TEXT NOT NULL CHECK (started_at GLOB '????-??-??T??:??:??.???Z'),
    finished_at TEXT CHECK (finished_at GLOB '????-??-??T??:??:??.???Z'),
    formula TEXT NOT NULL,
    extent TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX walk_job ON walk(job);
CREATE INDEX walk_part ON walk(part);
CREATE INDEX walk_who ON walk(who);

CREATE TABLE walk_entry (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    walk TEXT NOT NULL REFERENCES walk(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    scope TEXT NOT NULL CHECK (scope IN ('leaf', 'gathering')),
    gathering TEXT NOT NULL,
    place TEXT NOT NULL,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z'),
    as_expected INTEGER NOT NULL CHECK (as_expected IN (0, 1)),
    signature TEXT NOT NULL,
    recto_number TEXT NOT NULL,
    verso_number TEXT NOT NULL,
    recto_catchword TEXT NOT NULL,
    verso_catchword TEXT NOT NULL,
    recto_first_words TEXT NOT NULL,
    verso_first_words TEXT NOT NULL,
    runs_on TEXT NOT NULL CHECK (runs_on IN ('not_read', 'yes', 'no')),
    finding TEXT REFERENCES collation_finding(id) DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX walk_entry_job ON walk_entry(job);
CREATE INDEX walk_entry_walk ON walk_entry(walk);
CREATE INDEX walk_entry_finding ON walk_entry(finding);

CREATE TABLE called_plate (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    name TEXT NOT NULL,
    belongs_at TEXT NOT NULL,
    source TEXT NOT NULL,
    presence TEXT NOT NULL CHECK (presence IN ('not_looked_for', 'present', 'lacking', 'misplaced', 'supplied')),
    found_at TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX called_plate_job ON called_plate(job);
CREATE INDEX called_plate_part ON called_plate(part);

CREATE TABLE leaf_task (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    part TEXT REFERENCES item(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    technique TEXT NOT NULL,
    leaves TEXT NOT NULL,
    done TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX leaf_task_job ON leaf_task(job);
CREATE INDEX leaf_task_part ON leaf_task(part);

CREATE TABLE cutting (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    plan TEXT NOT NULL,
    note TEXT NOT NULL,
    taken_back_at TEXT CHECK (taken_back_at GLOB '????-??-??T??:??:??.???Z'),
    taken_back_by TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE INDEX cutting_job ON cutting(job);
CREATE INDEX cutting_who ON cutting(who);
CREATE INDEX cutting_taken_back_by ON cutting(taken_back_by);
CREATE TRIGGER cutting_is_permanent BEFORE DELETE ON cutting
BEGIN
    SELECT RAISE(ABORT, 'cutting is never deleted');
END;

CREATE TABLE cut_part (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    cutting TEXT NOT NULL REFERENCES cutting(id) DEFERRABLE INITIALLY DEFERRED,
    sheet TEXT NOT NULL REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED,
    sheet_number INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('piece', 'offcut', 'waste')),
    name TEXT NOT NULL,
    width_nm INTEGER CHECK (width_nm >= 0),
    height_nm INTEGER CHECK (height_nm >= 0),
    area_um2 INTEGER NOT NULL CHECK (area_um2 >= 0),
    offcut TEXT REFERENCES lot(id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE INDEX cut_part_cutting ON cut_part(cutting);
CREATE INDEX cut_part_sheet ON cut_part(sheet);
CREATE INDEX cut_part_offcut ON cut_part(offcut);
CREATE TRIGGER cut_part_is_permanent BEFORE DELETE ON cut_part
BEGIN
    SELECT RAISE(ABORT, 'cut_part is never deleted');
END;

CREATE TABLE recipe (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name TEXT NOT NULL,
    makes TEXT REFERENCES material(id) DEFERRABLE INITIALLY DEFERRED,
    strength_ppm INTEGER CHECK (strength_ppm >= 0),
    strength_basis TEXT CHECK (strength_basis IN ('w/v', 'w/w', 'v/v')),
    yields_count INTEGER,
    yields_unit TEXT CHECK (yields_unit IN ('g', 'ml', 'mm2', 'm', 'sheet', 'piece')),
    method TEXT NOT NULL,
    keeps_days INTEGER NOT NULL,
    caution TEXT NOT NULL,
    source TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX recipe_makes ON recipe(makes);

CREATE TABLE recipe_part (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    recipe TEXT NOT NULL REFERENCES recipe(id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL,
    material TEXT REFERENCES material(id) DEFERRABLE INITIALLY DEFERRED,
    what TEXT NOT NULL,
    amount_count INTEGER NOT NULL,
    amount_unit TEXT NOT NULL CHECK (amount_unit IN ('g', 'ml', 'mm2', 'm', 'sheet', 'piece'))
) STRICT;

CREATE INDEX recipe_part_recipe ON recipe_part(recipe);
CREATE INDEX recipe_part_material ON recipe_part(material);

CREATE TABLE house_value (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    key TEXT NOT NULL,
    value TEXT NOT NULL,
    source TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;


CREATE TABLE house_technique (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    key TEXT NOT NULL,
    name TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('treatment', 'examination', 'removal', 'uncovering', 'incident')),
    said TEXT NOT NULL,
    done_to TEXT NOT NULL,
    materials TEXT NOT NULL,
    minutes_min INTEGER NOT NULL,
    minutes_basis TEXT NOT NULL,
    sets_min INTEGER NOT NULL,
    reversibility TEXT NOT NULL CHECK (reversibility IN ('unknown', 'yes', 'with_care', 'no')),
    undoing TEXT NOT NULL,
    adds INTEGER NOT NULL CHECK (adds IN (0, 1)),
    wets INTEGER NOT NULL CHECK (wets IN (0, 1)),
    tests_media INTEGER NOT NULL CHECK (tests_media IN (0, 1)),
    disbinds INTEGER NOT NULL CHECK (disbinds IN (0, 1)),
    checks TEXT NOT NULL,
    cautions TEXT NOT NULL,
    before TEXT NOT NULL,
    advice TEXT NOT NULL,
    source TEXT NOT NULL,
    retired INTEGER NOT NULL CHECK (retired IN (0, 1))
) STRICT;


CREATE TABLE bench_clock (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    line TEXT REFERENCES proposal_line(id) DEFERRABLE INITIALLY DEFERRED,
    technique TEXT NOT NULL,
    place TEXT NOT NULL,
    started_at TEXT NOT NULL CHECK (started_at GLOB '????-??-??T??:??:??.???Z'),
    stopped_at TEXT CHECK (stopped_at GLOB '????-??-??T??:??:??.???Z'),
    step TEXT REFERENCES step(id) DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;

CREATE INDEX bench_clock_job ON bench_clock(job);
CREATE INDEX bench_clock_who ON bench_clock(who);
CREATE INDEX bench_clock_line ON bench_clock(line);
CREATE INDEX bench_clock_step ON bench_clock(step);

CREATE TABLE setting (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    step TEXT REFERENCES step(id) DEFERRABLE INITIALLY DEFERRED,
    what TEXT NOT NULL,
    started_at TEXT NOT NULL CHECK (started_at GLOB '????-??-??T??:??:??.???Z'),
    ends_at TEXT NOT NULL CHECK (ends_at GLOB '????-??-??T??:??:??.???Z'),
    seen_at TEXT CHECK (seen_at GLOB '????-??-??T??:??:??.???Z'),
    seen_by TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE INDEX setting_job ON setting(job);
CREATE INDEX setting_step ON setting(step);
CREATE INDEX setting_seen_by ON setting(seen_by);

CREATE TABLE step_check (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    step TEXT NOT NULL REFERENCES step(id) DEFERRABLE INITIALLY DEFERRED,
    what TEXT NOT NULL,
    done INTEGER NOT NULL CHECK (done IN (0, 1)),
    why_not TEXT NOT NULL
) STRICT;

CREATE INDEX step_check_job ON step_check(job);
CREATE INDEX step_check_step ON step_check(step);
CREATE TRIGGER step_check_is_permanent BEFORE DELETE ON step_check
BEGIN
    SELECT RAISE(ABORT, 'step_check is never deleted');
END;

CREATE TABLE release_check (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    key TEXT NOT NULL,
    answer TEXT NOT NULL CHECK (answer IN ('open', 'done', 'explained')),
    why TEXT NOT NULL,
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    at TEXT CHECK (at GLOB '????-??-??T??:??:??.???Z')
) STRICT;

CREATE INDEX release_check_job ON release_check(job);
CREATE INDEX release_check_who ON release_check(who);

CREATE TABLE explanation (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    subject_kind TEXT NOT NULL,
    subject_id TEXT NOT NULL,
    rule TEXT NOT NULL,
    text TEXT NOT NULL,
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??.???Z')
) STRICT;

CREATE INDEX explanation_job ON explanation(job);
CREATE INDEX explanation_who ON explanation(who);

CREATE TABLE hand_back (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    job TEXT NOT NULL REFERENCES job(id) DEFERRABLE INITIALLY DEFERRED,
    on_day TEXT NOT NULL CHECK (on_day GLOB '????-??-??'),
    who TEXT REFERENCES person(id) DEFERRABLE INITIALLY DEFERRED,
    given_to TEXT NOT NULL,
    means TEXT NOT NULL,
    condition TEXT NOT NULL,
    went_with TEXT NOT NULL,
    receipt TEXT NOT NULL,
    object_by TEXT CHECK (object_by GLOB '????-??-??'),
    next_look_on TEXT CHECK (next_look_on GLOB '????-??-??'),
    note TEXT NOT NULL
) STRICT;

CREATE INDEX hand_back_job ON hand_back(job);
CREATE INDEX hand_back_who ON hand_back(who);

ALTER TABLE workshop ADD COLUMN hourly_rate_minor INTEGER;
ALTER TABLE workshop ADD COLUMN hourly_rate_currency TEXT;
ALTER TABLE workshop ADD COLUMN tax_ppm INTEGER NOT NULL DEFAULT 0;
ALTER TABLE workshop ADD COLUMN tax_per_line INTEGER NOT NULL DEFAULT 0 CHECK (tax_per_line IN (0, 1));
ALTER TABLE workshop ADD COLUMN terms TEXT NOT NULL DEFAULT '';

ALTER TABLE collation_finding ADD COLUMN found TEXT NOT NULL DEFAULT '';
ALTER TABLE collation_finding ADD COLUMN expected TEXT NOT NULL DEFAULT '';

ALTER TABLE proposal ADD COLUMN tax_ppm INTEGER NOT NULL DEFAULT 0;
ALTER TABLE proposal ADD COLUMN tax_per_line INTEGER NOT NULL DEFAULT 0 CHECK (tax_per_line IN (0, 1));
ALTER TABLE proposal ADD COLUMN deposit_minor INTEGER;
ALTER TABLE proposal ADD COLUMN deposit_currency TEXT;
ALTER TABLE proposal ADD COLUMN insured_value_minor INTEGER;
ALTER TABLE proposal ADD COLUMN insured_value_currency TEXT;
ALTER TABLE proposal ADD COLUMN valid_until TEXT CHECK (valid_until GLOB '????-??-??');
ALTER TABLE proposal ADD COLUMN start_on TEXT CHECK (start_on GLOB '????-??-??');
ALTER TABLE proposal ADD COLUMN ready_on TEXT CHECK (ready_on GLOB '????-??-??');

ALTER TABLE proposal_line ADD COLUMN count INTEGER NOT NULL DEFAULT 1;
ALTER TABLE proposal_line ADD COLUMN materials_cost_minor INTEGER;
ALTER TABLE proposal_line ADD COLUMN materials_cost_currency TEXT;

ALTER TABLE decision ADD COLUMN limit_minor INTEGER;
ALTER TABLE decision ADD COLUMN limit_currency TEXT;

ALTER TABLE step ADD COLUMN temperature_tenths_c INTEGER;
ALTER TABLE step ADD COLUMN humidity_percent INTEGER;
ALTER TABLE step ADD COLUMN concentration TEXT NOT NULL DEFAULT '';
ALTER TABLE step ADD COLUMN pressure TEXT NOT NULL DEFAULT '';

ALTER TABLE material ADD COLUMN kind_key TEXT NOT NULL DEFAULT '';
ALTER TABLE material ADD COLUMN fibre TEXT NOT NULL DEFAULT '';
ALTER TABLE material ADD COLUMN tannage TEXT NOT NULL DEFAULT '';
ALTER TABLE material ADD COLUMN solids_ppm INTEGER CHECK (solids_ppm >= 0);
ALTER TABLE material ADD COLUMN solids_basis TEXT CHECK (solids_basis IN ('w/v', 'w/w', 'v/v'));
ALTER TABLE material ADD COLUMN ph_hundredths INTEGER;
ALTER TABLE material ADD COLUMN alkali_reserve_mmol_kg INTEGER;
ALTER TABLE material ADD COLUMN density_mg_ml INTEGER;
ALTER TABLE material ADD COLUMN stretch_across_ppm INTEGER;
ALTER TABLE material ADD COLUMN stretch_along_ppm INTEGER;
ALTER TABLE material ADD COLUMN evidence TEXT NOT NULL DEFAULT '';
ALTER TABLE material ADD COLUMN kept_back INTEGER NOT NULL DEFAULT 0 CHECK (kept_back IN (0, 1));
ALTER TABLE material ADD COLUMN price_minor INTEGER;
ALTER TABLE material ADD COLUMN price_currency TEXT;

ALTER TABLE lot ADD COLUMN ph_hundredths INTEGER;
ALTER TABLE lot ADD COLUMN alkali_reserve_mmol_kg INTEGER;
ALTER TABLE lot ADD COLUMN evidence TEXT NOT NULL DEFAULT '';
ALTER TABLE lot ADD COLUMN kept_back INTEGER NOT NULL DEFAULT 0 CHECK (kept_back IN (0, 1));
