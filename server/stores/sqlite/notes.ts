import { canonicalJson } from "../../domain/canonical-json.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import { LONGEST_NOTE, type Note, type NoteWrite } from "../../ports/notes.ts";
import type { Database } from "./database.ts";
import { parseStored } from "./parse-stored.ts";

/** Milliseconds since 1970 by the clock of this machine, which all programs on the file share. */
const NOW = "CAST(unixepoch('subsec') * 1000 AS INTEGER)";
/** One that holds longer than any can was left before the clock was set back. */
const HOLDS = `until > ${NOW} AND until <= ${NOW} + ${LONGEST_NOTE}`;

/** Leaves notes, and takes away what holds no more. Inside a write. */
export function putNotes(database: Database, by: string, notes: readonly NoteWrite[], life: number): void {
  database.run(`DELETE FROM note WHERE NOT (${HOLDS})`);
  for (const { about, body } of notes)
    if (body === undefined) database.run("DELETE FROM note WHERE about = :about AND by = :by", { about, by });
    else
      database.run(
        `INSERT INTO note (about, by, until, body) VALUES (:about, :by, ${NOW} + :life, :body)
         ON CONFLICT (about, by) DO UPDATE SET until = excluded.until, body = excluded.body`,
        { about, by, life, body: canonicalJson(body) },
      );
}

/** The notes about these things that hold. */
export const findNotes = (database: Database, about: readonly string[]): readonly Note[] =>
  database
    .all<{ about: string; by: string; body: string }>(
      `SELECT note.about, note.by, note.body FROM (SELECT DISTINCT value AS about FROM json_each(:about)) AS asked
        CROSS JOIN note ON note.about = asked.about WHERE ${HOLDS} ORDER BY note.about, note.by`,
      { about: JSON.stringify(about) },
    )
    .map(({ body, ...note }) => deepFreeze({ ...note, body: parseStored<unknown>(body) }));
