import type { Change } from "../../domain/change.ts";
import {
  DIGEST_SEEN_CARD,
  FOLLOW_CARD,
  type Follow,
  followOf,
  seenOf,
  seenWrite,
} from "../../domain/chronicle/follow.ts";
import { idOfEdit } from "../../domain/graph-view.ts";
import { netChange } from "../../domain/net-change.ts";
import { isProblem } from "../../domain/problem.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Results } from "../../ports/results.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { type FindNamed, sayEdit } from "../ask/say-edit.ts";
import type { Refusal } from "../refusal.ts";
import { standingRevision } from "../standing-revision.ts";
import { changesBetween } from "./changes-between.ts";
import type { SaidEdit } from "./compare-revisions.ts";
import { nameFollowed } from "./name-followed.ts";
import { type ChangedPiece, piecesChanged } from "./pieces-changed.ts";
import { touchesOf } from "./touches-of.ts";

/** Edits told of one thing that is followed. */
const MOST_TOLD = 10;

/** What changed about one thing that is followed. */
export interface FollowedThing {
  readonly about: string;
  /** What it is called; its id where it is gone. */
  readonly name: string;
  readonly since: RevisionNumber;
  readonly count: number;
  /** The first of them. */
  readonly edits: readonly SaidEdit[];
}

/** What changed for a person since the digest was read last. */
export interface Digest {
  readonly newest: RevisionNumber;
  /** Up to where it was read; nothing if it never was. */
  readonly seen: RevisionNumber | undefined;
  readonly pieces: readonly ChangedPiece[];
  readonly followed: readonly FollowedThing[];
}

type Ports = Acting & {
  readonly store: Store;
  readonly results: Results;
  readonly standings: Standings;
  readonly named: FindNamed;
};

/** What changed for the caller's pieces and what the caller follows, since each was followed or the digest was read, whichever is later. */
export async function readDigest(ports: Ports): Promise<Digest | Refusal> {
  const refusal = refuseCaller(ports, "follow something");
  if (refusal) return refusal;
  const { store, caller } = ports;
  const by = caller?.id ?? "";
  const newest = (await store.newestRevision())?.number ?? 0;
  const seen = seenOf(await store.card(DIGEST_SEEN_CARD, by));
  const cards = await readAll((page) =>
    store.listCards({ kind: FOLLOW_CARD, key: { name: "by", value: by } }, page),
  );
  const follows = cards.map(followOf).map((follow) => ({
    ...follow,
    since: Math.min(newest, Math.max(follow.since, seen ?? 0)),
  }));
  const things = follows.filter(({ about }) => !about.startsWith("examination."));
  const first = Math.min(newest, ...things.map(({ since }) => since));
  const changes = await changesBetween(ports, first, newest);
  if (isProblem(changes)) return { refused: [changes] };
  const examinations = follows.filter(({ about }) => about.startsWith("examination."));
  return {
    ...{ newest, seen },
    pieces: await piecesChanged(ports, examinations, seen),
    followed: await tellFollowed(ports, things, changes, first, newest),
  };
}

async function tellFollowed(
  ports: Ports,
  things: readonly Follow[],
  changes: readonly Change[],
  first: RevisionNumber,
  newest: RevisionNumber,
): Promise<readonly FollowedThing[]> {
  const nameOf = await nameFollowed(
    ports,
    things.map(({ about }) => about),
  );
  const told = new Map<RevisionNumber, Awaited<ReturnType<typeof since>>>();
  const since = async (from: RevisionNumber) => {
    const net = netChange(changes.slice(from - first));
    return { net, touches: await touchesOf(ports, net, newest) };
  };
  const followed: FollowedThing[] = [];
  for (const { about, since: from } of things) {
    const { net, touches } = told.get(from) ?? (await since(from));
    told.set(from, { net, touches });
    const edits = net.filter((edit) => touches(edit).has(about));
    const said = await Promise.all(
      edits.slice(0, MOST_TOLD).map(async (edit) => ({
        ...{ id: idOfEdit(edit), kind: edit.kind },
        ...(await sayEdit(ports.named, edit, { before: from, after: newest })),
      })),
    );
    followed.push({ about, name: nameOf(about), since: from, count: edits.length, edits: said });
  }
  return followed;
}

/** Notes that the caller has read the digest up to a revision. */
export async function markDigestSeen(
  ports: Acting & { readonly store: Store },
  revision: RevisionNumber,
): Promise<{ readonly seen: RevisionNumber } | Refusal> {
  const refusal = refuseCaller(ports, "follow something");
  if (refusal) return refusal;
  const standing = await standingRevision(ports, revision);
  if (isProblem(standing)) return { refused: [standing] };
  const along = signed(ports, "read the digest");
  const card = await ports.store.card(DIGEST_SEEN_CARD, along.deed.by);
  const cards = [seenWrite(along.deed.by, card?.version ?? 0, standing)];
  const written = await ports.store.writeCards({ ...along, cards });
  return isProblem(written) ? { refused: [written] } : { seen: standing };
}
