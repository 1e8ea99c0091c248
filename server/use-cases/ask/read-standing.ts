import { ASSUMED } from "../../domain/assumptions.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Examination, Piece } from "../../domain/examination.ts";
import type { ClaimId } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { ShiftsInWords } from "../../domain/shift-words.ts";
import type { Results } from "../../ports/results.ts";
import { revisionAt } from "../../ports/revision-at.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import { claimAsRead } from "../../reasoning/as-read.ts";
import { askFor } from "../../reasoning/ask-for.ts";
import { sayShifts } from "./say-shifts.ts";

interface Ports {
  readonly store: Store;
  readonly results: Results;
  readonly standings: Standings;
}

/** What the newest revision makes of a stored piece that an earlier one did not. */
export interface ChangedSince {
  readonly since: RevisionNumber;
  /** Claims the answer is read from that are not as they were, by id, as they stand; those that are gone as they stood. */
  readonly claims: readonly Claim[];
  readonly gone: readonly Claim[];
  readonly words: ShiftsInWords;
}

/** How a stored examination stands. */
export interface ExaminationStanding {
  /** The revision on which it was examined in the background last; nothing before that. */
  readonly revision: RevisionNumber | undefined;
  readonly upToDate: boolean;
  readonly changed: ChangedSince | undefined;
}

/**
 * How a stored examination stands, and what changed since a revision or since its record was changed, whichever is
 * later. Whoever asks looks at it (K8).
 */
export async function readStanding(
  ports: Ports,
  examination: Examination,
  lookedOn?: RevisionNumber,
): Promise<ExaminationStanding> {
  ports.standings.looked(examination.id);
  const found = ports.standings.find(examination.id);
  const standing = found?.version === examination.version ? found : undefined;
  const newest = (await ports.store.newestRevision())?.number ?? 0;
  const recorded = standing?.since.revision ?? (await revisionAt(ports.store, examination.changedAt));
  const since = Math.min(newest, Math.max(recorded, lookedOn ?? 0));
  const upToDate = standing?.upToDate === true && standing.knownTo >= newest;
  return {
    revision: standing?.revision,
    upToDate,
    changed:
      since === newest || (upToDate && standing.since.isSame && since === recorded)
        ? undefined
        : await changedSince(ports, examination.piece, since),
  };
}

async function changedSince(
  { store, results }: Ports,
  piece: Piece,
  since: RevisionNumber,
): Promise<ChangedSince | undefined> {
  const ask = askFor(piece, ASSUMED);
  const now = await store.neighbourhood(ask);
  const then = await store.neighbourhood({ ...ask, at: since });
  const [was, is] = [byId(then.claims), byId(now.claims)];
  const claims = now.claims.filter((claim) => !isAsRead(claim, was.get(claim.id)));
  const gone = then.claims.filter(({ id }) => !is.has(id));
  const words = sayShifts(piece, then, now, results);
  if (claims.length + gone.length === 0 && words === undefined) return undefined;
  return { since, claims, gone, words: words ?? { lines: [] } };
}

const byId = (claims: readonly Claim[]): ReadonlyMap<ClaimId, Claim> =>
  new Map(claims.map((claim) => [claim.id, claim]));

const isAsRead = (claim: Claim, other: Claim | undefined): boolean =>
  claim === other ||
  (other !== undefined && canonicalJson(claimAsRead(claim)) === canonicalJson(claimAsRead(other)));
