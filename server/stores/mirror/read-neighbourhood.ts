import type { Claim } from "../../domain/claim.ts";
import { compareIds, compareText } from "../../domain/compare.ts";
import type { Datings, DatingsAsk } from "../../domain/datings.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { Term } from "../../domain/term.ts";
import type { BoundOf } from "../../ports/dating-reader.ts";
import { openTurns } from "../../ports/open-turns.ts";
import type { Store } from "../../ports/store.ts";
import { type BodyReader, bodyReader } from "./body-reader.ts";
import { datingsReader } from "./read-datings.ts";
import { termCollector } from "./term-collector.ts";
import { numberedAsk, walker } from "./walk.ts";
import type { WalkArrays } from "./walk-arrays.ts";
import type { WalkEdits } from "./walk-edits.ts";

/** A claim with the numbers of the terms it names beside its subject. */
export interface ReadClaim {
  readonly claim: Claim;
  readonly names: readonly number[];
}

/** How many parsed claims and terms are kept beside the arrays. */
export interface CacheLimits {
  readonly claims: number;
  readonly terms: number;
}

/** Reads neighbourhoods from arrays, and their bodies from the store where they were not read lately. */
export interface NeighbourhoodReader {
  /** At the revision of the arrays. Undefined where they were patched again and again while the store was asked. */
  read(ask: Omit<NeighbourhoodAsk, "at">): Promise<Neighbourhood | undefined>;
  /** The same for all ways to dates; undefined too where nobody said how to read these. */
  datings(ask: DatingsAsk): Datings | Promise<Datings | undefined> | undefined;
  /** Forgets the bodies that a change touched, before or after the arrays are patched by it. */
  forget(edits: WalkEdits): void;
}

const TRIES = 3;
/** Milliseconds after which others have a turn in a long read: what comes between two can take ten itself. */
const SLICE = 5;
/** More than there are depths, so that a term and its depth make one number that sorts by the term. */
const DEPTHS = 2 ** 21;

/** A reader over arrays, which may be patched between its calls and while one waits for the store. */
export function neighbourhoodReader(
  arrays: WalkArrays,
  store: Pick<Store, "claims" | "terms">,
  limits: CacheLimits,
  boundOf?: BoundOf,
): NeighbourhoodReader {
  const walk = walker(arrays);
  const collect = termCollector(arrays);
  const claims: BodyReader<ReadClaim> = bodyReader<Claim, ReadClaim>(
    arrays,
    arrays.claims,
    limits.claims,
    (ids, at) => store.claims(ids, at),
    (claim) => ({ claim, names: namesOf(claim) }),
  );
  const terms: BodyReader<Term> = bodyReader<Term, Term>(
    arrays,
    arrays.terms,
    limits.terms,
    (ids, at) => store.terms(ids, at),
    (term) => term,
  );
  const namesOf = (claim: Claim): readonly number[] => {
    const subject = "subject" in claim ? claim.subject : undefined;
    return namedTerms(claim)
      .filter((term) => term !== subject)
      .map((term) => arrays.terms.find(term));
  };

  const readOnce = async (ask: Omit<NeighbourhoodAsk, "at">): Promise<Neighbourhood | undefined> => {
    const { revision } = arrays;
    const turn = openTurns({ slice: SLICE });
    const walked = walk(numberedAsk(arrays, ask));
    // Copies: another walk may run while the store is asked.
    const reached = new Float64Array(walked.reachedCount);
    for (let i = 0; i < reached.length; i++)
      reached[i] = (walked.reached[i] as number) * DEPTHS + (walked.depths[i] as number);
    reached.sort();
    const cutAt = walked.cutAt.map((term) => arrays.terms.idOf(term) as TermId);
    const read = await claims.read(walked.claims.slice(0, walked.claimCount).sort(), turn);
    await turn();
    if (arrays.revision !== revision) return undefined;
    const numbers = collect(reached, DEPTHS, read);
    const found = (await terms.read(numbers, turn)) as Term[];
    await turn();
    const depths = depthsOf(reached, numbers, found);
    const list = read.map(({ claim }) => claim);
    if (arrays.terms.size > arrays.terms.sorted || arrays.claims.size > arrays.claims.sorted) {
      found.sort(compareIds);
      list.sort(compareIds);
      depths.sort(([a], [b]) => compareText(a, b));
    }
    return {
      revision,
      terms: found,
      claims: list,
      depths: new Map(depths),
      cutAt: cutAt.sort(),
    };
  };

  const datings = boundOf && datingsReader(arrays, claims, boundOf);
  return {
    read: async (ask) => {
      for (let tries = 0; tries < TRIES; tries++) {
        const found = await readOnce(ask);
        if (found !== undefined) return found;
      }
      return undefined;
    },
    datings: (ask) => datings?.read(ask),
    forget: (edits) => {
      for (const claim of edits.claims) forgetIn(claims, arrays.claims.find(claim));
      for (const { subject } of [...edits.dropped, ...edits.added])
        if (datings !== undefined && subject !== undefined) forgetIn(datings, arrays.terms.find(subject));
      for (const { term } of edits.terms) forgetIn(terms, arrays.terms.find(term));
    },
  };
}

const forgetIn = (reader: Pick<BodyReader<unknown>, "forget">, number: number): void => {
  if (number >= 0) reader.forget(number);
};

/** The ids and depths of the reached terms, which are among the found ones; both are in the order of numbers. */
function depthsOf(reached: Float64Array, numbers: Int32Array, found: readonly Term[]): [TermId, number][] {
  const depths: [TermId, number][] = [];
  let at = 0;
  for (const key of reached) {
    const term = Math.floor(key / DEPTHS);
    while ((numbers[at] as number) < term) at++;
    depths.push([(found[at] as Term).id, key - term * DEPTHS]);
  }
  return depths;
}
