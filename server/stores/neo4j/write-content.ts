import type { Examination } from "../../domain/examination.ts";
import type { Written } from "../../domain/written.ts";
import type { Content } from "./content.ts";
import type { Run } from "./database.ts";
import { newestNodes, partsOf, revisionNode, versionNodesOf } from "./nodes-of-content.ts";
import { KINDS } from "./version-row.ts";
import { endVersions, writeVersions } from "./write-versions.ts";

/** Nodes of one statement. */
const NODES_AT_ONCE = 1_000;

/** A step of a write: some rows, for one transaction. */
export type Step = (run: Run) => Promise<void>;

/**
 * The steps that write a content, without what makes it visible: no step needs a later one. `lines` are those of
 * the write in the ledger.
 */
export function* stepsOf(content: Content, lines: readonly Written[], rowsAStep: number): Generator<Step> {
  for (const { kind, ids, until } of content.ends)
    for (const some of chunks(ids, rowsAStep)) yield (run) => endVersions(run, kind, some, until);
  for (const kind of KINDS)
    for (const some of chunks(content.rows[kind], rowsAStep)) yield (run) => writeVersions(run, kind, some);
  for (const some of chunks(partsOf(content.revisions), NODES_AT_ONCE / 20))
    yield (run) => createNodes(run, "ChangePart", some);
  for (const some of chunks(content.revisions, NODES_AT_ONCE))
    yield (run) => createNodes(run, "Revision", some.map(revisionNode));
  const versionNode = versionNodesOf(lines);
  for (const some of chunks(content.examinations, NODES_AT_ONCE / 10))
    yield (run) => createNodes(run, "ExaminationVersion", some.map(versionNode));
}

/** Says of each examination which version is the newest. */
export async function writeNewest(run: Run, examinations: readonly Examination[]): Promise<void> {
  for (const some of chunks(newestNodes(examinations), NODES_AT_ONCE))
    await run(
      `UNWIND $newest AS newest MERGE (e:Examination {store: $store, id: newest.id})
       SET e += newest`,
      { newest: some },
    );
}

async function createNodes(
  run: Run,
  label: "ChangePart" | "Revision" | "ExaminationVersion",
  nodes: readonly object[],
): Promise<void> {
  await run(`UNWIND $nodes AS node CREATE (n:${label} {store: $store}) SET n += node`, { nodes });
}

function* chunks<Item>(items: readonly Item[], size: number): Generator<readonly Item[]> {
  for (let at = 0; at < items.length; at += size) yield items.slice(at, at + size);
}
