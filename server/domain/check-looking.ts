import { type Draft, isBlank, isDraft, isId, listOf, unknownFields, wrong } from "./draft.ts";
import { AIDS, MOVES } from "./looking.ts";
import type { Problem } from "./problem.ts";

const FIELDS = ["how", "move", "aids", "mistakenFor", "innocent", "basis"];
const BASES = ["common practice", "from memory"];

/** What is wrong with the looking notes of a term: rule [G32] of docs/spec/2-graph.md. */
export function checkLooking(looking: unknown): readonly Problem[] {
  const at = ["looking"];
  if (!isDraft(looking)) return [wrong("The looking notes of a term", "an object", at)];
  const aids = looking["aids"] === undefined ? [] : listOf(looking["aids"]);
  const alike = looking["mistakenFor"] === undefined ? [] : listOf(looking["mistakenFor"]);
  const isOneOf = (list: readonly string[], value: unknown) => list.some((one) => one === value);
  return [
    ...unknownFields(looking, FIELDS, "looking notes", at),
    ...(isBlank(looking["how"]) ? [wrong("How a feature is looked for", "sentences", [...at, "how"])] : []),
    ...(isOneOf(MOVES, looking["move"])
      ? []
      : [wrong("What is moved for it", `one of ${MOVES.join(", ")}`, [...at, "move"])]),
    ...(aids?.every((aid) => isOneOf(AIDS, aid))
      ? []
      : [wrong("The aids for it", `a list of ${AIDS.join(", ")}`, [...at, "aids"])]),
    ...(looking["innocent"] !== undefined && isBlank(looking["innocent"])
      ? [wrong("The innocent cause", "sentences, or left out", [...at, "innocent"])]
      : []),
    ...(isOneOf(BASES, looking["basis"])
      ? []
      : [wrong("The basis of looking notes", BASES.join(" or "), [...at, "basis"])]),
    ...(alike?.flatMap((each, i) => checkLookAlike(each, [...at, "mistakenFor", i])) ?? [
      wrong("What it is mistaken for", "a list", [...at, "mistakenFor"]),
    ]),
  ];
}

function checkLookAlike(alike: unknown, at: Problem["path"]): readonly Problem[] {
  if (!isDraft(alike)) return [wrong("A thing it is mistaken for", "an object", at)];
  const text = (field: string, what: string): readonly Problem[] =>
    isBlank((alike as Draft)[field]) ? [wrong(what, "a text", [...at, field])] : [];
  return [
    ...unknownFields(alike, ["what", "term", "apart"], "a thing it is mistaken for", at),
    ...text("what", "What it is mistaken for"),
    ...text("apart", "How the two are told apart"),
    ...(alike["term"] === undefined || isId(alike["term"])
      ? []
      : [wrong("The term it is mistaken for", "the id of a term, or left out", [...at, "term"])]),
  ];
}
