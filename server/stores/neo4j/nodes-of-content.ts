import { textsOf } from "../../chain/change-text.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Examination } from "../../domain/examination.ts";
import type { Written } from "../../domain/written.ts";
import type { Content } from "./content.ts";
import { packedEdits } from "./packed-edits.ts";

/** Edits of one node. */
const EDITS_A_PART = 500;

/** The properties of the nodes that hold the edits of some revisions. */
export const partsOf = (revisions: Content["revisions"]): readonly object[] =>
  revisions.flatMap(({ revision, change }) => {
    const { edits } = textsOf(change);
    return Array.from({ length: Math.ceil(edits.length / EDITS_A_PART) }, (_, part) => ({
      revision: revision.number,
      part,
      ...packedEdits(`[${edits.slice(part * EDITS_A_PART, (part + 1) * EDITS_A_PART).join(",")}]`),
    }));
  });

/** The properties of the node of a revision. */
export const revisionNode = ({ revision, change, tally }: Content["revisions"][number]): object => ({
  ...revision,
  edits: change.length,
  tally: canonicalJson(tally),
});

/** The properties of the node of a version of an examination; `lines` are those of the write that brings it. */
export function versionNodesOf(lines: readonly Written[]): (version: Examination) => object {
  const made = new Map(
    lines.flatMap(({ examination, sequence }) =>
      examination ? [[`${examination.id} ${examination.version}`, sequence]] : [],
    ),
  );
  // The write that names a version made it, else the first.
  const sequenceOf = ({ id, version }: Examination): number =>
    made.get(`${id} ${version}`) ?? lines[0]?.sequence ?? 0;
  return (examination) => {
    const { undoTo, piece, ...rest } = examination;
    return {
      ...rest,
      ...(undoTo === undefined ? {} : { undoTo }),
      sequence: sequenceOf(examination),
      piece: canonicalJson(piece),
    };
  };
}

/** The properties of the nodes that say of each examination which of its versions, in their order, is the newest. */
export const newestNodes = (versions: readonly Examination[]): readonly object[] =>
  [...new Map(versions.map((each) => [each.id, each])).values()].map(
    ({ id, version, deleted, changedAt }) => ({ id, version, deleted, changedAt }),
  );
