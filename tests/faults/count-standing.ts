import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { Change } from "#server/domain/change.ts";
import type { Examination } from "#server/domain/examination.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Revision } from "#server/domain/revision.ts";
import type { Store } from "#server/ports/store.ts";
import type { Counts } from "./counts.ts";
import type { Entry } from "./ledger.ts";
import { changeOf, pieceOf } from "./write.ts";

interface Standing {
  readonly revisions: readonly { readonly revision: Revision; readonly change: Change }[];
  readonly versions: readonly Examination[];
}

/** What stands of a write: the numbers of revisions, or `id version`. */
type Places = readonly string[];

/**
 * Holds what stands in a store against what its clients were told: each write that was acknowledged stands once, as it
 * was sent and where the answer said; none that was refused; one without an answer once or not at all. Nothing stands that
 * nobody sent, numbers have no gaps, and the store verifies. `others` tells revisions and examinations of somebody else.
 */
export async function countStanding(
  entries: readonly Entry[],
  store: Store,
  others: (key: string) => boolean = () => false,
): Promise<Omit<Counts, "faults" | "slowest" | "also">> {
  const standing = await readStanding(store);
  const places = placesOf(standing);
  const findings: string[] = [...findGaps(standing), ...(await findUnnumbered(store, standing))];
  const accounted = new Set<string>();
  let stood = 0;
  for (const entry of entries) {
    const found = findPlaces(entry, places);
    for (const place of found) accounted.add(place);
    if (found.length > 0 && (entry.answer ?? unanswered).is === "unanswered") stood++;
    findings.push(...judge(entry, found, standing));
  }
  const strange = [...places.all].filter(([place, key]) => !accounted.has(place) && !others(key));
  findings.push(...strange.map(([place, key]) => `${place} (${key}) stands and nobody sent it`));
  findings.push(...findDisorder(entries), ...(await findUnverified(store, standing)));
  const count = (is: string): number => entries.filter(({ answer = unanswered }) => answer.is === is).length;
  return {
    ...{ sent: entries.length, kept: count("kept"), refused: count("refused") },
    ...{ unanswered: count("unanswered"), stood, findings },
  };
}

const unanswered = { is: "unanswered", why: "" } as const;

async function readStanding(store: Store): Promise<Standing> {
  const revisions: { readonly revision: Revision; readonly change: Change }[] = [];
  const versions: Examination[] = [];
  for await (const record of store.dump()) {
    if (record.kind === "revision") revisions.push(record);
    if (record.kind === "examination") versions.push(record.examination);
  }
  return { revisions, versions };
}

const versionPlace = (id: string, version: number): string => `${id} ${version}`;

/** Where each key stands, and the key of each place; `copies` are versions that repeat an earlier one. */
function placesOf({ revisions, versions }: Standing) {
  const byKey = new Map<string, string[]>();
  const all = new Map<string, string>();
  const copies = new Map<string, "undo" | "delete">();
  const note = (key: string, place: string): void => {
    byKey.set(key, [...(byKey.get(key) ?? []), place]);
    all.set(place, key);
  };
  for (const { revision } of revisions) note(revision.message, `revision ${revision.number}`);
  const seen = new Set<string>();
  for (const { id, version, piece, deleted } of versions) {
    const place = versionPlace(id, version);
    const isSeen = seen.has(`${id} ${piece.title}`);
    seen.add(`${id} ${piece.title}`);
    if (!deleted && !isSeen) note(piece.title, place);
    else {
      all.set(place, piece.title);
      copies.set(place, deleted ? "delete" : "undo");
    }
  }
  return { byKey, all, copies };
}

function findPlaces({ write, answer }: Entry, { byKey, copies }: ReturnType<typeof placesOf>): Places {
  if (write.does !== "undo" && write.does !== "delete") return byKey.get(write.key) ?? [];
  const place = versionPlace(write.id, write.on + 1);
  // Of two that asked for the same, one was refused: what stands is the other's.
  return copies.get(place) === write.does && answer?.is !== "refused" ? [place] : [];
}

function judge({ write, answer = unanswered }: Entry, places: Places, standing: Standing): readonly string[] {
  const findings: string[] = [];
  if (places.length > 1) findings.push(`${write.key} stands ${places.length} times: ${places.join(", ")}`);
  if (answer.is === "refused" && places.length > 0)
    findings.push(`${write.key} was refused with ${answer.code} and stands`);
  if (answer.is === "kept") {
    const said = answer.revision
      ? `revision ${answer.revision.number}`
      : versionPlace(answer.examination?.id ?? "", answer.examination?.version ?? 0);
    if (places.length === 0) findings.push(`${write.key} was acknowledged as ${said} and is lost`);
    else if (!places.includes(said))
      findings.push(`${write.key} was acknowledged as ${said} and is ${places[0]}`);
    const kept = standing.revisions.find(({ revision }) => revision.number === answer.revision?.number);
    if (answer.revision && kept && kept.revision.hash !== answer.revision.hash)
      findings.push(`${write.key} stands with another hash than was acknowledged`);
  }
  for (const place of places)
    if (!isAsSent(write, place, standing)) findings.push(`${place} is not as ${write.key} was sent`);
  return findings;
}

function isAsSent(write: Entry["write"], place: string, { revisions, versions }: Standing): boolean {
  if (write.does === "commit") {
    const kept = revisions.find(({ revision }) => `revision ${revision.number}` === place);
    return canonicalJson(kept?.change) === canonicalJson(changeOf(write.key, write.things));
  }
  const kept = versions.find(({ id, version }) => versionPlace(id, version) === place);
  if (write.does === "delete") return kept?.deleted === true;
  if (write.does === "undo") return kept?.deleted === false;
  return kept?.deleted === false && canonicalJson(kept.piece) === canonicalJson(pieceOf(write.key));
}

function findGaps({ revisions, versions }: Standing): readonly string[] {
  const findings: string[] = [];
  for (const [at, { revision }] of revisions.entries())
    if (revision.number !== at + 1) findings.push(`revision ${revision.number} stands in place ${at + 1}`);
  const last = new Map<string, number>();
  for (const { id, version } of versions) {
    if (version !== (last.get(id) ?? 0) + 1) findings.push(`${id} has a gap before version ${version}`);
    last.set(id, version);
  }
  return findings;
}

/** Every revision and every version came with one numbered write, without a gap, in the order of the revisions. */
async function findUnnumbered(store: Store, { revisions, versions }: Standing): Promise<readonly string[]> {
  const findings: string[] = [];
  const numbered = new Map<string, number>();
  let [last, revisionBefore] = [0, 0];
  for (let isMore = true; isMore; ) {
    const writes = await store.writesAfter(last, 1000);
    for (const { sequence, revision, examination } of writes) {
      if (sequence !== last + 1) findings.push(`write ${sequence} comes after write ${last}`);
      if (revision !== undefined && revision !== revisionBefore + 1)
        findings.push(`write ${sequence} made revision ${revision} after ${revisionBefore}`);
      const made = examination ? versionPlace(examination.id, examination.version) : `revision ${revision}`;
      numbered.set(made, (numbered.get(made) ?? 0) + 1);
      [last, revisionBefore] = [sequence, revision ?? revisionBefore];
    }
    isMore = writes.length === 1000;
  }
  const stand = [
    ...revisions.map(({ revision }) => `revision ${revision.number}`),
    ...versions.map(({ id, version }) => versionPlace(id, version)),
  ];
  for (const place of stand)
    if (numbered.get(place) !== 1)
      findings.push(`${place} came with ${numbered.get(place) ?? 0} numbered writes`);
  if (numbered.size !== stand.length || last !== stand.length)
    findings.push(`${last} writes are numbered, and ${stand.length} stand`);
  if ((await store.newestWrite()) !== last) findings.push(`the newest write is not number ${last}`);
  return findings;
}

/** A commit that was sent after another had been acknowledged has the higher number. */
function findDisorder(entries: readonly Entry[]): readonly string[] {
  const kept = entries.flatMap(({ write, sentAt, answer, answeredAt = 0 }) =>
    answer?.is === "kept" && answer.revision
      ? [{ key: write.key, sentAt, answeredAt, number: answer.revision.number }]
      : [],
  );
  const byAnswer = [...kept].sort((one, other) => one.answeredAt - other.answeredAt);
  const findings: string[] = [];
  let [at, highest] = [0, 0];
  for (const one of kept) {
    for (; (byAnswer[at]?.answeredAt ?? Number.POSITIVE_INFINITY) < one.sentAt; at++)
      highest = Math.max(highest, byAnswer[at]?.number ?? 0);
    if (one.number <= highest)
      findings.push(
        `${one.key} is revision ${one.number} and was sent when ${highest} had been acknowledged`,
      );
  }
  return findings;
}

async function findUnverified(store: Store, { revisions }: Standing): Promise<readonly string[]> {
  const verified = await store.verify();
  if (isProblem(verified)) return [`the store does not verify: ${verified.message}`];
  const head = revisions.at(-1)?.revision.hash;
  return verified.revisions === revisions.length && (head === undefined || verified.head === head)
    ? []
    : [`the store verifies as ${verified.revisions} revisions, its dump holds ${revisions.length}`];
}
