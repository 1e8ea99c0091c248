import { canonicalJson } from "../domain/canonical-json.ts";
import type { Change } from "../domain/change.ts";
import { deepFreeze } from "../domain/deep-freeze.ts";

const known = new WeakMap<Change, string>();

/** The canonical JSON of a change. */
export const changeText = (change: Change): string => known.get(change) ?? canonicalJson(change);

/** Keeps the canonical JSON of a change with it for as long as it is used, and freezes it, so that it stays right. */
export function rememberText(change: Change, text: string): void {
  known.set(deepFreeze(change), text);
}

/** A change as it is written: its own text, and that of what each edit leaves standing. */
export interface ChangeTexts {
  readonly change: string;
  /** One an edit; `undefined` where nothing is left standing. */
  readonly after: readonly (string | undefined)[];
}

/** The canonical JSON of a change, made of the bodies in it, so that each is made once. */
export function textsOf(change: Change): ChangeTexts {
  const after = change.map((edit) => (edit.after === undefined ? undefined : canonicalJson(edit.after)));
  const edits = change.map(({ kind, before }, at) => {
    const members = [
      ...(after[at] === undefined ? [] : [`"after":${after[at]}`]),
      ...(before === undefined ? [] : [`"before":${canonicalJson(before)}`]),
      `"kind":${JSON.stringify(kind)}`,
    ];
    return `{${members.join(",")}}`;
  });
  return { change: known.get(change) ?? `[${edits.join(",")}]`, after };
}
