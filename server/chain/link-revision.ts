import { canonicalJson } from "../domain/canonical-json.ts";
import { NO_HASH, type Revision } from "../domain/revision.ts";
import { sha256 } from "./sha256.ts";

/** Who made a change, when and why. */
export interface Authorship {
  readonly at: string;
  readonly by: string;
  readonly message: string;
}

/** The revision that a change makes after `newest`, chained to it by its hash; `text` is the canonical JSON of the change. */
export function linkRevision(
  text: string,
  { at, by, message }: Authorship,
  newest: Revision | undefined,
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
