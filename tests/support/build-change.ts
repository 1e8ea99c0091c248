import type { Change, Edit } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import type { Commit } from "#server/ports/store.ts";

type Thing = Term | Claim | Source;

/** A term from its id, which begins with its kind; labelled by the rest of it unless `rest` says otherwise. */
export function aTerm(
  name: string,
  {
    broader,
    parts,
    ...rest
  }: Partial<Omit<Term, "broader" | "parts">> & {
    readonly broader?: string;
    readonly parts?: readonly string[];
  } = {},
): Term {
  const [kind, ...words] = name.split(".");
  return {
    id: id(name),
    kind: kind as TermKind,
    label: words.join(" ").replaceAll("-", " "),
    ...(broader === undefined ? {} : { broader: id<"term">(broader) }),
    ...(parts === undefined ? {} : { parts: parts as readonly TermId[] }),
    ...rest,
  };
}

/** A source that says nothing but that it is a book. */
export const aSource = (name: string, title = name): Source => ({
  id: id(name),
  kind: "book",
  csl: { id: name, type: "book", title },
  reading: "known",
});

const editOf = (thing: Thing, sides: { readonly before?: Thing; readonly after?: Thing }): Edit => {
  const kind = "relation" in thing ? "claim" : "csl" in thing ? "source" : "term";
  return { kind, ...sides } as Edit;
};

/** A change that adds these. */
export const adding = (...things: readonly Thing[]): Change =>
  things.map((after) => editOf(after, { after }));
/** A change that puts `after` in the place of `before`. */
export const replacing = (before: Thing, after: Thing): Change => [editOf(after, { before, after })];
/** A change that withdraws these. */
export const withdrawing = (...things: readonly Thing[]): Change =>
  things.map((before) => editOf(before, { before }));

/** What is committed with a change. */
export const aCommit = (change: Change, rest: Partial<Commit> = {}): Commit => ({
  change,
  by: "a tester",
  at: "2026-11-25T10:00:00.000Z",
  message: "a change",
  ...rest,
});
