import {
  createSourceEventStream,
  type ExecutionArgs,
  type ExecutionResult,
  execute,
  type GraphQLError,
  print,
} from "graphql";

/** Answers that are kept, of those told last. */
const MOST_KEPT = 64;
type Answer = ExecutionResult | Promise<ExecutionResult>;

/**
 * Subscribes as `subscribe` of graphql does, and works out once what many are told in the same words: what is told says all that the
 * answer follows from, beside the document and its variables. Nothing that is told may look different to two callers otherwise.
 */
export function sharedSubscribe() {
  const kept = new Map<string, Answer>();
  const answerTo = (args: ExecutionArgs, asked: string, told: unknown): Answer => {
    const key = `${asked} ${JSON.stringify(told)}`;
    const known = kept.get(key);
    if (known !== undefined) return known;
    const answer = execute({ ...args, rootValue: told });
    kept.set(key, answer);
    for (const [first] of kept) {
      if (kept.size <= MOST_KEPT) break;
      kept.delete(first);
    }
    return answer;
  };
  return async (args: ExecutionArgs): Promise<AsyncIterableIterator<ExecutionResult> | ExecutionResult> => {
    const stream = await createSourceEventStream(args);
    if (!(Symbol.asyncIterator in stream)) return stream as { errors: readonly GraphQLError[] };
    // Where one begins is no part of what one is told.
    const variables = Object.entries(args.variableValues ?? {}).filter(
      ([name, value]) => !(name === "since" && typeof value === "number"),
    );
    const asked = JSON.stringify([print(args.document), args.operationName ?? null, variables]);
    const iterator = stream[Symbol.asyncIterator]() as AsyncIterator<unknown>;
    const answers: AsyncIterableIterator<ExecutionResult> = {
      next: async () => {
        const { done, value } = await iterator.next();
        return done ? { done, value: undefined } : { done: false, value: await answerTo(args, asked, value) };
      },
      return: async () => {
        await iterator.return?.();
        return { done: true, value: undefined };
      },
      [Symbol.asyncIterator]: () => answers,
    };
    return answers;
  };
}
