import { canonicalJson, isInOrder } from "../domain/canonical-json.ts";
import type { Change, Edit } from "../domain/change.ts";
import { deepFreeze } from "../domain/deep-freeze.ts";
import { isKeptFrozen, keepFrozen } from "../domain/frozen-copy.ts";

const known = new WeakMap<Change, string>();
const made = new WeakMap<Change, ChangeTexts>();

/** The canonical JSON of a change. */
export const changeText = (change: Change): string =>
  known.get(change) ?? (isKeptFrozen(change) ? textsOf(change).change : canonicalJson(change));

/** Keeps the canonical JSON of a change with it for as long as it is used, and freezes it, so that it stays right. */
export function rememberText(change: Change, text: string): void {
  known.set(keepInOrder(change), text);
}

/** Freezes a change, so that its texts are made once for all who ask for them. */
export function keepInOrder(change: Change): Change {
  const frozen = deepFreeze(change);
  return isInOrder(frozen) ? keepFrozen(frozen) : frozen;
}

/** The canonical JSON of an edit, of those of what it leaves standing and of what stood before. */
export const editText = (kind: Edit["kind"], after: string | undefined, before?: string): string =>
  `{${after === undefined ? "" : `"after":${after},`}${before === undefined ? "" : `"before":${before},`}"kind":"${kind}"}`;

/** The canonical JSON of a change, of those of its edits. */
export const joinEdits = (edits: readonly string[]): string => `[${edits.join(",")}]`;

/** A change as it is written: its own text, that of each edit, and that of what each edit leaves standing. */
export interface ChangeTexts {
  readonly change: string;
  readonly edits: readonly string[];
  /** One an edit; `undefined` where nothing is left standing. */
  readonly after: readonly (string | undefined)[];
}

/** What is frozen with its members in order needs no look any more. */
const writerOf = (change: Change): ((thing: object) => string) =>
  isKeptFrozen(change) ? JSON.stringify : canonicalJson;

/** The canonical JSON of what each edit of a change leaves standing; `undefined` where nothing is left. */
export function standingTexts(change: Change): readonly (string | undefined)[] {
  const textOf = writerOf(change);
  return change.map(({ after }) => (after === undefined ? undefined : textOf(after)));
}

/** The canonical JSON of a change, made of the bodies in it, so that each is made once; of what `keepFrozen` was given, once for all. */
export function textsOf(change: Change): ChangeTexts {
  const before = made.get(change);
  if (before !== undefined) return before;
  const after = standingTexts(change);
  const textOf = writerOf(change);
  const edits = change.map(({ kind, before: gone }, at) =>
    editText(kind, after[at], gone === undefined ? undefined : textOf(gone)),
  );
  const texts = { change: known.get(change) ?? joinEdits(edits), edits, after };
  if (isKeptFrozen(change)) made.set(change, texts);
  return texts;
}
