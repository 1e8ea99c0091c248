import type { ApolloServerPlugin } from "@apollo/server";
import type { Context } from "./context.ts";

/**
 * To a client that does not accept `application/graphql-response+json`, a well-formed request that GraphQL refuses is
 * answered 200, not 400, as GraphQL over HTTP advises (audits 572B, FDE2, 7B9B).
 */
export const legacyStatus: ApolloServerPlugin<Context> = {
  async requestDidStart() {
    return {
      async willSendResponse({ request, response }) {
        const accepted = request.http?.headers.get("accept") ?? "";
        if (accepted.includes("application/graphql-response+json")) return;
        if (request.query && response.http.status === 400) response.http.status = 200;
      },
    };
  },
};
