import type { Hardness } from "../domain/claim.ts";
import type { Path, SilenceReason } from "../domain/report.ts";
import { ALL_YEARS, isAllYears, isEmpty, meet, type Span, type Years } from "../domain/years.ts";
import { type Bound, type ClosedList, countsFor } from "./bound.ts";
import type { Chain } from "./chains.ts";
import type { Resolved } from "./resolve.ts";
import type { View } from "./view.ts";

/** What a chain comes to at one place. */
export interface ChainReading {
  readonly label: Path["label"];
  readonly hardness: Hardness | undefined;
  readonly years: Years;
  readonly reason: SilenceReason | undefined;
  readonly bound: Bound | undefined;
}

/** Reads a chain at one place against the claimed years (E21). */
export function readChain(view: View, { steps, terms, end }: Chain, claimed: Span): ChainReading {
  const at = terms.map(view.resolve);
  const lists: { readonly list: ClosedList; readonly way: number }[] = [];
  let reason: SilenceReason | undefined;
  for (const [i, step] of steps.entries()) {
    const list = at[i]?.lists.find(({ claim }) => claim.id === step.list.id);
    if (list) lists.push({ list, way: step.way });
    else reason ??= at[i]?.setAside.get(step.list.id)?.reason ?? "out-of-scope";
  }
  const last = at.at(-1) as Resolved;
  const bound = reason === undefined ? boundAt(last, end) : undefined;
  const hardness: Hardness =
    bound?.hardness === "practice" || lists.some(({ list }) => list.hardness === "practice")
      ? "practice"
      : "physical";
  const years = bound === undefined ? ALL_YEARS : yearsBy(bound, end);
  if (bound === undefined || isAllYears(years)) reason ??= whySilent(last, end);

  const possible = standingOf(view, lists, claimed, "physical");
  const usual = standingOf(view, lists, claimed, "practice");
  const excluded: ChainReading = {
    ...{ label: "way-excluded", years, reason: undefined, bound },
    hardness: possible.impossible ? "physical" : "practice",
  };
  if (usual.shut) return excluded;
  if (isEmpty(meet(years, [claimed]))) {
    // While another way is open but for habit, what is merely unusual does not read as impossible.
    const cannot = hardness === "physical" && !possible.shut;
    return { ...excluded, label: "contradictory", hardness: cannot ? "physical" : "practice" };
  }
  // A claim that counts for nothing here is no part of its way, whatever becomes of that.
  if (usual.impossible && !(reason !== undefined && isSetAside(last, end))) return excluded;
  const label = reason === undefined ? "consistent" : "silent";
  return { label, hardness: undefined, years, reason, bound };
}

function boundAt({ boundBy, bounds }: Resolved, end: Chain["end"]): Bound | undefined {
  if (end.kind === "claim") return boundBy.get(end.claim);
  return end.kind === "assumed" ? bounds.find(({ by }) => by === end.by) : undefined;
}

/** Of rivals, what the one that the chain ends in says by itself. */
const yearsBy = ({ outer, alternatives }: Bound, end: Chain["end"]): Years =>
  (end.kind === "claim" ? alternatives.find(({ claims }) => claims.includes(end.claim)) : undefined)?.outer ??
  outer;

const isSetAside = ({ setAside }: Resolved, end: Chain["end"]): boolean =>
  end.kind === "claim" && setAside.has(end.claim);

function whySilent({ setAside, endless }: Resolved, end: Chain["end"]): SilenceReason {
  if (end.kind !== "claim") return "undated";
  return (
    setAside.get(end.claim)?.reason ??
    (endless.some(({ id }) => id === end.claim) ? "unknown-end" : "undated")
  );
}

/** Whether the claimed years make a way that a chain takes impossible, and whether they shut it while another way of its list is open. */
function standingOf(
  view: View,
  lists: readonly { readonly list: ClosedList; readonly way: number }[],
  claimed: Span,
  level: Hardness,
): { readonly impossible: boolean; readonly shut: boolean } {
  const standings = lists
    .filter(({ list }) => countsFor(list.hardness, level))
    .map(({ list, way }) => {
      const open = view.yearsOfWays(list, level).map((years) => !isEmpty(meet(years, [claimed])));
      return { impossible: open[way] === false, shut: open[way] === false && open.includes(true) };
    });
  return {
    impossible: standings.some(({ impossible }) => impossible),
    shut: standings.some(({ shut }) => shut),
  };
}
