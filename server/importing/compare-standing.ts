import { canonicalJson } from "../domain/canonical-json.ts";
import { checkKindKept } from "../domain/check-graph.ts";
import type { Standing } from "../domain/graph-view.ts";
import type { ClaimId, SourceId, TermId } from "../domain/ids.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Term } from "../domain/term.ts";
import type { ImportTarget } from "../ports/import-target.ts";
import type { LineState } from "./import-index.ts";
import { type ImportLine, saidOfLine } from "./read-import-line.ts";

/** How these lines are to what stands in the store under their ids; `before` is what stands. */
export async function readStanding(
  store: ImportTarget,
  lines: readonly ImportLine[],
): Promise<ReadonlyMap<string, Standing["thing"]>> {
  const idsOf = (kind: Standing["kind"]): readonly string[] =>
    lines.filter((line) => line.kind === kind).map(({ thing }) => thing.id);
  const [terms, claims, sources] = [idsOf("term"), idsOf("claim"), idsOf("source")];
  return new Map<string, Standing["thing"]>([
    ...(terms.length > 0 ? await store.terms(terms as readonly TermId[]) : []),
    ...(claims.length > 0 ? await store.claims(claims as readonly ClaimId[]) : []),
    ...(sources.length > 0 ? await store.sources(sources as readonly SourceId[]) : []),
  ]);
}

/** Whether a line is new, stands already as it is, or would change what stands. */
export const stateOf = (line: ImportLine, before: Standing["thing"] | undefined): LineState => {
  if (before === undefined) return "new";
  return canonicalJson(before) === canonicalJson(line.thing) ? "stands" : "other";
};

/** What speaks against a line that would change what stands. */
export function checkReplacing(
  line: ImportLine,
  before: Standing["thing"],
  mayReplace: boolean,
): readonly Problem[] {
  const { kind, thing } = line;
  const found = mayReplace
    ? kind === "term"
      ? checkKindKept(before as Term, thing)
      : []
    : [
        problem(
          "STALE_CHANGE",
          `Under this id another ${kind} stands in the store; give this one another id, bring it into line with that one, or let the import change what stands with --replace.`,
          ["id"],
        ),
      ];
  return found.map((each) => saidOfLine(line.line, thing.id, each));
}
