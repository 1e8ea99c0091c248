import type { ApolloServerPlugin } from "@apollo/server";
import type { NoteRefused } from "../use-cases/people/note-refused.ts";
import { isRefusal } from "../use-cases/refusal.ts";
import type { Context } from "./context.ts";

/** What the policy refuses, as told from what was merely not right. */
const BY_POLICY: readonly string[] = ["NOT_ALLOWED", "SECOND_STEP_NEEDED"];

/** Notes each mutation that its caller may not do. */
export const noteRefusedMutations = (note: NoteRefused): ApolloServerPlugin<Context> => ({
  requestDidStart: async () => {
    const refused: string[] = [];
    return {
      executionDidStart: async ({ operation }) =>
        operation.operation === "mutation"
          ? {
              willResolveField: ({ info }) => {
                if (info.path.prev !== undefined) return;
                return (_, result) => {
                  if (isRefusal(result) && result.refused.some(({ code }) => BY_POLICY.includes(code)))
                    refused.push(inWords(info.fieldName));
                };
              },
            }
          : {},
      willSendResponse: async ({ contextValue }) => {
        for (const did of new Set(refused)) await note(`refuse to ${did}`, contextValue.caller?.id);
      },
    };
  },
});

/** `changeExamination` as `change examination`. */
const inWords = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
