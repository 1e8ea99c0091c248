import { execute, GraphQLError, type GraphQLFormattedError, type GraphQLSchema } from "graphql";
import { makeServer, type Server } from "graphql-ws";
import type { Context } from "../../api/context.ts";
import { readSubscription } from "../../api/live/read-subscription.ts";
import type { Connected } from "./open-sockets.ts";
import { sharedSubscribe } from "./shared-subscribe.ts";

/** Subscriptions of one connection. */
const MOST_SUBSCRIPTIONS = 12;
/** Milliseconds that a client has to begin. */
const LONGEST_SILENCE = 3000;

export interface Told {
  readonly schema: GraphQLSchema;
  readonly highestCost: number;
  readonly contextOf: (connected: Connected) => Context;
  /** What a client is told of an error. */
  readonly formatError: (formatted: GraphQLFormattedError, error: unknown) => GraphQLFormattedError;
}

/** The protocol `graphql-transport-ws` over the schema, for subscriptions alone. */
export function liveProtocol({ schema, highestCost, contextOf, formatError }: Told): Server<Connected> {
  const format = (error: GraphQLError): GraphQLError => {
    const { message, extensions } = formatError(error.toJSON(), error);
    return new GraphQLError(message, { extensions: extensions ?? null });
  };
  return makeServer<Record<string, never>, Connected>({
    connectionInitWaitTimeout: LONGEST_SILENCE,
    execute,
    subscribe: sharedSubscribe(),
    onSubscribe: ({ subscriptions, extra }, _, asked) => {
      if (Object.keys(subscriptions).length > MOST_SUBSCRIPTIONS)
        return [
          new GraphQLError(`One connection has at most ${MOST_SUBSCRIPTIONS} subscriptions.`, {
            extensions: { code: "TOO_MANY_SUBSCRIPTIONS" },
          }),
        ];
      const read = readSubscription(schema, highestCost, asked);
      return "schema" in read ? { ...read, contextValue: contextOf(extra) } : read;
    },
    onError: (_, __, ___, errors) => errors.map((error) => format(error).toJSON()),
    onNext: (_, __, ___, ____, result) =>
      result.errors && {
        ...(result.data === undefined ? {} : { data: result.data }),
        errors: result.errors.map((error) => format(error).toJSON()),
      },
  }) as unknown as Server<Connected>;
}
