import {
  type DocumentNode,
  type FragmentDefinitionNode,
  GraphQLError,
  type GraphQLSchema,
  getOperationAST,
  getVariableValues,
  Kind,
  parse,
  type SelectionSetNode,
  validate,
} from "graphql";
import { operationCost } from "../limits/operation-cost.ts";

/** Words and signs that the document of a subscription can have, and selections, fragments counted where they are used. */
const MOST_TOKENS = 500;
const MOST_SELECTIONS = 200;
/** Problems that are told of one document. */
const MOST_TOLD = 3;

/** What a client sends that wants to subscribe. */
export interface Asked {
  readonly query: string;
  readonly operationName?: string | null | undefined;
  readonly variables?: Readonly<Record<string, unknown>> | null | undefined;
}
export interface Subscription {
  readonly schema: GraphQLSchema;
  readonly document: DocumentNode;
  readonly operationName: string | null | undefined;
  readonly variableValues: Readonly<Record<string, unknown>>;
}

const refusal = (code: string, message: string) => new GraphQLError(message, { extensions: { code } });

/** Reads a subscription by the rules that hold for every operation, or says why it is refused. Nothing else is run on this way. */
export function readSubscription(
  schema: GraphQLSchema,
  highestCost: number,
  { query, operationName, variables }: Asked,
): Subscription | readonly [GraphQLError, ...GraphQLError[]] {
  let document: DocumentNode;
  try {
    document = parse(query, { maxTokens: MOST_TOKENS, noLocation: true });
  } catch (failure) {
    return [refusal("GRAPHQL_PARSE_FAILED", failure instanceof Error ? failure.message : "Not a document.")];
  }
  const fragments = new Map<string, FragmentDefinitionNode>();
  for (const definition of document.definitions)
    if (definition.kind === Kind.FRAGMENT_DEFINITION) fragments.set(definition.name.value, definition);
  if (countSelections(document, fragments) > MOST_SELECTIONS)
    return [refusal("TOO_MANY_SELECTIONS", `A subscription selects at most ${MOST_SELECTIONS} fields.`)];
  const [invalid, ...more] = validate(schema, document, undefined, { maxErrors: MOST_TOLD });
  if (invalid)
    return [invalid, ...more].map(({ message }) =>
      refusal("GRAPHQL_VALIDATION_FAILED", message),
    ) as unknown as [GraphQLError];
  const operation = getOperationAST(document, operationName);
  if (operation?.operation !== "subscription")
    return [refusal("BAD_REQUEST", "Only subscriptions are taken here. Ask and change over HTTP.")];
  const { coerced, errors } = getVariableValues(
    schema,
    operation.variableDefinitions ?? [],
    variables ?? {},
    { maxErrors: MOST_TOLD },
  );
  if (!coerced) return [refusal("BAD_USER_INPUT", errors?.[0]?.message ?? "The variables do not fit.")];
  const { cost } = operationCost(schema, operation, fragments, coerced);
  if (cost > highestCost)
    return [refusal("QUERY_TOO_COSTLY", `This would cost ${cost}, and at most ${highestCost} is told.`)];
  return { schema, document, operationName, variableValues: variables ?? {} };
}

/** Selections of all operations; each fragment is counted once and for all, so that no nest of them takes long. */
function countSelections(
  { definitions }: DocumentNode,
  fragments: ReadonlyMap<string, FragmentDefinitionNode>,
): number {
  const known = new Map<string, number>();
  const countFragment = (name: string): number => {
    const before = known.get(name);
    if (before !== undefined) return before;
    // One that holds itself is refused when the document is validated.
    known.set(name, 0);
    const fragment = fragments.get(name);
    const count = fragment ? countSet(fragment.selectionSet) : 0;
    known.set(name, count);
    return count;
  };
  const countSet = ({ selections }: SelectionSetNode): number =>
    selections.reduce((sum, selection) => {
      if (selection.kind === "FragmentSpread") return sum + countFragment(selection.name.value);
      return sum + 1 + (selection.selectionSet ? countSet(selection.selectionSet) : 0);
    }, 0);
  return definitions.reduce(
    (sum, definition) => sum + ("selectionSet" in definition ? countSet(definition.selectionSet) : 0),
    0,
  );
}
