import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Change, Edit } from "../../domain/change.ts";
import { idOfEdit } from "../../domain/graph-view.ts";
import { id as idOf } from "../../domain/ids.ts";
import { isSame } from "../../domain/is-same.ts";
import { problem } from "../../domain/problem.ts";
import { PROPOSAL_CARD, proposalOf } from "../../domain/proposals/kept-proposal.ts";
import { type MergeGroup, planMerge } from "../../domain/sharing/plan-merge.ts";
import type { SharedChanges } from "../../domain/sharing/shared-changes.ts";
import { TAKEN_CARD, takenWrite } from "../../domain/sharing/taken.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller } from "../acting.ts";
import { findAlike } from "../ask/look-over/find-alike.ts";
import type { FindNamed } from "../ask/say-edit.ts";
import { makeProposal } from "../do/make-proposal.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { unfitOf } from "../unfit-of.ts";
import { proposalOfGroup } from "./proposal-of-group.ts";

/** One change of another house that is proposed here. */
export interface Taken {
  /** Nothing where it was only looked at. */
  readonly id?: string;
  readonly title: string;
  readonly edits: number;
  /** Things here that may be what it adds. */
  readonly alike: readonly string[];
  readonly changedOnBothSides: readonly string[];
}

/** What came of the changes of another house, thing by thing. */
export interface TakenChanges {
  readonly house: string;
  readonly until: SharedChanges["until"];
  readonly proposed: readonly Taken[];
  /** How many things stand here already as they do there. */
  readonly same: number;
  /** How many changes were proposed before, whatever became of that. */
  readonly known: number;
  /** What is not proposed, and why. */
  readonly left: readonly { readonly ids: readonly string[]; readonly why: string }[];
}

type Ports = Acting & {
  readonly store: Store;
  readonly seals: Pick<Seals, "findFault" | "hash">;
  readonly named: FindNamed;
  readonly newSuffix: NewSuffix;
};

/**
 * Brings in what another house accepted, as proposals that keep where they came from, each of edits that need each other. With
 * `isLook` it only says what would be. Doing it again proposes nothing twice.
 */
export async function takeChanges(
  ports: Ports,
  changes: SharedChanges,
  isLook: boolean,
): Promise<TakenChanges | Refusal> {
  const refusal = refuseCaller(ports, "bring in proposals of another house");
  if (refusal) return refusal;
  const fault = ports.seals.findFault(changes);
  if (fault !== undefined)
    return { refused: [problem("BROKEN_SEAL", `Nothing was brought in from this file: ${fault}.`)] };
  const { store } = ports;
  const standing = await readStanding(store, changes);
  const plan = planMerge(changes.edits, (edit) => standing.get(idOfEdit(edit)));
  const left: { ids: readonly string[]; why: string }[] = plan.left.map((id) => ({
    ids: [id],
    why: "They withdrew it, and it stands here otherwise than it stood there.",
  }));
  const base = (await store.newestRevision())?.number ?? 0;
  const proposed: Taken[] = [];
  let known = 0;
  for (const group of plan.groups) {
    await nextTurn();
    if (await wasProposed(store, changes.house, group.change)) {
      known++;
      continue;
    }
    const ids = group.change.map(idOfEdit);
    const unfit = await unfitOf(store, group.change);
    if (unfit !== undefined) {
      left.push({ ids, why: unfit.message });
      continue;
    }
    const alike = (await findAlike(store, group.change)).map(({ id }) => id);
    const asked = await proposalOfGroup(ports, changes, group, alike, base);
    const told = taken(group, asked.title, alike);
    if (isLook) {
      proposed.push(told);
      continue;
    }
    // Who takes the same file at the same moment, at whichever server, writes the same card.
    const once = takenWrite(ports.seals.hash(canonicalJson([changes.house, group.change])));
    const made = await makeProposal(ports, asked, [once]);
    if (isRefusal(made) && isTakenMeanwhile(made)) known++;
    else if (isRefusal(made)) left.push({ ids, why: made.refused[0].message });
    else proposed.push({ ...told, id: made.id });
  }
  return { house: changes.house, until: changes.until, proposed, same: plan.same.length, known, left };
}

const isTakenMeanwhile = ({ refused: [{ code, path }] }: Refusal): boolean =>
  code === "CHANGED_MEANWHILE" && path[0] === "cards" && path[1] === TAKEN_CARD;

const taken = (
  { change, changedOnBothSides }: MergeGroup,
  title: string,
  alike: readonly string[],
): Taken => ({
  ...{ title, edits: change.length, alike, changedOnBothSides },
});

async function readStanding(
  store: Store,
  { edits }: SharedChanges,
): Promise<ReadonlyMap<string, NonNullable<Edit["before"]>>> {
  const of = (kind: Edit["kind"]) =>
    edits.filter(({ edit }) => edit.kind === kind).map(({ edit }) => idOfEdit(edit));
  return new Map<string, NonNullable<Edit["before"]>>([
    ...(await store.terms(of("term").map((id) => idOf<"term">(id)))),
    ...(await store.claims(of("claim").map((id) => idOf<"claim">(id)))),
    ...(await store.sources(of("source").map((id) => idOf<"source">(id)))),
  ]);
}

/** Whether the same change of the same house was proposed before, whatever became of it. */
async function wasProposed(store: Store, house: string, change: Change): Promise<boolean> {
  const [first] = change;
  if (first === undefined) return false;
  const cards = await readAll((page) =>
    store.listCards({ kind: PROPOSAL_CARD, key: { name: "edits", value: idOfEdit(first) } }, page),
  );
  return cards
    .map(proposalOf)
    .some((proposal) => proposal.origin?.startsWith(`${house} `) && isSame(proposal.change, change));
}
