import { type PartState, spokenOf } from "#server/domain/part-state.ts";
import type { Sign } from "#server/domain/report.ts";

const STATES: Readonly<Record<PartState, string>> = {
  original: "an original part",
  later: "a later part",
  reused: "a part from another piece",
  reworked: "a part worked over since",
};

/** What a sign speaks for or against, in the fewest words. */
export function briefSign(sign: Pick<Sign, "speaks" | "states">): string {
  const { speaks, states } = spokenOf(sign.speaks, sign.states);
  return `speaks ${speaks} ${states.map((state) => STATES[state]).join(" or ")}`;
}
