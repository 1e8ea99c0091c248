import type { CardWrite } from "../../domain/card.ts";
import type { Change } from "../../domain/change.ts";
import { sharesTheHouse } from "../../domain/people/caller.ts";
import { ENTRY_CARD } from "../../domain/people/entry.ts";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import { checkLength, LONGEST_TEXT } from "../../domain/proposals/check-words.ts";
import type { KeptProposal } from "../../domain/proposals/kept-proposal.ts";
import { isPrivate, type Proposal } from "../../domain/proposals/proposal.ts";
import {
  agreedOn,
  REVIEW_CARD,
  type Review,
  reviewersNeeded,
  reviewOf,
  reviewWrite,
  type Verdict,
} from "../../domain/proposals/review.ts";
import { stateAfter } from "../../domain/proposals/step.ts";
import type { Revision } from "../../domain/revision.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { findProposal, unknownProposal } from "../ask/find-proposal.ts";
import { previewChange } from "../ask/preview-change.ts";
import { cardOfProposal } from "../card-of-proposal.ts";
import { isRefusal, type Refusal, refusalFrom } from "../refusal.ts";
import { refuseOtherVersion } from "../refuse-other-version.ts";
import { findNewlyNamed } from "../unfit-of.ts";
import { whoStillAgrees } from "./who-still-agrees.ts";

type Ports = Acting & {
  readonly store: Store;
  readonly standings: Standings;
  readonly newSuffix: NewSuffix;
};

/** What a reviewer decided, and what it led to. */
export interface Decided {
  readonly proposal: KeptProposal;
  readonly review: Review;
  /** The revision that accepting made. */
  readonly revision?: Revision;
  /** Reviewers who still have to agree, as the change moves many conclusions. */
  readonly stillNeeded: number;
}

/** Says what one reviewer makes of a proposal. Accepting makes a revision as soon as enough reviewers agree. */
export async function decideOnProposal(
  ports: Ports,
  id: string,
  expectedVersion: number,
  { verdict, reason, supersededBy }: { verdict: Verdict; reason: string; supersededBy?: string },
): Promise<Decided | Refusal> {
  const { store, caller } = ports;
  const isShared = caller !== undefined && sharesTheHouse(caller);
  const unable = refuseCaller(ports, "decide on a proposal");
  if (unable) return unable;
  const proposal = await findProposal(ports, id);
  if (proposal === undefined) return { refused: [unknownProposal(id)] };
  const refusal =
    refuseCaller(ports, "decide on a proposal", { by: proposal.by, isShared }) ??
    refusalFrom(checkReason(verdict, reason)) ??
    (verdict === "supersede" ? await refuseSuccessor(ports, id, supersededBy) : undefined);
  if (refusal) return refusal;
  const changed = refuseOtherVersion("proposal", proposal, expectedVersion);
  if (changed) return changed;
  const state = stateAfter(proposal, verdict);
  if (isProblem(state)) return { refused: [state] };
  const along = signed(ports, `${verdict} proposal`, id);
  const { by, at } = along.deed;
  const review: Review = { proposal: id, version: expectedVersion, by, at, verdict, reason };
  const reviewed = reviewWrite(`${id}.${at}-${ports.newSuffix()}`, review);
  const { id: _, version: __, ...before } = proposal;
  const keep = (next: Proposal) => cardOfProposal(ports, id, expectedVersion, next);

  if (verdict === "accept") {
    const others = isShared ? (await reviewersFor(ports, proposal.change)) - 1 : 0;
    if (!isShared || others === 0) return accept([]);
    for (let time = 1; ; time++) {
      const earlier = await readAll((page) =>
        store.listCards({ kind: REVIEW_CARD, key: { name: "proposal", value: id } }, page),
      );
      const agreed = agreedOn(earlier.map(reviewOf), expectedVersion).filter((one) => one !== by);
      const { persons, cards } = await whoStillAgrees(store, agreed, proposal.by);
      if (persons.length < others) {
        const written = await store.writeCards({ ...along, cards: [reviewed] });
        if (isProblem(written)) return { refused: [written] };
        return { proposal, review, stillNeeded: others - persons.length };
      }
      const accepted = await accept(cards);
      if (!isRefusal(accepted) || time === MOST_TIMES || !isOfPerson(accepted)) return accepted;
    }
  }
  const next: Proposal = {
    ...before,
    state,
    changedAt: at,
    ...(supersededBy === undefined ? {} : { supersededBy }),
  };
  const written = await store.writeCards({ ...along, cards: [await keep(next), reviewed] });
  if (isProblem(written)) return { refused: [written] };
  return { proposal: { id, version: expectedVersion + 1, ...next }, review, stillNeeded: 0 };

  /** The revision and the end of the proposal are written in one step, with what holds those who agreed before. */
  async function accept(holds: readonly CardWrite[]): Promise<Decided | Refusal> {
    const newest = (await store.newestRevision())?.number ?? 0;
    const unfit = await findNewlyNamed(store, before.change);
    if (unfit) return { refused: [unfit] };
    const next: Proposal = { ...before, state: "accepted", changedAt: at, revision: newest + 1 };
    const revision = await store.commit({
      ...{ change: next.change, expected: newest, at, by: next.by, message: next.title },
      ...along,
      cards: [await keep(next), reviewed, ...holds],
    });
    if (isProblem(revision)) return { refused: [revision] };
    return { proposal: { id, version: expectedVersion + 1, ...next }, review, revision, stillNeeded: 0 };
  }
}

/** Times that it is looked anew who agrees still, where one of them was changed meanwhile. */
const MOST_TIMES = 5;
const isOfPerson = ({ refused: [{ code, path }] }: Refusal): boolean =>
  code === "CHANGED_MEANWHILE" && path[0] === "cards" && path[1] === ENTRY_CARD;

const checkReason = (verdict: Verdict, reason: string): readonly Problem[] =>
  verdict !== "accept" && reason.trim() === ""
    ? [problem("EMPTY_LIST", "Say why, so that whoever made it can learn from it.", ["reason"])]
    : checkLength("reason", reason, LONGEST_TEXT);

/** What takes the place of a proposal is another one that others see too. */
async function refuseSuccessor(ports: Ports, id: string, successor: string | undefined) {
  const found = successor === undefined ? undefined : await findProposal(ports, successor);
  if (found !== undefined && found.id !== id && !isPrivate(found)) return undefined;
  const place = ["supersededBy"];
  return refusalFrom([
    problem(
      "UNKNOWN_PROPOSAL",
      "Name the other proposal, open or accepted, that takes the place of this one.",
      place,
    ),
  ]);
}

/** How many reviewers a change takes: no more is looked at than it takes to know. */
async function reviewersFor(ports: Parameters<typeof previewChange>[0], change: Change): Promise<1 | 2> {
  const known = new AbortController();
  const { shifted } = await previewChange(ports, change, {
    stop: known.signal,
    onLooked: (_, __, moved) => reviewersNeeded(moved) > 1 && known.abort(),
  });
  return reviewersNeeded(shifted.length);
}
