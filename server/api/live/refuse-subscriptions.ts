import type { ApolloServerPlugin } from "@apollo/server";
import { GraphQLError } from "graphql";
import type { Context } from "../context.ts";

/** Over HTTP there is one answer to a request: what is followed takes a live connection. */
export const refuseSubscriptions: ApolloServerPlugin<Context> = {
  requestDidStart: async () => ({
    didResolveOperation: async ({ operation }) => {
      if (operation?.operation !== "subscription") return;
      throw new GraphQLError("Follow this over WebSocket, by the protocol graphql-transport-ws.", {
        extensions: { code: "BAD_REQUEST", http: { status: 400 } },
      });
    },
  }),
};
