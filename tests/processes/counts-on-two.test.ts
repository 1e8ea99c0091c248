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
const IMPACT = "query ($id: ID!) { proposal(id: $id) { impact(pieces: 0) { looked left movedCount } } }";
const SO_FAR = "query ($id: ID!) { proposal(id: $id) { impactSoFar { looked of moved } } }";

/** Right after a start every piece may be touched, and this many take some seconds. */
const EXAMINATIONS = 1500;

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
  // A busy machine may take longer than requests may by themselves.
  const env = { SCRIBELINE_DATA: data, SCRIBELINE_DEADLINE: "250000" };
  const [here, there] = await Promise.all([startServerProcess(env), startServerProcess(env)]);
  const input = { kind: "CORRECTION", title: "Gone", why: "Misread.", change: [{ kind: "claim", before }] };
  const { data: made, sequence } = await askServer(here.url, MAKE, { input });
  const { id } = made.made.proposal;
  const soFar = async () => (await askServer(there.url, SO_FAR, { id }, sequence)).data.proposal.impactSoFar;
  expect(await soFar()).toBeNull();

  const impact = askServer(here.url, IMPACT, { id });
  await expect.poll(soFar).not.toBeNull();
  const first = await soFar();
  expect(first.of).toBeGreaterThan(first.looked);
  expect(first.moved).toBeLessThanOrEqual(first.looked);
  await expect.poll(async () => (await soFar())?.looked ?? 0).toBeGreaterThan(first.looked);
  expect((await impact).data.proposal.impact).toMatchObject({ looked: first.of, left: 0 });
  await expect.poll(soFar).toBeNull();
  for (const server of [here, there]) server.kill("SIGKILL");
});
