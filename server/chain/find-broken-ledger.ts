import type { Card } from "../domain/card.ts";
import type { Written } from "../domain/written.ts";
import { checkLedger } from "./check-ledger.ts";
import type { MadeByWrite } from "./link-written.ts";

/** All that a ledger tells of, as it stands. */
export interface UnderLedger {
  /** Hashes, oldest first. */
  readonly revisions: readonly string[];
  /** Hashes of all versions of examinations by `keyOfVersion`, in the order of id and version. */
  readonly versions: ReadonlyMap<string, string>;
  readonly cards: Iterable<Card>;
  readonly writes: readonly Written[];
}

/** Names a version of an examination. */
export const keyOfVersion = ({ id, version }: { readonly id: string; readonly version: number }): string =>
  `${id} ${version}`;

/** The first thing that is not as the ledger tells it, if there is one. */
export function findBrokenLedger({ revisions, versions, cards, writes }: UnderLedger): string | undefined {
  const ledger = checkLedger();
  const named = new Set(
    writes.flatMap(({ examination }) => (examination ? [keyOfVersion(examination)] : [])),
  );
  const madeBy = ({ revision, examination, restored }: Written): MadeByWrite => ({
    revision: revision === undefined ? undefined : revisions[revision - 1],
    examination: examination && versions.get(keyOfVersion(examination)),
    examinations: restored && [...versions].filter(([key]) => !named.has(key)).map(([, hash]) => hash),
  });
  for (const written of writes) {
    const broken = ledger.take(written, madeBy(written));
    if (broken !== undefined) return broken;
  }
  for (const card of cards) {
    const broken = ledger.takeCard(card);
    if (broken !== undefined) return broken;
  }
  return ledger.end({ revisions: revisions.length, versions: versions.size });
}
