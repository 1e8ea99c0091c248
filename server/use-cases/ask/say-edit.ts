import type { Edit } from "../../domain/change.ts";
import { citeSource } from "../../domain/cite-source.ts";
import type { EditInWords, SidesInWords } from "../../domain/edit-words.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { id, type SourceId, type TermId } from "../../domain/ids.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import { editInWords, sidesInWords } from "../../reasoning/explain/edits/edit-in-words.ts";
import type { NamesThen } from "../../reasoning/explain/edits/facets.ts";

/** Reads what an edit names, as it stood on a revision. */
export interface FindNamed {
  readonly terms: (ids: readonly TermId[], at: RevisionNumber) => Promise<readonly Term[]>;
  readonly sources: (ids: readonly SourceId[], at: RevisionNumber) => Promise<readonly Source[]>;
}

/** An edit in words; what it names is called as on the revision of that side, and shows its id where it is missing there. */
export async function sayEdit(
  find: FindNamed,
  edit: Edit,
  { before, after }: { readonly before: RevisionNumber; readonly after: RevisionNumber },
): Promise<EditInWords> {
  return editInWords(edit, {
    before: await namesOn(find, edit, "before", before),
    after: await namesOn(find, edit, "after", after),
  });
}

/** Both sides of an edit in words, field by field; what it names is called as `find` reads it for each side. */
export async function saySides(
  find: { readonly before: FindNamed; readonly after: FindNamed },
  edit: Edit,
  at: { readonly before: RevisionNumber; readonly after: RevisionNumber },
): Promise<SidesInWords> {
  return sidesInWords(edit, {
    before: await namesOn(find.before, edit, "before", at.before),
    after: await namesOn(find.after, edit, "after", at.after),
  });
}

async function namesOn(
  find: FindNamed,
  edit: Edit,
  side: "before" | "after",
  at: RevisionNumber,
): Promise<NamesThen> {
  const thing = edit[side];
  const named = thing === undefined ? [] : namesOf({ kind: edit.kind, thing } as Standing);
  const idsOf = (kind: Edit["kind"]) => named.filter((name) => name.kind === kind).map((name) => name.id);
  const [terms, sources] = await Promise.all([
    find.terms(
      idsOf("term").map((name) => id<"term">(name)),
      at,
    ),
    find.sources(
      idsOf("source").map((name) => id<"source">(name)),
      at,
    ),
  ]);
  const labels = new Map<string, string>(terms.map((term) => [term.id, nameInSentence(term)]));
  const lines = new Map<string, string>(sources.map((source) => [source.id, citeSource(source)]));
  return {
    labelOf: (term) => labels.get(term) ?? term,
    citeOf: (source) => lines.get(source) ?? source,
  };
}
