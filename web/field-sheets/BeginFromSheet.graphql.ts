/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
export type AttributionInput = {
  /** EDTF, read as one event. */
  readonly date: string;
  readonly form?: string | null | undefined;
  readonly maker?: string | null | undefined;
  readonly region?: string | null | undefined;
  readonly style?: string | null | undefined;
};

/** What the examiner assumes of this piece in place of the usual odds. */
export type ChosenOddsInput = {
  readonly datePrior?: DatePrior | null | undefined;
  /** Probability outside all known years. */
  readonly leak?: number | null | undefined;
  /** Prior of “made later to look old”. */
  readonly madeToDeceive?: number | null | undefined;
  readonly parts?: ReadonlyArray<PartOddsInput> | null | undefined;
  /** Times the probability that claims are wrong. */
  readonly wrongClaims?: number | null | undefined;
};

export type DatePrior =
  | 'AS_CLAIMED'
  | 'PRODUCTION'
  | 'UNIFORM';

export type ObservationInput = {
  /** A term of kind `feature`. */
  readonly feature: string;
  readonly id: string;
  readonly note?: string | null | undefined;
  readonly part: string;
  readonly seen: Seen;
  readonly sureness?: Sureness;
};

export type PartInput = {
  readonly id: string;
  /** A term of kind `part`. */
  readonly kind?: string | null | undefined;
  readonly label: string;
  /** Only where the part is known to be from elsewhere. */
  readonly region?: string | null | undefined;
  /** Id of the part it belongs to. */
  readonly within?: string | null | undefined;
};

/** Odds of three states of a part; they add up to 1. */
export type PartOddsInput = {
  readonly later: number;
  readonly original: number;
  readonly part: string;
  readonly reused: number;
};

export type PieceInput = {
  readonly attribution: AttributionInput;
  /** Year in which the piece was looked at. */
  readonly examined: number;
  readonly invented?: boolean;
  readonly note?: string | null | undefined;
  readonly observations: ReadonlyArray<ObservationInput>;
  readonly odds?: ChosenOddsInput | null | undefined;
  readonly parts: ReadonlyArray<PartInput>;
  /** Pairs of parts that cannot share an origin. */
  readonly separate?: ReadonlyArray<ReadonlyArray<string>>;
  readonly title: string;
  /** Parts that cannot be of different origin. */
  readonly together?: ReadonlyArray<ReadonlyArray<string>>;
};

export type Seen =
  | 'ABSENT'
  | 'PRESENT'
  | 'UNSEEN';

export type Sureness =
  | 'POSSIBLE'
  | 'PROBABLE'
  | 'SURE';

export type BeginFromSheetMutationVariables = Exact<{
  piece: Types.PieceInput;
}>;


export type BeginFromSheetMutation = { readonly createExamination:
    | { readonly __typename: 'ExaminationChanged', readonly examination: { readonly id: string } }
    | { readonly __typename: 'Refused', readonly problems: ReadonlyArray<{ readonly message: string }> }
   };


export const BeginFromSheetDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"BeginFromSheet"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"piece"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"PieceInput"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"createExamination"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"piece"},"value":{"kind":"Variable","name":{"kind":"Name","value":"piece"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"__typename"}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ExaminationChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"examination"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"message"}}]}}]}}]}}]}}]} as unknown as DocumentNode<BeginFromSheetMutation, BeginFromSheetMutationVariables>;