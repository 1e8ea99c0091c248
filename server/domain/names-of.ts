import type { Edit } from "./change.ts";
import type { Claim } from "./claim.ts";
import type { Standing } from "./graph-view.ts";
import { OBSERVED_KINDS } from "./observed-kinds.ts";
import type { Problem } from "./problem.ts";
import type { Source } from "./source.ts";
import { TERM_KINDS, type Term, type TermKind } from "./term.ts";

/** A place where one thing names another, and for a term the kinds that can stand there. */
export interface Name {
  readonly kind: Edit["kind"];
  readonly id: string;
  /** Place in the thing that names. */
  readonly path: Problem["path"];
  /** What it is there, for messages: "the region of the scope". */
  readonly as: string;
  readonly kinds: readonly TermKind[];
}

const THINGS = TERM_KINDS.filter((kind) => kind !== "region" && kind !== "part");
const WITHOUT_MAKERS = THINGS.filter((kind) => kind !== "maker");

/** Every place where a thing names another: [G3] and [G4] of docs/spec/2-graph.md. */
export function namesOf({ kind, thing }: Standing): readonly Name[] {
  if (kind === "term") return namesOfTerm(thing);
  return kind === "claim" ? namesOfClaim(thing) : namesOfSource(thing);
}

function namesOfTerm(term: Term): readonly Name[] {
  return [
    ...optional("the broader term", term.broader, ["broader"], [term.kind]),
    ...(term.parts ?? []).map((part, i) => name("a kind of part", part, ["parts", i], ["part"])),
    ...(term.looking?.mistakenFor ?? []).flatMap((alike, i) =>
      optional("what it is mistaken for", alike.term, ["looking", "mistakenFor", i, "term"], THINGS),
    ),
  ];
}

function namesOfClaim(claim: Claim): readonly Name[] {
  const subjects = claim.relation === "active" ? (["maker"] as const) : subjectsOf(claim);
  return [
    ...("subject" in claim ? [name("the subject", claim.subject, ["subject"], subjects)] : []),
    ...("scope" in claim
      ? [
          ...optional("the region of the scope", claim.scope.region, ["scope", "region"], ["region"]),
          ...optional("the form of the scope", claim.scope.form, ["scope", "form"], ["form"]),
          ...optional("the kind of part of the scope", claim.scope.part, ["scope", "part"], ["part"]),
        ]
      : []),
    ...namesOfRelation(claim),
    ...claim.citations.flatMap((citation, i): readonly Name[] =>
      citation.basis === "published"
        ? [
            {
              kind: "source",
              id: citation.source,
              path: ["citations", i, "source"],
              as: "the source",
              kinds: [],
            },
          ]
        : [],
    ),
  ];
}

function subjectsOf({ relation }: Claim): readonly TermKind[] {
  if (relation === "current") return WITHOUT_MAKERS;
  return relation === "indicates" ? OBSERVED_KINDS : THINGS;
}

function namesOfRelation(claim: Claim): readonly Name[] {
  switch (claim.relation) {
    case "requires":
      return claim.ways.flatMap((way, i) =>
        way.map((term, j) => name("a term of a way", term, ["ways", i, j], THINGS)),
      );
    case "typical of":
      return [
        name(
          "the object",
          claim.object,
          ["object"],
          TERM_KINDS.filter((kind) => kind !== "part"),
        ),
      ];
    case "confined to":
      return claim.regions.map((region, i) => name("a region", region, ["regions", i], ["region"]));
    case "spread to":
      return [
        name("the region it spreads from", claim.from, ["from"], ["region"]),
        name("the region it spreads to", claim.to, ["to"], ["region"]),
      ];
    case "void when":
      return [
        { kind: "claim", id: claim.of, path: ["of"], as: "the claim it is an exception of", kinds: [] },
        name("the condition", claim.condition, ["condition"], OBSERVED_KINDS),
      ];
    default:
      return [];
  }
}

function namesOfSource({ piece }: Source): readonly Name[] {
  if (piece === undefined) return [];
  return [
    name("the form of the piece", piece.form, ["piece", "form"], ["form"]),
    name("the region of the piece", piece.region, ["piece", "region"], ["region"]),
    ...piece.features.flatMap(({ feature, part }, i) => [
      name("a feature of the piece", feature, ["piece", "features", i, "feature"], OBSERVED_KINDS),
      ...optional("the kind of part", part, ["piece", "features", i, "part"], ["part"]),
    ]),
  ];
}

const name = (as: string, id: string, path: Problem["path"], kinds: readonly TermKind[]): Name => ({
  ...{ kind: "term", id, path, as, kinds },
});

const optional = (
  as: string,
  id: string | undefined,
  path: Problem["path"],
  kinds: readonly TermKind[],
): readonly Name[] => (id === undefined ? [] : [name(as, id, path, kinds)]);
