import { canonicalJson } from "../domain/canonical-json.ts";
import type { Change } from "../domain/change.ts";
import type { Revision } from "../domain/revision.ts";
import { changeText } from "./change-text.ts";
import { linkRevision } from "./link-revision.ts";

/**
 * Says what is wrong with a revision that claims to follow `newest` and to hold `change`; `undefined` if it does.
 * Everything is recomputed from the change and the fields.
 */
export function findBrokenLink(
  revision: Revision,
  change: Change,
  newest: Revision | undefined,
): string | undefined {
  const linked = linkRevision(changeText(change), revision, newest);
  if (canonicalJson(linked) === canonicalJson(revision)) return undefined;
  if (revision.number !== linked.number) return `it should be number ${linked.number}`;
  if (revision.previous !== linked.previous) return "it does not follow from the revision before it";
  if (revision.content !== linked.content) return "its change is not the one it was made with";
  return "its fields do not match its hash";
}
