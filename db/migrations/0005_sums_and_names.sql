-- The ledger's lines of a lot, kind, unit and direction, summed: derived by the trigger as lines
-- come, which are never changed nor removed. A sum stands in millions and what is left, each far
-- from overflowing.
CREATE TABLE lot_sum (
    lot TEXT NOT NULL,
    kind TEXT NOT NULL,
    unit TEXT NOT NULL,
    is_in INTEGER NOT NULL CHECK (is_in IN (0, 1)),
    lines INTEGER NOT NULL CHECK (lines > 0),
    last_entry TEXT NOT NULL,
    last_at TEXT NOT NULL,
    millions INTEGER NOT NULL,
    rest INTEGER NOT NULL,
    PRIMARY KEY (lot, kind, unit, is_in)
) STRICT, WITHOUT ROWID;

INSERT INTO lot_sum
    SELECT lot, kind, amount_unit, amount_count > 0, count(*), max(id), max(at),
        sum(amount_count / 1000000), sum(amount_count % 1000000)
    FROM ledger_entry GROUP BY 1, 2, 3, 4;

CREATE TRIGGER ledger_entry_is_summed AFTER INSERT ON ledger_entry
BEGIN
    INSERT INTO lot_sum VALUES(
        new.lot, new.kind, new.amount_unit, new.amount_count > 0, 1, new.id, new.at,
        new.amount_count / 1000000, new.amount_count % 1000000)
    ON CONFLICT(lot, kind, unit, is_in) DO UPDATE SET
        lines = lines + 1,
        last_entry = max(last_entry, excluded.last_entry),
        last_at = max(last_at, excluded.last_at),
        millions = millions + excluded.millions,
        rest = rest + excluded.rest;
END;

-- An owner is found again by the name that is typed.
CREATE INDEX owner_name ON owner(name);
