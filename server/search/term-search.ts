import { compareText } from "../domain/compare.ts";
import type { TermId } from "../domain/ids.ts";
import type { Term } from "../domain/term.ts";
import { LARGEST_PAGE, type SearchFilter, type SearchHit } from "../ports/store.ts";
import { bestOf } from "./best-of.ts";
import type { ClaimPlaces } from "./claim-places.ts";
import { rankTerms } from "./rank-terms.ts";
import { type Entry, wordIndex } from "./word-index.ts";
import { wordsOf } from "./words.ts";

/** The terms of one revision, to be searched; edits lead to the next. */
export interface TermSearch {
  /** Lays an edit of a term on what is indexed; one that adds a term puts it in. */
  apply(edit: { readonly before?: Term; readonly after?: Term }): void;
  /** Terms by words and filter, at most `first` of them: S13 and S40 of docs/spec. For `region` and `years`, `claims` is needed. */
  find(words: string, filter: SearchFilter, first: number, claims?: ClaimPlaces): readonly SearchHit[];
}

/** Throws a RangeError unless a search may give so many hits. */
export function checkHits(first: number): void {
  if (!(Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE))
    throw new RangeError(`A search gives 1 to ${LARGEST_PAGE} hits, not ${first}`);
}

/** Whether a search without words gives anything. */
export const isNarrowed = ({ part, region, years }: SearchFilter): boolean =>
  part !== undefined || region !== undefined || years !== undefined;

/** An index without any term. */
export function termSearch(): TermSearch {
  const index = wordIndex();
  /** The trees of regions and of kinds of part. */
  const trees = new Map<TermId, TermId | undefined>();

  const put = (term: Term): void => {
    index.put(term);
    if (term.kind === "region" || term.kind === "part") trees.set(term.id, term.broader);
  };
  const drop = (term: Term): void => {
    index.drop(term);
    trees.delete(term.id);
  };

  const admit = (
    { kinds, broader, part, region, years }: SearchFilter,
    claims: ClaimPlaces | undefined,
  ): ((entry: Entry) => boolean) => {
    const parts = part === undefined ? undefined : kinOf(trees, part);
    const regions = region === undefined ? undefined : kinOf(trees, region);
    const isPlaced = regions === undefined && years === undefined ? undefined : claims?.test(regions, years);
    return (term) =>
      (kinds === undefined || kinds.includes(term.kind)) &&
      (broader === undefined || term.broader === broader) &&
      (parts === undefined || (term.kind !== "form" && (term.parts ?? []).some((each) => parts.has(each)))) &&
      (isPlaced === undefined || isPlaced(term.id));
  };

  /** All that are admitted, by label: where no words are asked for but the search is narrowed. */
  const browse = (isAdmitted: (entry: Entry) => boolean, first: number): readonly SearchHit[] => {
    const { entries } = index;
    const found: number[] = [];
    for (let place = 0; place < entries.length; place++) {
      const entry = entries[place];
      if (entry !== undefined && isAdmitted(entry)) found.push(place);
    }
    const entryAt = (place: number): Entry => entries[place] as Entry;
    const byLabel = (a: number, b: number): number =>
      compareText(entryAt(a).folded, entryAt(b).folded) || compareText(entryAt(a).id, entryAt(b).id);
    return bestOf(found, byLabel, first).map((place) => ({ term: entryAt(place).id, score: 0 }));
  };

  return {
    apply: ({ before, after }) => {
      if (before) drop(before);
      if (after) put(after);
    },
    find: (text, filter, first, claims) => {
      checkHits(first);
      const asked = wordsOf(text);
      if (asked.length > 0) return rankTerms(index, asked, admit(filter, claims), first);
      return text.trim() === "" && isNarrowed(filter) ? browse(admit(filter, claims), first) : [];
    },
  };
}

/** A term with all above and below it. */
function kinOf(trees: ReadonlyMap<TermId, TermId | undefined>, id: TermId): ReadonlySet<TermId> {
  const below = [...trees.keys()].filter((other) => lineOf(trees, other).has(id));
  return new Set([...lineOf(trees, id), ...below]);
}

/** A term and those above it. */
function lineOf(trees: ReadonlyMap<TermId, TermId | undefined>, id: TermId): ReadonlySet<TermId> {
  const line = new Set<TermId>();
  for (let next: TermId | undefined = id; next !== undefined && !line.has(next); next = trees.get(next))
    line.add(next);
  return line;
}
