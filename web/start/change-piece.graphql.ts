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

export type Sureness =
  | 'POSSIBLE'
  | 'PROBABLE'
  | 'SURE';

export type DeletePieceMutationVariables = Exact<{
  id: string;
  expectedVersion: number;
}>;


export type DeletePieceMutation = { readonly deleteExamination:
    | { readonly __typename: 'ExaminationChanged', readonly examination: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } }
    | { readonly __typename: 'Refused', readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly instead: string | null }>, readonly current: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } | null }
   };

export type UndoPieceMutationVariables = Exact<{
  id: string;
  expectedVersion: number;
}>;


export type UndoPieceMutation = { readonly undoExamination:
    | { readonly __typename: 'ExaminationChanged', readonly examination: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } }
    | { readonly __typename: 'Refused', readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly instead: string | null }>, readonly current: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } | null }
   };

export type BeginPieceMutationVariables = Exact<{
  piece: Types.PieceInput;
}>;


export type BeginPieceMutation = { readonly createExamination:
    | { readonly __typename: 'ExaminationChanged', readonly examination: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } }
    | { readonly __typename: 'Refused', readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly instead: string | null }>, readonly current: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } | null }
   };

export type PieceChanged_ExaminationChanged_Fragment = { readonly __typename: 'ExaminationChanged', readonly examination: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } };

export type PieceChanged_Refused_Fragment = { readonly __typename: 'Refused', readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly instead: string | null }>, readonly current: { readonly id: string, readonly version: number, readonly changedAt: string, readonly deleted: boolean, readonly piece: { readonly title: string, readonly invented: boolean, readonly attribution: { readonly date: string, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null } } } | null };

export type PieceChangedFragment =
  | PieceChanged_ExaminationChanged_Fragment
  | PieceChanged_Refused_Fragment
;

export const PieceChangedFragmentDoc = {"kind":"Document","definitions":[{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceChanged"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ChangeExaminationResult"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"__typename"}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ExaminationChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"examination"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}},{"kind":"Field","name":{"kind":"Name","value":"instead"}}]}},{"kind":"Field","name":{"kind":"Name","value":"current"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceRow"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Examination"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}},{"kind":"Field","name":{"kind":"Name","value":"changedAt"}},{"kind":"Field","name":{"kind":"Name","value":"deleted"}},{"kind":"Field","name":{"kind":"Name","value":"piece"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"title"}},{"kind":"Field","name":{"kind":"Name","value":"invented"}},{"kind":"Field","name":{"kind":"Name","value":"attribution"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"date"}},{"kind":"Field","name":{"kind":"Name","value":"region"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"form"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}}]}}]}}]} as unknown as DocumentNode<PieceChangedFragment, unknown>;
export const DeletePieceDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"DeletePiece"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"expectedVersion"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Int"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"deleteExamination"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}},{"kind":"Argument","name":{"kind":"Name","value":"expectedVersion"},"value":{"kind":"Variable","name":{"kind":"Name","value":"expectedVersion"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceChanged"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceRow"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Examination"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}},{"kind":"Field","name":{"kind":"Name","value":"changedAt"}},{"kind":"Field","name":{"kind":"Name","value":"deleted"}},{"kind":"Field","name":{"kind":"Name","value":"piece"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"title"}},{"kind":"Field","name":{"kind":"Name","value":"invented"}},{"kind":"Field","name":{"kind":"Name","value":"attribution"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"date"}},{"kind":"Field","name":{"kind":"Name","value":"region"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"form"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceChanged"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ChangeExaminationResult"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"__typename"}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ExaminationChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"examination"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}},{"kind":"Field","name":{"kind":"Name","value":"instead"}}]}},{"kind":"Field","name":{"kind":"Name","value":"current"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}}]}}]} as unknown as DocumentNode<DeletePieceMutation, DeletePieceMutationVariables>;
export const UndoPieceDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"UndoPiece"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"expectedVersion"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Int"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"undoExamination"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}},{"kind":"Argument","name":{"kind":"Name","value":"expectedVersion"},"value":{"kind":"Variable","name":{"kind":"Name","value":"expectedVersion"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceChanged"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceRow"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Examination"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}},{"kind":"Field","name":{"kind":"Name","value":"changedAt"}},{"kind":"Field","name":{"kind":"Name","value":"deleted"}},{"kind":"Field","name":{"kind":"Name","value":"piece"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"title"}},{"kind":"Field","name":{"kind":"Name","value":"invented"}},{"kind":"Field","name":{"kind":"Name","value":"attribution"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"date"}},{"kind":"Field","name":{"kind":"Name","value":"region"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"form"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceChanged"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ChangeExaminationResult"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"__typename"}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ExaminationChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"examination"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}},{"kind":"Field","name":{"kind":"Name","value":"instead"}}]}},{"kind":"Field","name":{"kind":"Name","value":"current"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}}]}}]} as unknown as DocumentNode<UndoPieceMutation, UndoPieceMutationVariables>;
export const BeginPieceDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"BeginPiece"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"piece"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"PieceInput"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"createExamination"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"piece"},"value":{"kind":"Variable","name":{"kind":"Name","value":"piece"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceChanged"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceRow"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Examination"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}},{"kind":"Field","name":{"kind":"Name","value":"changedAt"}},{"kind":"Field","name":{"kind":"Name","value":"deleted"}},{"kind":"Field","name":{"kind":"Name","value":"piece"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"title"}},{"kind":"Field","name":{"kind":"Name","value":"invented"}},{"kind":"Field","name":{"kind":"Name","value":"attribution"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"date"}},{"kind":"Field","name":{"kind":"Name","value":"region"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"form"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"PieceChanged"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ChangeExaminationResult"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"__typename"}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ExaminationChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"examination"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}},{"kind":"Field","name":{"kind":"Name","value":"instead"}}]}},{"kind":"Field","name":{"kind":"Name","value":"current"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"PieceRow"}}]}}]}}]}}]} as unknown as DocumentNode<BeginPieceMutation, BeginPieceMutationVariables>;