import type { RevisionNumber } from "../domain/revision.ts";

/** A thing of the graph with the revision it was read on; none is the newest. What it leads to is read there too. */
export type AsOf<Thing> = Thing & { readonly at?: RevisionNumber };

/** Marks a thing with its revision. */
export const asOf = <Thing>(thing: Thing, at: RevisionNumber | undefined): AsOf<Thing> =>
  at === undefined ? (thing as AsOf<Thing>) : { ...thing, at };
