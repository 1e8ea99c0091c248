/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { Weighing } from '#server/domain/weighing/weighing.ts';
import type { WeighingWords } from '#server/domain/weighing/weighing-words.ts';
import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
export type Aid =
  | 'FINGERTIP'
  | 'LABORATORY'
  | 'LENS'
  | 'MAGNET'
  | 'MIRROR'
  | 'RAKING_LIGHT'
  | 'RULE'
  | 'SQUARE'
  | 'ULTRAVIOLET_LAMP';

export type AttributionInput = {
  /** EDTF, read as one event. */
  readonly date: string;
  readonly form?: string | null | undefined;
  readonly maker?: string | null | undefined;
  readonly region?: string | null | undefined;
  readonly style?: string | null | undefined;
};

export type Basis =
  | 'COMMON_PRACTICE'
  | 'FROM_MEMORY'
  | 'PUBLISHED';

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

export type ClaimStatus =
  | 'ACCEPTED'
  | 'PROPOSED'
  | 'REJECTED';

export type DatePrior =
  | 'AS_CLAIMED'
  | 'PRODUCTION'
  | 'UNIFORM';

export type Hardness =
  | 'PHYSICAL'
  | 'PRACTICE';

export type Move =
  | 'DRAWER_OUT'
  | 'NOTHING'
  | 'PIECE_TURNED'
  | 'SAMPLE_TAKEN'
  | 'SOMETHING_UNFASTENED';

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

export type Strength =
  | 'CERTAIN'
  | 'FIRM'
  | 'TENTATIVE'
  | 'USUAL';

export type Sureness =
  | 'POSSIBLE'
  | 'PROBABLE'
  | 'SURE';

export type WeighingStage =
  | 'DATES'
  | 'LOOKS'
  | 'MENDS'
  | 'ORIGINS'
  | 'RIVALS'
  | 'SENSITIVITY'
  | 'WEIGHTS';

export type WeighPieceQueryVariables = Exact<{
  piece: Types.PieceInput;
  revision?: number | null | undefined;
  stages: ReadonlyArray<Types.WeighingStage> | Types.WeighingStage;
  toLookFor: boolean;
}>;


export type WeighPieceQuery = { readonly weigh:
    | { readonly __typename: 'Refused', readonly problems: ReadonlyArray<{ readonly message: string }> }
    | { readonly __typename: 'Weighed', readonly revision: number, readonly weighing: Weighing, readonly words: WeighingWords, readonly claims: ReadonlyArray<{ readonly id: string, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> }>, readonly terms?: ReadonlyArray<{ readonly id: string, readonly label: string, readonly broaderTerms: ReadonlyArray<{ readonly id: string }>, readonly looking: { readonly how: string, readonly move: Types.Move, readonly aids: ReadonlyArray<Types.Aid>, readonly innocent: string | null, readonly basis: Types.Basis } | null }> }
   };

export type LookedForFragment = { readonly id: string, readonly label: string, readonly broaderTerms: ReadonlyArray<{ readonly id: string }>, readonly looking: { readonly how: string, readonly move: Types.Move, readonly aids: ReadonlyArray<Types.Aid>, readonly innocent: string | null, readonly basis: Types.Basis } | null };

export const LookedForFragmentDoc = {"kind":"Document","definitions":[{"kind":"FragmentDefinition","name":{"kind":"Name","value":"LookedFor"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Term"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}},{"kind":"Field","name":{"kind":"Name","value":"broaderTerms"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}}]}},{"kind":"Field","name":{"kind":"Name","value":"looking"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"how"}},{"kind":"Field","name":{"kind":"Name","value":"move"}},{"kind":"Field","name":{"kind":"Name","value":"aids"}},{"kind":"Field","name":{"kind":"Name","value":"innocent"}},{"kind":"Field","name":{"kind":"Name","value":"basis"}}]}}]}}]} as unknown as DocumentNode<LookedForFragment, unknown>;
export const WeighPieceDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"WeighPiece"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"piece"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"PieceInput"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"revision"}},"type":{"kind":"NamedType","name":{"kind":"Name","value":"Int"}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"stages"}},"type":{"kind":"NonNullType","type":{"kind":"ListType","type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"WeighingStage"}}}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"toLookFor"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Boolean"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"weigh"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"piece"},"value":{"kind":"Variable","name":{"kind":"Name","value":"piece"}}},{"kind":"Argument","name":{"kind":"Name","value":"revision"},"value":{"kind":"Variable","name":{"kind":"Name","value":"revision"}}},{"kind":"Argument","name":{"kind":"Name","value":"stages"},"value":{"kind":"Variable","name":{"kind":"Name","value":"stages"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"__typename"}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Weighed"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"revision"}},{"kind":"Field","name":{"kind":"Name","value":"weighing"}},{"kind":"Field","name":{"kind":"Name","value":"words"}},{"kind":"Field","name":{"kind":"Name","value":"claims"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"CitedClaim"}}]}},{"kind":"Field","name":{"kind":"Name","value":"terms"},"directives":[{"kind":"Directive","name":{"kind":"Name","value":"include"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"if"},"value":{"kind":"Variable","name":{"kind":"Name","value":"toLookFor"}}}]}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"LookedFor"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"message"}}]}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitationLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Citation"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"basis"}},{"kind":"Field","name":{"kind":"Name","value":"locator"}},{"kind":"Field","name":{"kind":"Name","value":"note"}},{"kind":"Field","name":{"kind":"Name","value":"source"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"text"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitedClaim"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Claim"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"status"}},{"kind":"Field","name":{"kind":"Name","value":"strength"}},{"kind":"Field","name":{"kind":"Name","value":"hardness"}},{"kind":"Field","name":{"kind":"Name","value":"openDisputes"}},{"kind":"Field","name":{"kind":"Name","value":"citations"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"CitationLine"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"LookedFor"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Term"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}},{"kind":"Field","name":{"kind":"Name","value":"broaderTerms"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}}]}},{"kind":"Field","name":{"kind":"Name","value":"looking"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"how"}},{"kind":"Field","name":{"kind":"Name","value":"move"}},{"kind":"Field","name":{"kind":"Name","value":"aids"}},{"kind":"Field","name":{"kind":"Name","value":"innocent"}},{"kind":"Field","name":{"kind":"Name","value":"basis"}}]}}]}}]} as unknown as DocumentNode<WeighPieceQuery, WeighPieceQueryVariables>;