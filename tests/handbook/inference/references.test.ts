import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { madeIn } from "#server/reasoning/dates/made.ts";
import type { Model } from "#server/reasoning/dates/model.ts";
import { casesApart, type Posterior, statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { e1, oneSource, oneTool, states, twoPlaces } from "#tests/support/worked-models.ts";

/** What one library answers: the probability of everything seen, and distributions by the name of a variable. */
type Answers = { readonly evidence: number } & { readonly [variable: string]: readonly number[] };

const { versions, models } = JSON.parse(
  readFileSync(new URL("references.json", import.meta.url), "utf8"),
) as {
  readonly versions: Readonly<Record<string, string>>;
  readonly models: Readonly<Record<string, Readonly<Record<string, Answers>>>>;
};

/** Their answers are kept to ten digits. */
const DIGITS = 9;

const OURS: Readonly<Record<string, { readonly model: Model; readonly cases?: string }>> = {
  chest: { model: e1() },
  "chest, half as many later drawers": { model: e1(states(0.885, 0.085, 0.03)) },
  "chest, twice as many later drawers": { model: e1(states(0.63, 0.34, 0.03)) },
  "one tool, 1 trace": { model: oneTool(1) },
  "one tool, 2 traces": { model: oneTool(2) },
  "one tool, 5 traces": { model: oneTool(5) },
  "one source": { model: oneSource(true), cases: "right" },
  "two places": { model: twoPlaces(), cases: "place" },
};

/** Our answers under their names of variables. */
function answersOf(posterior: Posterior, theirs: Answers, cases: string | undefined): [string, number[]][] {
  const groups = posterior.model.cases[0]?.groups ?? [];
  return Object.keys(theirs).flatMap((name): [string, number[]][] => {
    const [part, what] = name.split(".");
    const group = groups.findIndex(({ parts }) => parts.some((id) => id === part));
    if (name === "t") return [[name, [...posterior.years]]];
    if (what === "made") return [[name, [...madeIn(posterior, group)]]];
    if (what === "state") return [[name, Object.values(statesOf(posterior, group))]];
    if (name !== cases) return [];
    const odds = casesApart(posterior).map(({ years }) => years.reduce((sum, p) => sum + p, 0));
    // They count a source that is wrong first.
    return [[name, name === "right" ? odds.reverse() : odds]];
  });
}

describe("the weighing beside two libraries of Bayesian networks", () => {
  it("has answers of both for each model", () => {
    expect(Object.keys(versions)).toEqual(["pgmpy", "pyagrum"]);
    expect(Object.keys(models)).toEqual(Object.keys(OURS));
    for (const each of Object.values(models)) expect(Object.keys(each)).toEqual(Object.keys(versions));
  });

  it.each(
    Object.entries(models).flatMap(([name, answers]) =>
      Object.entries(answers).map(([library, theirs]) => [name, library, theirs] as const),
    ),
  )("[B1] [B5] [B6] [B8] %s: as %s has it", (name, _, theirs) => {
    const { model, cases } = OURS[name] as (typeof OURS)[string];
    const posterior = weighModel(model);
    expect(Math.exp(posterior.logEvidence) / theirs.evidence).toBeCloseTo(1, DIGITS);
    const ours = answersOf(posterior, theirs, cases);
    expect(ours.map(([variable]) => variable)).toEqual(
      Object.keys(theirs).filter((variable) => variable !== "evidence"),
    );
    for (const [variable, odds] of ours)
      for (const [i, theirOdds] of (theirs[variable] ?? []).entries())
        expect(odds[i], `${variable} ${i}`).toBeCloseTo(theirOdds, DIGITS);
  });
});
