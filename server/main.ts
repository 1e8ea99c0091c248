import { randomInt } from "node:crypto";
import type { IncomingMessage } from "node:http";
import packageJson from "../package.json" with { type: "json" };
import { keepResults } from "./again/keep-results.ts";
import { openStandings } from "./again/open-standings.ts";
import { createContext } from "./api/context.ts";
import { createApollo } from "./api/create-apollo.ts";
import { formatError } from "./api/format-error.ts";
import { withinDeadline } from "./api/limits/within-deadline.ts";
import { noteRefusedMutations } from "./api/note-refused-mutations.ts";
import { buildSchema } from "./api/schema.ts";
import { tellOperations } from "./api/tell-operations.ts";
import type { Config } from "./config.ts";
import type { Caller } from "./domain/people/caller.ts";
import { followOwnWrites } from "./follower/follow-own-writes.ts";
import { type Follower, followWrites } from "./follower/follow-writes.ts";
import type { Handler } from "./http/answer.ts";
import { createHttpServer } from "./http/create-http-server.ts";
import { readShown } from "./http/credentials.ts";
import { endGently } from "./http/end-gently.ts";
import { listen, printUrl } from "./http/listen.ts";
import { noteForeign } from "./http/note-foreign.ts";
import { operationNames } from "./http/operation-names.ts";
import { serveAccount } from "./http/serve-account.ts";
import { serveChronicle } from "./http/serve-chronicle.ts";
import { serveFeed } from "./http/serve-feed.ts";
import { serveGraphql } from "./http/serve-graphql.ts";
import { serveMetrics } from "./http/serve-metrics.ts";
import { serveWeb } from "./http/serve-web.ts";
import { tellBackups } from "./keeping/tell-backups.ts";
import { type MadeAhead, makeAhead } from "./make-ahead.ts";
import { openMetrics } from "./metrics/open-metrics.ts";
import { tellFollower } from "./metrics/tell-follower.ts";
import { tellResults } from "./metrics/tell-results.ts";
import { tellStandings } from "./metrics/tell-standings.ts";
import { openAccounts } from "./open-accounts.ts";
import { openChronicle } from "./open-chronicle.ts";
import { openLive } from "./open-live.ts";
import type { Log } from "./ports/log.ts";
import type { ReferenceTables } from "./ports/reference-tables.ts";
import type { Store } from "./ports/store.ts";
import type { Verify } from "./ports/verify.ts";
import { openSeals } from "./proof/open-seals.ts";
import { openProvider } from "./providers/open-provider.ts";
import { boundOfClaim } from "./reasoning/bound-of-claim.ts";
import { findUnbuilt } from "./stores/mirror/find-unbuilt.ts";
import { mirroredStore } from "./stores/mirror/mirrored-store.ts";
import { openMirror } from "./stores/mirror/open-mirror.ts";
import { tellMirror } from "./stores/mirror/tell-mirror.ts";
import { openSurveys } from "./use-cases/ask/surveys/open-surveys.ts";
import { shownStore } from "./use-cases/people/shown-store.ts";
import { openWeigher } from "./weigher/open-weigher.ts";

export interface RunningServer {
  readonly url: string;
  /** Resolves when the mirror is built and searches have their index, and then the server is ready. */
  readonly built: Promise<void>;
  /**
   * Goes on answering for `drain` milliseconds (none) while it says that it is not ready, lets requests under way end, then
   * closes the server and the store. Called again without a drain it cuts a longer one short.
   */
  stop(drain?: number): Promise<void>;
}

/** Milliseconds that a write waits for this process itself to follow it. */
const OWN_WRITES_WAIT = 1000;
/** Milliseconds within which a process that is not behind comes to what stands in the store. */
const LONGEST_LAG = 1000;

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
  verify = store.verify,
}: {
  readonly config: Config;
  readonly store: Store;
  readonly tables: ReferenceTables;
  readonly log: Log;
  /** Verifies the store; in this process if nothing else is said. */
  readonly verify?: Verify;
}): Promise<RunningServer> {
  const now = () => performance.now();
  const mirror = config.mirror ? openMirror(store, { log, boundOf: boundOfClaim }) : undefined;
  const mirrored = mirror === undefined ? store : mirroredStore(store, mirror);
  const after = await newestOrClose(mirrored);
  const results = keepResults();
  const standings = openStandings({ store: mirrored, log });
  const surveys = openSurveys(mirrored);
  const live = openLive(store, { after, by: newSuffix(), log });
  // The mirror first: whoever is told of a write after it sees it there.
  const listeners = [...(mirror === undefined ? [] : [mirror.follow]), standings.follow, live.follow];
  const follower = followWrites(store, listeners, { after, every: config.followEvery, log });
  const own = followOwnWrites(mirrored, follower, OWN_WRITES_WAIT);
  const metrics = openMetrics(
    { store: own.store, weigher: openWeigher({ log }) },
    { version: packageJson.version, node: process.version, store: store.name },
    operationNames(config.webFolder),
    now,
  );
  metrics.join("follower", tellFollower(store, follower));
  const { weigher } = metrics;
  if (config.backups.folder !== undefined) metrics.join("backups", tellBackups(config.backups.folder));
  if (mirror !== undefined) metrics.join("mirror", tellMirror(mirror));
  const inTime = (all: Store) => withinDeadline(all, config.deadline, now);
  const accounts = openAccounts(config.accounts, {
    ...{ store: own.store, inTime, now: () => new Date().toISOString(), newSuffix },
    ...{ origins: config.origins },
    ...(config.secondStepFrom === undefined ? {} : { secondStepFrom: config.secondStepFrom }),
    ...(config.provider === undefined ? {} : { provider: openProvider(config.provider) }),
  });
  const schema = buildSchema();
  const apollo = createApollo(schema, {
    highestCost: config.highestCost,
    ...{ log, newSuffix },
    plugins: [tellOperations(metrics.operationEnded, now), noteRefusedMutations(accounts.noteRefused)],
  });
  await apollo.start();
  metrics.join("results", tellResults(results.counts));
  metrics.join("standings", tellStandings(standings));
  metrics.join("live", live.tell);
  const ports = {
    ...{ store: metrics.store, tables, now: () => new Date().toISOString(), newSuffix },
    ...{ weigher, results, standings, surveys, datings: mirror },
    ...{ news: live.news, presence: live.presence, counts: live.counts },
  };
  const contextOfRequest = async (request: IncomingMessage, stop: AbortSignal) =>
    createContext(
      {
        ...ports,
        store: inTime(metrics.store),
        surveys: withinDeadline(surveys, config.deadline, now),
      },
      await accounts.callerOf(readShown(request.headers, config.origins)),
      stop,
    );
  const clock = () => new Date().toISOString();
  const seals = openSeals(config.dataFolder, clock);
  const chroniclePortsOf = (all: Store) => (caller: Caller | undefined) => ({
    ...{ store: shownStore(all, caller), now: clock, newSuffix, results, standings, seals, caller },
  });
  const chronicle = openChronicle({
    verify,
    callerOf: ({ headers }) => accounts.callerOf(readShown(headers, config.origins)),
    portsOf: (caller) => chroniclePortsOf(inTime(metrics.store))(caller),
    lastingPortsOf: chroniclePortsOf(metrics.store),
  });
  const ownOnly = (handler: Handler) =>
    noteForeign(handler, config.origins, () => accounts.noteRefused("refuse request of another page"));
  let ahead: MadeAhead | undefined;
  const server = createHttpServer(
    {
      graphql: ownOnly(
        serveGraphql(apollo, contextOfRequest, config, {
          sequence: own.sequence,
          reach: (sequence) => follower.reach(sequence, config.longestWait),
        }),
      ),
      web: serveWeb(config.webFolder),
      account: ownOnly(serveAccount(accounts.answer, config)),
      chronicle: ownOnly(serveChronicle(chronicle.open, config)),
      feed: ownOnly(serveFeed(chronicle.feed, config)),
      metrics: serveMetrics(metrics.print),
      begin: metrics.requests.begin,
      checks: {
        store: () => store.newestRevision().then(() => undefined),
        writes: () => findLag(store, follower),
        ...(mirror === undefined ? {} : { mirror: () => findUnbuilt(mirror) }),
        search: () => ahead?.findUnready(),
        end: () => (ending.hasBegun() ? "is about to stop" : undefined),
      },
      isStopping: () => ending.hasBegun(),
    },
    log,
    config,
  );
  live.attach(
    server,
    {
      ...{ schema, highestCost: config.highestCost, formatError: formatError(log, newSuffix) },
      contextOf: (connection) => ({ ...createContext(ports, connection.known.caller), connection }),
    },
    {
      ...{ origins: config.origins, find: accounts.find, lookUp: accounts.lookUp },
      isStopping: () => ending.hasBegun(),
      onForeign: () => accounts.noteRefused("refuse request of another page"),
      onDefect: (failure) => log({ level: "error", event: "live connection failed", error: String(failure) }),
    },
  );
  const closeRest = async () => {
    ahead?.stop();
    await follower.stop();
    await standings.stop();
    await accounts.stop();
    await apollo.stop();
    await weigher.close();
    metrics.stop();
    await mirrored.close();
  };
  const ending = endGently(server, closeRest, live.close);
  try {
    await accounts.begin(log);
    const port = await listen(server, config.port, config.address);
    ahead = makeAhead(mirrored, surveys, log, mirror?.built);
    return {
      url: printUrl(config.address, port),
      built: ahead.searchable,
      stop: (drain = 0) => {
        live.letGo();
        return ending.begin(drain);
      },
    };
  } catch (error) {
    await closeRest();
    throw error;
  }
}

/** The store is closed where it cannot be read. */
async function newestOrClose(store: Store): Promise<number> {
  try {
    return await store.newestWrite();
  } catch (failure) {
    await store.close();
    throw failure;
  }
}

/** Says how far this process is behind its store, if it does not come to what stands there now. */
async function findLag(store: Store, follower: Follower): Promise<string | undefined> {
  const newest = await store.newestWrite();
  if (await follower.reach(newest, LONGEST_LAG)) return undefined;
  return `knows of the writes up to ${follower.sequence} of ${newest}`;
}
