import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { PROPOSAL_CARD } from "#server/domain/proposals/kept-proposal.ts";
import type { Store } from "#server/ports/store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openChronicle } from "#tests/support/open-chronicle.ts";
import { send } from "#tests/support/open-http.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";
import { askServer, type ServerProcess, startServerProcess } from "#tests/support/server-process.ts";
import { liveOnTwo } from "./live-on-two.ts";
import { faultsIn, recordHistory } from "./record-history.ts";

/** Where several servers keep one store. */
export interface Place {
  readonly env: Readonly<Record<string, string>>;
  /** Opens it as one more program. */
  readonly open: () => Promise<Store>;
}

const TITLE = "query ($id: ID!) { examination(id: $id) { version piece { title } } }";
const CREATE = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
  __typename ... on ExaminationChanged { examination { id version } } } }`;
const CHANGE = `mutation ($id: ID!, $on: Int!, $piece: PieceInput!) {
  changeExamination(id: $id, expectedVersion: $on, piece: $piece) {
    __typename ... on ExaminationChanged { examination { version } } ... on Refused { problems { code } } } }`;
// Of no part and no feature: a piece that suits every graph.
const titled = (title: string) => ({
  ...{ ...sawnChest, attribution: { date: "1760/1775" }, parts: [], observations: [] },
  title,
});

/** Rules H4 to H6, S3, S16, S17, S44 and Z4 to Z6 with two servers as processes of their own, beside a third program. */
export function severalServers(name: string, make: () => Promise<Place> | Place): void {
  describe(`two servers on one store: ${name}`, () => {
    let place: Place;
    let servers: readonly [ServerProcess, ServerProcess];
    beforeAll(async () => {
      place = await make();
      servers = await Promise.all([startServerProcess(place.env), startServerProcess(place.env)]);
    });
    afterAll(async () => {
      for (const server of servers ?? []) server.kill("SIGKILL");
      await Promise.all((servers ?? []).map(({ ended }) => ended));
    });
    const create = async (server: ServerProcess, title: string) => {
      const { data, sequence } = await askServer(server.url, CREATE, { piece: titled(title) });
      return { id: data.createExamination.examination.id as string, sequence };
    };
    const inStore = async <Answer>(what: (store: Store) => Promise<Answer>): Promise<Answer> => {
      const store = await place.open();
      try {
        return await what(store);
      } finally {
        await store.close();
      }
    };

    it("[S17] that start on a new one at the same time seed it once, and both serve it", async () => {
      expect(servers.filter(({ said }) => said().includes("Seeded")).length).toBe(1);
      const query = "{ revision { number hash } terms(first: 1) { totalCount } examinations { totalCount } }";
      const [one, other] = await Promise.all(servers.map(({ url }) => askServer(url, query)));
      expect(one?.data.terms.totalCount).toBeGreaterThan(100);
      expect(other?.data).toEqual(one?.data);
      expect(one?.data.revision.number).toBe(1);
      await inStore(async (store) => expect(await store.verify()).toMatchObject({ revisions: 1 }));
    });

    it("[H4] [H5] [H6] show on the one what was written on the other, to who says what it has seen", async () => {
      let known = 0;
      for (let round = 0; round < 16; round++) {
        const [here, there] = round % 2 === 0 ? servers : [servers[1], servers[0]];
        const { id, sequence } = await create(here, `Round ${round}`);
        expect(sequence).toBeGreaterThan(known);
        known = sequence;
        const seen = await askServer(there.url, TITLE, { id }, sequence);
        expect(seen.data.examination).toEqual({ version: 1, piece: { title: `Round ${round}` } });
        expect(seen.sequence).toBeGreaterThanOrEqual(sequence);
      }
    });

    it("[H5] show what a third program changed in the graph", async () => {
      const sequence = await inStore(async (store) => {
        answered(await store.commit(aCommit(adding(aTerm("tool.of-the-third")))));
        return store.newestWrite();
      });
      const query =
        '{ term(id: "tool.of-the-third") { label } search(words: "third", first: 1) { term { id } } }';
      for (const { url } of servers)
        expect((await askServer(url, query, {}, sequence)).data).toEqual({
          term: { label: "of the third" },
          search: [{ term: { id: "tool.of-the-third" } }],
        });
    });

    it("[S16] [S44] let one of two changes of one examination through, and lose none", async () => {
      const { id } = await create(servers[0], "Begun");
      const rounds = 12;
      for (let on = 1; on <= rounds; on++) {
        const titles = servers.map((_, n) => `Version ${on + 1} by ${n}`);
        const answers = await Promise.all(
          servers.map(({ url }, n) => askServer(url, CHANGE, { id, on, piece: titled(titles[n] ?? "") })),
        );
        const [won, ...alsoWon] = answers.flatMap(({ data }, n) =>
          data.changeExamination.__typename === "ExaminationChanged" ? [n] : [],
        );
        expect(alsoWon).toEqual([]);
        const refused = answers[won === 0 ? 1 : 0]?.data.changeExamination;
        expect(refused).toEqual({ __typename: "Refused", problems: [{ code: "CHANGED_MEANWHILE" }] });
        const sequence = Math.max(...answers.map((answer) => answer.sequence));
        for (const { url } of servers)
          expect((await askServer(url, TITLE, { id }, sequence)).data.examination).toEqual({
            version: on + 1,
            piece: { title: titles[won ?? -1] },
          });
      }
    });

    it("[Z2] [H6] lose no change of six who add to one examination at once on both, and read each version one way", async () => {
      const { id: begun } = await create(servers[0], "Added to by six");
      const urls = servers.map(({ url }) => url);
      const history = await recordHistory(urls, begun, { clients: 6, changes: 8 });
      expect(history.flatMap(({ refused }) => refused)).toEqual([]);
      expect(history.map(({ added }) => added.length)).toEqual(Array(6).fill(8));
      await inStore(async (store) => {
        const stored = answered(await store.examination(id(begun)));
        const parts = stored?.piece.parts.map((part) => part.id) ?? [];
        expect(stored?.version).toBe(1 + 6 * 8);
        expect(faultsIn(history, { version: stored?.version ?? 0, parts })).toEqual([]);
      });
    });

    it("[I16] take the same file of another house at the same moment, and propose each change once", async () => {
      const added = Array.from({ length: 8 }, (_, n) => adding(aTerm(`tool.of-there-${n}`)));
      const there = await openChronicle(added);
      const changes = await there.ask("give", { since: 0 });
      there.close();
      const body = JSON.stringify({ changes, look: false });
      const headers = { "Content-Type": "application/json" };
      const answers = await Promise.all(
        servers.map(({ url }) => send(`${url}chronicle/take`, { method: "POST", headers, body })),
      );
      expect(answers.map(({ status }) => status)).toEqual([200, 200]);
      const [one, two] = answers.map(({ text }) => JSON.parse(text));
      expect(one.proposed.length + two.proposed.length).toBe(8);
      expect(one.known + two.known).toBe(8);
      await inStore(async (store) => {
        const { total } = await store.listCards({ kind: PROPOSAL_CARD }, { first: 1 });
        expect(total).toBe(8);
      });
    });

    liveOnTwo(() => servers);

    it("[S3] go on when one of them is killed while it writes, and keep all that either has acknowledged", async () => {
      const acknowledged: { readonly id: string; readonly title: string }[] = [];
      const counts = [0, 0];
      let isOver = false;
      const writing = servers.map(async (server, n) => {
        for (let k = 0; !isOver; k++) {
          const title = `By ${n}, number ${k}`;
          try {
            acknowledged.push({ id: (await create(server, title)).id, title });
            counts[n] = (counts[n] ?? 0) + 1;
          } catch (failure) {
            if (n === 0) return;
            throw failure;
          }
        }
      });
      await expect.poll(() => Math.min(...counts)).toBeGreaterThan(8);
      servers[0].kill("SIGKILL");
      await servers[0].ended;
      const then = counts[1] ?? 0;
      await expect.poll(() => counts[1]).toBeGreaterThan(then + 8);
      isOver = true;
      await Promise.all(writing);

      const again = await startServerProcess(place.env);
      servers = [again, servers[1]];
      const newest = (await askServer(servers[1].url, "{ __typename }")).sequence;
      for (const { url } of servers)
        expect((await askServer(url, "{ __typename }", {}, newest)).status).toBe(200);
      await inStore(async (store) => {
        for (const { id: written, title } of acknowledged)
          expect((await store.examination(id(written)))?.piece.title).toBe(title);
        expect(await store.verify()).toHaveProperty("head");
        const writes = await store.writesAfter(0, 100_000);
        expect(writes.map(({ sequence }) => sequence)).toEqual(writes.map((_, n) => n + 1));
      });
    });
  });
}
