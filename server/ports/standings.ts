import type { Change } from "../domain/change.ts";
import type { Examination } from "../domain/examination.ts";
import type { ExaminationId } from "../domain/ids.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import type { Verdicts } from "../domain/verdicts.ts";

/** How a stored examination stands, as far as it was examined again. */
export interface Standing {
  readonly version: number;
  /** The revision on which it was examined last. */
  readonly revision: RevisionNumber;
  /** No later change, up to `knownTo`, can have touched it, and its record is the same. */
  readonly upToDate: boolean;
  /** The newest revision that was dealt with. */
  readonly knownTo: RevisionNumber;
  readonly verdicts: Verdicts;
  /** What the same piece came to on the graph that stood when it was last changed. */
  readonly since: {
    readonly revision: RevisionNumber;
    readonly verdicts: Verdicts;
    /** All that is read is known to be as it was: nothing changed since. */
    readonly isSame: boolean;
  };
}

/** The stored examinations, examined again after each change of the graph (K5 to K8). */
export interface Standings {
  /** Nothing for one that is not examined yet. */
  readonly find: (examination: ExaminationId) => Standing | undefined;
  /** Somebody looks at it: those looked at most are examined again first. */
  readonly looked: (examination: ExaminationId) => void;
  /** Every examination whose answer a change of the newest revision can change; all those still to be examined again. */
  readonly touchedBy: (change: Change) => Promise<ReadonlySet<ExaminationId>>;
  /** One of them as it is kept, whoever may see it: to count what a change does to all. */
  readonly stored: (examination: ExaminationId) => Promise<Examination | undefined>;
  /** How many are known, still to be examined again, and left out because there are too many. */
  readonly progress: () => { readonly known: number; readonly waiting: number; readonly left: number };
}
