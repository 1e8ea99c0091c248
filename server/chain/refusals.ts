import { type Problem, problem } from "../domain/problem.ts";
import type { RevisionNumber } from "../domain/revision.ts";

/** For a restore into a store that holds something. */
export const storeNotEmpty = (): Problem =>
  problem(
    "STORE_NOT_EMPTY",
    "The store already holds a graph or examinations, and a restore never mixes or replaces; restore into an empty data folder.",
  );

/** For a dump whose change does not fit the graph that the changes before it made. */
export const changeDoesNotFit = (revision: RevisionNumber, why: Problem): Problem =>
  problem(
    "DAMAGED_DUMP",
    `Revision ${revision} of the dump cannot be laid on the ones before it: ${why.message} Nothing was restored; use an undamaged copy.`,
    ["revision", revision, ...why.path],
  );

/** For a store whose content is not what its changes made. `what` says where and what, without a full stop. */
export const storeTampered = (revision: RevisionNumber, what: string): Problem =>
  problem(
    "STORE_CORRUPT",
    `Revision ${revision} does not check: ${what}. The store was changed or damaged from outside; restore the last sound dump into an empty data folder.`,
    ["revision", revision],
  );

/** For a store whose ledger or cards are not what was written. `what` says where and what, without a full stop. */
export const ledgerTampered = (what: string): Problem =>
  problem(
    "STORE_CORRUPT",
    `The store does not check: ${what}. It was changed or damaged from outside; restore the last sound dump into an empty data folder.`,
  );
