import type { BareRow } from "./bare-rows.ts";
import {
  type DatingFinding,
  type DatingPath,
  type DatingQuestion,
  findingsOf,
  numberOf,
} from "./dating-question.ts";

const NOWHERE = -1;

/** Rows of one kind by their subject: those of `s` lie from `from[s]` to before `from[s + 1]`. */
interface Columns {
  readonly from: Int32Array;
  readonly columns: readonly Int32Array[];
}

function columnsOf(rows: readonly (readonly number[])[], width: number): Columns {
  const subjects = rows.reduce((most, [s = 0]) => Math.max(most, s), 0) + 1;
  const from = new Int32Array(subjects + 1);
  for (const [s = 0] of rows) from[s + 1] = (from[s + 1] as number) + 1;
  for (let s = 0; s < subjects; s++) from[s + 1] = (from[s + 1] as number) + (from[s] as number);
  const next = from.slice();
  const columns = Array.from({ length: width }, () => new Int32Array(rows.length));
  for (const [s = 0, ...values] of rows) {
    const at = next[s] as number;
    next[s] = at + 1;
    for (const [column, value] of values.entries()) (columns[column] as Int32Array)[at] = value;
  }
  return { from, columns };
}

/** Our way on bare rows: compact arrays and a plain walk, as the mirror of a store does it. */
export function openQuestionOnArrays(
  rows: Iterable<BareRow>,
): (question: DatingQuestion) => readonly DatingFinding[] {
  const leadRows: number[][] = [];
  const dateRows: number[][] = [];
  const aboveRows: number[][] = [];
  for (const row of rows)
    if (row.is === "region") aboveRows.push([row.region, row.above]);
    else if (row.is === "lead") leadRows.push([row.s, row.o, row.id, row.region ?? NOWHERE]);
    else dateRows.push([row.s, row.id, row.region ?? NOWHERE, row.lo, row.hi]);
  const leads = columnsOf(leadRows, 3);
  const dates = columnsOf(dateRows, 4);
  const above = columnsOf(aboveRows, 1);
  const below = columnsOf(
    aboveRows.map(([region = 0, over = 0]) => [over, region]),
    1,
  );
  /** By region: the question in which it was found above, and below, the asked one. */
  const [isAbove, isBelow] = [new Int32Array(above.from.length), new Int32Array(above.from.length)];
  let asked = 0;

  return (question) => {
    asked++;
    const { features, claimed, maxDepth } = question;
    const region = numberOf(question.region);
    mark(above, region, isAbove);
    mark(below, region, isBelow);
    const [targets, leadIds, leadRegions] = leads.columns as [Int32Array, Int32Array, Int32Array];
    const [dateIds, dateRegions, first, last] = dates.columns as [
      Int32Array,
      Int32Array,
      Int32Array,
      Int32Array,
    ];
    const paths: DatingPath[] = [];
    const passed: number[] = [];
    const via: number[] = [];
    for (const each of features) follow(numberOf(each), numberOf(each));
    return findingsOf(question, paths);

    function follow(feature: number, term: number): void {
      let way: readonly number[] | undefined;
      for (let i = dates.from[term] as number; i < (dates.from[term + 1] as number); i++) {
        const where = dateRegions[i] as number;
        if (where !== NOWHERE && isAbove[where] !== asked) continue;
        way ??= via.slice();
        const isOut = (last[i] as number) < claimed[0] || (first[i] as number) > claimed[1];
        paths.push({ feature, via: way, dated: dateIds[i] as number, isOut });
      }
      if (via.length === maxDepth) return;
      passed.push(term);
      for (let i = leads.from[term] as number; i < (leads.from[term + 1] as number); i++) {
        const where = leadRegions[i] as number;
        if (where !== NOWHERE && isAbove[where] !== asked && isBelow[where] !== asked) continue;
        const to = targets[i] as number;
        if (passed.includes(to)) continue;
        via.push(leadIds[i] as number);
        follow(feature, to);
        via.pop();
      }
      passed.pop();
    }
  };

  function mark({ from, columns }: Columns, region: number, marks: Int32Array): void {
    const [regions] = columns as [Int32Array];
    for (let i = from[region] as number; i < (from[region + 1] as number); i++)
      marks[regions[i] as number] = asked;
  }
}
