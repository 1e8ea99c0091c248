import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Caller } from "#server/domain/people/caller.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { findProposal } from "#server/use-cases/ask/find-proposal.ts";
import { anyWork, HANDS, TOOLS, type Tool, type Try } from "#tests/support/any-hands.ts";
import { adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { ModelOfHands } from "#tests/support/model-of-hands.ts";
import { openApi } from "#tests/support/open-api.ts";

const RUNS = Number(process.env["HANDS_RUNS"] ?? 150);

const DONE = `{ ... on ProposalChanged { proposal { id version } } ... on Refused { problems { code } } }`;
const MAKE = `mutation ($input: ProposalInput!, $open: Boolean!) { done: makeProposal(input: $input, open: $open) ${DONE} }`;
const OWN = {
  change: `mutation ($id: ID!, $on: Int!, $changes: ProposalChanges!) { done: changeProposal(id: $id, expectedVersion: $on, changes: $changes) ${DONE} }`,
  open: `mutation ($id: ID!, $on: Int!) { done: openProposal(id: $id, expectedVersion: $on) ${DONE} }`,
  withdraw: `mutation ($id: ID!, $on: Int!) { done: withdrawProposal(id: $id, expectedVersion: $on) ${DONE} }`,
} as const;
const DECIDE = `mutation ($id: ID!, $on: Int!, $verdict: Verdict!, $reason: String!) {
  done: decideOnProposal(id: $id, expectedVersion: $on, verdict: $verdict, reason: $reason) ${DONE}
}`;
const VERDICT = { accept: "ACCEPT", decline: "DECLINE", "ask for changes": "ASK_FOR_CHANGES" } as const;

const callerOf = (who: number): Caller => {
  const hand = HANDS[who];
  if (hand === undefined) throw new Error(`There is nobody ${who}`);
  return { ...hand, via: "session" };
};
const toolNoted = (tool: Tool, note: string) => aTerm(tool, { note });
const renoted = (tool: Tool, from: string, to: string) =>
  replacing(toolNoted(tool, from), toolNoted(tool, to));

/** A house, and the same on paper; `take` lets somebody try something in both, and says whether the house did it. */
async function openBoth() {
  const model = new ModelOfHands();
  const api = await openApi([adding(...TOOLS.map((tool) => toolNoted(tool, "0")))]);
  const ids: string[] = [];

  const request = (tried: Try, note: string): readonly [string, Record<string, unknown>] | undefined => {
    const why = tried.does === "make" && !tried.saysWhy ? "" : "It was seen so.";
    if (tried.does === "make") {
      const change = renoted(tried.tool, model.notes[tried.tool], note);
      return [MAKE, { input: { kind: "TERM", title: "A note", why, change }, open: tried.isOpen }];
    }
    const at = tried.which % Math.max(1, ids.length);
    const proposal = model.proposals[at];
    if (proposal === undefined) return undefined;
    const on = proposal.version - Number(tried.isStale);
    const named = { id: ids[at], on };
    if (tried.does === "change")
      return [
        OWN.change,
        { ...named, changes: { change: renoted(proposal.tool, model.notes[proposal.tool], note) } },
      ];
    if (tried.does === "open" || tried.does === "withdraw") return [OWN[tried.does], named];
    return [DECIDE, { ...named, verdict: VERDICT[tried.does], reason: tried.saysWhy ? "So." : "" }];
  };

  const take = async (tried: Try) => {
    const note = model.newNote();
    const asked = request(tried, note);
    const expected = asked !== undefined && model.does(tried, note);
    if (asked === undefined) return;
    const before = await api.store.newestWrite();
    const { data, errors } = await api.ask(...asked, callerOf(tried.who));
    expect(errors, "a defect").toEqual([]);
    const made = data.done.proposal;
    expect(made !== undefined, `${JSON.stringify(tried)}: ${JSON.stringify(data.done)}`).toBe(expected);
    if (tried.does === "make" && made) ids.push(made.id);
    // What is done is one write, and what is refused leaves no trace in the evidence or the proposals.
    if (made) expect(await api.store.newestWrite()).toBe(before + 1);
  };
  return { model, store: api.store, ids, take };
}

const notesAt = async (store: Store, revision: number): Promise<Record<string, string | undefined>> => {
  const terms = await store.terms(
    TOOLS.map((tool) => id<"term">(tool)),
    revision,
  );
  return Object.fromEntries(TOOLS.map((tool) => [tool, terms.get(id<"term">(tool))?.note]));
};

describe("several people at one graph", () => {
  it(`[J1] [J2] [J3] do what a plain model says, and every revision reads as on its day (${RUNS} histories)`, async () => {
    await fc.assert(
      fc.asyncProperty(anyWork, async (work) => {
        const { model, store, ids, take } = await openBoth();
        for (const tried of work) await take(tried);
        expect((await store.newestRevision())?.number).toBe(model.revisions.length);
        for (const [index, notes] of model.revisions.entries())
          expect(await notesAt(store, index + 1)).toEqual(notes);
        for (const [who] of HANDS.entries())
          for (const [index, { by, state, version, neverOpened }] of model.proposals.entries()) {
            const seen = await findProposal({ store, caller: callerOf(who) }, ids[index] ?? "");
            const isHidden = (state === "draft" || neverOpened === true) && by !== who;
            expect(seen && { state: seen.state, version: seen.version }).toEqual(
              isHidden ? undefined : { state, version },
            );
          }
        expect(isProblem(await store.verify())).toBe(false);
      }),
      { numRuns: RUNS },
    );
  }, 600_000);
});
