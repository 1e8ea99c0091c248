import { randomInt } from "node:crypto";
import packageJson from "../package.json" with { type: "json" };
import { keepResults } from "./again/keep-results.ts";
import { createContext } from "./api/context.ts";
import { createApollo } from "./api/create-apollo.ts";
import { withinDeadline } from "./api/limits/within-deadline.ts";
import { tellOperations } from "./api/tell-operations.ts";
import type { Config } from "./config.ts";
import { closeGently } from "./http/close-gently.ts";
import { createHttpServer } from "./http/create-http-server.ts";
import { listen, printUrl } from "./http/listen.ts";
import { operationNames } from "./http/operation-names.ts";
import { serveGraphql } from "./http/serve-graphql.ts";
import { serveMetrics } from "./http/serve-metrics.ts";
import { serveWeb } from "./http/serve-web.ts";
import { openMetrics } from "./metrics/open-metrics.ts";
import type { Log } from "./ports/log.ts";
import type { ReferenceTables } from "./ports/reference-tables.ts";
import type { Store } from "./ports/store.ts";
import { openWeigher } from "./weigher/open-weigher.ts";

export interface RunningServer {
  readonly url: string;
  /** Lets requests under way end, then closes the server and the store. */
  stop(): Promise<void>;
}

/** Eight letters and digits: 41 bits. */
const newSuffix = (): string =>
  randomInt(36 ** 8)
    .toString(36)
    .padStart(8, "0");

/**
 * Starts a server over an open store, which is the server's from now on. Rejects with the error of the socket if it
 * cannot listen (`EADDRINUSE`); the store is closed then too.
 */
export async function startServer({
  config,
  store,
  tables,
  log,
}: {
  readonly config: Config;
  readonly store: Store;
  readonly tables: ReferenceTables;
  readonly log: Log;
}): Promise<RunningServer> {
  const now = () => performance.now();
  const metrics = openMetrics(
    { store, weigher: openWeigher() },
    { version: packageJson.version, node: process.version, store: store.name },
    operationNames(config.webFolder),
    now,
  );
  const { weigher } = metrics;
  const apollo = createApollo({
    highestCost: config.highestCost,
    ...{ log, newSuffix, plugins: [tellOperations(metrics.operationEnded, now)] },
  });
  await apollo.start();
  let stopping: Promise<void> | undefined;
  const results = keepResults();
  const contextOfRequest = (stop: AbortSignal) =>
    createContext(
      {
        store: withinDeadline(metrics.store, config.deadline, now),
        tables,
        now: () => new Date().toISOString(),
        ...{ newSuffix, weigher, results },
      },
      stop,
    );
  const server = createHttpServer(
    {
      graphql: serveGraphql(apollo, contextOfRequest, config),
      web: serveWeb(config.webFolder),
      metrics: serveMetrics(metrics.print),
      begin: metrics.requests.begin,
      isReady: () =>
        store.newestRevision().then(
          () => stopping === undefined,
          () => false,
        ),
      isStopping: () => stopping !== undefined,
    },
    log,
    config,
  );
  const closeRest = async () => {
    await apollo.stop();
    await weigher.close();
    metrics.stop();
    await store.close();
  };
  try {
    const port = await listen(server, config.port, config.address);
    return {
      url: printUrl(config.address, port),
      stop: () => {
        stopping ??= closeGently(server).then(closeRest);
        return stopping;
      },
    };
  } catch (error) {
    await closeRest();
    throw error;
  }
}
