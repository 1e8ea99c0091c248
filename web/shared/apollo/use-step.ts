import type { OperationVariables, TypedDocumentNode } from "@apollo/client";
import { useMutation } from "@apollo/client/react";
import { useState } from "react";
import { sayFailure } from "../ui/say-failure.ts";

interface Problem {
  readonly message: string;
}

/** What is done to something that several share, and why it was not. */
export interface TakenStep<Variables> {
  /** What the server gives; nothing where it refused or could not be reached. */
  readonly take: (variables: Variables) => Promise<{ readonly __typename: string } | undefined>;
  readonly refused: readonly string[];
  readonly isUnderWay: boolean;
}

type Given = { readonly __typename: string; readonly problems?: readonly Problem[] };

/** One mutation that is answered or refused; what it refuses is kept until the next try. */
export function useStep<Data, Variables extends OperationVariables>(
  document: TypedDocumentNode<Data, Variables>,
): TakenStep<Variables> {
  const [mutate, { loading }] = useMutation<Data, OperationVariables>(document);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const take = async (variables: Variables) => {
    setRefused([]);
    try {
      const { data } = await mutate({ variables });
      const [given] = Object.values(data ?? {}).filter((value) => typeof value === "object") as Given[];
      if (given?.__typename !== "Refused") return given;
      setRefused((given.problems ?? []).map(({ message }) => message));
    } catch (failure) {
      const { what, next } = sayFailure(failure);
      setRefused([`${what} ${next}`]);
    }
    return undefined;
  };
  return { take, refused, isUnderWay: loading };
}
