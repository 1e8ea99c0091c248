import { followHouse } from "#tests/support/follow-house.ts";
import type { KillableNeo4j } from "#tests/support/neo4j/start-server.ts";
import { asSetting, newAddress } from "#tests/support/neo4j/store-address.ts";
import { openLiveSocket } from "#tests/support/open-socket.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";
import { askServer, startServerProcess } from "#tests/support/server-process.ts";

const CREATE = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id } } } }`;
const piece = { ...sawnChest, attribution: { date: "1760/1775" }, parts: [], observations: [] };
/** Milliseconds until a change is kept again, and told. */
const LONGEST = 60_000;

/** Kills a Neo4j and starts it again while somebody at one server follows what is made at another: what was made and what was told. */
export async function liveOverRestart(neo4j: KillableNeo4j) {
  const env = { SCRIBELINE_STORE: asSetting(newAddress(neo4j)) };
  const writing = await startServerProcess(env);
  const telling = await startServerProcess(env);
  const follower = await followHouse(() => openLiveSocket(telling.url));
  const made: string[] = [];
  const makeSome = async (until: number): Promise<void> => {
    for (const end = performance.now() + LONGEST; made.length < until && performance.now() < end; ) {
      const { data } = await askServer(writing.url, CREATE, { piece });
      const id = data?.createExamination?.examination?.id as string | undefined;
      if (id !== undefined) made.push(id);
      else await new Promise((resolve) => setTimeout(resolve, 200));
    }
  };
  const told = () => follower.heard.map(({ id }) => id);
  try {
    await makeSome(3);
    await neo4j.kill();
    const whileAway = makeSome(6);
    await new Promise((resolve) => setTimeout(resolve, 1000));
    await neo4j.startAgain();
    await whileAway;
    for (
      const end = performance.now() + LONGEST;
      performance.now() < end && !made.every((id) => told().includes(id));
    )
      await new Promise((resolve) => setTimeout(resolve, 50));
    return { made, told: told(), closings: [...follower.closings] };
  } finally {
    follower.stop();
    for (const server of [writing, telling]) server.kill("SIGKILL");
    await Promise.all([writing.ended, telling.ended]);
  }
}
