-- Steps by their day and by their technique, settings by their end; how heavy a leaf of the book is,
-- and how the grain of a sheet lies at its spine.
CREATE INDEX step_at ON step(at);
CREATE INDEX step_technique ON step(technique, id);
CREATE INDEX setting_ends_at ON setting(ends_at);

ALTER TABLE item ADD COLUMN leaf_mg_m2 INTEGER CHECK (leaf_mg_m2 >= 0);
ALTER TABLE material_use ADD COLUMN grain_at_spine TEXT NOT NULL DEFAULT 'not_said' CHECK (grain_at_spine IN ('not_said', 'along', 'across', 'no_grain'));
