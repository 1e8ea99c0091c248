import { type PartState, spokenOf } from "../../domain/part-state.ts";
import { STATE_IN_WORDS } from "./claim-in-words.ts";
import { listInWords } from "./list-in-words.ts";

/** "for a later part", "against a part taken from another piece or a later part"; the shorter of two ways to say the same. */
export function speaksOfStates(speaks: "for" | "against", states: readonly PartState[]): string {
  const said = spokenOf(speaks, states);
  const named = said.states.map((state) => STATE_IN_WORDS[state]);
  return `${said.speaks} ${listInWords(named, "or")}`;
}
