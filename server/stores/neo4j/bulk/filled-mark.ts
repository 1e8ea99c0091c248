import { type Problem, problem } from "../../../domain/problem.ts";
import type { Database } from "../database.ts";
import type { BulkFiles } from "./bulk-files.ts";

/**
 * The version of a database that was filled in bulk and not opened since: ours, without any rule. Its node says how much the
 * files held.
 */
export const FILLED = 0;

/** Adds the mark of a filled database, when all else is in the files. */
export function leaveMark(files: BulkFiles): void {
  files.node("ScribelineMigration", { number: FILLED, ...files.counts() });
}

/** Says what a filled database lacks of what its files held, or has too much; it is asked before its first opening alone. */
export async function findUnfilled(database: Database): Promise<Problem | undefined> {
  const [row] = await database.read<Counts>(
    `MATCH (mark:ScribelineMigration {number: ${FILLED}})
     CALL () { MATCH (n) RETURN count(n) AS all }
     CALL () { MATCH (n:ScribelineMigration) RETURN count(n) AS marks }
     CALL () { MATCH ()-[r]->() RETURN count(r) AS relationships }
     RETURN mark.nodes AS nodesDue, mark.relationships AS relationshipsDue, all - marks AS nodes, relationships`,
  );
  if (row === undefined) return undefined;
  const { nodes, nodesDue, relationships, relationshipsDue } = row;
  if (nodes === nodesDue && relationships === relationshipsDue) return undefined;
  return problem(
    "STORE_CORRUPT",
    `The database was filled with ${nodes} nodes and ${relationships} relationships out of ${nodesDue} and ${relationshipsDue}: some of the files were damaged or left out. Nothing was touched; make the files anew, and fill the database again.`,
  );
}

interface Counts {
  readonly nodes: number;
  readonly nodesDue: number;
  readonly relationships: number;
  readonly relationshipsDue: number;
}
