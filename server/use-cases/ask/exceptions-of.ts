import type { VoidWhen } from "../../domain/claim.ts";
import type { ClaimId } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";

/** The `void when` claims of each of the claims; a claim without exceptions has no entry. */
export async function exceptionsOf(
  { store }: { readonly store: Store },
  of: readonly ClaimId[],
  at?: RevisionNumber,
): Promise<ReadonlyMap<ClaimId, readonly VoidWhen[]>> {
  const found = new Map<ClaimId, VoidWhen[]>();
  let after: string | undefined;
  do {
    const page = await store.listClaims(
      { of, relations: ["void when"] },
      { first: 200, ...(after === undefined ? {} : { after }) },
      at,
    );
    for (const claim of page.rows) {
      if (claim.relation === "void when") found.set(claim.of, [...(found.get(claim.of) ?? []), claim]);
    }
    after = page.hasMore ? page.cursors.at(-1) : undefined;
  } while (after !== undefined);
  return found;
}
