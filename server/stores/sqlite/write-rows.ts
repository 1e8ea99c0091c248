import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Change } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import type { Database } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";

/** Writes a revision with its change, ends the rows it replaces and adds the new ones. Inside a write. */
export function writeRevision(database: Database, revision: Revision, change: Change): void {
  database.run(
    `INSERT INTO revision (number, at, by, message, content, previous, hash, change)
     VALUES (:number, :at, :by, :message, :content, :previous, :hash, :change)`,
    { ...revision, change: canonicalJson(change) },
  );
  for (const { kind, before, after } of change) {
    if (before) endRow(database, kind, before.id, revision.number);
    if (!after) continue;
    if (kind === "term") addTerm(database, after, revision.number);
    else if (kind === "claim") addClaim(database, after, revision.number);
    else addSource(database, after, revision.number);
  }
}

function endRow(database: Database, kind: "term" | "claim" | "source", id: string, until: number): void {
  const stands = { id, stands: STILL_STANDS, until };
  if (kind === "claim") {
    const row = `(SELECT row FROM claim WHERE id = :id AND until = :stands)`;
    database.run(
      `UPDATE statement SET until = :until
        WHERE subject = (SELECT subject FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
    database.run(
      `UPDATE lead SET until = :until
        WHERE subject = (SELECT subject FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
    database.run(
      `UPDATE exception SET until = :until
        WHERE of = (SELECT body ->> 'of' FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
  }
  database.run(`UPDATE ${kind} SET until = :until WHERE id = :id AND until = :stands`, stands);
}

function addTerm(database: Database, term: Term, since: number): void {
  database.run(
    `INSERT INTO term (id, since, until, kind, broader, body)
     VALUES (:id, :since, :until, :kind, :broader, :body)`,
    { ...standing(term, since), kind: term.kind, broader: term.broader ?? null },
  );
  addNames(database, { kind: "term", thing: term }, lastRow(database), since);
}

function addSource(database: Database, source: Source, since: number): void {
  database.run(
    "INSERT INTO source (id, since, until, body) VALUES (:id, :since, :until, :body)",
    standing(source, since),
  );
  addNames(database, { kind: "source", thing: source }, lastRow(database), since);
}

function addClaim(database: Database, claim: Claim, since: number): void {
  const subject = "subject" in claim ? claim.subject : null;
  database.run(
    `INSERT INTO claim (id, since, until, relation, subject, body)
     VALUES (:id, :since, :until, :relation, :subject, :body)`,
    { ...standing(claim, since), relation: claim.relation, subject },
  );
  const row = lastRow(database);
  addNames(database, { kind: "claim", thing: claim }, row, since);
  const life = { row, since, until: STILL_STANDS };
  const accepted = claim.status === "accepted";
  if (claim.relation === "void when")
    database.run(
      `INSERT INTO exception (of, row, claim, accepted, since, until)
       VALUES (:of, :row, :claim, :accepted, :since, :until)`,
      { ...life, of: claim.of, claim: claim.id, accepted: Number(accepted) },
    );
  if (subject === null || !accepted) return;
  database.run(
    `INSERT INTO statement (subject, row, claim, since, until)
     VALUES (:subject, :row, :claim, :since, :until)`,
    { ...life, subject, claim: claim.id },
  );
  if (claim.relation !== "requires") return;
  for (const target of new Set(claim.ways.flat()))
    database.run(
      `INSERT INTO lead (subject, target, row, region, since, until)
       VALUES (:subject, :target, :row, :region, :since, :until)`,
      { ...life, subject, target, region: claim.scope.region ?? null },
    );
}

/** The columns of a row that starts to stand. */
const standing = (thing: { readonly id: string }, since: number) => ({
  id: thing.id,
  since,
  until: STILL_STANDS,
  body: canonicalJson(thing),
});

const lastRow = (database: Database): number =>
  database.get<{ row: number }>("SELECT last_insert_rowid() AS row")?.row ?? 0;

function addNames(database: Database, namer: Standing, row: number, since: number): void {
  const names = new Map(namesOf(namer).map(({ kind, id }) => [`${kind} ${id}`, { kind, named: id }]));
  for (const name of names.values())
    database.run(
      "INSERT INTO naming (kind, named, by, row, since) VALUES (:kind, :named, :by, :row, :since)",
      { ...name, by: namer.kind, row, since },
    );
}
