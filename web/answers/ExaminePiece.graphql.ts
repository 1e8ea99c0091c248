/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { Report } from '#server/domain/report.ts';
import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
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

export type ProblemCode =
  | 'BROKEN_SEAL'
  | 'CHANGED_MEANWHILE'
  | 'CYCLE_OF_BROADER_TERMS'
  | 'CYCLE_OF_EXCEPTIONS'
  | 'DAMAGED_DUMP'
  | 'DUPLICATE_ID'
  | 'EMPTY_LIST'
  | 'IMPOSSIBLE_ODDS'
  | 'LAST_OWNER'
  | 'LINK_USED_UP'
  | 'MISSING_LOCATOR'
  | 'NAME_TAKEN'
  | 'NOTHING_TO_UNDO'
  | 'NOT_ALLOWED'
  | 'NOT_SIGNED_IN'
  | 'OTHER_HISTORY'
  | 'OTHER_VERSION'
  | 'PART_OF_ITSELF'
  | 'SECOND_STEP_NEEDED'
  | 'SIGN_IN_REFUSED'
  | 'STALE_CHANGE'
  | 'STORE_CORRUPT'
  | 'STORE_FULL'
  | 'STORE_LOCKED'
  | 'STORE_NOT_EMPTY'
  | 'STORE_UNREACHABLE'
  | 'TOGETHER_AND_SEPARATE'
  | 'TOO_LARGE'
  | 'TRY_LATER'
  | 'UNCITED_CLAIM'
  | 'UNKNOWN_CLAIM'
  | 'UNKNOWN_EXAMINATION'
  | 'UNKNOWN_PART'
  | 'UNKNOWN_PERSON'
  | 'UNKNOWN_PROPOSAL'
  | 'UNKNOWN_REPORT'
  | 'UNKNOWN_REVISION'
  | 'UNKNOWN_SESSION'
  | 'UNKNOWN_SOURCE'
  | 'UNKNOWN_TERM'
  | 'UNREADABLE_DATING'
  | 'UNREADABLE_FILE'
  | 'WEAK_PASSWORD'
  | 'WRONG_FORMAT'
  | 'WRONG_KIND_OF_TERM'
  | 'WRONG_STATE';

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

export type ExaminePieceQueryVariables = Exact<{
  piece: Types.PieceInput;
}>;


export type ExaminePieceQuery = { readonly examine:
    | { readonly __typename: 'Examined', readonly revision: number, readonly report: Report, readonly words: { readonly headline: string, readonly reasons: ReadonlyArray<string>, readonly gaps: ReadonlyArray<string>, readonly notSearched: ReadonlyArray<string>, readonly findings: ReadonlyArray<{ readonly id: string, readonly says: string, readonly short: string, readonly paths: ReadonlyArray<string>, readonly steps: ReadonlyArray<{ readonly depth: number, readonly says: string, readonly claim: string | null, readonly assumed: boolean }> }>, readonly ruleOuts: ReadonlyArray<{ readonly id: string, readonly says: string, readonly steps: ReadonlyArray<{ readonly depth: number, readonly says: string, readonly claim: string | null, readonly assumed: boolean }> }>, readonly signs: ReadonlyArray<{ readonly observation: string, readonly claim: string, readonly says: string, readonly because: ReadonlyArray<string>, readonly look: ReadonlyArray<string> }>, readonly parts: ReadonlyArray<{ readonly part: string, readonly says: string }> }, readonly terms: ReadonlyArray<{ readonly id: string, readonly label: string }>, readonly claims: ReadonlyArray<{ readonly id: string, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> }> }
    | { readonly __typename: 'Refused', readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string, readonly path: ReadonlyArray<string> }> }
   };


export const ExaminePieceDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"ExaminePiece"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"piece"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"PieceInput"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"examine"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"piece"},"value":{"kind":"Variable","name":{"kind":"Name","value":"piece"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"__typename"}},{"kind":"FragmentSpread","name":{"kind":"Name","value":"Answer"}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}}]}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"WordsOfReport"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ReportWords"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"headline"}},{"kind":"Field","name":{"kind":"Name","value":"reasons"}},{"kind":"Field","name":{"kind":"Name","value":"findings"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"short"}},{"kind":"Field","name":{"kind":"Name","value":"steps"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"depth"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"claim"}},{"kind":"Field","name":{"kind":"Name","value":"assumed"}}]}},{"kind":"Field","name":{"kind":"Name","value":"paths"}}]}},{"kind":"Field","name":{"kind":"Name","value":"ruleOuts"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"steps"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"depth"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"claim"}},{"kind":"Field","name":{"kind":"Name","value":"assumed"}}]}}]}},{"kind":"Field","name":{"kind":"Name","value":"signs"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"observation"}},{"kind":"Field","name":{"kind":"Name","value":"claim"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"because"}},{"kind":"Field","name":{"kind":"Name","value":"look"}}]}},{"kind":"Field","name":{"kind":"Name","value":"parts"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"part"}},{"kind":"Field","name":{"kind":"Name","value":"says"}}]}},{"kind":"Field","name":{"kind":"Name","value":"gaps"}},{"kind":"Field","name":{"kind":"Name","value":"notSearched"}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"NamedTerm"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Term"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitationLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Citation"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"basis"}},{"kind":"Field","name":{"kind":"Name","value":"locator"}},{"kind":"Field","name":{"kind":"Name","value":"note"}},{"kind":"Field","name":{"kind":"Name","value":"source"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"text"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitedClaim"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Claim"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"status"}},{"kind":"Field","name":{"kind":"Name","value":"strength"}},{"kind":"Field","name":{"kind":"Name","value":"hardness"}},{"kind":"Field","name":{"kind":"Name","value":"openDisputes"}},{"kind":"Field","name":{"kind":"Name","value":"citations"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"CitationLine"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"Answer"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Examined"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"revision"}},{"kind":"Field","name":{"kind":"Name","value":"report"}},{"kind":"Field","name":{"kind":"Name","value":"words"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"WordsOfReport"}}]}},{"kind":"Field","name":{"kind":"Name","value":"terms"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"NamedTerm"}}]}},{"kind":"Field","name":{"kind":"Name","value":"claims"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"CitedClaim"}}]}}]}}]} as unknown as DocumentNode<ExaminePieceQuery, ExaminePieceQueryVariables>;