import { textsOf } from "../../chain/change-text.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Examination } from "../../domain/examination.ts";
import type { Written } from "../../domain/written.ts";
import type { Content } from "./content.ts";
import type { Run } from "./database.ts";
import { packedEdits } from "./packed-edits.ts";
import { KINDS } from "./version-row.ts";
import { endVersions, writeVersions } from "./write-versions.ts";

/** Edits of one node. */
const EDITS_A_PART = 500;
/** Nodes of one statement. */
const NODES_AT_ONCE = 1_000;

/** A step of a write: some rows, for one transaction. */
export type Step = (run: Run) => Promise<void>;

/**
 * The steps that write a content, without what makes it visible: no step needs a later one. `lines` are those of
 * the write in the ledger.
 */
export function* stepsOf(content: Content, lines: readonly Written[], rowsAStep: number): Generator<Step> {
  const sequenceOf = sequencesIn(lines);
  for (const { kind, ids, until } of content.ends)
    for (const some of chunks(ids, rowsAStep)) yield (run) => endVersions(run, kind, some, until);
  for (const kind of KINDS)
    for (const some of chunks(content.rows[kind], rowsAStep)) yield (run) => writeVersions(run, kind, some);
  for (const some of chunks(partsOf(content), NODES_AT_ONCE / 20))
    yield async (run) => {
      await run("UNWIND $parts AS part CREATE (p:ChangePart {store: $store}) SET p += part", { parts: some });
    };
  for (const some of chunks(content.revisions, NODES_AT_ONCE))
    yield async (run) => {
      await run("UNWIND $revisions AS revision CREATE (r:Revision {store: $store}) SET r += revision", {
        revisions: some.map(({ revision, change, tally }) => ({
          ...revision,
          edits: change.length,
          tally: canonicalJson(tally),
        })),
      });
    };
  for (const some of chunks(content.examinations, NODES_AT_ONCE / 10))
    yield async (run) => {
      await run(
        "UNWIND $versions AS version CREATE (v:ExaminationVersion {store: $store}) SET v += version",
        {
          versions: some.map((examination) => versionProperties(examination, sequenceOf(examination))),
        },
      );
    };
}

/** The number of the write that made a version: the one that names it, else the first. */
function sequencesIn(lines: readonly Written[]): (version: Examination) => number {
  const made = new Map(
    lines.flatMap(({ examination, sequence }) =>
      examination ? [[`${examination.id} ${examination.version}`, sequence]] : [],
    ),
  );
  return ({ id, version }) => made.get(`${id} ${version}`) ?? lines[0]?.sequence ?? 0;
}

/** Says of each examination which version is the newest. */
export async function writeNewest(run: Run, examinations: readonly Examination[]): Promise<void> {
  const newest = [...new Map(examinations.map((each) => [each.id, each])).values()];
  for (const some of chunks(newest, NODES_AT_ONCE))
    await run(
      `UNWIND $newest AS newest MERGE (e:Examination {store: $store, id: newest.id})
       SET e += newest`,
      { newest: some.map(({ id, version, deleted, changedAt }) => ({ id, version, deleted, changedAt })) },
    );
}

const versionProperties = ({ undoTo, piece, ...rest }: Examination, sequence: number): object => ({
  ...rest,
  ...(undoTo === undefined ? {} : { undoTo }),
  sequence,
  piece: canonicalJson(piece),
});

const partsOf = ({ revisions }: Content): readonly object[] =>
  revisions.flatMap(({ revision, change }) =>
    [...chunks(textsOf(change).edits, EDITS_A_PART)].map((edits, part) => ({
      revision: revision.number,
      part,
      ...packedEdits(`[${edits.join(",")}]`),
    })),
  );

function* chunks<Item>(items: readonly Item[], size: number): Generator<readonly Item[]> {
  for (let at = 0; at < items.length; at += size) yield items.slice(at, at + size);
}
