import { randomUUID } from "node:crypto";
import { changeText } from "../../chain/change-text.ts";
import { checkCommit } from "../../chain/check-commit.ts";
import { linkRevision } from "../../chain/link-revision.ts";
import type { Change } from "../../domain/change.ts";
import type { Deed } from "../../domain/deed.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Written } from "../../domain/written.ts";
import type { Along, Commit } from "../../ports/store.ts";
import { planCards } from "./cards.ts";
import { contentOf, NO_CONTENT } from "./content.ts";
import type { Database } from "./database.ts";
import { findRevision, newestRevision } from "./revisions.ts";
import { standingGraph } from "./standing-graph.ts";
import { lineAfter } from "./store-state.ts";
import { readTally } from "./tally.ts";
import { checkOnStanding } from "./view-of-change.ts";
import { writePlanned } from "./write-planned.ts";

/** Edits from which on a change may take its time. */
const MUCH = 500;

/** Makes one revision of a change, or says why not. */
export function commitChange(database: Database, commit: Commit): Promise<Revision | Problem> {
  const { change, expected, cards = [], deed } = commit;
  return writePlanned<Revision>(
    database,
    randomUUID(),
    async (run, state) => {
      const newest = state.revision === 0 ? undefined : await newestRevision(run);
      const check = (view: Parameters<typeof checkCommit>[0]): Problem | undefined =>
        checkCommit(view, state.revision, change, expected);
      const refusal =
        state.revision === 0 ? check(standingGraph().view) : await checkOnStanding(run, change, check);
      if (refusal !== undefined) return refusal;
      const planned = await planCards(run, cards);
      if (isProblem(planned)) return planned;
      const revision = deepFreeze(linkRevision(changeText(change), commit, newest));
      return {
        content: contentOf([{ revision, change }], await readTally(run, state.revision)),
        revision: revision.number,
        lines: [
          lineAfter(
            state,
            { revision: revision.number, cards: planned.written, deed },
            { revision: revision.hash },
          ),
        ],
        cards: planned,
        answer: revision,
      };
    },
    async (run, { revision = 0 }) => {
      const written = await findRevision(run, revision);
      if (written === undefined) throw new Error(`Revision ${revision} was written and is gone`);
      return written;
    },
    change.length > MUCH ? "much" : "little",
  );
}

/** Why a commit of a change would be refused now. */
export const wouldRefuse = (database: Database, change: Change): Promise<Problem | undefined> =>
  database.readMoment((run) =>
    checkOnStanding(run, change, (view) => checkCommit(view, 0, change, undefined)),
  );

/** Writes cards alone, or says why not. */
export function writeCardsAlone(
  database: Database,
  { cards = [], deed }: Along & { readonly deed: Deed },
): Promise<Written | Problem> {
  return writePlanned<Written>(
    database,
    randomUUID(),
    async (run, state) => {
      const planned = await planCards(run, cards);
      if (isProblem(planned)) return planned;
      const line = lineAfter(state, { cards: planned.written, deed }, {});
      return {
        content: NO_CONTENT,
        ...{ revision: state.revision, lines: [line], cards: planned, answer: line },
      };
    },
    async (_, written) => written,
    cards.length > MUCH ? "much" : "little",
  );
}
