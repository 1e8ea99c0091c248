import { canonicalJson, isInOrder } from "../domain/canonical-json.ts";
import type { Change } from "../domain/change.ts";
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

/** A change as it is written: its own text, that of each edit, and that of what each edit leaves standing. */
export interface ChangeTexts {
  readonly change: string;
  readonly edits: readonly string[];
  /** One an edit; `undefined` where nothing is left standing. */
  readonly after: readonly (string | undefined)[];
}

/** The canonical JSON of a change, made of the bodies in it, so that each is made once; of what `keepFrozen` was given, once for all. */
export function textsOf(change: Change): ChangeTexts {
  const before = made.get(change);
  if (before !== undefined) return before;
  const isKept = isKeptFrozen(change);
  const textOf = isKept ? (JSON.stringify as (thing: object) => string) : canonicalJson;
  const after = change.map((edit) => (edit.after === undefined ? undefined : textOf(edit.after)));
  const edits = change.map((edit, at) => {
    const left = after[at] === undefined ? "" : `"after":${after[at]},`;
    const gone = edit.before === undefined ? "" : `"before":${textOf(edit.before)},`;
    return `{${left}${gone}"kind":"${edit.kind}"}`;
  });
  const texts = { change: known.get(change) ?? `[${edits.join(",")}]`, edits, after };
  if (isKept) made.set(change, texts);
  return texts;
}
