import type { TermId } from "../../domain/ids.ts";
import type { AssumedOdds, StateOdds } from "../../domain/weighing/odds.ts";
import type { Check, Subject } from "../check.ts";
import type { Currency } from "../dates/currency.ts";
import { linkByTool } from "../dates/link-by-tool.ts";
import { type Mixture, mixer } from "../dates/mixture.ts";
import type { Case, Group } from "../dates/model.ts";
import type { Placing } from "../dates/placing.ts";
import { casesApart, type Posterior } from "../dates/posterior.ts";
import { curveIsRight, type Given } from "../dates/right-odds.ts";
import { seenOdds } from "../dates/seen-odds.ts";
import { signFactors } from "../dates/sign-factors.ts";
import { toolsBehind } from "../dates/tools-behind.ts";
import { type Changed, type Foreseen, type Foresight, foresee, foreseeInstead } from "./foresee.ts";
import { type Shares, sharesFor, sharesOf } from "./shares.ts";

const SEEN = { seen: "present", sureness: "sure" } as const;
const NO_STATE: StateOdds = { original: 1, later: 1, reused: 1, reworked: 1 };

/** What is known of a part before a look, and after it if the thing is seen; all joint probabilities. */
export interface Looked {
  readonly before: Foresight;
  readonly withSeen: Foresight;
  /** False if the answer can make no difference. */
  readonly tells: boolean;
}

/**
 * Foresees what it would do to find the feature of a check, which stands in `subject` as one that could not be seen. What shares a
 * tool or a cause with something recorded is weighed with it, as it will be when it is recorded.
 */
export function foreseer(
  subject: Subject,
  placing: Placing,
  posterior: Posterior,
  odds: AssumedOdds,
): (check: Check) => Looked {
  const { graph, places, claimed } = subject;
  const { model } = posterior;
  const groups = model.cases[0]?.groups ?? [];
  const known = new Map<Check["part"], { readonly shares: Shares; readonly before: Foresight }>();
  const looked = subject.checks.filter(({ part, seen }) => part !== undefined && seen !== "unseen");
  const alwaysSo: Foreseen = { byYear: new Float64Array(posterior.years.length).fill(1), byState: NO_STATE };

  function standing(check: Check, group: number) {
    const found = known.get(check.part);
    if (found) return found;
    const shares = sharesOf(posterior, group, check, { places, claimed }, placing);
    const made = {
      shares,
      before: foresee(shares.together.map(({ outlook }) => ({ outlook, foreseen: alwaysSo }))),
    };
    known.set(check.part, made);
    return made;
  }

  const kept = new WeakMap<Currency, Map<string, Float64Array>>();
  function oddsOf(currency: Currency, given: Given, isSign: boolean): Float64Array {
    const right = curveIsRight(currency, graph, odds, given);
    const key = `${right} ${isSign}`;
    const of = kept.get(currency) ?? new Map<string, Float64Array>();
    kept.set(currency, of);
    const found =
      of.get(key) ??
      // A sign is as common as its states have it; only other features are as common as their curve.
      seenOdds(currency.byYear, right, SEEN, isSign ? { ...odds, prevalence: 1 } : odds).map(
        (value) => value * odds.detect,
      );
    of.set(key, found);
    return found;
  }

  return (check) => {
    const group = groups.findIndex(({ parts }) => check.part !== undefined && parts.includes(check.part));
    const { shares, before } = standing(check, group);
    const read = signFactors([{ ...check, ...SEEN }], graph, odds, placing.grid);
    const [[sign], [age]] = [read.signs, read.aged];
    const isSign = sign !== undefined || age !== undefined;
    const tells =
      isSign ||
      shares.together.some(({ currency }) => {
        const { byYear } = currency(check.feature);
        return byYear.some((value) => value !== byYear[0]);
      });
    const near = looked.filter(({ part }) => part !== undefined && groups[group]?.parts.includes(part));
    if (tells && near.length > 0 && isLinked(check, near)) {
      return {
        before,
        tells,
        withSeen: instead(check, group, near, isSign ? 1 / odds.prevalence : 1),
      };
    }
    const outlooks = sharesFor(shares, check.feature).map(({ outlook, currency, given }) => ({
      outlook,
      foreseen: {
        byYear: times(oddsOf(currency(check.feature), given, isSign), age?.byYear),
        byState: sign?.byState ?? NO_STATE,
      },
    }));
    return { before, tells, withSeen: foresee(outlooks) };
  };

  /** Whether it shares a tool with something looked for on the part, or a cause with something on the group. */
  function isLinked(check: Check, near: readonly Check[]): boolean {
    const tools = toolsOf(check);
    if (tools.size > 0 && near.some((one) => one.part === check.part && meets(toolsOf(one), tools)))
      return true;
    const causes = causesOf(check.feature);
    return causes.size > 0 && near.some((one) => meets(causesOf(one.feature), causes));
  }

  function toolsOf(check: Check): ReadonlySet<TermId> {
    return new Set(
      places.flatMap((_, place) => toolsBehind(check.feature, placing.placedAt(check, place).view)),
    );
  }

  function causesOf(feature: TermId): ReadonlySet<string> {
    return new Set(
      graph.claimsOf(feature).flatMap((claim) => (claim.relation === "indicates" ? (claim.cause ?? []) : [])),
    );
  }

  /** The group weighed anew with the thing seen, case by case. */
  function instead(check: Check, group: number, near: readonly Check[], times: number): Foresight {
    const mixed = new Map<string, Mixture>();
    const found = { ...check, ...SEEN };
    const changes = casesApart(posterior).map(({ given, mixtures, years }): Changed => {
      const before = mixtures[group] as Mixture;
      const place = Math.max(0, places.indexOf(given.place));
      const key = `${place} ${[...given.given].map(([claim, is]) => `${claim}=${is}`).join(" ")}`;
      const after = mixed.get(key) ?? mixWith(found, given, group, place, near);
      mixed.set(key, after);
      const byYear = years.map((p, t) => {
        const all = before.all[t] as number;
        return all > 0 ? p / all : 0;
      });
      return { before, after, byYear };
    });
    return foreseeInstead(changes, times * odds.detect, model, claimed);
  }

  function mixWith(
    found: Check,
    { groups: all, given }: Case,
    group: number,
    place: number,
    near: readonly Check[],
  ): Mixture {
    const old = all[group] as Group;
    const placed = [...near, found].map((one) => placing.placedAt(one, place));
    const { signs, aged } = signFactors([...near, found], graph, odds, placing.grid);
    const dated = placing.factors(
      old.parts.map((part) => linkByTool(placed.filter((one) => one.check.part === part))),
      { graph, odds, given },
    );
    const anew: Group = { ...old, factors: [...dated, ...aged], signs };
    return mixer().mix(anew, model);
  }
}

const times = (values: Float64Array, by: Float64Array | undefined): Float64Array =>
  by ? values.map((value, t) => value * (by[t] as number)) : values;

const meets = <One>(a: ReadonlySet<One>, b: ReadonlySet<One>): boolean => [...a].some((one) => b.has(one));
