import { beforeEach, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Caller, Role } from "#server/domain/people/caller.ts";
import type { KeptProposal, ProposalFilter } from "#server/domain/proposals/kept-proposal.ts";
import type { Standings } from "#server/ports/standings.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { findProposal } from "#server/use-cases/ask/find-proposal.ts";
import { listProposals, listProposalsOn, listToReview } from "#server/use-cases/ask/list-proposals.ts";
import { changeProposal } from "#server/use-cases/do/change-proposal.ts";
import { type Decided, decideOnProposal } from "#server/use-cases/do/decide-on-proposal.ts";
import { type Asked, MOST_UNDECIDED, makeProposal } from "#server/use-cases/do/make-proposal.ts";
import { isRefusal, type Refusal } from "#server/use-cases/refusal.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";

const saw = aTerm("tool.saw");
const mark = aTerm("feature.mark");
const asked = (rest: Partial<Asked> = {}): Asked => ({
  ...{ kind: "term", title: "Say what it is", why: "Nobody could tell.", base: 1, state: "open" },
  change: replacing(saw, aTerm("tool.saw", { note: "Toothed." })),
  ...rest,
});
const untouched = { touchedBy: async () => [] } as unknown as Standings;

describe("proposals", () => {
  let store: Store;
  let count = 0;
  beforeEach(async () => {
    store = openMemoryStore();
    count = 0;
    answered(
      await store.commit(
        aCommit(
          adding(saw, mark, aTerm("region.world"), aTerm("region.england", { broader: "region.world" })),
        ),
      ),
    );
  });
  const as = (role: Role, person = `person.${role}`, isShared = true) => ({
    store,
    caller: { id: person, role, via: isShared ? "session" : "loopback" } satisfies Caller,
    now: () => new Date(Date.UTC(2026, 10, 25, 10, 0, count++)).toISOString(),
    newSuffix: () => `s${count}`,
    standings: untouched,
  });
  const made = <Answer extends object>(answer: Answer | Refusal): Answer => {
    if (isRefusal(answer)) throw new Error(answer.refused[0].message);
    return answer;
  };
  const codes = (answer: object): readonly string[] =>
    isRefusal(answer) ? answer.refused.map(({ code }) => code) : [];
  const make = async (rest?: Partial<Asked>): Promise<KeptProposal> =>
    made(await makeProposal(as("contributor"), asked(rest)));
  const decide = (
    proposal: KeptProposal,
    verdict: "accept" | "decline" | "ask for changes",
    who = as("reviewer"),
    reason = "Because.",
  ) => decideOnProposal(who, proposal.id, proposal.version, { verdict, reason });

  it("[J1] are made by contributors, and found by state, maker and region with all above it", async () => {
    const claim = aClaim({
      id: "claim.1",
      relation: "introduced",
      subject: "feature.mark",
      when: "1830",
      region: "region.england",
    });
    const proposal = await make({ kind: "claim", change: adding(claim) });
    expect(await findProposal(as("reader"), proposal.id)).toEqual(proposal);
    const england = id<"term">("region.england");
    for (const filter of [
      {},
      { state: "open" },
      { by: "person.contributor" },
      { kind: "claim" },
      { region: id<"term">("region.world") },
      { state: "open", by: "person.contributor", kind: "claim", region: england },
    ] satisfies ProposalFilter[])
      expect((await listProposals(as("reader"), filter, { first: 9 })).rows).toEqual([proposal]);
    for (const filter of [
      { state: "accepted", kind: "claim" },
      { kind: "term", region: england },
    ] satisfies ProposalFilter[])
      expect((await listProposals(as("reader"), filter, { first: 9 })).rows).toEqual([]);
    expect(await listProposalsOn(as("reader"), "claim.1")).toEqual([proposal]);
    expect(codes(await makeProposal(as("reader"), asked()))).toEqual(["NOT_ALLOWED"]);
    expect(await store.newestRevision()).toMatchObject({ number: 1 });
  });

  it("[J1] are refused where the graph would refuse them, unless they are drafts", async () => {
    const unfit = { change: adding(saw), why: " " };
    expect(codes(await makeProposal(as("contributor"), asked(unfit)))).toEqual([
      "EMPTY_LIST",
      "STALE_CHANGE",
    ]);
    const draft = await make({ ...unfit, state: "draft" });
    expect(codes(await changeProposal(as("contributor"), draft.id, 1, "open"))).toContain("STALE_CHANGE");
    const opened = await changeProposal(as("contributor"), draft.id, 1, "open", asked());
    expect(made(opened)).toMatchObject({ version: 2, state: "open" });
  });

  it("[J3] of one person that wait are bounded, however many are sent; listed in pages, and others get in", async () => {
    let refused = 0;
    for (let n = 0; n < MOST_UNDECIDED + 20; n++) {
      const state = n % 2 === 0 ? "draft" : "open";
      const answer = await makeProposal(as("contributor"), asked({ state }));
      if (codes(answer).includes("TRY_LATER")) refused++;
    }
    expect(refused).toBe(20);
    const page = await listToReview(as("reviewer"), {}, { first: 20 });
    expect([page.rows.length, page.total, page.hasMore]).toEqual([20, MOST_UNDECIDED / 2, true]);
    expect((await listProposals(as("reviewer"), {}, { first: 9 })).total).toBe(MOST_UNDECIDED / 2);
    made(await makeProposal(as("contributor", "person.other"), asked()));
    const [last] = (await listProposals(as("contributor"), { by: "person.contributor" }, { first: 1 })).rows;
    made(await changeProposal(as("contributor"), last?.id ?? "", 1, "withdraw"));
    made(await makeProposal(as("contributor"), asked()));
  });

  it("[J1] are seen by their makers alone where they were taken back as drafts", async () => {
    const draft = await make({ state: "draft" });
    made(await changeProposal(as("contributor"), draft.id, 1, "withdraw"));
    const by = draft.by;
    for (const filter of [
      {},
      { state: "withdrawn" },
      { by },
      { state: "withdrawn", by },
    ] satisfies ProposalFilter[])
      expect((await listProposals(as("owner"), filter, { first: 9 })).rows).toEqual([]);
    expect(await findProposal(as("owner"), draft.id)).toBeUndefined();
    const [kept] = (await listProposals(as("contributor"), { by }, { first: 9 })).rows;
    expect(kept).toMatchObject({ id: draft.id, state: "withdrawn" });
  });

  it("[J1] are seen as drafts by their makers alone, and changed by them alone", async () => {
    const draft = await make({ state: "draft" });
    expect(await findProposal(as("owner"), draft.id)).toBeUndefined();
    expect(codes(await changeProposal(as("owner"), draft.id, 1, "open"))).toEqual(["UNKNOWN_PROPOSAL"]);
    const open = await make();
    expect(codes(await changeProposal(as("owner"), open.id, 1, "withdraw"))).toEqual(["NOT_ALLOWED"]);
    expect(codes(await changeProposal(as("contributor"), open.id, 7, "withdraw"))).toEqual([
      "CHANGED_MEANWHILE",
    ]);
    expect(made(await changeProposal(as("contributor"), open.id, 1, "withdraw"))).toMatchObject({
      state: "withdrawn",
    });
  });

  it("[J2] accepted make a revision under the name of their maker, in one step with their end", async () => {
    const proposal = await make();
    const { revision, proposal: ended } = made(await decide(proposal, "accept"));
    expect(revision).toMatchObject({ number: 2, by: "person.contributor", message: "Say what it is" });
    expect(ended).toMatchObject({ state: "accepted", revision: 2, version: 2 });
    expect((await store.writesAfter(0, 9)).at(-1)).toMatchObject({
      revision: 2,
      deed: { by: "person.reviewer", did: "accept proposal", about: proposal.id },
      cards: [{ kind: "proposal" }, { kind: "review" }],
    });
    expect(codes(await decide(ended, "decline"))).toEqual(["WRONG_STATE"]);
    answered(await store.verify());
  });

  it("[J2] are not decided by readers, contributors, or whoever made them in a shared house", async () => {
    const proposal = await make();
    expect(codes(await decide(proposal, "accept", as("contributor", "person.other")))).toEqual([
      "NOT_ALLOWED",
    ]);
    expect(codes(await decide(proposal, "accept", as("owner", "person.contributor")))).toEqual([
      "NOT_ALLOWED",
    ]);
    const alone = as("owner", "person.contributor", false);
    expect(made<Decided>(await decide(proposal, "accept", alone)).revision?.number).toBe(2);
  });

  it("[J1] [J2] stay decided, also where their maker changes them at that moment on the version to come", async () => {
    const made = await make();
    const changing = as("contributor");
    let hasDecided = false;
    // Between what the maker's change reads and what it writes the proposal is declined.
    const racing: Store = {
      ...store,
      writeCards: async (along) => {
        if (!hasDecided) {
          hasDecided = true;
          await decide(made, "decline");
        }
        return store.writeCards(along);
      },
    };
    for (const on of [made.version + 1, made.version])
      expect(
        codes(await changeProposal({ ...changing, store: racing }, made.id, on, "change", { title: "Mine" })),
      ).toEqual(["CHANGED_MEANWHILE"]);
    expect(await findProposal(as("reader"), made.id)).toMatchObject({ state: "declined", version: 2 });
  });

  it("[J2] that no longer fit are refused and stay open; declining and asking for changes want a reason", async () => {
    const proposal = await make();
    expect(codes(await decide(proposal, "decline", as("reviewer"), " "))).toEqual(["EMPTY_LIST"]);
    answered(await store.commit(aCommit(withdrawing(saw))));
    expect(codes(await decide(proposal, "accept"))).toEqual(["STALE_CHANGE"]);
    expect(await findProposal(as("reader"), proposal.id)).toMatchObject({ state: "open", version: 1 });
    const back = made<Decided>(await decide(proposal, "ask for changes"));
    expect(back.proposal.state).toBe("changes asked for");
    expect(codes(await decide(back.proposal, "accept"))).toEqual(["WRONG_STATE"]);
    const change = adding(aTerm("tool.plane"));
    const again = made(await changeProposal(as("contributor"), proposal.id, 2, "open", { change, base: 2 }));
    expect(codes(await decide(proposal, "accept"))).toEqual(["CHANGED_MEANWHILE"]);
    expect(made<Decided>(await decide(again, "accept")).revision?.number).toBe(3);
  });
});
