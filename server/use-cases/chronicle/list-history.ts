import type { Revision } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller } from "../acting.ts";
import { listRevisions } from "../ask/list-revisions.ts";
import type { Refusal } from "../refusal.ts";
import { namesOfPersons } from "./names-of-persons.ts";

const AT_ONCE = 50;

/** A revision with the name of who made it, as far as it has one, and how much it did. */
export interface ListedRevision extends Revision {
  readonly name: string;
  readonly edits: number;
}

/** The revisions, newest first: who, when, why. */
export async function listHistory(
  ports: Acting & { readonly store: Store },
  after: string | undefined,
): Promise<
  | {
      readonly revisions: readonly ListedRevision[];
      readonly total: number;
      readonly after: string | undefined;
    }
  | Refusal
> {
  const refusal = refuseCaller(ports, "read the graph");
  if (refusal) return refusal;
  const page = await listRevisions(ports, { first: AT_ONCE, ...(after === undefined ? {} : { after }) });
  const counts = await ports.store.editCounts(page.rows.map(({ number }) => number));
  const nameOf = await namesOfPersons(
    ports,
    page.rows.map(({ by }) => by),
  );
  return {
    revisions: page.rows.map((revision) => ({
      ...revision,
      ...{ name: nameOf(revision.by), edits: counts.get(revision.number) ?? 0 },
    })),
    ...{ total: page.total, after: page.hasMore ? page.cursors.at(-1) : undefined },
  };
}
