import type { Follow } from "../../domain/chronicle/follow.ts";
import { KEPT_REPORT_CARD, type ListedReport, listedReportOf } from "../../domain/chronicle/kept-report.ts";
import { type ExaminationId, id as idOf } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { ShiftLine } from "../../domain/shift-words.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Results } from "../../ports/results.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";
import { readStanding } from "../ask/read-standing.ts";
import { isRefusal } from "../refusal.ts";
import { findOpenExamination } from "./find-open-examination.ts";

/** Pieces looked at for one digest: each may have to be examined. */
const MOST_PIECES = 100;

/** A piece of which something the answer is read from changed. */
export interface ChangedPiece {
  readonly examination: ExaminationId;
  readonly title: string;
  /** Why it is told: the caller signed a report of it, follows it, or it lies on the caller's own machine. */
  readonly why: "signed" | "followed" | "here";
  readonly signedAt?: string;
  readonly since: RevisionNumber;
  /** Claims that are new, otherwise or gone. */
  readonly claims: number;
  readonly lines: readonly ShiftLine[];
  readonly headlineBefore?: string;
  /** In one sentence. */
  readonly says: string;
}

type Ports = Acting & {
  readonly store: Store;
  readonly results: Results;
  readonly standings: Standings;
};

/** A piece to look at, and since when. */
interface Looked extends Pick<ChangedPiece, "examination" | "why" | "signedAt"> {
  readonly since: RevisionNumber | undefined;
}

/**
 * The pieces that changed: those of which the caller signed a report, since the last one; those that are followed; and, for
 * whoever sits at a machine of their own, all that lie there. What the digest told up to `seen` is not told again, but for signed ones.
 */
export async function piecesChanged(
  ports: Ports,
  followed: readonly Follow[],
  seen: RevisionNumber | undefined,
): Promise<readonly ChangedPiece[]> {
  const looked = await piecesToLookAt(ports, followed, seen);
  const changed: ChangedPiece[] = [];
  for (const { examination: id, since, why, signedAt } of looked) {
    const examination = await findOpenExamination(ports, id);
    if (isRefusal(examination)) continue;
    const { changed: found } = await readStanding(ports, examination, since);
    await nextTurn();
    if (found === undefined) continue;
    const claims = found.claims.length + found.gone.length;
    const { lines, headlineBefore } = found.words;
    changed.push({
      ...{ examination: id, title: examination.piece.title, why, since: found.since, claims, lines },
      ...(signedAt === undefined ? {} : { signedAt }),
      ...(headlineBefore === undefined ? {} : { headlineBefore }),
      says: sayChanged(claims, why, found.since, lines),
    });
  }
  return changed;
}

async function piecesToLookAt(
  { store, caller }: Ports,
  followed: readonly Follow[],
  seen: RevisionNumber | undefined,
): Promise<readonly Looked[]> {
  const cards = await readAll((page) =>
    store.listCards({ kind: KEPT_REPORT_CARD, key: { name: "by", value: caller?.id ?? "" } }, page),
  );
  const signed = new Map<ExaminationId, ListedReport>();
  for (const report of cards.map(listedReportOf)) signed.set(report.examination, report);
  const here = caller?.via === "loopback" ? (await store.listExaminations({ first: MOST_PIECES })).rows : [];
  const all = new Map<ExaminationId, Looked>([
    ...here.map(({ id }) => [id, { examination: id, why: "here", since: seen }] as const),
    ...followed.map(({ about, since }) => {
      const id = idOf<"examination">(about);
      return [id, { examination: id, why: "followed", since }] as const;
    }),
    ...[...signed.values()].map(({ examination, revision, at }) => {
      return [examination, { examination, why: "signed", since: revision, signedAt: at }] as const;
    }),
  ]);
  return [...all.values()].slice(-MOST_PIECES);
}

/** "3 claims changed since you signed this: the finding for the drawers is now …" */
function sayChanged(
  claims: number,
  why: ChangedPiece["why"],
  since: RevisionNumber,
  lines: readonly ShiftLine[],
): string {
  const count = claims === 1 ? "1 claim" : `${claims} claims`;
  const when = why === "signed" ? "since you signed this" : `since revision ${since}`;
  const [first] = lines;
  if (first === undefined) return `${count} changed ${when}; nothing is said otherwise.`;
  const more = lines.length === 1 ? "" : ` And ${lines.length - 1} more.`;
  return `${count} changed ${when}. ${first.says}: now ${first.now}, it was ${first.before}.${more}`;
}
