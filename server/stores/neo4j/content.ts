import { textsOf } from "../../chain/change-text.ts";
import type { Change } from "../../domain/change.ts";
import type { Examination } from "../../domain/examination.ts";
import { idOfEdit, type Standing } from "../../domain/graph-view.ts";
import type { Revision } from "../../domain/revision.ts";
import { type Tally, tallyAfter } from "../../domain/tally.ts";
import { STILL_STANDS } from "./migrations.ts";
import { KINDS, type Kind, type VersionRow, versionRow } from "./version-row.ts";

/** What one write adds to a store. */
export interface Content {
  /** Ids of versions that stand in the store and end with revision `until`. */
  readonly ends: readonly { readonly kind: Kind; readonly ids: readonly string[]; readonly until: number }[];
  readonly rows: Readonly<Record<Kind, readonly VersionRow[]>>;
  readonly revisions: readonly {
    readonly revision: Revision;
    readonly change: Change;
    /** What stands from it on. */
    readonly tally: Tally;
  }[];
  readonly examinations: readonly Examination[];
}

export const NO_CONTENT: Content = {
  ends: [],
  rows: { term: [], claim: [], source: [] },
  revisions: [],
  examinations: [],
};

/** Nodes that it takes, about. */
export const sizeOf = ({ ends, rows, revisions, examinations }: Content): number =>
  ends.reduce((sum, { ids }) => sum + ids.length, 0) +
  KINDS.reduce((sum, kind) => sum + rows[kind].length, 0) +
  revisions.length +
  examinations.length;

interface Version {
  readonly standing: Standing;
  readonly since: number;
  until: number;
  readonly body: string;
}

/** What these changes, one after the other, make of a store that holds the revisions before them, and so much of each kind. */
export function contentOf(
  revisions: readonly { readonly revision: Revision; readonly change: Change }[],
  standing: Tally,
): Content {
  const made = new Map<string, Version>();
  const all: Record<Kind, Version[]> = { term: [], claim: [], source: [] };
  const ends = new Map<string, { readonly kind: Kind; readonly ids: string[]; readonly until: number }>();
  for (const { revision, change } of revisions) {
    const texts = textsOf(change);
    for (const [at, edit] of change.entries()) {
      const { kind, before, after } = edit;
      const until = revision.number;
      const key = `${kind} ${idOfEdit(edit)}`;
      const earlier = made.get(key);
      if (earlier) earlier.until = until;
      else if (before) {
        const ending = ends.get(`${kind} ${until}`) ?? { kind, ids: [], until };
        ending.ids.push(before.id);
        ends.set(`${kind} ${until}`, ending);
      }
      made.delete(key);
      if (!after) continue;
      const standing = { kind, thing: after } as Standing;
      const version = { standing, since: until, until: STILL_STANDS, body: texts.after[at] ?? "" };
      made.set(key, version);
      all[kind].push(version);
    }
  }
  const rowsOf = (kind: Kind): readonly VersionRow[] =>
    all[kind].map(({ standing, since, until, body }) => versionRow(standing, since, until, body));
  return {
    ends: [...ends.values()],
    rows: { term: rowsOf("term"), claim: rowsOf("claim"), source: rowsOf("source") },
    revisions: withTallies(revisions, standing),
    examinations: [],
  };
}

function withTallies(
  revisions: readonly { readonly revision: Revision; readonly change: Change }[],
  standing: Tally,
): Content["revisions"] {
  let tally = standing;
  return revisions.map((each) => {
    tally = tallyAfter(tally, each.change);
    return { ...each, tally };
  });
}
