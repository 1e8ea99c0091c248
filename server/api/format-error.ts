import { unwrapResolverError } from "@apollo/server/errors";
import { GraphQLError, type GraphQLFormattedError } from "graphql";
import type { Log } from "../ports/log.ts";
import { StoreFailed } from "../ports/store-failed.ts";

/**
 * What a client is told of an error. Refusals with a code of their own go through; a failing store says which problem it
 * has; a defect is logged in full and told only as an id under which it stands in the log.
 */
export const formatError =
  (log: Log, newSuffix: () => string) =>
  (formatted: GraphQLFormattedError, error: unknown): GraphQLFormattedError => {
    const cause = unwrapResolverError(error);
    const place = {
      ...(formatted.path ? { path: formatted.path } : {}),
      ...(formatted.locations ? { locations: formatted.locations } : {}),
    };
    if (cause instanceof StoreFailed) {
      log({ level: "error", event: "store failed", code: cause.problem.code, error: String(cause.cause) });
      return { message: cause.problem.message, ...place, extensions: { code: cause.problem.code } };
    }
    const code = formatted.extensions?.["code"];
    if (cause instanceof GraphQLError && code !== undefined && code !== "INTERNAL_SERVER_ERROR") {
      const { stacktrace: _, ...extensions } = formatted.extensions ?? {};
      return { message: formatted.message, ...place, extensions };
    }
    const id = newSuffix();
    log({
      level: "error",
      event: "defect",
      id,
      ...(formatted.path ? { path: formatted.path.join(".") } : {}),
      error: cause instanceof Error ? (cause.stack ?? cause.message) : String(cause),
    });
    return {
      message: `Something went wrong here that is no fault of yours; the log has it under ${id}.`,
      ...place,
      extensions: { code: "INTERNAL_SERVER_ERROR", id },
    };
  };
