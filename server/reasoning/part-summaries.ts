import type { Seen } from "../domain/examination.ts";
import type { Finding, PartSummary, Sign } from "../domain/report.ts";
import { speaksOfChange } from "../domain/speaks-of-change.ts";
import { ALL_YEARS, join, meet, NO_YEARS, type Years, yearsToJson } from "../domain/years.ts";
import type { Check, Subject } from "./check.ts";
import type { Found } from "./find.ts";

import type { Sets } from "./view.ts";

/** Each part in the order of the piece: the worst of what is found on it, and the years left by all of it together. */
export function summariseParts(
  { piece, checks }: Subject,
  found: readonly Found[],
  signs: readonly Sign[],
): readonly PartSummary[] {
  return piece.parts.map(({ id }) => {
    const here = checks.filter((check) => check.part === id);
    const count = (seen: Seen): number => here.filter((check) => check.seen === seen).length;
    return {
      part: id,
      speaks: worstOf(
        found.filter(({ check }) => check.part === id).map(({ finding }) => finding),
        signs.filter(({ part }) => part === id),
      ),
      possible: yearsToJson(yearsLeft(here, (sets) => sets.possible.outer)),
      usual: yearsToJson(yearsLeft(here, (sets) => sets.usual.outer)),
      counts: { seen: count("present"), absent: count("absent"), unseen: count("unseen") },
    };
  });
}

/** The worst of what was found on one part. */
export function worstOf(
  findings: readonly Pick<Finding, "label" | "hardness">[],
  signs: readonly Sign[],
): PartSummary["speaks"] {
  if (findings.some(({ hardness }) => hardness === "physical")) return "against-hard";
  if (findings.some(({ hardness }) => hardness === "practice")) return "against-soft";
  if (signs.some((sign) => sign.standing === "stands" && speaksOfChange(sign))) return "sign";
  if (findings.some(({ label }) => label === "consistent")) return "for";
  return findings.length > 0 ? "nothing" : "not-looked";
}

/** The years that everything seen on a part allows at one place, over all places. */
function yearsLeft(checks: readonly Check[], of: (sets: Sets) => Years): Years {
  const seen = checks.filter((check) => check.seen === "present");
  const places = seen[0]?.views ?? [];
  if (places.length === 0) return ALL_YEARS;
  return places
    .map((_, place) =>
      seen
        .flatMap(({ views, feature }) => {
          const view = views[place];
          return view === undefined ? [] : [of(view.sets(feature))];
        })
        .reduce(meet, ALL_YEARS),
    )
    .reduce(join, NO_YEARS);
}
