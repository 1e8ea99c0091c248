import DataLoader from "dataloader";
import type { Claim, VoidWhen } from "../domain/claim.ts";
import type { ClaimId, SourceId, TermId } from "../domain/ids.ts";
import { ACCESS_CARD, accessOf, type ExaminationAccess } from "../domain/people/examination-access.ts";
import { type KeptPerson, PERSON_CARD, personOf } from "../domain/people/person.ts";
import { DISPUTED_CARD, openDisputesOf } from "../domain/proposals/dispute.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import type { Source } from "../domain/source.ts";
import type { Term } from "../domain/term.ts";
import type { Store } from "../ports/store.ts";
import { exceptionsOf } from "../use-cases/ask/exceptions-of.ts";
import { type AsOf, asOf } from "./as-of.ts";

type Read<Id, Found> = (
  ids: readonly Id[],
  at: RevisionNumber | undefined,
) => Promise<ReadonlyMap<Id, Found>>;

/** Loads one thing by id and revision; all ids asked for in one turn are read with one call of the store. */
export interface Loader<Id extends string, Found> {
  one(id: Id, at: RevisionNumber | undefined): Promise<Found | undefined>;
  /** Those that are there, in the order asked for. */
  many(ids: readonly Id[], at: RevisionNumber | undefined): Promise<Found[]>;
}

function loader<Id extends string, Found>(read: Read<Id, Found>): Loader<Id, Found> {
  type Key = { readonly id: Id; readonly at: RevisionNumber | undefined };
  const batch = new DataLoader<Key, Found | undefined, string>(
    async (keys) => {
      const revisions = [...new Set(keys.map((key) => key.at))];
      const found = new Map<RevisionNumber | undefined, ReadonlyMap<Id, Found>>();
      for (const at of revisions)
        found.set(at, await read([...new Set(keys.filter((key) => key.at === at).map((key) => key.id))], at));
      return keys.map((key) => found.get(key.at)?.get(key.id));
    },
    { cacheKeyFn: (key) => `${key.at ?? ""} ${key.id}`, maxBatchSize: 1000 },
  );
  return {
    one: (id, at) => batch.load({ id, at }),
    many: async (ids, at) => {
      const all = await Promise.all(ids.map((id) => batch.load({ id, at })));
      return all.filter((thing) => thing !== undefined);
    },
  };
}

export interface Loaders {
  readonly terms: Loader<TermId, AsOf<Term>>;
  readonly claims: Loader<ClaimId, AsOf<Claim>>;
  readonly sources: Loader<SourceId, AsOf<Source>>;
  readonly exceptions: Loader<ClaimId, readonly AsOf<VoidWhen>[]>;
  /** Persons with an account, by id. */
  readonly people: { one(id: string): Promise<KeptPerson | undefined> };
  /** Who sees an examination, where that is said. */
  readonly access: { one(examination: string): Promise<ExaminationAccess | undefined> };
  /** How many disputes of a claim are open. */
  readonly openDisputes: { one(claim: ClaimId): Promise<number> };
  /** How many edits a revision has. */
  readonly editCounts: { one(revision: RevisionNumber): Promise<number | undefined> };
}

/** The loaders of one request. */
export function createLoaders(store: Store): Loaders {
  const marked =
    <Id, Found>(read: Read<Id, Found>): Read<Id, AsOf<Found>> =>
    async (ids, at) =>
      new Map([...(await read(ids, at))].map(([id, found]) => [id, asOf(found, at)]));
  const editCounts = new DataLoader<RevisionNumber, number | undefined>(async (revisions) => {
    const counts = await store.editCounts(revisions);
    return revisions.map((revision) => counts.get(revision));
  });
  const people = new DataLoader<string, KeptPerson | undefined>(async (ids) => {
    const cards = await store.cards(PERSON_CARD, ids);
    return ids.map((id) => {
      const card = cards.get(id);
      return card && personOf(card);
    });
  });
  const openDisputes = new DataLoader<ClaimId, number>(async (claims) => {
    const cards = await store.cards(DISPUTED_CARD, claims);
    return claims.map((claim) => openDisputesOf(cards.get(claim)));
  });
  const access = new DataLoader<string, ExaminationAccess | undefined>(async (ids) => {
    const cards = await store.cards(ACCESS_CARD, ids);
    return ids.map((id) => {
      const card = cards.get(id);
      return card && accessOf(card);
    });
  });
  return {
    access: { one: (examination) => access.load(examination) },
    openDisputes: { one: (claim) => openDisputes.load(claim) },
    people: { one: (id) => people.load(id) },
    terms: loader(marked((ids, at) => store.terms(ids, at))),
    claims: loader(marked((ids, at) => store.claims(ids, at))),
    sources: loader(marked((ids, at) => store.sources(ids, at))),
    exceptions: loader(async (ids, at) => {
      const found = await exceptionsOf({ store }, ids, at);
      return new Map([...found].map(([of, claims]) => [of, claims.map((claim) => asOf(claim, at))]));
    }),
    editCounts: { one: (revision) => editCounts.load(revision) },
  };
}
