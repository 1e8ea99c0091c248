import { useMemo, useRef } from "react";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import { keepSame } from "#web/strips/keep-same.ts";
import { makeStripGroups } from "#web/strips/make-strip-groups.ts";
import type { StripGroup } from "#web/strips/strip-row.ts";
import { stripsAxis } from "#web/strips/strips-axis.ts";
import { inTreeOrder } from "./in-tree-order.ts";
import type { StoredExamination } from "./read-answer.ts";

export interface Strips {
  readonly groups: readonly StripGroup[];
  readonly axis: YearAxis;
  readonly claimed: readonly [number | null, number | null];
}

const NO_CLAIM = [null, null] as const;

/** The strips of the newest answer. What did not change since the last answer stays the same object. */
export function useStrips(stored: StoredExamination, glossary: Glossary): Strips {
  const before = useRef<Strips>(undefined);
  return useMemo(() => {
    const { answer, piece } = stored;
    const isExamined = answer.kind === "examined";
    const parts = inTreeOrder(piece.parts).map(({ part }) => part);
    const made = isExamined ? makeStripGroups(answer.report, answer.words, parts, glossary) : [];
    const groups = keepSame(before.current?.groups, made);
    const years = isExamined ? answer.report.attribution.years : NO_CLAIM;
    const old = before.current;
    const claimed = old && old.claimed[0] === years[0] && old.claimed[1] === years[1] ? old.claimed : years;
    const fresh = stripsAxis(claimed, groups, piece.examined);
    const axis = old && old.axis.first === fresh.first && old.axis.last === fresh.last ? old.axis : fresh;
    const strips = { groups, axis, claimed };
    before.current = strips;
    return strips;
  }, [stored, glossary]);
}
