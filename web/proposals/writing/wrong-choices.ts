import type { Edit } from "#server/domain/change.ts";
import type { Wrong } from "./asked-in-form.ts";

interface WrongChoice {
  readonly id: Wrong;
  readonly label: string;
  readonly beside: string;
}

const ALL: WrongChoice = { id: "all", label: "Several things", beside: "the whole form" };

/** What can be put right of something that stands, the commonest first. */
export function wrongChoices(standing: Edit): readonly WrongChoice[] {
  if (standing.kind === "source")
    return [
      { id: "words", label: "What is said of it", beside: "author, title, year, how far it was read" },
      { id: "retire", label: "All of it: take it out", beside: "only where nothing cites it any more" },
    ];
  if (standing.kind === "term")
    return [
      { id: "words", label: "Its name or its note", beside: "what it is called, what it is" },
      { id: "belongs", label: "Where it belongs", beside: "what it is a kind of, on what it is looked for" },
      { id: "merge", label: "It is the same as another", beside: "two names of one thing" },
      { id: "retire", label: "All of it: take it out", beside: "only where nothing names it any more" },
      ALL,
    ];
  const claim = standing.before;
  if (claim === undefined) return [];
  const has = (field: string) => field in claim;
  return [
    ...(has("when")
      ? [{ id: "date", label: "The date", beside: "it happened at another time" } as const]
      : []),
    ...(has("scope")
      ? [{ id: "place", label: "Where it holds", beside: "region, form, part of the piece" } as const]
      : []),
    { id: "sources", label: "Where it is from", beside: "its sources: add, correct, take out" },
    { id: "strength", label: "How far it can be leaned on", beside: "more, or less" },
    ...(claim.relation === "void when"
      ? []
      : [
          {
            id: "exception",
            label: "It has an exception",
            beside: "where something else is seen, it says nothing",
          } as const,
        ]),
    claim.status === "accepted"
      ? {
          id: "retract",
          label: "All of it: retract",
          beside: "it stays to be read, and counts for nothing",
        }
      : { id: "restore", label: "That it does not count: restore", beside: "it counts again" },
    ALL,
  ];
}
