import { canonicalJson } from "../../domain/canonical-json.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Problem } from "../../domain/problem.ts";
import { LONGEST_NOTE, type Note, type NoteWrite } from "../../ports/notes.ts";
import type { Database } from "./database.ts";

/** By the clock of the server; one that holds longer than any can was left before that clock was set back. */
const HOLDS = `n.until > timestamp() AND n.until <= timestamp() + ${LONGEST_NOTE}`;
const IS_OVER = `n.until <= timestamp() OR n.until > timestamp() + ${LONGEST_NOTE}`;
/** Notes that are taken away at once. */
const AT_ONCE = 1_000;

/** Leaves notes, and takes away what holds no more. The node of the store is not locked for it: no other write waits. */
export async function putNotes(
  database: Database,
  by: string,
  notes: readonly NoteWrite[],
  life: number,
): Promise<"left" | Problem> {
  const said = notes.flatMap(({ about, body }) =>
    body === undefined ? [] : [{ about, body: canonicalJson(body) }],
  );
  const gone = notes.flatMap(({ about, body }) => (body === undefined ? [about] : []));
  return database.write(async (run) => {
    // Whoever leaves notes waits here for others who do, so that no two take the same away.
    await run("MERGE (d:NoteDoor {store: $store}) SET d.by = $by", { by });
    await run(`MATCH (n:Note {store: $store}) WHERE ${IS_OVER} WITH n LIMIT $most DELETE n`, {
      most: AT_ONCE,
    });
    await run("UNWIND $gone AS about MATCH (n:Note {store: $store, about: about, by: $by}) DELETE n", {
      ...{ gone, by },
    });
    await run(
      `UNWIND $said AS said MERGE (n:Note {store: $store, about: said.about, by: $by})
       SET n.until = timestamp() + $life, n.body = said.body`,
      { said, by, life },
    );
    return "left" as const;
  });
}

/** The notes about these things that hold. */
export async function findNotes(database: Database, about: readonly string[]): Promise<readonly Note[]> {
  const rows = await database.read<{ about: string; by: string; body: string }>(
    `UNWIND $about AS about MATCH (n:Note {store: $store, about: about}) WHERE ${HOLDS}
     RETURN n.about AS about, n.by AS by, n.body AS body ORDER BY about, by`,
    { about: [...new Set(about)] },
  );
  return rows.map(({ body, ...note }) => deepFreeze({ ...note, body: JSON.parse(body) as unknown }));
}
