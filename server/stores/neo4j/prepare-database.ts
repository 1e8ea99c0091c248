import { randomUUID } from "node:crypto";
import { Neo4jError } from "neo4j-driver";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import { FILLED, findUnfilled } from "./bulk/filled-mark.ts";
import type { Database } from "./database.ts";
import { chainOldWrites } from "./ledger.ts";
import { MIGRATIONS } from "./migrations.ts";
import { printAddress } from "./neo4j-address.ts";
import { refreshStatistics } from "./refresh-statistics.ts";

/** Says what keeps a database from holding our stores, or makes its schema and the node of this store. */
export async function prepareDatabase(
  database: Database,
  { readOnly }: { readonly readOnly: boolean },
): Promise<Problem | undefined> {
  const version = await versionOf(database);
  const refusal = await findForeign(database, version);
  if (refusal !== undefined) return refusal;
  if (readOnly) return checkStore(database, version);
  for (let step = version ?? 0; step < MIGRATIONS.length; step++) {
    for (const statement of MIGRATIONS[step] ?? []) await administerOnce(database, statement);
    await administerOnce(database, "CALL db.awaitIndexes(60)");
    const recorded = await database.write((run) =>
      run("MERGE (m:ScribelineMigration {number: $number}) ON CREATE SET m.at = datetime()", {
        number: step + 1,
      }),
    );
    if (isProblem(recorded)) return recorded;
  }
  if (version === FILLED) await refreshStatistics(database);
  const made = await database.write((run) =>
    run("MERGE (s:Store {name: $store}) ON CREATE SET s.revision = 0, s.sequence = 0"),
  );
  return isProblem(made) ? made : chainOldWrites(database, randomUUID());
}

/** Why a database cannot be ours to prepare. Another program may have begun between two questions; the first node it makes says its version. */
async function findForeign(database: Database, version: number | undefined): Promise<Problem | undefined> {
  if (version !== undefined && version > MIGRATIONS.length)
    return problem(
      "OTHER_VERSION",
      `The database is of version ${version}, and this program knows versions up to ${MIGRATIONS.length}; use the newer program that wrote it.`,
    );
  const refusal =
    version === FILLED
      ? await findUnfilled(database)
      : version === undefined && (await holdsAnything(database))
        ? problem(
            "WRONG_FORMAT",
            `${printAddress(database.address)} holds nodes of another program; nothing was touched. Choose another database in SCRIBELINE_STORE.`,
          )
        : undefined;
  return refusal !== undefined && (await versionOf(database)) === version ? refusal : undefined;
}

async function versionOf(database: Database): Promise<number | undefined> {
  const [row] = await database.read<{ version: number | null }>(
    "OPTIONAL MATCH (m:ScribelineMigration) RETURN max(m.number) AS version",
  );
  return row?.version ?? undefined;
}

async function holdsAnything(database: Database): Promise<boolean> {
  const [row] = await database.read<{ count: number }>("MATCH (n) RETURN count(n) AS count");
  return (row?.count ?? 0) > 0;
}

async function checkStore(database: Database, version: number | undefined): Promise<Problem | undefined> {
  const found =
    version === MIGRATIONS.length
      ? await database.read("MATCH (s:Store {name: $store}) RETURN s.name AS name")
      : [];
  if (found.length > 0) return undefined;
  return problem(
    "STORE_UNREACHABLE",
    `There is no store at ${printAddress(database.address)}, or one of an older version; start the server once, or restore a dump.`,
  );
}

/** How often a rule is tried to be made, and for how long to wait before the second try, in milliseconds: then twice as long, and so on. */
const TRIES = 9;
const FIRST_PAUSE = 20;

/**
 * Another program that opens the same new database makes the same rules at the same time, and the server ends one of the
 * two, or its waiting for the rules. They wait differently long, or they would meet again.
 */
async function administerOnce(database: Database, statement: string): Promise<void> {
  for (let tries = 1; ; tries++)
    try {
      await database.administer(statement);
      return;
    } catch (failure) {
      const isRace =
        failure instanceof Neo4jError &&
        /AlreadyExists|Deadlock|Lock|TransientError|ProcedureCallFailed/.test(failure.code);
      if (!isRace || tries === TRIES) throw failure;
      const pause = FIRST_PAUSE * 2 ** (tries - 1) * (0.5 + Math.random());
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
}
