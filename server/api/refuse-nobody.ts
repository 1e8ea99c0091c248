import type { ApolloServerPlugin } from "@apollo/server";
import { GraphQLError } from "graphql";
import { mayDo } from "../domain/people/may-do.ts";
import type { Context } from "./context.ts";

/** The one place where whoever is not signed in is turned away from the API, whatever is asked for. */
export const refuseNobody: ApolloServerPlugin<Context> = {
  requestDidStart: async () => ({
    didResolveOperation: async ({ contextValue }) => {
      const problem = mayDo(contextValue.caller, "read the graph");
      if (problem === undefined) return;
      const status = problem.code === "NOT_SIGNED_IN" ? 401 : 403;
      throw new GraphQLError(problem.message, { extensions: { code: problem.code, http: { status } } });
    },
  }),
};
