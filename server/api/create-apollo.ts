import { ApolloServer, type ApolloServerPlugin } from "@apollo/server";
import {
  ApolloServerPluginCacheControlDisabled,
  ApolloServerPluginLandingPageDisabled,
  ApolloServerPluginSchemaReportingDisabled,
  ApolloServerPluginUsageReportingDisabled,
} from "@apollo/server/plugin/disabled";
import type { GraphQLSchema } from "graphql";
import type { Log } from "../ports/log.ts";
import type { Context } from "./context.ts";
import { formatError } from "./format-error.ts";
import { legacyStatus } from "./legacy-status.ts";
import { refuseCostly } from "./limits/refuse-costly.ts";
import { refuseSubscriptions } from "./live/refuse-subscriptions.ts";
import { refuseNobody } from "./refuse-nobody.ts";

/** Words and signs that a document can have. */
const MOST_TOKENS = 2000;
/** Selections that a document can have, fragments counted where they are used. */
const MOST_SELECTIONS = 1000;

/** The GraphQL server with its limits, not started yet. It tells nothing to anybody outside. */
export const createApollo = (
  schema: GraphQLSchema,
  settings: {
    readonly highestCost: number;
    readonly log: Log;
    readonly newSuffix: () => string;
    readonly plugins?: readonly ApolloServerPlugin<Context>[];
  },
): ApolloServer<Context> =>
  new ApolloServer<Context>({
    schema,
    introspection: true,
    csrfPrevention: true,
    allowBatchedHttpRequests: false,
    includeStacktraceInErrorResponses: false,
    stopOnTerminationSignals: false,
    cache: "bounded",
    parseOptions: { maxTokens: MOST_TOKENS },
    maxRecursiveSelections: MOST_SELECTIONS,
    formatError: formatError(settings.log, settings.newSuffix),
    logger: loggerTo(settings.log),
    plugins: [
      refuseNobody,
      refuseSubscriptions,
      refuseCostly(settings.highestCost),
      legacyStatus,
      ...(settings.plugins ?? []),
      ApolloServerPluginCacheControlDisabled(),
      ApolloServerPluginLandingPageDisabled(),
      ApolloServerPluginSchemaReportingDisabled(),
      ApolloServerPluginUsageReportingDisabled(),
    ],
  });

function loggerTo(log: Log) {
  const write = (level: "info" | "warn" | "error") => (message?: unknown) =>
    log({ level, event: "graphql", message: String(message) });
  return { debug: () => {}, info: write("info"), warn: write("warn"), error: write("error") };
}
