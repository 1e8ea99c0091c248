import { afterEach, describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import type { Caller } from "#server/domain/people/caller.ts";
import { personWrite } from "#server/domain/people/person.ts";
import { PROPOSAL_CARD, proposalOf } from "#server/domain/proposals/kept-proposal.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openChronicle } from "#tests/support/open-chronicle.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const thing = (name: string) => sawGraph.find(({ after }) => after?.id === name)?.after;
const saw = thing("claim.saw") as Claim;
const plain = thing("claim.plain-saw") as Claim;
const as = (role: Caller["role"]): Caller => ({ id: `person.${role}`, role, via: "session" });
const adze = aTerm("tool.adze");
const onAdze = aClaim({ id: "claim.adze", relation: "introduced", subject: "tool.adze", when: "1700" });

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});
type Changes = Parameters<typeof openChronicle>[0];
const open = async (...more: Changes) => {
  const house = await openChronicle([sawGraph, ...more]);
  closing.push(house.close);
  return house;
};

describe("[I15] what a house gives to another", () => {
  it("is what it accepted since a revision, thing by thing, signed, and holds nothing of persons", async () => {
    const { ask, store } = await open(
      adding(adze, onAdze),
      replacing(saw, { ...saw, when: "1795" } as Claim),
    );
    const deed = { by: "person.ada", at: "2026-02-01T00:00:00.000Z", did: "join" };
    const ada = { name: "Ada Example", role: "owner", state: "active" } as const;
    answered(await store.writeCards({ deed, cards: [personWrite("person.ada", 0, ada)] }));
    answered(await store.commit(aCommit(withdrawing(onAdze), { by: "person.ada", message: "Not so" })));
    const given = await ask("give", { since: 1 }, as("reader"));
    expect(
      given.edits.map(({ revision, message }: { revision: number; message: string }) => [revision, message]),
    ).toEqual([
      [3, "change 3"],
      [2, "change 2"],
    ]);
    expect([given.since.revision, given.until]).toEqual([
      1,
      { revision: 4, hash: (await store.newestRevision())?.hash },
    ]);
    expect(JSON.stringify(given)).not.toMatch(/Ada|person\./);
    expect(await ask("give", { since: 9 })).toMatchObject({ refused: [{ code: "UNKNOWN_REVISION" }] });
  });
});

describe("[I16] what a house takes from another", () => {
  it("becomes proposals that keep where it came from, each of what needs each other", async () => {
    const there = await open(
      adding(adze, onAdze),
      replacing(saw, { ...saw, when: "1795" } as Claim),
      withdrawing(plain),
    );
    const here = await open();
    const changes = await there.ask("give", { since: 1 });
    const looked = await here.ask("take", { changes });
    expect(looked.proposed.map(({ id }: { id?: string }) => id)).toEqual([undefined, undefined, undefined]);
    expect((await here.store.listCards({ kind: PROPOSAL_CARD }, { first: 9 })).total).toBe(0);
    const taken = await here.ask("take", { changes, look: false }, as("contributor"));
    expect(taken).toMatchObject({ house: changes.house, same: 0, known: 0, left: [] });
    const proposals = (await here.store.listCards({ kind: PROPOSAL_CARD }, { first: 9 })).rows.map(
      proposalOf,
    );
    const told = proposals.map(({ kind, change, origin, title, by, state }) => [
      ...[kind, change.length, origin, title, by, state],
    ]);
    expect(told.sort()).toEqual([
      [
        "claim",
        2,
        `${changes.house} revision 2`,
        expect.stringMatching(/^Adze: introduced.* \(and 1 more/),
        "person.contributor",
        "open",
      ],
      [
        "correction",
        1,
        `${changes.house} revision 3`,
        expect.stringMatching(/^Circular saw: .*1795/),
        "person.contributor",
        "open",
      ],
      ["retirement", 1, `${changes.house} revision 4`, expect.any(String), "person.contributor", "open"],
    ]);
    expect(await here.store.newestRevision()).toMatchObject({ number: 1 });
  });

  it("is nothing where the same stands here under the same id, and names what may be here under another", async () => {
    const same = aClaim({
      ...{ id: "claim.other", relation: "introduced", subject: "tool.adze", when: "1700" },
    });
    const there = await open(adding(adze, onAdze));
    const changes = await there.ask("give", { since: 1 });
    const equal = await open(adding(adze, onAdze));
    expect(await equal.ask("take", { changes, look: false })).toMatchObject({
      same: 2,
      proposed: [],
      left: [],
    });
    const other = await open(adding(adze, same));
    const { proposed } = await other.ask("take", { changes, look: false });
    expect(proposed).toMatchObject([{ edits: 1, alike: ["claim.other"] }]);
    const [card] = (await other.store.listCards({ kind: PROPOSAL_CARD }, { first: 9 })).rows;
    expect(card && proposalOf(card).why).toMatch(/may stand here already, as claim\.other/);
  });

  it("says where both changed a thing, and leaves what they withdrew and was changed here", async () => {
    const here = await open(
      replacing(saw, { ...saw, note: "said here" } as Claim),
      replacing(plain, { ...plain, note: "said here" } as Claim),
    );
    const there = await open(replacing(saw, { ...saw, note: "said there" } as Claim), withdrawing(plain));
    const changes = await there.ask("give", { since: 1 });
    const taken = await here.ask("take", { changes, look: false });
    expect(taken).toMatchObject({
      proposed: [{ changedOnBothSides: ["claim.saw"] }],
      left: [{ ids: ["claim.plain-saw"], why: expect.stringMatching(/withdrew it/) }],
    });
  });

  it("is not proposed again once it was declined", async () => {
    const there = await open(adding(adze));
    const here = await open();
    const changes = await there.ask("give", { since: 1 });
    const { proposed } = await here.ask("take", { changes, look: false });
    const card = await here.store.card(PROPOSAL_CARD, proposed[0].id);
    const deed = { by: "person.b", at: "2026-02-01T00:00:00.000Z", did: "decline proposal" };
    const next = { keys: card?.keys ?? {}, body: { ...(card?.body as object), state: "declined" } };
    const write = { kind: PROPOSAL_CARD, id: proposed[0].id, expectedVersion: 1, next };
    answered(await here.store.writeCards({ deed, cards: [write] }));
    expect(await here.ask("take", { changes, look: false })).toMatchObject({ proposed: [], known: 1 });
  });

  it("is proposed once where the same file is taken by two at the same moment", async () => {
    const there = await open(adding(adze, onAdze), adding(aTerm("tool.froe")), withdrawing(plain));
    const store = openMemoryStore();
    // So that each looks before any has written.
    const slow: Store = {
      ...store,
      listCards: async (...asked) => {
        const page = await store.listCards(...asked);
        await new Promise((resolve) => setTimeout(resolve, 5));
        return page;
      },
    };
    const here = await openChronicle([sawGraph], slow);
    closing.push(here.close);
    const changes = await there.ask("give", { since: 1 });
    const both = await Promise.all(
      [1, 2, 3].map((n) =>
        here.ask("take", { changes, look: false }, { ...as("contributor"), id: `person.p${n}` }),
      ),
    );
    const sum = (of: (taken: { proposed: readonly object[]; known: number }) => number) =>
      both.map(of).reduce((all, each) => all + each, 0);
    expect([sum(({ proposed }) => proposed.length), sum(({ known }) => known)]).toEqual([3, 6]);
    expect(both.flatMap(({ left }) => left)).toEqual([]);
    expect((await here.store.listCards({ kind: PROPOSAL_CARD }, { first: 9 })).total).toBe(3);
  });

  it("is refused from readers, if it was changed after it was signed, or is of no sound form", async () => {
    const there = await open(adding(adze));
    const here = await open();
    const changes = await there.ask("give", { since: 1 });
    const code = async (input: object, caller = as("contributor")) =>
      (await here.ask("take", { look: false, ...input }, caller)).refused?.[0]?.code;
    expect(await code({ changes }, as("reader"))).toBe("NOT_ALLOWED");
    const forged = structuredClone(changes);
    forged.edits[0].edit.after.label = "axe";
    expect(await code({ changes: forged })).toBe("BROKEN_SEAL");
    for (const wrong of [
      {},
      [],
      "x",
      { ...changes, edits: [{ edit: { kind: "person" } }] },
      { ...changes, more: 1 },
    ])
      expect(await code({ changes: wrong })).toBe("WRONG_FORMAT");
    expect(await here.store.newestWrite()).toBe(1);
  });
});
