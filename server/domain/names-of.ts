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

/**
 * Every place where a thing names another: [G3] and [G4] of docs/spec/2-graph.md. A large change asks this of millions of
 * things: the names are put into one list, and what is the same for all is made once.
 */
export function namesOf({ kind, thing }: Standing): readonly Name[] {
  const names: Name[] = [];
  if (kind === "term") nameTerm(names, thing);
  else if (kind === "claim") nameClaim(names, thing);
  else nameSource(names, thing);
  return names;
}

const OF_KIND = Object.fromEntries(TERM_KINDS.map((kind) => [kind, [kind]])) as unknown as Readonly<
  Record<TermKind, readonly TermKind[]>
>;
const WITHOUT_PARTS = TERM_KINDS.filter((kind) => kind !== "part");
const NO_KIND: readonly TermKind[] = [];
const PATHS = {
  ...{ broader: ["broader"], subject: ["subject"], object: ["object"], of: ["of"], condition: ["condition"] },
  ...{ from: ["from"], to: ["to"], pieceForm: ["piece", "form"], pieceRegion: ["piece", "region"] },
  ...{ region: ["scope", "region"], form: ["scope", "form"], part: ["scope", "part"] },
} as const;

function nameTerm(names: Name[], { broader, kind, parts, looking }: Term): void {
  put(names, "the broader term", broader, PATHS.broader, OF_KIND[kind]);
  parts?.forEach((part, i) => {
    put(names, "a kind of part", part, ["parts", i], OF_KIND.part);
  });
  looking?.mistakenFor?.forEach((alike, i) => {
    put(names, "what it is mistaken for", alike.term, ["looking", "mistakenFor", i, "term"], THINGS);
  });
}

function nameClaim(names: Name[], claim: Claim): void {
  if ("subject" in claim) put(names, "the subject", claim.subject, PATHS.subject, subjectsOf(claim));
  if ("scope" in claim) {
    const { region, form, part } = claim.scope;
    put(names, "the region of the scope", region, PATHS.region, OF_KIND.region);
    put(names, "the form of the scope", form, PATHS.form, OF_KIND.form);
    put(names, "the kind of part of the scope", part, PATHS.part, OF_KIND.part);
  }
  nameRelation(names, claim);
  for (let i = 0; i < claim.citations.length; i++) {
    const citation = claim.citations[i];
    if (citation?.basis !== "published") continue;
    const path = ["citations", i, "source"];
    names.push({ kind: "source", id: citation.source, path, as: "the source", kinds: NO_KIND });
  }
}

function subjectsOf({ relation }: Claim): readonly TermKind[] {
  if (relation === "active") return OF_KIND.maker;
  if (relation === "current") return WITHOUT_MAKERS;
  return relation === "indicates" ? OBSERVED_KINDS : THINGS;
}

function nameRelation(names: Name[], claim: Claim): void {
  switch (claim.relation) {
    case "requires":
      claim.ways.forEach((way, i) => {
        way.forEach((term, j) => {
          put(names, "a term of a way", term, ["ways", i, j], THINGS);
        });
      });
      break;
    case "typical of":
      put(names, "the object", claim.object, PATHS.object, WITHOUT_PARTS);
      break;
    case "confined to":
      claim.regions.forEach((region, i) => {
        put(names, "a region", region, ["regions", i], OF_KIND.region);
      });
      break;
    case "spread to":
      put(names, "the region it spreads from", claim.from, PATHS.from, OF_KIND.region);
      put(names, "the region it spreads to", claim.to, PATHS.to, OF_KIND.region);
      break;
    case "void when": {
      const { of: id, condition } = claim;
      names.push({
        kind: "claim",
        id,
        path: PATHS.of,
        as: "the claim it is an exception of",
        kinds: NO_KIND,
      });
      put(names, "the condition", condition, PATHS.condition, OBSERVED_KINDS);
    }
  }
}

function nameSource(names: Name[], { piece }: Source): void {
  if (piece === undefined) return;
  put(names, "the form of the piece", piece.form, PATHS.pieceForm, OF_KIND.form);
  put(names, "the region of the piece", piece.region, PATHS.pieceRegion, OF_KIND.region);
  piece.features.forEach(({ feature, part }, i) => {
    put(names, "a feature of the piece", feature, ["piece", "features", i, "feature"], OBSERVED_KINDS);
    put(names, "the kind of part", part, ["piece", "features", i, "part"], OF_KIND.part);
  });
}

function put(
  names: Name[],
  as: string,
  id: string | undefined,
  path: Name["path"],
  kinds: readonly TermKind[],
): void {
  if (id !== undefined) names.push({ kind: "term", id, path, as, kinds });
}
