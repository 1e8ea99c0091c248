import type { PartId } from "./ids.ts";
import type { PartSummary } from "./report.ts";
import type { FindingVerdict, RuleOutVerdict, Verdicts } from "./verdicts.ts";
import type { LikelyState } from "./weighing/likely-state.ts";

/** What of one piece is said otherwise on two states of the graph, from what to what. */
export interface Shifts {
  /** Left out unless the piece can be examined on one of them alone. */
  readonly fits?: { readonly from: boolean; readonly to: boolean };
  readonly findings: readonly {
    readonly id: string;
    readonly from: FindingVerdict | undefined;
    readonly to: FindingVerdict | undefined;
  }[];
  readonly ruleOuts: { readonly came: readonly RuleOutVerdict[]; readonly went: readonly RuleOutVerdict[] };
  readonly parts: readonly {
    readonly part: PartId;
    readonly from: PartSummary["speaks"] | undefined;
    readonly to: PartSummary["speaks"] | undefined;
  }[];
  /** By the first of the parts that are together. */
  readonly states: readonly {
    readonly part: PartId;
    readonly from: LikelyState | undefined;
    readonly to: LikelyState | undefined;
  }[];
}

/** How the second verdicts differ from the first, of one piece; nothing where they are the same. */
export function shiftsBetween(before: Verdicts, after: Verdicts): Shifts | undefined {
  if (before === after) return undefined;
  const findings = pairs(
    before.findings.map(({ id, verdict }) => [id, verdict]),
    after.findings.map(({ id, verdict }) => [id, verdict]),
  ).filter(({ from, to }) => from !== to && JSON.stringify(from) !== JSON.stringify(to));
  const parts = pairs(
    before.parts.map(({ part, speaks }) => [part, speaks]),
    after.parts.map(({ part, speaks }) => [part, speaks]),
  ).filter(({ from, to }) => from !== to);
  const states = pairs(
    before.states.map(({ part, likely }) => [part, likely]),
    after.states.map(({ part, likely }) => [part, likely]),
  ).filter(({ from, to }) => from !== to);
  const came = after.ruleOuts.filter((text) => !before.ruleOuts.includes(text));
  const went = before.ruleOuts.filter((text) => !after.ruleOuts.includes(text));
  const isSame =
    findings.length + parts.length + states.length + came.length + went.length === 0 &&
    before.fits === after.fits;
  if (isSame) return undefined;
  return {
    ...(before.fits === after.fits ? {} : { fits: { from: before.fits, to: after.fits } }),
    findings: findings.map(({ key, from, to }) => ({ id: key, from, to })),
    ruleOuts: { came: came.map(asVerdict), went: went.map(asVerdict) },
    parts: parts.map(({ key, from, to }) => ({ part: key as PartId, from, to })),
    states: states.map(({ key, from, to }) => ({ part: key as PartId, from, to })),
  };
}

const asVerdict = (text: string): RuleOutVerdict => JSON.parse(text) as RuleOutVerdict;

function pairs<Value>(before: readonly [string, Value][], after: readonly [string, Value][]) {
  const [was, is] = [new Map(before), new Map(after)];
  return [...new Set([...was.keys(), ...is.keys()])].map((key) => ({
    ...{ key, from: was.get(key), to: is.get(key) },
  }));
}
