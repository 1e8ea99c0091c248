import { useApolloClient } from "@apollo/client/react";
import { useEffect, useState } from "react";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { LookOverDocument, type LookOverQuery } from "./Writing.graphql.ts";

export type LookedOver = LookOverQuery["lookOver"];

const PAUSE = 350;

/** What the server reads in a form, after each pause in typing; the last answer stays until the next is there. */
export function useLookOver(kind: ProposalKind, fields: FormFields): LookedOver | undefined {
  const client = useApolloClient();
  const [looked, setLooked] = useState<LookedOver>();
  const text = JSON.stringify(fields);
  useEffect(() => {
    let isLeft = false;
    const timer = setTimeout(async () => {
      const form: FormFields = JSON.parse(text);
      const answer = await client
        .query({ query: LookOverDocument, variables: { kind, form }, fetchPolicy: "no-cache" })
        .catch(() => undefined);
      if (!isLeft && answer?.data) setLooked(answer.data.lookOver);
    }, PAUSE);
    return () => {
      isLeft = true;
      clearTimeout(timer);
    };
  }, [client, kind, text]);
  return looked;
}
