import { describe, expect, it } from "vitest";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openHttp, post, send } from "#tests/support/open-http.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const EXAMINE = "query Look($piece: PieceInput!) { examine(piece: $piece) { ... on Examined { report } } }";
const later = adding(
  aClaim({ id: "claim.later", relation: "introduced", subject: "tool.circular-saw", when: "1799" }),
);

/** Tells a walk for the piece from those made ahead of any question. */
const isOfPiece = ({ seeds }: NeighbourhoodAsk): boolean =>
  seeds.length > 0 && seeds.every((seed) => JSON.stringify(sawnChest).includes(`"${seed}"`));

/** A store in memory that counts the walks for the piece that it is asked for, and hands its rows out when it is let. */
function slowStore(): { readonly store: Store; readonly let: () => void; readonly walks: () => number } {
  const inner = openMemoryStore();
  let walks = 0;
  let goOn: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  const store: Store = {
    ...inner,
    neighbourhood: (ask) => {
      if (isOfPiece(ask)) walks++;
      return inner.neighbourhood(ask);
    },
    walkBlocks: async function* (at) {
      await held;
      yield* inner.walkBlocks(at);
    },
  };
  return { store, let: () => goOn(), walks: () => walks };
}

describe("a server with a mirror", () => {
  it("[S51] [H2] is not ready before it is built, says how far it is, and answers all the same", async () => {
    const slow = slowStore();
    const server = await openHttp([sawGraph], {}, slow.store, { untilBuilt: false });
    const ready = () => send(`${server.url}readyz`);
    expect(await ready()).toMatchObject({ status: 503 });
    expect(JSON.parse((await ready()).text).not).toEqual({
      mirror: "is being built, with 0 terms and 0 claims so far",
      search: "has no index yet",
    });
    const look = () => post(server.url, { query: EXAMINE, variables: { piece: sawnChest } });
    const before = await look();
    expect(before.status).toBe(200);
    expect(slow.walks()).toBe(1);
    slow.let();
    await expect.poll(async () => (await ready()).status).toBe(200);
    const after = await look();
    expect(after.text).toBe(before.text);
    await server.stop();
  });

  it("[S52] [H5] shows to who names a write what another process wrote", async () => {
    const slow = slowStore();
    slow.let();
    const server = await openHttp([sawGraph], {}, slow.store);
    answered(await slow.store.commit(aCommit(later)));
    const headers = { "Scribeline-Sequence": String(await slow.store.newestWrite()) };
    const walks = slow.walks();
    const found = await post(
      server.url,
      { query: EXAMINE, variables: { piece: { ...sawnChest, title: "Another" } } },
      headers,
    );
    expect(JSON.parse(found.text).data.examine.report.revision).toBe(2);
    expect(slow.walks()).toBe(walks);
    await server.stop();
  });

  it("[S54] [H10] tells in its numbers where the mirror is and what its checks found", async () => {
    const server = await openHttp([sawGraph]);
    const { text } = await send(`${server.url}metrics`);
    for (const line of [
      "scribeline_mirror_built 1",
      "scribeline_mirror_revision 1",
      "scribeline_mirror_builds_total 1",
      "scribeline_mirror_checks_total 0",
      "scribeline_mirror_differences_total 0",
      "scribeline_mirror_failures_total 0",
    ])
      expect(text.split("\n")).toContain(line);
    await server.stop();
  });

  it("[S51] can do without it", async () => {
    const slow = slowStore();
    const server = await openHttp([sawGraph], { mirror: false }, slow.store);
    expect((await send(`${server.url}readyz`)).text).toBe('{"ready":true}\n');
    await post(server.url, { query: EXAMINE, variables: { piece: sawnChest } });
    expect(slow.walks()).toBe(1);
    expect((await send(`${server.url}metrics`)).text).not.toContain("scribeline_mirror");
    await server.stop();
  });
});
