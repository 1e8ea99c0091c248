import type { Change } from "../../domain/change.ts";
import { compareText } from "../../domain/compare.ts";
import type { Examination } from "../../domain/examination.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import { type Shifts, shiftsBetween } from "../../domain/shifts.ts";
import { openTurns } from "../../ports/open-turns.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import { verdictsAfter } from "../../reasoning/verdicts-after.ts";
import { verdictsOn } from "../../reasoning/verdicts-on.ts";
import { type Beside, bothNeighbourhoods, readBeside } from "./both-neighbourhoods.ts";
import { placeInLooking } from "./place-in-looking.ts";

/** What a change would do to the stored examinations, whoever may see them, were it made now. Nothing is stored. */
export interface Preview {
  /** The revision it was laid over. */
  readonly revision: RevisionNumber;
  /** How many examinations were looked at: all that it can touch, but for those looked at before and those left. */
  readonly looked: number;
  /** The place of the last of these: where one can go on. */
  readonly reached?: number;
  /** Those of which something would be said otherwise, by id. */
  readonly shifted: readonly { readonly examination: Examination; readonly shifts: Shifts }[];
  /** Examinations that were left, because `stop` said so; none means that nothing else would change. */
  readonly left: number;
}

interface Ports {
  readonly store: Store;
  readonly standings: Standings;
}

export interface PreviewOptions {
  readonly stop?: AbortSignal | undefined;
  /** Those up to this place (`placeInLooking`) were looked at before. */
  readonly after?: number | undefined;
  /** Told before each examination, and after the last, how many of those it can touch were looked at, those looked at before among them, and of how many something was found that would be said otherwise. */
  readonly onLooked?: (looked: number, of: number, shifted: number) => void;
}

/**
 * Which stored examinations a change of the newest revision would shift, and from what to what: exactly what examining
 * them all before and after it would show (K10). The change is one that the store would take.
 */
export async function previewChange(
  ports: Ports,
  change: Change,
  { stop, after = -1, onLooked = () => {} }: PreviewOptions = {},
): Promise<Preview> {
  const { store, standings } = ports;
  const revision = (await store.newestRevision())?.number ?? 0;
  const touched = [...(await standings.touchedBy(change))].map((id) => ({ id, place: placeInLooking(id) }));
  const toLookAt = touched
    .filter(({ place }) => place > after)
    .sort((a, b) => a.place - b.place || compareText(a.id, b.id));
  const begin = touched.length - toLookAt.length;
  const beside = await readBeside(store, change, revision);
  const shifted: { examination: Examination; shifts: Shifts }[] = [];
  let looked = 0;
  let reached: number | undefined;
  const turn = openTurns();
  for (const { id, place } of toLookAt) {
    onLooked(begin + looked, touched.length, shifted.length);
    await turn();
    // Two of one place are looked at in one go.
    if (stop?.aborted && place !== reached) break;
    looked++;
    reached = place;
    const examination = await standings.stored(id);
    if (examination === undefined || examination.deleted) continue;
    const shifts = await shiftsOf(ports, examination, change, beside, revision);
    if (shifts) shifted.push({ examination, shifts });
  }
  onLooked(begin + looked, touched.length, shifted.length);
  shifted.sort((a, b) => compareText(a.examination.id, b.examination.id));
  return {
    ...{ revision, looked, shifted, left: toLookAt.length - looked },
    ...(reached === undefined ? {} : { reached }),
  };
}

async function shiftsOf(
  { store, standings }: Ports,
  { id, version, piece }: Examination,
  change: Change,
  beside: Beside,
  revision: RevisionNumber,
): Promise<Shifts | undefined> {
  const { now, after } = await bothNeighbourhoods(store, piece, change, beside, revision);
  const standing = standings.find(id);
  const isKnown = standing?.upToDate && standing.version === version && standing.knownTo === revision;
  const before = once(() => (isKnown ? standing.verdicts : verdictsOn(piece, now)));
  const verdicts = verdictsAfter(piece, now, after, change, before);
  return verdicts === "same" ? undefined : shiftsBetween(before(), verdicts);
}

function once<Value>(work: () => Value): () => Value {
  let known: { readonly value: Value } | undefined;
  return () => {
    known ??= { value: work() };
    return known.value;
  };
}
