import { compareText, firstDifference } from "../../domain/compare.ts";
import { id, type PartId, type TermId } from "../../domain/ids.ts";
import type { Report, VoidIf } from "../../domain/report.ts";
import { speaksOfChange } from "../../domain/speaks-of-change.ts";
import type { Look } from "../../domain/weighing/looks.ts";
import type { Subject } from "../check.ts";
import { readSigns } from "../signs.ts";
import type { Candidate } from "./candidates.ts";

/** An exception that nobody looked for, with what would be taken away if it were there. */
export interface Excused extends Candidate {
  readonly wouldVoid: Look["wouldVoid"];
}

/**
 * Exceptions nobody looked for, each on the part of what it would take away: all those of contradictions, and, of those that would
 * excuse a sign of change, the one on each part that would excuse most signs. By part, then condition.
 */
export function exceptionsUnseen(
  subject: Subject,
  { findings }: Pick<Report, "findings">,
): readonly Excused[] {
  const first = subject.piece.parts[0]?.id;
  const ofFindings = gather(
    findings
      .filter(({ label }) => label === "contradictory")
      .map((finding) => ({ of: finding.id, part: finding.part ?? first, voidIf: finding.voidIf })),
  );
  const ofSigns = gather(
    readSigns(subject)
      .filter((sign) => sign.standing === "stands" && speaksOfChange(sign))
      .map(({ observation, part, voidIf }) => ({ of: observation, part, voidIf })),
  ).filter(({ part, feature }) => !ofFindings.some((one) => one.part === part && one.feature === feature));
  const best = [...Map.groupBy(ofSigns, ({ part }) => part).values()].flatMap(
    (here) => here.toSorted((a, b) => signsIn(b) - signsIn(a))[0] ?? [],
  );
  return [...ofFindings, ...best].sort((a, b) =>
    firstDifference(compareText(a.part, b.part), compareText(a.feature, b.feature)),
  );
}

const signsIn = ({ wouldVoid }: Excused): number =>
  new Set(wouldVoid.flatMap(({ findings }) => findings)).size;

function gather(
  spoken: readonly {
    readonly of: string;
    readonly part: PartId | undefined;
    readonly voidIf: readonly VoidIf[];
  }[],
): readonly Excused[] {
  const found = new Map<string, { part: PartId; feature: TermId; voids: Map<string, Set<string>> }>();
  for (const { of, part, voidIf } of spoken)
    for (const { claim, condition, standing } of voidIf) {
      if (part === undefined || standing !== "not-looked-for") continue;
      const key = `${part} ${condition}`;
      const one = found.get(key) ?? { part, feature: condition, voids: new Map() };
      one.voids.set(claim, (one.voids.get(claim) ?? new Set()).add(of));
      found.set(key, one);
    }
  return [...found]
    .sort(([a], [b]) => compareText(a, b))
    .map(([, { part, feature, voids }]) => ({
      ...{ part, feature },
      wouldVoid: [...voids].map(([claim, of]) => ({ claim: id<"claim">(claim), findings: [...of].sort() })),
    }));
}
