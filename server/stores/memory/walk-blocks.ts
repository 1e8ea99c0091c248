import type { Graph } from "../../domain/change.ts";
import type { Claim, Requires, VoidWhen } from "../../domain/claim.ts";
import { idColumn, type WalkBlock } from "../../ports/walk-block.ts";

/** The rows a walk of the graph runs over. */
export async function* walkBlocks(graph: Graph): AsyncGenerator<WalkBlock> {
  const terms = [...graph.terms.values()];
  yield {
    rows: "terms",
    id: idColumn(terms.map(({ id }) => id)),
    broader: idColumn(terms.map(({ broader }) => broader)),
  };
  const accepted = [...graph.claims.values()].filter(({ status }) => status === "accepted");
  const stated = accepted.filter((claim): claim is Exclude<Claim, VoidWhen> => "subject" in claim);
  yield {
    rows: "statements",
    subject: idColumn(stated.map(({ subject }) => subject)),
    claim: idColumn(stated.map(({ id }) => id)),
  };
  const leads = stated
    .filter((claim): claim is Requires => claim.relation === "requires")
    .flatMap(({ subject, scope, ways }) =>
      [...new Set(ways.flat())].map((target) => ({ subject, target, region: scope.region })),
    );
  yield {
    rows: "leads",
    subject: idColumn(leads.map(({ subject }) => subject)),
    target: idColumn(leads.map(({ target }) => target)),
    region: idColumn(leads.map(({ region }) => region)),
  };
  const exceptions = accepted.filter((claim): claim is VoidWhen => claim.relation === "void when");
  yield {
    rows: "exceptions",
    of: idColumn(exceptions.map(({ of }) => of)),
    claim: idColumn(exceptions.map(({ id }) => id)),
  };
}
