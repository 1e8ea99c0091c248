import { ASSUMED } from "../domain/assumptions.ts";
import type { Piece } from "../domain/examination.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import type { Assumptions, AttributionReading, Report } from "../domain/report.ts";
import { yearsToJson } from "../domain/years.ts";
import { readSubject, type Subject } from "./check.ts";
import { ENGINE } from "./engine.ts";
import { find } from "./find.ts";
import { gapsOf } from "./gaps.ts";
import { knowGraph } from "./known-graph.ts";
import { orderFindings } from "./order-findings.ts";
import { summariseParts } from "./part-summaries.ts";
import { ruleOut } from "./rule-outs/rule-out.ts";
import { readSigns } from "./signs.ts";

/**
 * Holds a piece against what the graph knows of it. The piece is valid and every date in both can be read; `neighbourhood` is what
 * `askFor` asks for. One plain value: the same bytes for the same piece and neighbourhood, whatever the order of their lists.
 * Rules: docs/spec/3-engine.md.
 */
export function examine(
  piece: Piece,
  neighbourhood: Neighbourhood,
  assumptions: Assumptions = ASSUMED,
): Report {
  const graph = knowGraph(neighbourhood, assumptions);
  const subject = readSubject(piece, graph, assumptions);
  const found = orderFindings(
    subject.checks.map((check) => find(check, subject)),
    subject.claimed,
  );
  const findings = found.map(({ finding }) => finding);
  const { ruleOuts, ruleOutCount, notSearched } = ruleOut(subject);
  const signs = readSigns(subject);
  return {
    format: "scribeline/report",
    version: 1,
    engine: ENGINE,
    revision: neighbourhood.revision,
    assumptions,
    // What giving up a claim brings back is no part of the graph as it stands.
    complete: notSearched.every(({ why }) => why === "claims-given-up"),
    attribution: readAttribution(subject),
    findings,
    ruleOuts,
    ruleOutCount,
    notSearched,
    signs,
    parts: summariseParts(subject, found, signs),
    gaps: gapsOf(subject, found),
    neighbourhood: {
      terms: neighbourhood.terms.length,
      claims: graph.claims.length,
      paths: findings.reduce((sum, { pathCount }) => Math.min(sum + pathCount, Number.MAX_SAFE_INTEGER), 0),
    },
  };
}

function readAttribution({ piece: { attribution }, claimed, places }: Subject): AttributionReading {
  const { date, region, form, style, maker } = attribution;
  const [years] = yearsToJson([claimed]);
  return {
    date,
    years: years ?? [null, null],
    ...(region === undefined ? {} : { region }),
    ...(form === undefined ? {} : { form }),
    ...(style === undefined ? {} : { style }),
    ...(maker === undefined ? {} : { maker }),
    places,
  };
}
