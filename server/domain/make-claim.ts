import { checkCitations } from "./check-citations.ts";
import { type Claim, type Hardness, type Relation, STRENGTHS } from "./claim.ts";
import { type Draft, isDraft, isId, listOf, unknownFields, wrong } from "./draft.ts";
import { PART_STATES } from "./part-state.ts";
import { isProblem, type Problem, problem } from "./problem.ts";
import { readDating } from "./read-dating.ts";
import { roleOfRelation } from "./role-of-relation.ts";

type Check = (draft: Draft) => readonly Problem[];

/** What is right, of which a large change holds millions. */
const NONE: readonly Problem[] = [];
const STATUSES = ["accepted", "proposed", "rejected"];

/** Fields of each relation beside the common ones, with what each has to be. */
const FIELDS: Readonly<Record<Relation, Readonly<Record<string, Check>>>> = {
  requires: { subject: term("subject"), scope, hardness: hardness(), ways, closed: flag("closed") },
  introduced: dated(),
  attested: dated(),
  "common from": dated("practice"),
  "common until": dated("practice"),
  discontinued: dated(),
  current: dated("practice"),
  active: dated("physical"),
  "typical of": { subject: term("subject"), scope, object: term("object") },
  "confined to": { subject: term("subject"), scope, hardness: hardness(), regions },
  "not found in": { subject: term("subject"), scope, hardness: hardness(), when: when(false) },
  "spread to": { subject: term("subject"), from: term("from"), to: term("to"), years: spreadYears },
  indicates: { subject: term("subject"), scope, states, cause: optionalText("cause") },
  "void when": {
    of: term("of"),
    condition: term("condition"),
    anywhere: flag("anywhere"),
    absenceOnly: optionalFlag("absenceOnly"),
  },
};

const COMMON: Readonly<Record<string, Check>> = {
  ...{ id: term("id"), strength, status, note: optionalText("note"), row: optionalText("row") },
  citations: (draft) => checkCitations(draft["citations"], ["citations"]),
};
/** The fields that a claim of a relation may have, and what each has to be. */
const CHECKS = Object.fromEntries(
  Object.entries(FIELDS).map(([relation, own]) => [
    relation,
    {
      known: ["id", "relation", "strength", "status", "note", "citations", "row", ...Object.keys(own)],
      checks: [...Object.values(COMMON), ...Object.values(own)],
    },
  ]),
) as unknown as Readonly<
  Record<Relation, { readonly known: readonly string[]; readonly checks: readonly Check[] }>
>;

/**
 * Makes a claim of a draft that may hold anything, or says everything that is wrong with it: shape, ids, citations,
 * lists, dates in the role of the relation, hardness. Rules [G1] to [G12] of docs/spec/2-graph.md. Whether what it
 * names exists is for `checkChange` and `checkGraph`. Paths of problems start at the draft.
 */
export function makeClaim(draft: unknown): Claim | readonly Problem[] {
  if (!isDraft(draft)) return [wrong("A claim", "an object with id, relation, citations and so on", [])];
  const relation = draft["relation"];
  if (typeof relation !== "string" || !Object.hasOwn(FIELDS, relation))
    return [wrong("The relation of a claim", `one of ${Object.keys(FIELDS).join(", ")}`, ["relation"])];
  const { known, checks } = CHECKS[relation as Relation];
  const problems: Problem[] = [...unknownFields(draft, known, `a claim of the relation ${relation}`)];
  for (const check of checks) {
    const found = check(draft);
    if (found.length > 0) problems.push(...found);
  }
  return problems.length > 0 ? problems : (draft as unknown as Claim);
}

function strength(draft: Draft): readonly Problem[] {
  const stated = draft["strength"];
  return STRENGTHS.some((each) => each === stated)
    ? NONE
    : [wrong("The strength", `one of ${STRENGTHS.join(", ")}`, ["strength"])];
}

function status(draft: Draft): readonly Problem[] {
  const stated = draft["status"];
  return STATUSES.some((each) => each === stated)
    ? NONE
    : [wrong("The status", `one of ${STATUSES.join(", ")}`, ["status"])];
}

function dated(only?: Hardness): Readonly<Record<string, Check>> {
  return { subject: term("subject"), scope, hardness: hardness(only), when: when(true) };
}

function term(field: string): Check {
  return (draft) =>
    isId(draft[field])
      ? NONE
      : [wrong(`The field ${field}`, "an id: letters, digits, dot, hyphen, underscore", [field])];
}

function flag(field: string): Check {
  return (draft) =>
    typeof draft[field] === "boolean" ? NONE : [wrong(`The field ${field}`, "true or false", [field])];
}

function optionalFlag(field: string): Check {
  return (draft) => (draft[field] === undefined ? [] : flag(field)(draft));
}

function optionalText(field: string): Check {
  return (draft) =>
    draft[field] === undefined || typeof draft[field] === "string"
      ? NONE
      : [wrong(`The field ${field}`, "a text, or left out", [field])];
}

/** Habit and fashion never make a thing impossible; the life of a firm does. */
function hardness(only?: Hardness): Check {
  return (draft) => {
    const stated = draft["hardness"];
    if (stated !== "physical" && stated !== "practice")
      return [wrong("The hardness", only ?? "physical or practice", ["hardness"])];
    return only === undefined || stated === only
      ? NONE
      : [wrong(`The hardness of a claim of the relation ${draft["relation"]}`, only, ["hardness"])];
  };
}

const DIMENSIONS = ["region", "form", "part"];

function scope(draft: Draft): readonly Problem[] {
  const stated = draft["scope"];
  if (!isDraft(stated)) return [wrong("The scope", "an object, {} for no limits", ["scope"])];
  const unknown = unknownFields(stated, DIMENSIONS, "a scope", ["scope"]);
  const isWrong = (dimension: string): boolean => stated[dimension] !== undefined && !isId(stated[dimension]);
  if (unknown.length === 0 && !DIMENSIONS.some(isWrong)) return NONE;
  return [
    ...unknown,
    ...DIMENSIONS.filter(isWrong).map((dimension) =>
      wrong(`The ${dimension} of the scope`, "the id of a term", ["scope", dimension]),
    ),
  ];
}

function when(needed: boolean): Check {
  return (draft) => {
    const text = draft["when"];
    if (text === undefined && !needed) return NONE;
    if (typeof text !== "string")
      return [wrong("The date of a claim", "a text such as 1750 or 175X/176X", ["when"])];
    const role = roleOfRelation(draft["relation"] as Relation);
    const readable = READABLE[role];
    if (readable.has(text)) return NONE;
    const dating = readDating(text, role);
    if (isProblem(dating)) return [{ ...dating, path: ["when"] }];
    if (readable.size >= MOST_READABLE) readable.clear();
    if (text.length <= LONGEST_REMEMBERED) readable.add(text);
    return NONE;
  };
}

/** Dates that were read already: a million claims have some hundred thousand of them, and are looked at more than once. */
const READABLE = { event: new Set<string>(), period: new Set<string>() };
const MOST_READABLE = 200_000;
const LONGEST_REMEMBERED = 40;

function ways(draft: Draft): readonly Problem[] {
  const list = listOf(draft["ways"]);
  if (!list) return [wrong("The ways", "a list of ways, each a list of ids", ["ways"])];
  if (list.length === 0)
    return [empty("The list of ways is empty: nothing could ever be made. Name at least one way", ["ways"])];
  return list.flatMap((way, i) => {
    const terms = listOf(way);
    if (terms?.length === 0)
      return [empty(`Way ${i + 1} is empty: name at least one term it needs`, ["ways", i])];
    if (terms?.every(isId)) return NONE;
    return [wrong(`Way ${i + 1}`, "a list of ids of terms", ["ways", i])];
  });
}

function regions(draft: Draft): readonly Problem[] {
  const list = listOf(draft["regions"]);
  if (list?.length === 0)
    return [empty("The list of regions is empty: name at least one region it is confined to", ["regions"])];
  return list?.every(isId) ? NONE : [wrong("The regions", "a list of ids of terms", ["regions"])];
}

function states(draft: Draft): readonly Problem[] {
  const list = listOf(draft["states"]);
  if (list?.length === 0)
    return [empty("The list of states is empty: name at least one state the sign speaks for", ["states"])];
  const known = list?.every((state) => PART_STATES.some((known) => known === state));
  return known ? NONE : [wrong("The states", `a list of ${PART_STATES.join(", ")}`, ["states"])];
}

function spreadYears(draft: Draft): readonly Problem[] {
  const [least, most, ...more] = listOf(draft["years"]) ?? [];
  const isYears = (years: unknown): years is number => Number.isInteger(years) && (years as number) >= 0;
  const ordered = isYears(least) && isYears(most) && least <= most && more.length === 0;
  return ordered ? NONE : [wrong("The years of a spread", "two whole numbers, the fewest first", ["years"])];
}

const empty = (message: string, path: Problem["path"]): Problem => problem("EMPTY_LIST", `${message}.`, path);
