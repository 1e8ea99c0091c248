import fc from "fast-check";
import type { Change, Graph } from "#server/domain/change.ts";
import { type Claim, STRENGTHS, type Strength } from "#server/domain/claim.ts";
import type { Observation, Piece } from "#server/domain/examination.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import { anyClaims, anyPiece, FEATURES, WORLD } from "./any-graph.ts";
import { adding, aSource, aTerm, replacing, withdrawing } from "./build-change.ts";
import { aClaim } from "./build-claim.ts";

/** Terms that the first graph does not know; a later change may add them, and a piece may name the first already. */
const LATER: readonly Term[] = [aTerm("feature.later"), aTerm("tool.later")];
const BOOKS = ["source.a", "source.b"] as const;
const MOVED: Readonly<Record<string, readonly string[]>> = {
  "region.north-east": ["region.north", "region.south", "region.world"],
  "region.south": ["region.world", "region.north"],
  "form.chest": ["form.case"],
  "part.drawer-bottom": ["part.drawer"],
};

const WHATS = [
  ...["put", "put", "put", "replace", "withdraw", "status", "note", "exception", "sign", "typical", "spread"],
  ...["rename", "move", "move", "begin", "end", "lead", "both", "firm", "cite"],
] as const;

/** One change of a graph, still to be held against what stands. */
export interface Act {
  readonly what: (typeof WHATS)[number];
  readonly number: number;
  readonly at: number;
  readonly claim: Claim;
  readonly then?: Act;
}

const someClaim = anyClaims.filter((claims) => claims.length > 0).map((claims) => claims[0] as Claim);
const oneAct: fc.Arbitrary<Act> = fc.record({
  what: fc.constantFrom(...WHATS),
  number: fc.nat(999),
  at: fc.nat(999),
  claim: someClaim,
});
/** Some changes are two things at once. */
export const anyAct: fc.Arbitrary<Act> = fc
  .tuple(oneAct, fc.option(oneAct, { freq: 4, nil: undefined }))
  .map(([act, then]) => (then ? { ...act, then } : act));

/** The graph before any act. */
export const anyBeginning: fc.Arbitrary<Change> = anyClaims.map((claims) =>
  adding(...WORLD, ...BOOKS.map((book) => aSource(book)), ...claims),
);

/** A piece that may name what the graph does not know yet, with something looked for and absent. */
export const anyStoredPiece: fc.Arbitrary<Piece> = fc
  .tuple(anyPiece, fc.boolean(), fc.boolean())
  .map(([piece, looksAhead, isAbsent]) => ({
    ...piece,
    observations: piece.observations.map((observation, n): Observation => {
      if (n > 0 && looksAhead) return { ...observation, feature: id("feature.later") };
      return n > 0 && isAbsent ? { ...observation, seen: "absent" } : observation;
    }),
  }));

/** What the act comes to on a graph; a store may still refuse it. Nothing where there is nothing to act on. */
export function changeOf(act: Act, graph: Graph): Change {
  const first = one(act, graph);
  if (act.then === undefined) return first;
  const second = one(act.then, graph);
  const touched = new Set(first.map((edit) => (edit.after ?? edit.before)?.id));
  return [...first, ...second.filter((edit) => !touched.has((edit.after ?? edit.before)?.id as never))];
}

function one({ what, number, at, claim }: Act, { claims, terms }: Graph): Change {
  const standing = [...claims.values()];
  const picked = standing[at % Math.max(1, standing.length)];
  const name = `later.${number}-${at}`;
  const put = (claim: Claim): Change => (claims.has(claim.id) ? [] : adding(claim));
  switch (what) {
    case "put":
      return put({ ...claim, id: id(name) });
    case "replace":
      return picked && picked.relation !== "void when" ? replacing(picked, { ...claim, id: picked.id }) : [];
    case "withdraw":
      return picked ? withdrawing(...withExceptions(picked, standing)) : [];
    case "status":
      if (picked === undefined) return [];
      return replacing(picked, { ...picked, status: picked.status === "accepted" ? "proposed" : "accepted" });
    case "firm":
      return picked
        ? replacing(picked, { ...picked, strength: STRENGTHS[number % STRENGTHS.length] as Strength })
        : [];
    case "cite": {
      const source = id<"source">(BOOKS[number % BOOKS.length] as string);
      return picked
        ? replacing(picked, { ...picked, citations: [{ basis: "published", source, locator: "p. 1" }] })
        : [];
    }
    case "note":
      return picked ? replacing(picked, { ...picked, note: `noted ${number}` }) : [];
    case "exception": {
      const condition = FEATURES[number % FEATURES.length] as string;
      const of = picked?.id as string;
      return picked
        ? put(aClaim({ id: name, relation: "void when", of, condition, anywhere: number % 2 === 0 }))
        : [];
    }
    case "sign":
      return put(aClaim({ id: name, relation: "indicates", subject: featureOf(number), states: ["later"] }));
    case "typical":
      return put(
        aClaim({ id: name, relation: "typical of", subject: featureOf(number), object: "region.south" }),
      );
    case "spread": {
      const subject = "subject" in claim ? claim.subject : "tool.a";
      const ends = { from: "region.north-east", to: "region.south", years: [1, number % 30] as const };
      return put(aClaim({ id: name, relation: "spread to", subject, ...ends }));
    }
    case "rename": {
      const term = [...terms.values()][at % terms.size];
      return term ? replacing(term, { ...term, label: `named ${number}` }) : [];
    }
    case "move": {
      const [moved, tops] = Object.entries(MOVED)[at % Object.keys(MOVED).length] as [string, string[]];
      const term = terms.get(moved);
      const top = tops[number % (tops.length + 1)];
      if (term === undefined) return [];
      const { broader: _, ...rest } = term;
      return replacing(term, top === undefined ? rest : { ...rest, broader: id<"term">(top) });
    }
    case "begin":
      return adding(...LATER.filter((term) => !terms.has(term.id)));
    case "end": {
      const term = terms.get((LATER[at % 2] as Term).id);
      return term ? withdrawing(term) : [];
    }
    case "lead":
    case "both": {
      const missing = LATER.filter((term) => !terms.has(term.id));
      const leads = aClaim({
        ...{ id: name, relation: "requires" },
        subject: what === "lead" ? featureOf(number) : "tool.later",
        ways: [[what === "lead" ? "tool.later" : "tool.a"]],
        ...(number % 3 === 0 ? { region: "region.north-west" } : {}),
      });
      return [...adding(...missing), ...put(leads)];
    }
  }
}

const featureOf = (number: number): TermId => FEATURES[number % FEATURES.length] as TermId;

function withExceptions(claim: Claim, standing: readonly Claim[]): readonly Claim[] {
  const found = new Set([claim]);
  for (const of of found)
    for (const each of standing) if (each.relation === "void when" && each.of === of.id) found.add(each);
  return [...found];
}
