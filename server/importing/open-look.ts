import { checkBroader, checkExceptions } from "../domain/check-cycles.ts";
import { checkName } from "../domain/check-graph.ts";
import type { Claim } from "../domain/claim.ts";
import type { GraphView, Standing } from "../domain/graph-view.ts";
import { type Name, namesOf } from "../domain/names-of.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Term } from "../domain/term.ts";
import type { ImportTarget } from "../ports/import-target.ts";
import { openLabelCheck } from "./check-labels.ts";
import { checkReplacing, readStanding, stateOf } from "./compare-standing.ts";
import { type ImportIndex, openIndex } from "./import-index.ts";
import { readOutside } from "./outside.ts";
import { type ImportLine, readImportLine, saidOfLine } from "./read-import-line.ts";

/** What the look through a whole file found. */
export interface CheckedImport {
  readonly index: ImportIndex;
  /** Things of the file, and how they are to what stands. */
  readonly things: number;
  readonly stand: number;
  readonly change: number;
  /** Sources of the file that no claim of it cites and that are no documented piece. */
  readonly uncited: number;
}

export type FoundProblems = { readonly problems: readonly Problem[]; readonly total: number };

/** A look through a file, line by line. */
export interface Look {
  readonly index: ImportIndex;
  /** Lines looked at, and problems found in them so far. */
  readonly line: number;
  readonly found: number;
  /** Looks at the next line; gives its thing where nothing is wrong with the line by itself. */
  take(text: string): ImportLine | undefined;
  /** Holds what was taken against what stands. */
  compare(taken: readonly ImportLine[]): Promise<void>;
  /** After the last line: all that is wrong, or what was found. */
  end(): Promise<CheckedImport | FoundProblems>;
}

/** Problems that are told; how many there are in all is told too. */
const MOST_PROBLEMS = 1_000;

/** A place that names what has not come by yet. */
interface Waiting {
  readonly line: number;
  readonly id: string;
  readonly name: Name;
}

/** How far a look is. */
export const sayLook = ({ line, found }: Look): string =>
  `line ${line}${found > 0 ? `, ${found} problems so far` : ""}`;

/**
 * Begins to look a file through: the form of each line, each thing by itself, ids and labels that stand twice, what is named,
 * circles, and what stands in the store already. Keeps little more than the ids in memory. Its end counts in `total` what is
 * not told any more.
 */
export async function openLook(store: ImportTarget, mayReplace: boolean): Promise<Look> {
  const index = openIndex();
  const labels = openLabelCheck();
  const isEmpty = (await store.newestRevision()) === undefined;
  const waiting: Waiting[] = [];
  const [broader, exceptionOf] = [new Map<string, string>(), new Map<string, string>()];
  const cited = new Set<string>();
  const sources: string[] = [];
  /** Ids of lines that cannot be used: that others name them is not told on top. */
  const refused = new Set<string>();
  const counts = { things: 0, stand: 0, change: 0 };
  const problems: Problem[] = [];
  let [number, total] = [0, 0];
  const found = (some: readonly Problem[]): void => {
    total += some.length;
    problems.push(...some.slice(0, Math.max(0, MOST_PROBLEMS - problems.length)));
  };

  const take = (text: string): ImportLine | undefined => {
    number++;
    if (text.trim() === "") return undefined;
    const read = readImportLine(text, number);
    if ("problems" in read) {
      if (read.id !== undefined) refused.add(read.id);
      found(read.problems);
      return undefined;
    }
    const first = index.lineOf(read.thing.id);
    if (first !== undefined) {
      found([isTwice(read, first)]);
      return undefined;
    }
    counts.things++;
    index.add(read.thing.id, number, read.kind === "term" ? read.thing.kind : read.kind);
    takeNames(read);
    return read;
  };
  const takeNames = (read: ImportLine): void => {
    const { kind, thing, line } = read;
    for (const name of namesOf(read)) {
      if (kind === "claim" && name.kind === "source") cited.add(name.id);
      const named = index.lineOf(name.id);
      const is = named === undefined ? undefined : index.kindAt(named);
      if (named === undefined || index.isWaiting(named)) index.setWaiting(line, named === undefined);
      if (is !== name.kind && !name.kinds.some((each) => each === is))
        waiting.push({ line, id: thing.id, name });
    }
    if (kind === "term") {
      found(labels.check({ ...read, kind, thing }));
      if (thing.broader !== undefined) broader.set(thing.id, thing.broader);
    } else if (kind === "claim" && thing.relation === "void when") exceptionOf.set(thing.id, thing.of);
    else if (kind === "source" && thing.piece === undefined) sources.push(thing.id);
  };
  const compare = async (taken: readonly ImportLine[]): Promise<void> => {
    if (isEmpty || taken.length === 0) return;
    const standing = await readStanding(store, taken);
    for (const line of taken) {
      const before = standing.get(line.thing.id);
      const state = stateOf(line, before);
      index.setState(line.line, state);
      if (state === "stands") counts.stand++;
      if (state !== "other" || before === undefined) continue;
      counts.change++;
      found(checkReplacing(line, before, mayReplace));
    }
  };

  const end = async (): Promise<CheckedImport | FoundProblems> => {
    const isInside = (id: string): boolean => index.lineOf(id) !== undefined;
    const outsideOf = (kind: Standing["kind"]): string[] =>
      waiting.filter(({ name }) => name.kind === kind && !isInside(name.id)).map(({ name }) => name.id);
    const outside = await readOutside(
      store,
      { term: outsideOf("term"), claim: outsideOf("claim"), source: outsideOf("source") },
      isInside,
    );
    const view = viewOf(index, broader, exceptionOf, outside);
    for (const { line, id, name } of waiting)
      if (!refused.has(name.id)) found(checkName(name, view).map((each) => saidOfLine(line, id, each)));
    for (const id of broader.keys()) found(checkCircle(index, id, checkBroader({ id } as Term, view)));
    for (const id of exceptionOf.keys())
      found(checkCircle(index, id, checkExceptions({ id } as Claim, view)));
    if (!isEmpty) found(await labels.checkStanding(store, isInside));
    if (total > 0) return { problems: problems.sort(byLine), total };
    return { index, ...counts, uncited: sources.filter((id) => !cited.has(id)).length };
  };
  return {
    index,
    get line() {
      return number;
    },
    get found() {
      return total;
    },
    take,
    compare,
    end,
  };
}

const byLine = (a: Problem, b: Problem): number => Number(a.path[0]) - Number(b.path[0]);

const isTwice = ({ line, thing }: ImportLine, first: number): Problem =>
  saidOfLine(
    line,
    thing.id,
    problem("DUPLICATE_ID", `The id stands in line ${first} too; give one of the two another id.`, ["id"]),
  );

const checkCircle = (index: ImportIndex, id: string, problems: readonly Problem[]): readonly Problem[] =>
  problems.map((each) => saidOfLine(index.lineOf(id) ?? 0, id, each));

/** What is asked of what is named: its kind, what is above it, what it is an exception of. */
function viewOf(
  index: ImportIndex,
  broader: ReadonlyMap<string, string>,
  exceptionOf: ReadonlyMap<string, string>,
  outside: Pick<GraphView, "findTerm" | "findClaim" | "findSource">,
): GraphView {
  const kindOf = (id: string) => {
    const line = index.lineOf(id);
    return line === undefined ? undefined : index.kindAt(line);
  };
  return {
    findTerm: (id) => {
      const kind = kindOf(id);
      if (kind === undefined) return outside.findTerm(id);
      if (kind === "claim" || kind === "source") return undefined;
      return { id, kind, broader: broader.get(id) } as Term;
    },
    findClaim: (id) => {
      const kind = kindOf(id);
      if (kind === undefined) return outside.findClaim(id);
      const of = exceptionOf.get(id);
      return kind === "claim"
        ? ({ id, ...(of === undefined ? {} : { relation: "void when", of }) } as Claim)
        : undefined;
    },
    findSource: (id) => {
      const kind = kindOf(id);
      if (kind === undefined) return outside.findSource(id);
      return kind === "source" ? ({ id } as ReturnType<GraphView["findSource"]>) : undefined;
    },
    namersOf: () => [],
  };
}
