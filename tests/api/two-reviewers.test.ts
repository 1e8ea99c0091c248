import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { id } from "#server/domain/ids.ts";
import { MOVED_BY_ONE } from "#server/domain/proposals/review.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { placeInLooking } from "#server/use-cases/ask/place-in-looking.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { type Cookie, openHouse } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";

const MARKED = aPiece({
  region: "region.england",
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});
const MAKE = `mutation ($input: ProposalInput!) { done: makeProposal(input: $input, open: true) {
  ... on ProposalChanged { proposal { id } } ... on Refused { problems { message } }
} }`;
const IMPACT = `query ($id: ID!) { proposal(id: $id) {
  impact(pieces: 2) { looked left movedCount reviewersNeeded moved {
    title lines { says before now } before { report words { headline } labels { term label } } after { report }
  } }
  reviews { by { name } verdict }
} }`;
const SO_FAR = `query ($id: ID!) { proposal(id: $id) { impactSoFar { looked of moved } } }`;
const ACCEPT = `mutation ($id: ID!) { done: decideOnProposal(id: $id, expectedVersion: 1, verdict: ACCEPT) {
  ... on ProposalChanged { stillNeeded proposal { state revision } } ... on Refused { problems { code } }
} }`;

/** Lets the store say nothing of one examination while it is closed. */
function gateOn(store: Store, name: string) {
  let waits: Promise<void> | undefined;
  let open: () => void = () => {};
  const gated: Store = {
    ...store,
    examination: async (asked) => {
      if (asked === name) await waits;
      return store.examination(asked);
    },
  };
  const close = () => {
    waits = new Promise((resolve) => {
      open = resolve;
    });
  };
  return { gated, close, open: () => open() };
}

describe("a change that moves many conclusions", () => {
  let gate: ReturnType<typeof gateOn>;
  let house: Awaited<ReturnType<typeof openHouse>>;
  let [cleo, rolf, zoe]: Cookie[] = [];
  /** What happens just before a revision is kept, once. */
  const meanwhile: { committing?: () => Promise<unknown> } = {};
  beforeAll(async () => {
    const kept = openMemoryStore();
    const store: Store = {
      ...kept,
      commit: async (commit) => {
        const { committing } = meanwhile;
        delete meanwhile.committing;
        await committing?.();
        return kept.commit(commit);
      },
    };
    const names = Array.from({ length: MOVED_BY_ONE + 1 }, (_, n) => id<"examination">(`examination.e${n}`));
    for (const name of names) answered(await store.createExamination(name, MARKED, "2026-01-01T00:00:00Z"));
    names.sort((a, b) => placeInLooking(a) - placeInLooking(b));
    gate = gateOn(store, names[3] as string);
    house = await openHouse({}, gate.gated);
    cleo = await house.join("contributor", "cleo");
    rolf = await house.join("reviewer", "rolf");
    zoe = await house.join("reviewer", "zoe");
  });
  afterAll(() => house.stop());
  const ask = async (who: Cookie | undefined, query: string, variables: object) => {
    const { text } = await post(house.url, { query, variables }, who as Cookie);
    expect(JSON.parse(text).errors).toBeUndefined();
    return JSON.parse(text).data;
  };

  it("[J2] [J4] says so beforehand, and takes two reviewers who are not its maker, each counted once", async () => {
    const { standing } = await ask(cleo, `{ standing(id: "claim.saw") }`, {});
    const [{ before }] = standing;
    const change = [{ kind: "claim", before, after: { ...before, when: "1700" } }];
    const input = { kind: "CORRECTION", title: "Earlier", why: "A bill has it.", change };
    const { proposal } = (await ask(cleo, MAKE, { input })).done;
    const variables = { id: proposal.id };
    const foreseen = (await ask(rolf, IMPACT, variables)).proposal.impact;
    const all = MOVED_BY_ONE + 1;
    expect(foreseen).toMatchObject({ looked: all, left: 0, movedCount: all, reviewersNeeded: 2 });
    expect(foreseen.moved).toHaveLength(2);
    const [{ before: was, after: is, lines }] = foreseen.moved;
    expect(lines[0]).toMatchObject({ before: expect.stringMatching(/too late$/), now: "agrees" });
    expect([was.report.findings[0].label, is.report.findings[0].label]).toEqual([
      "contradictory",
      "consistent",
    ]);
    expect(was.labels).toContainEqual({ term: "feature.round-saw-marks", label: "round saw marks" });

    gate.close();
    const again = ask(rolf, IMPACT, variables);
    const soFar = async (who: Cookie | undefined) => (await ask(who, SO_FAR, variables)).proposal.impactSoFar;
    await vi.waitFor(async () => expect(await soFar(rolf)).toEqual({ looked: 3, of: all, moved: 3 }));
    expect(await soFar(zoe)).toBeNull();
    gate.open();
    // However long it waited, what was looked at until then is told.
    const { looked, left, movedCount } = (await again).proposal.impact;
    expect([looked + left, movedCount]).toEqual([all, looked]);
    expect(await soFar(rolf)).toBeNull();

    const first = { stillNeeded: 1, proposal: { state: "OPEN", revision: null } };
    expect((await ask(rolf, ACCEPT, variables)).done).toEqual(first);
    expect((await ask(rolf, ACCEPT, variables)).done).toEqual(first);
    expect((await house.store.newestRevision())?.number).toBe(1);
    expect((await ask(zoe, ACCEPT, variables)).done).toEqual({
      ...{ stillNeeded: 0, proposal: { state: "ACCEPTED", revision: 2 } },
    });
    const { proposal: ended } = await ask(rolf, IMPACT, variables);
    expect(ended.impact).toBeNull();
    expect(ended.reviews.map(({ by }: { by: { name: string } }) => by.name)).toEqual(["rolf", "rolf", "zoe"]);
  });

  const propose = async (when: string): Promise<{ readonly id: string }> => {
    const { standing } = await ask(cleo, `{ standing(id: "claim.saw") }`, {});
    const [{ before }] = standing;
    const input = {
      ...{ kind: "CORRECTION", title: "Otherwise", why: "A bill has it." },
      change: [{ kind: "claim", before, after: { ...before, when } }],
    };
    return { id: (await ask(cleo, MAKE, { input })).done.proposal.id };
  };
  const change = async (who: Cookie | undefined, what: object) => {
    const { id } = await house.who(who as Cookie);
    const { people } = JSON.parse((await house.act("people", {}, house.owner)).text);
    const { version } = people.find((one: { readonly id: string }) => one.id === id);
    const changed = await house.act("change-person", { id, expectedVersion: version, ...what }, house.owner);
    expect(changed.status).toBe(200);
  };
  const one = { stillNeeded: 1, proposal: { state: "OPEN", revision: null } };

  it("[J2] counts nobody who was shut out or may not review since, and whoever may again", async () => {
    const variables = await propose("1795");
    expect((await ask(rolf, ACCEPT, variables)).done).toEqual(one);
    await change(rolf, { role: "contributor" });
    expect((await ask(zoe, ACCEPT, variables)).done).toEqual(one);
    await change(rolf, { role: "reviewer" });
    expect((await ask(zoe, ACCEPT, variables)).done).toMatchObject({ stillNeeded: 0 });
  });

  it("[J2] counts nobody who is shut out while the last one accepts", async () => {
    const variables = await propose("1700");
    expect((await ask(rolf, ACCEPT, variables)).done).toEqual(one);
    meanwhile.committing = () => change(rolf, { state: "shut out" });
    expect((await ask(zoe, ACCEPT, variables)).done).toEqual(one);
    const ann = await house.join("reviewer", "ann");
    meanwhile.committing = () => change(zoe, { role: "owner" });
    expect((await ask(ann, ACCEPT, variables)).done).toMatchObject({ stillNeeded: 0 });
  });
});
