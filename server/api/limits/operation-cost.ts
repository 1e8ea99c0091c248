import {
  type FieldNode,
  type FragmentDefinitionNode,
  type GraphQLField,
  type GraphQLNamedType,
  type GraphQLSchema,
  getArgumentValues,
  getNamedType,
  getNullableType,
  isCompositeType,
  isInterfaceType,
  isListType,
  isObjectType,
  type OperationDefinitionNode,
  type SelectionSetNode,
} from "graphql";
import { LARGEST_PAGE } from "../../ports/store.ts";

/** Entries that a list without `first` is taken to have, where its field does not say otherwise. */
const USUAL_ENTRIES = 5;

/** Cost of examining one piece, beside what is read of the answer. */
export const EXAMINE_WEIGHT = 100;
/** Cost of weighing one piece. */
export const WEIGH_WEIGHT = 300;
/** Cost of looking for disagreements: the whole graph is read once a revision. */
export const DISAGREEMENTS_WEIGHT = 100;

/** Cost of reading all that names a region, beside what is read of the answer. */
export const REGION_WEIGHT = 100;

/** Cost of reading every feature for those on one kind of part. */
export const FEATURES_WEIGHT = 20;

/** Cost of reading what stands around a term, two steps away at the most. */
export const AROUND_WEIGHT = 100;

/** Cost of drawing up a field sheet: every feature of a form's parts is weighed. */
export const FIELD_SHEET_WEIGHT = 100;

/** Cost of planning a look: every feature of a form's parts is foreseen. */
export const PLAN_WEIGHT = 200;

/** What a field can say of its cost, in its `extensions`. */
export interface CostHint {
  /** Cost of the field itself: 1 for an object, 0 for a value, unless said. */
  readonly weight?: number;
  /** Entries that its list can have. */
  readonly entries?: number;
}

export interface OperationCost {
  readonly cost: number;
  /** Names of fields whose `first` no page can have. */
  readonly wrongPages: readonly string[];
}

/**
 * Cost of an operation before it is run: each field weighs what it says, and what stands below a list counts once for
 * each row it can have (`first`, with its variables and defaults). The document is valid, its variables are coerced.
 */
export function operationCost(
  schema: GraphQLSchema,
  operation: OperationDefinitionNode,
  fragments: ReadonlyMap<string, FragmentDefinitionNode>,
  variables: Readonly<Record<string, unknown>>,
): OperationCost {
  const wrongPages: string[] = [];

  const costOfSelections = (type: GraphQLNamedType, { selections }: SelectionSetNode): number => {
    let cost = 0;
    for (const selection of selections) {
      if (selection.kind === "Field") cost += costOfField(type, selection);
      else {
        const fragment =
          selection.kind === "InlineFragment" ? selection : fragments.get(selection.name.value);
        const on = fragment?.typeCondition && schema.getType(fragment.typeCondition.name.value);
        if (fragment) cost += costOfSelections(on || type, fragment.selectionSet);
      }
    }
    return cost;
  };

  const costOfField = (parent: GraphQLNamedType, node: FieldNode): number => {
    const name = node.name.value;
    if (name.startsWith("__") || !(isObjectType(parent) || isInterfaceType(parent))) return 0;
    const field = parent.getFields()[name];
    if (field === undefined) return 0;
    const type = getNamedType(field.type);
    const { weight = isCompositeType(type) ? 1 : 0 } = field.extensions as CostHint;
    if (!node.selectionSet) return weight;
    return weight + entriesOf(field, node, name) * costOfSelections(type, node.selectionSet);
  };

  const entriesOf = (field: GraphQLField<unknown, unknown>, node: FieldNode, name: string): number => {
    if (field.args.some((argument) => argument.name === "first")) {
      const first = Number(getArgumentValues(field, node, variables)["first"]);
      if (first >= 1 && first <= LARGEST_PAGE) return first;
      wrongPages.push(name);
      return 1;
    }
    // The rows of a connection were counted at the field that gave it.
    if (name === "edges" || !isListType(getNullableType(field.type))) return 1;
    return (field.extensions as CostHint).entries ?? USUAL_ENTRIES;
  };

  const root = schema.getRootType(operation.operation);
  return { cost: root ? costOfSelections(root, operation.selectionSet) : 0, wrongPages };
}
