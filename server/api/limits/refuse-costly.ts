import type { ApolloServerPlugin } from "@apollo/server";
import { type FragmentDefinitionNode, GraphQLError, getVariableValues, Kind } from "graphql";
import { LARGEST_PAGE } from "../../ports/store.ts";
import type { Context } from "../context.ts";
import { operationCost } from "./operation-cost.ts";

const refusal = (message: string, extensions: Readonly<Record<string, unknown>>) =>
  new GraphQLError(message, { extensions: { ...extensions, http: { status: 400 } } });

/** Refuses an operation before it is run if it would cost more than `highest`, or asks for a page that cannot be. */
export const refuseCostly = (highest: number): ApolloServerPlugin<Context> => ({
  async requestDidStart() {
    return {
      async didResolveOperation({ schema, operation, document, request, response }) {
        if (!operation) return;
        const { coerced } = getVariableValues(
          schema,
          operation.variableDefinitions ?? [],
          request.variables ?? {},
        );
        // Variables that do not fit are refused when they are coerced again to run the operation.
        if (!coerced) return;
        const fragments = new Map<string, FragmentDefinitionNode>();
        for (const definition of document.definitions)
          if (definition.kind === Kind.FRAGMENT_DEFINITION) fragments.set(definition.name.value, definition);
        const { cost, wrongPages } = operationCost(schema, operation, fragments, coerced);
        response.http.headers.set("scribeline-cost", String(cost));
        if (wrongPages.length > 0)
          throw refusal(
            `"first" of ${[...new Set(wrongPages)].join(", ")} has to be from 1 to ${LARGEST_PAGE}; go on with "after".`,
            { code: "BAD_USER_INPUT" },
          );
        if (cost > highest)
          throw refusal(
            `This operation would cost ${cost}, and at most ${highest} is answered; ask for smaller pages or fewer fields.`,
            { code: "QUERY_TOO_COSTLY", cost, limit: highest },
          );
      },
    };
  },
});
