import { type Indicates, STRENGTHS } from "../domain/claim.ts";
import { compareText, firstDifference } from "../domain/compare.ts";
import type { Sign } from "../domain/report.ts";
import { applies } from "../domain/scope.ts";
import { speaksOfChange } from "../domain/speaks-of-change.ts";
import type { Check, Subject } from "./check.ts";
import type { KnownGraph } from "./known-graph.ts";

/**
 * What `indicates` claims say of the parts (E30 to E32). Seen, a sign speaks for its states; looked for and absent, one that speaks
 * for `original` speaks against it. A sign counts where its claim applies at every place the piece can be from.
 */
export function readSigns({ checks, graph }: Subject): readonly Sign[] {
  return checks
    .flatMap((check) =>
      graph
        .claimsOf(check.feature)
        .filter((claim): claim is Indicates => claim.relation === "indicates")
        .flatMap((claim) => signOf(check, claim, graph)),
    )
    .sort((a, b) =>
      firstDifference(
        Number(a.standing === "set-aside") - Number(b.standing === "set-aside"),
        Number(!speaksOfChange(a)) - Number(!speaksOfChange(b)),
        STRENGTHS.indexOf(a.strength) - STRENGTHS.indexOf(b.strength),
        compareText(a.observation, b.observation),
        compareText(a.claim, b.claim),
      ),
    );
}

function signOf(check: Check, claim: Indicates, graph: KnownGraph): readonly Sign[] {
  const { observation, part, feature, sureness, seen, views, exceptions } = check;
  if (observation === undefined || part === undefined || seen === "unseen") return [];
  if (seen === "absent" && !claim.states.includes("original")) return [];
  if (!views.every(({ context }) => applies(claim.scope, context.where, graph.broader))) return [];
  const because = exceptions.defeatsOf(claim.id, seen);
  return [
    {
      ...{ observation, part, feature, claim: claim.id, strength: claim.strength, sureness },
      speaks: seen === "absent" ? "against" : "for",
      states: claim.states,
      standing: because.length > 0 ? "set-aside" : "stands",
      because,
      voidIf: exceptions.voidIf(claim.id, seen),
      ...(claim.cause === undefined ? {} : { cause: claim.cause }),
    },
  ];
}
