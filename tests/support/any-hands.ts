import fc from "fast-check";
import type { Role } from "#server/domain/people/caller.ts";

/** Who works on the graph of the house of these tests. */
export const HANDS: readonly { readonly id: string; readonly role: Role }[] = [
  { id: "person.readonly", role: "reader" },
  { id: "person.firsthnd", role: "contributor" },
  { id: "person.otherhnd", role: "contributor" },
  { id: "person.firstrev", role: "reviewer" },
  { id: "person.otherrev", role: "reviewer" },
  { id: "person.ownerone", role: "owner" },
];
export const TOOLS = ["tool.adze", "tool.frame-saw"] as const;
export type Tool = (typeof TOOLS)[number];

export const OWN_STEPS = ["change", "open", "withdraw"] as const;
export const VERDICTS = ["accept", "decline", "ask for changes"] as const;

/** What one of them tries: a proposal that gives a tool another note, a step of its maker, a verdict on the version seen. */
export type Try = { readonly who: number } & (
  | { readonly does: "make"; readonly tool: Tool; readonly isOpen: boolean; readonly saysWhy: boolean }
  | {
      readonly does: (typeof OWN_STEPS)[number] | (typeof VERDICTS)[number];
      readonly which: number;
      /** Looked at a version that stands no more. */
      readonly isStale: boolean;
      readonly saysWhy: boolean;
    }
);

const who = fc.nat({ max: HANDS.length - 1 });
const rarely = fc.integer({ min: 0, max: 9 }).map((roll) => roll === 0);
const mostly = rarely.map((is) => !is);

const making = fc.record({
  ...{ who, does: fc.constant("make" as const), tool: fc.constantFrom(...TOOLS) },
  ...{ isOpen: fc.boolean(), saysWhy: mostly },
});
const stepping = fc.record({
  ...{ who, does: fc.constantFrom(...OWN_STEPS, ...VERDICTS, "accept" as const, "open" as const) },
  ...{ which: fc.nat({ max: 7 }), isStale: rarely, saysWhy: mostly },
});

/** A history of several people in one house. */
export const anyWork: fc.Arbitrary<readonly Try[]> = fc.array(
  fc.oneof({ arbitrary: making, weight: 2 }, { arbitrary: stepping, weight: 5 }),
  { minLength: 5, maxLength: 40 },
);
