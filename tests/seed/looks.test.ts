import { beforeAll, describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Report } from "#server/domain/report.ts";
import type { Term } from "#server/domain/term.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Look } from "#server/domain/weighing/looks.ts";
import type { AssumedOdds, StateOdds } from "#server/domain/weighing/odds.ts";
import type { Span } from "#server/domain/years.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { readSubject, type Subject } from "#server/reasoning/check.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { modelReader } from "#server/reasoning/dates/read-model.ts";
import { shareWithin } from "#server/reasoning/dates/share-within.ts";
import { examine } from "#server/reasoning/examine.ts";
import { inOneGo } from "#server/reasoning/in-one-go.ts";
import { type KnownGraph, knowGraph } from "#server/reasoning/known-graph.ts";
import { type Candidate, candidatesOf } from "#server/reasoning/looks/candidates.ts";
import { readLooks } from "#server/reasoning/looks/read-looks.ts";
import { weighLooks } from "#server/reasoning/looks/weigh-looks.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";

interface Demonstration {
  readonly piece: Piece;
  readonly report: Report;
  readonly graph: KnownGraph;
  readonly subject: Subject;
}

const shown = new Map<string, Demonstration>();
let features: readonly Term[] = [];

beforeAll(async () => {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  const store = openMemoryStore();
  await store.commit({ change: seed.change, by: "test", at: seed.at, message: "test" });
  features = seed.change.flatMap((edit) =>
    edit.kind === "term" && edit.after?.kind === "feature" ? [edit.after] : [],
  );
  for (const { id: name, piece } of seed.pieces) {
    const ask = askFor(piece, ASSUMED);
    const report = examine(piece, await store.neighbourhood({ ...ask, at: 1 }));
    const seeds = [...new Set([...ask.seeds, ...features.map((feature) => feature.id)])];
    const graph = knowGraph(await store.neighbourhood({ ...ask, seeds, at: 1 }), ASSUMED);
    shown.set(name, { piece, report, graph, subject: readSubject(piece, graph, ASSUMED) });
  }
  await store.close();
});

const demonstration = (name: string): Demonstration => {
  const found = shown.get(`examination.${name}`);
  if (found === undefined) throw new Error(`no demonstration ${name}`);
  return found;
};

/** Nothing shared is tried both ways, so that one thing more changes nothing else. */
const ODDS: AssumedOdds = { ...ASSUMED_ODDS, worlds: 0 };

/** What the weighing says when the thing is recorded as seen. */
function recorded({ piece, graph, subject }: Demonstration, { part, feature }: Candidate) {
  const made = { id: id<"observation">("seen"), part, feature, seen: "present", sureness: "sure" } as const;
  const found = readSubject({ ...piece, observations: [...piece.observations, made] }, graph, ASSUMED);
  const posterior = weighModel(modelReader(found, ODDS)());
  const group = (posterior.model.cases[0]?.groups ?? []).findIndex(({ parts }) => parts.includes(part));
  return {
    claimed: shareWithin(posterior.years, posterior.model.from, subject.claimed),
    states: statesOf(posterior, group),
  };
}

/** Every so many-th candidate, leaving out those that would take something away elsewhere. */
function someCandidates({ subject, graph }: Demonstration, every: number): readonly Candidate[] {
  const excuses = new Set(
    graph.claims.flatMap((claim) => (claim.relation === "void when" ? [claim.condition] : [])),
  );
  return candidatesOf(subject, features)
    .open.filter(({ feature }) => !excuses.has(feature))
    .filter((_, i) => i % every === 0);
}

describe("[N4] looks at the demonstration pieces", () => {
  it.each(["larkspur-chair", "millrace-chest", "ropewalk-table", "saltmarsh-chest"])(
    "are foreseen as they are weighed once they are recorded: %s",
    (name) => {
      const piece = demonstration(name);
      const candidates = someCandidates(piece, 11);
      expect(candidates.length).toBeGreaterThan(30);
      for (const { candidate, looked } of inOneGo(weighLooks(piece.subject, candidates, ODDS))) {
        const { claimed, states } = recorded(piece, candidate);
        const { withSeen } = looked;
        const what = `${candidate.part} ${candidate.feature}`;
        expect(withSeen.claimed / withSeen.seen, what).toBeCloseTo(claimed, 8);
        for (const state of Object.keys(states) as (keyof StateOdds)[])
          expect(withSeen.byState[state] / withSeen.seen, `${what}, ${state}`).toBeCloseTo(states[state], 8);
      }
    },
  );
});

const orderOf = (looks: readonly Look[]) => looks.map(({ part, feature }) => `${part} ${feature}`);

describe("what to look at next on the demonstration pieces", () => {
  it("[N6] is in the same order if the claim is swapped for its opposite", () => {
    const { subject, report } = demonstration("saltmarsh-chest");
    const odds: AssumedOdds = { ...ASSUMED_ODDS, gridFrom: 1 };
    const next = (claimed: Span) =>
      orderOf(readLooks({ ...subject, claimed }, { features, report }, odds).next);
    const early = next([1, 1780]);
    expect(early.length).toBeGreaterThan(8);
    expect(next([1781, subject.piece.examined])).toEqual(early);
  });

  it("[N3] puts what would excuse a contradiction first, and says what it would make of the claim", () => {
    const piece = demonstration("millrace-chest");
    const { next } = readLooks(piece.subject, { features, report: piece.report }, ODDS);
    const [first] = next;
    if (first === undefined) throw new Error("nothing to look at");
    expect(first.wouldVoid.length).toBeGreaterThan(0);
    const excused = new Set(first.wouldVoid.flatMap(({ findings }) => findings));
    const told = piece.report.findings.filter(({ id: finding }) => excused.has(finding));
    expect(told.map(({ label }) => label)).toContain("contradictory");
    expect(first.ifSeen).toBeCloseTo(recorded(piece, first).claimed, 5);
    expect(first.ifSeen).toBeGreaterThan(first.ifAbsent);
  });

  it.each(["larkspur-chair", "millrace-chest", "ropewalk-table", "saltmarsh-chest"])(
    "[N8] is a short list whose rest is accounted for: %s",
    (name) => {
      const { subject, report } = demonstration(name);
      const { next, considered, leftOut } = readLooks(subject, { features, report }, ASSUMED_ODDS);
      expect(next.length).toBeLessThanOrEqual(12);
      expect(next.length + leftOut.silent + leftOut.alike + leftOut.less).toBe(considered);
      const families = next
        .filter(({ wouldVoid }) => wouldVoid.length === 0)
        .map(({ feature }) => subject.graph.broader.get(feature) ?? feature);
      expect(new Set(families).size).toBe(families.length);
    },
  );

  it("[N9] weighs at most 1,200, and says so", () => {
    const { subject, report } = demonstration("saltmarsh-chest");
    const { considered, cut, next } = readLooks(subject, { features, report }, ASSUMED_ODDS);
    expect(considered).toBe(1200);
    expect(cut).toBe(true);
    expect(next.some(({ move }) => move === "sample taken")).toBe(false);
  });
});
