import { useApolloClient } from "@apollo/client/react";
import { useCallback, useEffect, useState } from "react";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { LookOverDocument, type LookOverQuery } from "./Writing.graphql.ts";

export type LookedOver = LookOverQuery["lookOver"];

const PAUSE = 350;

/**
 * What the server reads in a form, after each pause in typing; the last answer stays until the next is there. `lookNow` reads the
 * form as it is at this moment; nothing where the server cannot be reached.
 */
export function useLookOver(kind: ProposalKind, fields: FormFields) {
  const client = useApolloClient();
  const [looked, setLooked] = useState<LookedOver>();
  const text = JSON.stringify(fields);
  const ask = useCallback(
    async (form: FormFields): Promise<LookedOver | undefined> => {
      const answer = await client
        .query({ query: LookOverDocument, variables: { kind, form }, fetchPolicy: "no-cache" })
        .catch(() => undefined);
      return answer?.data?.lookOver;
    },
    [client, kind],
  );
  useEffect(() => {
    let isLeft = false;
    const timer = setTimeout(async () => {
      const answer = await ask(JSON.parse(text));
      if (!isLeft && answer) setLooked(answer);
    }, PAUSE);
    return () => {
      isLeft = true;
      clearTimeout(timer);
    };
  }, [ask, text]);
  const lookNow = async (): Promise<LookedOver | undefined> => {
    const answer = await ask(fields);
    if (answer) setLooked(answer);
    return answer;
  };
  return { looked, lookNow };
}
