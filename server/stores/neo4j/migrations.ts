/** The `until` of a row that still stands: no revision has so high a number. */
export const STILL_STANDS = 2 ** 31 - 1;

const unique = (name: string, label: string, ...properties: readonly string[]): string =>
  `CREATE CONSTRAINT ${name} IF NOT EXISTS FOR (n:${label}) REQUIRE (${properties.map((each) => `n.${each}`).join(", ")}) IS UNIQUE`;
const index = (name: string, label: string, ...properties: readonly string[]): string =>
  `CREATE INDEX ${name} IF NOT EXISTS FOR (n:${label}) ON (${properties.map((each) => `n.${each}`).join(", ")})`;

/**
 * Brings a database from each version to the next; the number of the last is the version this program reads and writes.
 * A step that was released is never changed: add another. Only what the Community edition has: uniqueness and indexes.
 *
 * A term, claim or source is a node that stays (`Term`, `Claim`, `Source`) with one node for each way it ever stood
 * (`TermVersion` and so on, by `OF`), valid from revision `since` until revision `until`, which is the only property ever
 * updated. Bodies are canonical JSON; the other properties and the relationships repeat what is searched by and walked over:
 *
 * - `(:Term)-[:LEADS|STATES|PROPOSES]->(:ClaimVersion)` from its subject: an accepted `requires` claim, another accepted
 *   one, one that is not accepted;
 * - `(:ClaimVersion)-[:NEEDS]->(:Term)` what its ways name, `-[:EXCEPTS]->(:Claim)` the claim it is an exception of,
 *   `-[:CITES]->(:Source)` a citation with its place, locator and note;
 * - `(:TermVersion)-[:BROADER]->(:Term)`;
 * - `-[:NAMES]->(:Term)` from a version of any kind, what it names besides.
 *
 * `Store` is the one node of a store that every write locks first. `Write` is one accepted write with the key it was made
 * under, its number, what it wrote and the chain of the ledger, `Card` a card with its keys as `CardKey`, `Revision` one revision, `ChangePart` some edits of its change in their order, as text or packed.
 * `Note` is what a process says for a short while, `NoteDoor` what whoever leaves notes locks first.
 */
export const MIGRATIONS: readonly (readonly string[])[] = [
  [
    unique("migration_number", "ScribelineMigration", "number"),
    unique("store_name", "Store", "name"),
    unique("write_key", "Write", "store", "key"),
    unique("write_sequence", "Write", "store", "sequence"),
    unique("revision_number", "Revision", "store", "number"),
    unique("change_part", "ChangePart", "store", "revision", "part"),
    ...["Term", "Claim", "Source"].flatMap((label) => [
      unique(`${label.toLowerCase()}_id`, label, "store", "id"),
      unique(`${label.toLowerCase()}_version`, `${label}Version`, "store", "id", "since"),
    ]),
    index("term_kind", "TermVersion", "store", "kind"),
    unique("examination_id", "Examination", "store", "id"),
    index("examination_change", "Examination", "store", "changedAt"),
    unique("examination_version", "ExaminationVersion", "store", "id", "version"),
  ],
  // A restore, which can only be the first write, says so; one of no revision names none.
  [
    `MATCH (s:Store) MATCH (w:Write {store: s.name, sequence: 1}) WHERE w.examination IS NULL
       AND (w.revision <> 1 OR EXISTS { MATCH (v:ExaminationVersion {store: s.name}) WHERE v.sequence = 1 })
     SET w.restored = true, w.revision = CASE WHEN w.revision > 0 THEN w.revision END`,
  ],
  // Cards by their ids, and what they are found by.
  [
    unique("card_id", "Card", "store", "kind", "id"),
    unique("card_key", "CardKey", "store", "kind", "name", "value", "id"),
    index("card_key_card", "CardKey", "store", "kind", "card"),
  ],
  // The edits of a large change may be packed from here on; there is nothing to alter.
  [],
  // What processes say for a short while.
  [
    unique("note_about", "Note", "store", "about", "by"),
    index("note_end", "Note", "store", "until"),
    unique("note_door", "NoteDoor", "store"),
  ],
];
