import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { isProblem } from "#server/domain/problem.ts";
import { PROPOSAL_CARD, proposalOf } from "#server/domain/proposals/kept-proposal.ts";
import type { SharedChanges } from "#server/domain/sharing/shared-changes.ts";
import { readAll } from "#server/ports/read-all.ts";
import type { Store } from "#server/ports/store.ts";
import type { TakenChanges } from "#server/use-cases/chronicle/take-changes.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openChronicle } from "#tests/support/open-chronicle.ts";

const closing: (() => void)[] = [];
afterAll(() => {
  for (const close of closing.splice(0)) close();
});
type House = Awaited<ReturnType<typeof openChronicle>>;
async function open(changes: readonly Change[]): Promise<House> {
  const house = await openChronicle(changes);
  closing.push(house.close);
  return house;
}

/** All that stands, by id. */
async function graphOf(store: Store): Promise<ReadonlyMap<string, unknown>> {
  const things: { readonly id: string }[] = [];
  for await (const slice of store.allTerms({})) things.push(...slice);
  for await (const slice of store.allClaims({})) things.push(...slice);
  things.push(...(await readAll((page) => store.listSources(page))));
  return new Map(
    things.map((thing) => [thing.id, thing]).sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)) as [
      string,
      unknown,
    ][],
  );
}

/** Takes what the other house accepted since a revision, and accepts all that is proposed. */
async function takeAndAccept(from: House, into: House, since: number): Promise<TakenChanges> {
  const changes: SharedChanges = await from.ask("give", { since });
  const taken: TakenChanges = await into.ask("take", { changes, look: false });
  for (const { id } of taken.proposed) {
    const card = await into.store.card(PROPOSAL_CARD, id ?? "");
    const { change } = proposalOf(card ?? (undefined as never));
    answered(await into.store.commit(aCommit(change, { at: "2026-03-01T00:00:00.000Z" })));
  }
  return taken;
}

/** What another house makes of the same beginning: claims withdrawn or said otherwise, and something of its own. */
const elsewhere = fc.array(fc.tuple(fc.nat(15), fc.nat(2)), { minLength: 1, maxLength: 5 });

async function diverge(store: Store, edits: readonly (readonly [number, number])[]): Promise<void> {
  for (const [n, [pick, what]] of edits.entries()) {
    const { rows } = await store.listClaims({}, { first: 99 });
    const claim = rows[pick % Math.max(1, rows.length)];
    const term = aTerm(`tool.elsewhere-${n}`);
    const own = aClaim({
      id: `claim.elsewhere-${n}`,
      relation: "introduced",
      subject: term.id,
      when: "1790",
    });
    const change =
      what === 0 || claim === undefined
        ? adding(term, own)
        : what === 1
          ? withdrawing(claim)
          : replacing(claim, { ...claim, note: `said elsewhere ${n}` });
    const made = await store.commit(
      aCommit(change, { at: "2026-02-01T00:00:00.000Z", message: "elsewhere" }),
    );
    // A claim that has exceptions cannot be withdrawn alone.
    if (isProblem(made) && what !== 1) throw new Error(made.message);
  }
}

describe("[I16] two houses", () => {
  it("that take from each other what the other accepted come to the same graph, but for what is named as left", async () => {
    await fc.assert(
      fc.asyncProperty(anyHistory, elsewhere, async ({ changes }, edits) => {
        const [first, ...rest] = changes as [Change, ...Change[]];
        const [here, there] = [await open([first, ...rest]), await open([first])];
        await diverge(there.store, edits);
        let left: string[] = [];
        for (let round = 0; round < 3; round++) {
          const taken = [await takeAndAccept(there, here, 1), await takeAndAccept(here, there, 1)];
          left = taken.flatMap((one) => one.left.flatMap(({ ids }) => ids));
        }
        const [mine, theirs] = [await graphOf(here.store), await graphOf(there.store)];
        const differing = [...new Set([...mine.keys(), ...theirs.keys()])].filter(
          (id) => JSON.stringify(mine.get(id)) !== JSON.stringify(theirs.get(id)),
        );
        expect(differing.filter((id) => !left.includes(id))).toEqual([]);
        here.close();
        there.close();
      }),
      { numRuns: 60 },
    );
  });

  it("that give and take twice change nothing the second time, accepted or not", async () => {
    await fc.assert(
      fc.asyncProperty(anyHistory, elsewhere, async ({ changes }, edits) => {
        const first = changes[0] as Change;
        const [here, there] = [await open([first]), await open([first])];
        await diverge(there.store, edits);
        const given = await there.ask("give", { since: 1 });
        const once: TakenChanges = await here.ask("take", { changes: given, look: false });
        const before = await here.store.newestWrite();
        const twice: TakenChanges = await here.ask("take", { changes: given, look: false });
        expect([twice.proposed, twice.known]).toEqual([[], once.proposed.length]);
        expect(await here.store.newestWrite()).toBe(before);
        await acceptAll(here);
        const after = await here.store.newestWrite();
        const last: TakenChanges = await here.ask("take", { changes: given, look: false });
        expect([last.proposed, last.left, last.same]).toEqual([[], [], given.edits.length]);
        expect(await here.store.newestWrite()).toBe(after);
        here.close();
        there.close();
      }),
      { numRuns: 40 },
    );
  });
});

/** Accepts all that was proposed in a house. */
async function acceptAll(house: House): Promise<void> {
  const cards = await readAll((page) => house.store.listCards({ kind: PROPOSAL_CARD }, page));
  for (const { change } of cards.map(proposalOf))
    answered(await house.store.commit(aCommit(change, { at: "2026-03-01T00:00:00.000Z" })));
}
