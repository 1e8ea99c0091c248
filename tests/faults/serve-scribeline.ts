import { createServer } from "node:http";
import { withinDeadline } from "#server/api/limits/within-deadline.ts";
import { readConfig } from "#server/config.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readBody } from "#server/http/read-body.ts";
import { logToStderr } from "#server/log-to-stderr.ts";
import { startServer } from "#server/main.ts";
import { openStore } from "#server/open-data.ts";
import { tablesOf } from "#server/ports/reference-tables.ts";
import type { Commit } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { refuse } from "#server/refuse.ts";

/**
 * Program for the tests of faults: the server over the store that the settings name, without a seed, and beside it a door
 * for changes of the graph, which no page makes yet. Says where both are, in one line. SIGTERM ends it.
 */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  if (!("port" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: false });
  if (isProblem(store)) return refuse(store);
  const server = await startServer({ config, store, tables: tablesOf([]), log: logToStderr });
  const door = createServer(async (request, response) => {
    const body = await readBody(request, 100_000_000);
    const commit = JSON.parse(typeof body === "string" ? "{}" : body.text) as Commit;
    const answer = await withinDeadline(store, config.deadline, () => performance.now())
      .commit(commit)
      .catch((failure: unknown) => {
        if (failure instanceof StoreFailed) return failure.problem;
        return { defect: failure instanceof Error ? failure.stack : String(failure) };
      });
    response.setHeader("Content-Type", "application/json");
    response.end(JSON.stringify(answer));
  });
  door.listen(0, "127.0.0.1", () => {
    const at = door.address();
    const port = typeof at === "object" && at !== null ? at.port : 0;
    process.stdout.write(`${JSON.stringify({ url: server.url, commits: `http://127.0.0.1:${port}/` })}\n`);
  });
  process.once("SIGTERM", () => {
    door.close();
    server.stop().then(() => process.exit(0));
  });
}

await main();
