import { canonicalJson } from "../domain/canonical-json.ts";
import type { Change } from "../domain/change.ts";
import { NO_HASH, type Revision } from "../domain/revision.ts";
import { changeText } from "./change-text.ts";
import { sha256 } from "./sha256.ts";

/** Who made a change, when and why. */
export interface Authorship {
  readonly at: string;
  readonly by: string;
  readonly message: string;
}

/** The revision that a change makes after `newest`, chained to it by its hash; `text` is its canonical JSON. */
export function linkRevision(
  change: Change,
  { at, by, message }: Authorship,
  newest: Revision | undefined,
  text: string = changeText(change),
): Revision {
  const fields = {
    number: (newest?.number ?? 0) + 1,
    at,
    by,
    message,
    content: sha256(text),
    previous: newest?.hash ?? NO_HASH,
  };
  return { ...fields, hash: sha256(canonicalJson(fields)) };
}
