/** Marks a file as a store of this program, in SQLite's `application_id`: the letters "Scrb". */
export const APPLICATION_ID = 0x53637262;

/** The `until` of a row that still stands: no revision has so high a number, and it takes four bytes in a row. */
export const STILL_STANDS = 2 ** 31 - 1;

/**
 * Brings a file from each version to the next; the number of the last is the version this program reads and writes.
 * A step that was released is never changed: add another.
 *
 * Rows are valid from revision `since` until revision `until`, which is the only column ever updated. Bodies are
 * canonical JSON; the other columns repeat what is searched by. `statement`, `lead` and `exception` are what the
 * neighbourhood is read from: clustered by the term or claim they are about, so that one term's rows lie together.
 */
export const MIGRATIONS: readonly string[] = [
  `
  CREATE TABLE revision (
    number INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    message TEXT NOT NULL,
    content TEXT NOT NULL,
    previous TEXT NOT NULL,
    hash TEXT NOT NULL,
    change TEXT NOT NULL
  ) STRICT;

  CREATE TABLE term (
    row INTEGER PRIMARY KEY,
    id TEXT NOT NULL,
    since INTEGER NOT NULL,
    until INTEGER NOT NULL,
    kind TEXT NOT NULL,
    broader TEXT,
    body TEXT NOT NULL
  ) STRICT;
  CREATE UNIQUE INDEX term_by_id ON term (id, since);
  CREATE INDEX term_by_broader ON term (broader, id);
  CREATE INDEX term_by_kind ON term (kind, id);

  CREATE TABLE claim (
    row INTEGER PRIMARY KEY,
    id TEXT NOT NULL,
    since INTEGER NOT NULL,
    until INTEGER NOT NULL,
    relation TEXT NOT NULL,
    subject TEXT,
    body TEXT NOT NULL
  ) STRICT;
  CREATE UNIQUE INDEX claim_by_id ON claim (id, since);
  CREATE INDEX claim_by_subject ON claim (subject, id);

  CREATE TABLE source (
    row INTEGER PRIMARY KEY,
    id TEXT NOT NULL,
    since INTEGER NOT NULL,
    until INTEGER NOT NULL,
    body TEXT NOT NULL
  ) STRICT;
  CREATE UNIQUE INDEX source_by_id ON source (id, since);

  -- Accepted claims by their subject.
  CREATE TABLE statement (
    subject TEXT NOT NULL,
    row INTEGER NOT NULL,
    claim TEXT NOT NULL,
    since INTEGER NOT NULL,
    until INTEGER NOT NULL,
    PRIMARY KEY (subject, row)
  ) STRICT, WITHOUT ROWID;

  -- Where accepted "requires" claims lead, with the region of their scope.
  CREATE TABLE lead (
    subject TEXT NOT NULL,
    target TEXT NOT NULL,
    row INTEGER NOT NULL,
    region TEXT,
    since INTEGER NOT NULL,
    until INTEGER NOT NULL,
    PRIMARY KEY (subject, target, row)
  ) STRICT, WITHOUT ROWID;

  -- "void when" claims by the claim they are about.
  CREATE TABLE exception (
    of TEXT NOT NULL,
    row INTEGER NOT NULL,
    claim TEXT NOT NULL,
    accepted INTEGER NOT NULL,
    since INTEGER NOT NULL,
    until INTEGER NOT NULL,
    PRIMARY KEY (of, row)
  ) STRICT, WITHOUT ROWID;

  -- Everything that names a term, claim or source: the row of a term, claim or source (by).
  CREATE TABLE naming (
    kind TEXT NOT NULL,
    named TEXT NOT NULL,
    by TEXT NOT NULL,
    row INTEGER NOT NULL,
    since INTEGER NOT NULL,
    PRIMARY KEY (kind, named, by, row)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE examination (
    id TEXT NOT NULL,
    version INTEGER NOT NULL,
    undo_to INTEGER,
    deleted INTEGER NOT NULL,
    changed_at TEXT NOT NULL,
    newest INTEGER NOT NULL,
    piece TEXT NOT NULL,
    PRIMARY KEY (id, version)
  ) STRICT;
  CREATE INDEX examination_by_change ON examination (changed_at DESC, id) WHERE newest = 1 AND deleted = 0;
  `,
  `
  -- Every accepted write, in order: a commit, a version of an examination, or a restore (up to a revision, if any).
  CREATE TABLE write (
    sequence INTEGER PRIMARY KEY,
    revision INTEGER,
    examination TEXT,
    version INTEGER,
    restored INTEGER NOT NULL
  ) STRICT;
  INSERT INTO write (sequence, revision, restored)
    SELECT 1, (SELECT max(number) FROM revision), 1
     WHERE EXISTS (SELECT 1 FROM revision) OR EXISTS (SELECT 1 FROM examination);
  `,
  `
  -- A digest of each version, which the next step replaces.
  ALTER TABLE examination ADD COLUMN digest TEXT;
  `,
  `
  -- Cards, and what they are found by. Keys and body are canonical JSON.
  CREATE TABLE card (
    kind TEXT NOT NULL,
    id TEXT NOT NULL,
    version INTEGER NOT NULL,
    keys TEXT NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (kind, id)
  ) STRICT;
  CREATE TABLE card_key (
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    value TEXT NOT NULL,
    id TEXT NOT NULL,
    PRIMARY KEY (kind, name, value, id)
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX card_key_by_card ON card_key (kind, id);

  -- The list of writes becomes a ledger: with the cards that were written, who did it, and the chain (empty in lines from before).
  ALTER TABLE write ADD COLUMN cards TEXT;
  ALTER TABLE write ADD COLUMN deed TEXT;
  ALTER TABLE write ADD COLUMN content TEXT NOT NULL DEFAULT '';
  ALTER TABLE write ADD COLUMN previous TEXT NOT NULL DEFAULT '';
  ALTER TABLE write ADD COLUMN hash TEXT NOT NULL DEFAULT '';

  -- Which also holds the hash of each version.
  ALTER TABLE examination DROP COLUMN digest;
  `,
  `
  -- How many things stand from a revision on, by what they are counted under (server/domain/tally.ts), where the revision
  -- changed it; and how many edits it has ('edits').
  CREATE TABLE tally (
    what TEXT NOT NULL,
    revision INTEGER NOT NULL,
    total INTEGER NOT NULL,
    PRIMARY KEY (what, revision)
  ) STRICT, WITHOUT ROWID;
  WITH
    thing(what, since, until) AS (
      SELECT 'term', since, until FROM term UNION ALL SELECT 'term ' || kind, since, until FROM term
      UNION ALL SELECT 'claim', since, until FROM claim
      UNION ALL SELECT 'claim ' || relation, since, until FROM claim
      UNION ALL SELECT 'source', since, until FROM source),
    step(what, revision, more) AS (
      SELECT what, since, 1 FROM thing UNION ALL SELECT what, until, -1 FROM thing WHERE until <> 2147483647),
    changed(what, revision, more) AS (
      SELECT what, revision, sum(more) FROM step GROUP BY what, revision HAVING sum(more) <> 0)
  INSERT INTO tally (what, revision, total)
    SELECT what, revision, sum(more) OVER (PARTITION BY what ORDER BY revision) FROM changed;
  INSERT INTO tally (what, revision, total) SELECT 'edits', number, json_array_length(change) FROM revision;

  -- Pages of claims of one relation.
  CREATE INDEX claim_by_relation ON claim (relation, id);
  -- What is counted of claims and terms that something names, without reading their bodies.
  CREATE INDEX claim_life ON claim (row, since, until, subject, relation);
  CREATE INDEX term_life ON term (row, since, until, kind, broader);
  `,
  `
  -- What processes say of things for a short while, until a time in milliseconds since 1970.
  CREATE TABLE note (
    about TEXT NOT NULL,
    by TEXT NOT NULL,
    until INTEGER NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (about, by)
  ) STRICT, WITHOUT ROWID;
  `,
];
