import { randomInt } from "node:crypto";
import { createContext } from "./api/context.ts";
import { createApollo } from "./api/create-apollo.ts";
import { withinDeadline } from "./api/limits/within-deadline.ts";
import type { Config } from "./config.ts";
import { closeGently } from "./http/close-gently.ts";
import { createHttpServer } from "./http/create-http-server.ts";
import { listen } from "./http/listen.ts";
import { serveGraphql } from "./http/serve-graphql.ts";
import { serveWeb } from "./http/serve-web.ts";
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
  const apollo = createApollo({ highestCost: config.highestCost, log, newSuffix });
  await apollo.start();
  let stopping: Promise<void> | undefined;
  const weigher = openWeigher();
  const contextOfRequest = (stop: AbortSignal) =>
    createContext(
      {
        store: withinDeadline(store, config.deadline, () => performance.now()),
        tables,
        now: () => new Date().toISOString(),
        ...{ newSuffix, weigher },
      },
      stop,
    );
  const server = createHttpServer(
    {
      graphql: serveGraphql(apollo, contextOfRequest, config.largestBody),
      web: serveWeb(config.webFolder),
      isReady: () =>
        store.newestRevision().then(
          () => stopping === undefined,
          () => false,
        ),
      isStopping: () => stopping !== undefined,
    },
    log,
    config.deadline,
  );
  const closeRest = async () => {
    await apollo.stop();
    await weigher.close();
    await store.close();
  };
  try {
    const port = await listen(server, config.port);
    return {
      url: `http://127.0.0.1:${port}/`,
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
