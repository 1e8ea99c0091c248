import { BUDGET } from "../../domain/assumptions.ts";
import { compareText, firstDifference } from "../../domain/compare.ts";
import type { ClaimId } from "../../domain/ids.ts";
import type { NotSearched, Place, RuleOut } from "../../domain/report.ts";
import { sameYears } from "../../domain/years.ts";
import { claimsHeld } from "../atoms.ts";
import type { Subject } from "../check.ts";
import type { Clash } from "./clash.ts";
import { clashesAt } from "./clashes-at.ts";
import { gapsUnsearched } from "./gaps-unsearched.ts";
import { stableId } from "./stable-id.ts";
import { windowsAt } from "./windows.ts";

/** What rules the attribution out, or parts apart, place by place (E24 to E28), and what was not searched for (E27). */
export function ruleOut(subject: Subject): {
  readonly ruleOuts: readonly RuleOut[];
  readonly notSearched: readonly NotSearched[];
} {
  const merged = new Map<string, { readonly clash: Clash; readonly places: Place[] }>();
  const residue = new Residue();
  for (const [i, place] of subject.places.entries()) {
    const { windows, cut } = windowsAt(i, subject);
    for (const clash of clashesAt(i, windows, subject)) {
      const key = clash.held.map((atom) => atom.key).join("\n");
      const before = merged.get(key);
      if (before) before.places.push(place);
      else merged.set(key, { clash, places: [place] });
    }
    residue.add("windows-with-gaps", gapsUnsearched(windows, subject.claimed));
    residue.add(
      "too-many-proofs",
      cut.map(({ id }) => id),
    );
  }
  const all = [...merged].sort(([a, x], [b, y]) => compareClashes(x.clash, y.clash) || compareText(a, b));
  const listed = all.slice(0, BUDGET.ruleOuts);
  for (const [, { clash }] of all.slice(BUDGET.ruleOuts)) residue.add("too-many-proofs", clash.findings);
  const overriding = overriders(subject);
  const bringsBack = ({ held, findings }: Clash): boolean =>
    claimsHeld(held).some((claim) => findings.some((finding) => overriding.get(finding)?.has(claim)));
  for (const [, { clash, places }] of listed) {
    if (places.length < subject.places.length) residue.add("several-places", clash.findings);
    if (bringsBack(clash)) residue.add("claims-given-up", clash.findings);
  }
  residue.add("several-places", tornParts(subject));
  return {
    ruleOuts: listed.map(([key, { clash, places }]) => ({
      id: stableId("rule-out", key),
      ...{ hardness: clash.hardness, against: clash.against, places },
      atoms: clash.held.map(({ atom }) => atom),
      ...{ findings: clash.findings, parts: clash.parts },
      ...(clash.gapYears === undefined ? {} : { gapYears: clash.gapYears }),
    })),
    notSearched: residue.named(),
  };
}

const AGAINST: readonly RuleOut["against"][] = ["attribution", "parts", "observation"];

/** Physical first, against the attribution first, sets without a year first, then the larger gap and the fewer atoms. */
const compareClashes = (a: Clash, b: Clash): number =>
  firstDifference(
    compareText(a.hardness, b.hardness),
    AGAINST.indexOf(a.against) - AGAINST.indexOf(b.against),
    (b.gapYears ?? Number.MAX_SAFE_INTEGER) - (a.gapYears ?? Number.MAX_SAFE_INTEGER),
    a.held.length - b.held.length,
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

/** Checks on parts of a region of their own that differ from place to place in it: taken over all places, not one by one. */
const tornParts = ({ checks }: Subject): readonly string[] =>
  checks
    .filter(({ elsewhere, seen }) => elsewhere && seen === "present")
    .filter(({ views, feature }) => {
      const sets = views.map((view) => view.sets(feature).usual.outer);
      return sets.some((years) => !sameYears(years, sets[0] ?? years));
    })
    .map(({ id }) => id);

const WHY: readonly NotSearched["why"][] = [
  "windows-with-gaps",
  "several-places",
  "too-many-proofs",
  "claims-given-up",
];

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
