import type { Hardness } from "../domain/claim.ts";
import type { Path, SilenceReason } from "../domain/report.ts";
import { ALL_YEARS, isAllYears, isEmpty, meet, type Span, type Years } from "../domain/years.ts";
import { type Bound, type ClosedList, countsFor } from "./bound.ts";
import type { Chain } from "./chains.ts";
import type { Resolved } from "./resolve.ts";
import type { View } from "./view.ts";
import { yearsOfWays } from "./ways.ts";

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
  const years = bound?.outer ?? ALL_YEARS;
  if (bound === undefined || isAllYears(years)) reason ??= whySilent(last, end);

  const shut = excluded(view, lists, claimed, (way, others) => way && others);
  if (shut) return { label: "way-excluded", hardness: shut, years, reason: undefined, bound };
  if (isEmpty(meet(years, [claimed])))
    return { label: "contradictory", hardness, years, reason: undefined, bound };
  // A claim that counts for nothing here is no part of its way, whatever becomes of that.
  if (reason !== undefined && isSetAside(last, end))
    return { label: "silent", hardness: undefined, years, reason, bound };
  const impossible = excluded(view, lists, claimed, (way) => way);
  if (impossible) return { label: "way-excluded", hardness: impossible, years, reason: undefined, bound };
  if (reason !== undefined) return { label: "silent", hardness: undefined, years, reason, bound };
  return { label: "consistent", hardness: undefined, years, reason: undefined, bound };
}

function boundAt({ boundBy, bounds }: Resolved, end: Chain["end"]): Bound | undefined {
  if (end.kind === "claim") return boundBy.get(end.claim);
  return end.kind === "assumed" ? bounds.find(({ by }) => by === end.by) : undefined;
}

const isSetAside = ({ setAside }: Resolved, end: Chain["end"]): boolean =>
  end.kind === "claim" && setAside.has(end.claim);

function whySilent({ setAside, endless }: Resolved, end: Chain["end"]): SilenceReason {
  if (end.kind !== "claim") return "undated";
  return (
    setAside.get(end.claim)?.reason ??
    (endless.some(({ id }) => id === end.claim) ? "unknown-end" : "undated")
  );
}

/**
 * How hard the claimed years exclude one of the ways a chain takes, as `when` wants it: from whether its own way is impossible and
 * whether another way of the list is open. Possible years are asked first, so that what is merely unusual never reads as impossible.
 */
function excluded(
  view: View,
  lists: readonly { readonly list: ClosedList; readonly way: number }[],
  claimed: Span,
  when: (impossible: boolean, othersOpen: boolean) => boolean,
): Hardness | undefined {
  return (["physical", "practice"] as const).find((level) =>
    lists.some(({ list, way }) => {
      if (!countsFor(list.hardness, level)) return false;
      const open = yearsOfWays(view, list, level).map((years) => !isEmpty(meet(years, [claimed])));
      return when(
        open[way] === false,
        open.some((is, other) => is && other !== way),
      );
    }),
  );
}
