import type { ApolloServerPlugin } from "@apollo/server";
import type { Context } from "./context.ts";

/** An operation that was answered. `name` is what whoever asked calls it; `took` counts milliseconds. */
export type Ended = (operation: {
  readonly name: string | undefined;
  readonly type: string;
  readonly codes: readonly string[];
  readonly took: number;
}) => void;

/** Tells each operation that was answered, refused ones too. */
export const tellOperations = (ended: Ended, now: () => number): ApolloServerPlugin<Context> => ({
  async requestDidStart() {
    const since = now();
    return {
      async willSendResponse({ operation, response: { body } }) {
        const errors = (body.kind === "single" ? body.singleResult.errors : body.initialResult.errors) ?? [];
        ended({
          name: operation?.name?.value,
          type: operation?.operation ?? "none",
          codes: errors.map(({ extensions }) => String(extensions?.["code"] ?? "NONE")),
          took: now() - since,
        });
      },
    };
  },
});
