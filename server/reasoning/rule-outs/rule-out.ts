import { BUDGET } from "../../domain/assumptions.ts";
import { compareText, firstDifference } from "../../domain/compare.ts";
import type { ClaimId } from "../../domain/ids.ts";
import type { NotSearched, Place, Report, RuleOut } from "../../domain/report.ts";
import { oddsFor } from "../../domain/weighing/chosen-odds.ts";
import { claimsHeld } from "../atoms.ts";
import type { Subject } from "../check.ts";
import type { Clash } from "./clash.ts";
import { clashesAt } from "./clashes-at.ts";
import { countsOf, listRuleOuts } from "./count-rule-outs.ts";
import { leastPrice, pricesUnder } from "./price-of.ts";
import { stableId } from "./stable-id.ts";
import type { WideClashes } from "./wide-clashes.ts";
import { type PlacedWindows, windowsAt } from "./windows.ts";

/** A clash with the places at which it is one, and with the least that giving an atom of it up costs. */
interface PlacedClash {
  readonly key: string;
  readonly clash: Clash;
  readonly places: Place[];
  readonly price: number;
}

/** What rules the attribution out, or parts apart, place by place (E24 to E28), and what was not searched for (E27). */
export function ruleOut(subject: Subject): Pick<Report, "ruleOuts" | "ruleOutCount" | "notSearched"> {
  const priceOf = pricesUnder(oddsFor(subject.piece.odds), subject);
  const steps = { asked: BUDGET.asked, decisions: BUDGET.decisions, clashes: BUDGET.clashes };
  const known = new Map<string, WideClashes>();
  const merged = new Map<string, PlacedClash>();
  const residue = new Residue();
  for (const [i, place] of subject.places.entries()) {
    const placed = windowsAt(i, subject);
    const name = subject.places.length === 1 ? "" : nameOf(placed);
    // Proofs that were not kept are in no window: such a place is searched by itself.
    const before = placed.cut.length > 0 ? undefined : known.get(name);
    const { clashes, cut } = before ?? clashesAt(i, placed, subject, priceOf, steps);
    if (placed.cut.length === 0) known.set(name, { clashes, cut });
    for (const clash of clashes) {
      const key = clash.held.map((atom) => atom.key).join("\n");
      const found = merged.get(key);
      if (found) found.places.push(place);
      else merged.set(key, { key, clash, places: [place], price: leastPrice(clash.held, priceOf) });
    }
    residue.add(
      "too-many-proofs",
      placed.cut.map(({ id }) => id),
    );
    residue.add("too-many-rule-outs", cut);
  }
  const overriding = overriders(subject);
  const all = [...merged.values()].sort(compareClashes);
  const found = listRuleOuts(all, BUDGET.ruleOuts, subject.graph);
  for (const { clash } of found.listed) {
    const isBroughtBack = (claim: ClaimId) => clash.findings.some((id) => overriding.get(id)?.has(claim));
    if (claimsHeld(clash.held).some(isBroughtBack)) residue.add("claims-given-up", clash.findings);
  }
  const notSearched = residue.named();
  const isLowerBound = notSearched.some(({ why }) => why !== "claims-given-up");
  return {
    ruleOuts: found.listed.map(toRuleOut),
    ruleOutCount: { count: all.length, isLowerBound, ...countsOf(found, idOf) },
    notSearched,
  };
}

/** Places where the same windows hold have the same name; what is torn between places of its own is so at each of these. */
const nameOf = ({ windows }: PlacedWindows): string =>
  windows
    .map(({ check, years, held }) => [check.id, years.join(), ...held.map(({ key }) => key)].join("\n"))
    .join("\n\n");

const idOf = ({ key }: PlacedClash): string => stableId("rule-out", key);
const toRuleOut = ({ key, clash, places }: PlacedClash): RuleOut => ({
  id: stableId("rule-out", key),
  ...{ hardness: clash.hardness, against: clash.against, places },
  atoms: clash.held.map(({ atom }) => atom),
  ...{ findings: clash.findings, parts: clash.parts },
  ...(clash.gapYears === undefined ? {} : { gapYears: clash.gapYears }),
});

const AGAINST: readonly RuleOut["against"][] = ["attribution", "parts", "observation"];

/**
 * Physical first, against the attribution first, what costs least to give up first; then sets without a year, the larger gap, the
 * fewer atoms.
 */
const compareClashes = (a: PlacedClash, b: PlacedClash): number =>
  firstDifference(
    compareText(a.clash.hardness, b.clash.hardness),
    AGAINST.indexOf(a.clash.against) - AGAINST.indexOf(b.clash.against),
    a.price - b.price,
    (b.clash.gapYears ?? Number.MAX_SAFE_INTEGER) - (a.clash.gapYears ?? Number.MAX_SAFE_INTEGER),
    a.clash.held.length - b.clash.held.length,
    compareText(a.key, b.key),
  );

/** By check, the claims whose loss would bring back one that they override. */
const overriders = ({ checks }: Subject): ReadonlyMap<string, ReadonlySet<ClaimId>> =>
  new Map(
    checks.map(({ id, views, feature }) => {
      const by = new Set<ClaimId>();
      for (const { setAside } of views.flatMap((view) => view.reached(feature)))
        for (const aside of setAside.values())
          if (aside.reason === "overridden" && aside.by !== undefined) by.add(aside.by);
      return [id, by];
    }),
  );

const WHY: readonly NotSearched["why"][] = ["too-many-proofs", "too-many-rule-outs", "claims-given-up"];

class Residue {
  readonly #named = new Map<NotSearched["why"], Set<string>>();

  add(why: NotSearched["why"], findings: readonly string[]): void {
    if (findings.length === 0) return;
    const named = this.#named.get(why) ?? new Set();
    for (const finding of findings) named.add(finding);
    this.#named.set(why, named);
  }

  named(): readonly NotSearched[] {
    return WHY.flatMap((why) => {
      const findings = this.#named.get(why);
      return findings === undefined ? [] : [{ why, findings: [...findings].sort() }];
    });
  }
}
