import { dirname } from "node:path";
import { expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { writeGraph } from "#server/generator/write-graph.ts";
import { storeFile } from "#server/open-data.ts";
import { readAll } from "#server/ports/read-all.ts";
import type { Store } from "#server/ports/store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { askServer, startServerProcess } from "#tests/support/server-process.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

const MAKE = `mutation ($input: ProposalInput!) { made: makeProposal(input: $input, open: true) {
  ... on ProposalChanged { proposal { id } } ... on Refused { problems { message } } } }`;
const IMPACT = `query ($id: ID!, $after: Int) { proposal(id: $id) {
  impact(pieces: 0, after: $after) { looked reached left movedCount } } }`;
const SO_FAR = "query ($id: ID!) { proposal(id: $id) { impactSoFar { looked of moved } } }";

/** Of so many enough are touched that looking at them takes longer than a count is kept to itself. */
const EXAMINATIONS = 5000;

/** A date that nothing is said of besides. */
async function findPlainClaim(store: Store): Promise<Claim> {
  const dated = await readAll((page) => store.listClaims({ relations: ["introduced"] }, page));
  const exceptions = await readAll((page) => store.listClaims({ relations: ["void when"] }, page));
  const excepted = new Set(exceptions.map((claim) => claim.relation === "void when" && claim.of));
  const found = dated.find(({ id, status }) => status === "accepted" && !excepted.has(id));
  if (found === undefined) throw new Error("Every date has an exception");
  return found;
}

it("[J4] one of two servers on a file tells how far an impact is that the other works out, and nothing once it is there", async () => {
  const data = dirname(temporaryPath());
  const store = answered(await openSqliteStore(storeFile(data)));
  answered(await writeGraph(store, { claims: 2000, claimsATerm: 4, seed: 1, examinations: EXAMINATIONS }));
  const before = await findPlainClaim(store);
  await store.close();
  const env = { SCRIBELINE_DATA: data };
  const [here, there] = await Promise.all([startServerProcess(env), startServerProcess(env)]);
  const input = { kind: "CORRECTION", title: "Gone", why: "Misread.", change: [{ kind: "claim", before }] };
  const { data: made, sequence } = await askServer(here.url, MAKE, { input });
  const { id } = made.made.proposal;
  const soFar = async () => (await askServer(there.url, SO_FAR, { id }, sequence)).data.proposal.impactSoFar;
  expect(await soFar()).toBeNull();

  const seen: { readonly looked: number; readonly of: number; readonly moved: number }[] = [];
  let isOver = false;
  const watching = (async () => {
    while (!isOver) seen.push(...[await soFar()].filter((count) => count !== null));
  })();
  const goes: { readonly looked: number; readonly reached: number; readonly left: number }[] = [];
  while (goes.at(-1)?.left !== 0) {
    const after = goes.at(-1)?.reached ?? null;
    goes.push((await askServer(here.url, IMPACT, { id, after })).data.proposal.impact);
  }
  isOver = true;
  await watching;
  expect(seen.length).toBeGreaterThan(0);
  for (const { looked, of, moved } of seen) {
    expect(of).toBeLessThanOrEqual(EXAMINATIONS);
    expect(looked).toBeLessThanOrEqual(of);
    expect(moved).toBeLessThanOrEqual(looked);
  }
  expect(seen.some(({ looked }) => looked > 0)).toBe(true);
  await expect.poll(soFar).toBeNull();
  for (const server of [here, there]) server.kill("SIGKILL");
});
