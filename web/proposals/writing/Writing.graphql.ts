/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../../shared/apollo/schema-types.graphql.ts';

import type { Change } from '#server/domain/change.ts';
import type { FormFields } from '#server/domain/proposals/form/form-fields.ts';
import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
export type AlikeBy =
  | 'SAME_CLAIM'
  | 'SAME_LABEL'
  | 'SAME_SOURCE'
  | 'SAME_SOURCE_AND_PLACE';

export type Basis =
  | 'COMMON_PRACTICE'
  | 'FROM_MEMORY'
  | 'PUBLISHED';

export type ClaimStatus =
  | 'ACCEPTED'
  | 'PROPOSED'
  | 'REJECTED';

export type EditKind =
  | 'ADDED'
  | 'CHANGED'
  | 'WITHDRAWN';

export type Hardness =
  | 'PHYSICAL'
  | 'PRACTICE';

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

/** What is left out stays as it is. */
export type ProposalChanges = {
  readonly base?: number | null | undefined;
  readonly change?: Change | null | undefined;
  readonly form?: FormFields | null | undefined;
  readonly kind?: ProposalKind | null | undefined;
  readonly title?: string | null | undefined;
  readonly why?: string | null | undefined;
};

export type ProposalInput = {
  /** Revision it was made on; none is the newest. */
  readonly base?: number | null | undefined;
  readonly change: Change;
  /** What stands in the form it is written in. */
  readonly form?: FormFields | null | undefined;
  readonly kind: ProposalKind;
  /** In a few words what it is. */
  readonly title: string;
  /** Why the graph should change. */
  readonly why: string;
};

export type ProposalKind =
  | 'CLAIM'
  | 'CORRECTION'
  | 'EXCEPTION'
  | 'MERGE'
  | 'RETIREMENT'
  | 'SOURCE'
  | 'TERM';

export type ProposalState =
  | 'ACCEPTED'
  | 'CHANGES_ASKED_FOR'
  | 'DECLINED'
  | 'DRAFT'
  | 'OPEN'
  | 'SUPERSEDED'
  | 'WITHDRAWN';

export type Relation =
  | 'ACTIVE'
  | 'ATTESTED'
  | 'COMMON_FROM'
  | 'COMMON_UNTIL'
  | 'CONFINED_TO'
  | 'CURRENT'
  | 'DISCONTINUED'
  | 'INDICATES'
  | 'INTRODUCED'
  | 'NOT_FOUND_IN'
  | 'REQUIRES'
  | 'SPREAD_TO'
  | 'TYPICAL_OF'
  | 'VOID_WHEN';

export type Strength =
  | 'CERTAIN'
  | 'FIRM'
  | 'TENTATIVE'
  | 'USUAL';

export type WrittenDraftQueryVariables = Exact<{
  id: string;
}>;


export type WrittenDraftQuery = { readonly proposal: { readonly id: string, readonly version: number, readonly kind: Types.ProposalKind, readonly title: string, readonly why: string, readonly state: Types.ProposalState, readonly form: FormFields | null, readonly isMine: boolean } | null };

export type LookOverQueryVariables = Exact<{
  kind: Types.ProposalKind;
  form: FormFields;
}>;


export type LookOverQuery = { readonly lookOver: { readonly change: Change | null, readonly edits: ReadonlyArray<{ readonly of: string, readonly kind: string, readonly does: Types.EditKind, readonly before: string | null, readonly after: string | null, readonly rows: ReadonlyArray<{ readonly what: string, readonly before: string | null, readonly after: string | null, readonly differs: boolean }> }>, readonly problems: ReadonlyArray<{ readonly message: string, readonly path: ReadonlyArray<string> }>, readonly alike: ReadonlyArray<{ readonly of: string, readonly kind: string, readonly by: Types.AlikeBy, readonly says: string }> } };

export type ReadBatchQueryVariables = Exact<{
  text: string;
}>;


export type ReadBatchQuery = { readonly readBatch: { readonly change: Change | null, readonly problems: ReadonlyArray<{ readonly message: string, readonly path: ReadonlyArray<string> }>, readonly rows: ReadonlyArray<{ readonly row: number, readonly says: ReadonlyArray<string>, readonly problems: ReadonlyArray<{ readonly message: string, readonly path: ReadonlyArray<string> }>, readonly alike: ReadonlyArray<{ readonly of: string, readonly by: Types.AlikeBy, readonly says: string }> }> } };

export type BeginDraftMutationVariables = Exact<{
  input: Types.ProposalInput;
  open: boolean;
}>;


export type BeginDraftMutation = { readonly makeProposal:
    | { readonly proposal: { readonly id: string, readonly version: number } }
    | { readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string }> }
   };

export type KeepDraftMutationVariables = Exact<{
  id: string;
  on: number;
  changes: Types.ProposalChanges;
}>;


export type KeepDraftMutation = { readonly changeProposal:
    | { readonly proposal: { readonly id: string, readonly version: number } }
    | { readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string }> }
   };

export type HandInMutationVariables = Exact<{
  id: string;
  on: number;
  changes: Types.ProposalChanges;
}>;


export type HandInMutation = { readonly openProposal:
    | { readonly proposal: { readonly id: string, readonly version: number } }
    | { readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string }> }
   };

export type TermByNameQueryVariables = Exact<{
  id: string;
}>;


export type TermByNameQuery = { readonly term: { readonly id: string, readonly label: string } | null };

export type ClaimsOnSubjectQueryVariables = Exact<{
  id: string;
  first: number;
  after?: string | null | undefined;
}>;


export type ClaimsOnSubjectQuery = { readonly term: { readonly id: string, readonly label: string, readonly claims: { readonly totalCount: number, readonly pageInfo: { readonly hasNextPage: boolean, readonly endCursor: string | null }, readonly edges: ReadonlyArray<{ readonly cursor: string, readonly node: { readonly id: string, readonly relation: Types.Relation, readonly says: string, readonly status: Types.ClaimStatus } }> } } | null };

export type ToBeCorrectedQueryVariables = Exact<{
  id: string;
}>;


export type ToBeCorrectedQuery = { readonly standing: Change, readonly claim: { readonly id: string, readonly relation: Types.Relation, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly when: string | null, readonly years: { readonly begin: ReadonlyArray<number | null>, readonly end: ReadonlyArray<number | null>, readonly padBegin: number, readonly padEnd: number, readonly doubtful: boolean } | null, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null, readonly part: { readonly id: string, readonly label: string } | null, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> } | null, readonly term: { readonly id: string, readonly label: string, readonly note: string | null } | null, readonly source: { readonly id: string, readonly text: string } | null };


export const WrittenDraftDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"WrittenDraft"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"proposal"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}},{"kind":"Field","name":{"kind":"Name","value":"kind"}},{"kind":"Field","name":{"kind":"Name","value":"title"}},{"kind":"Field","name":{"kind":"Name","value":"why"}},{"kind":"Field","name":{"kind":"Name","value":"state"}},{"kind":"Field","name":{"kind":"Name","value":"form"}},{"kind":"Field","name":{"kind":"Name","value":"isMine"}}]}}]}}]} as unknown as DocumentNode<WrittenDraftQuery, WrittenDraftQueryVariables>;
export const LookOverDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"LookOver"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"kind"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalKind"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"form"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"FormFields"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"lookOver"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"kind"},"value":{"kind":"Variable","name":{"kind":"Name","value":"kind"}}},{"kind":"Argument","name":{"kind":"Name","value":"form"},"value":{"kind":"Variable","name":{"kind":"Name","value":"form"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"change"}},{"kind":"Field","name":{"kind":"Name","value":"edits"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"of"}},{"kind":"Field","name":{"kind":"Name","value":"kind"}},{"kind":"Field","name":{"kind":"Name","value":"does"}},{"kind":"Field","name":{"kind":"Name","value":"before"}},{"kind":"Field","name":{"kind":"Name","value":"after"}},{"kind":"Field","name":{"kind":"Name","value":"rows"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"what"}},{"kind":"Field","name":{"kind":"Name","value":"before"}},{"kind":"Field","name":{"kind":"Name","value":"after"}},{"kind":"Field","name":{"kind":"Name","value":"differs"}}]}}]}},{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}}]}},{"kind":"Field","name":{"kind":"Name","value":"alike"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"of"}},{"kind":"Field","name":{"kind":"Name","value":"kind"}},{"kind":"Field","name":{"kind":"Name","value":"by"}},{"kind":"Field","name":{"kind":"Name","value":"says"}}]}}]}}]}}]} as unknown as DocumentNode<LookOverQuery, LookOverQueryVariables>;
export const ReadBatchDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"ReadBatch"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"text"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"String"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"readBatch"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"text"},"value":{"kind":"Variable","name":{"kind":"Name","value":"text"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"change"}},{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}}]}},{"kind":"Field","name":{"kind":"Name","value":"rows"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"row"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}}]}},{"kind":"Field","name":{"kind":"Name","value":"alike"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"of"}},{"kind":"Field","name":{"kind":"Name","value":"by"}},{"kind":"Field","name":{"kind":"Name","value":"says"}}]}}]}}]}}]}}]} as unknown as DocumentNode<ReadBatchQuery, ReadBatchQueryVariables>;
export const BeginDraftDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"BeginDraft"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"input"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalInput"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"open"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Boolean"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"makeProposal"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"input"},"value":{"kind":"Variable","name":{"kind":"Name","value":"input"}}},{"kind":"Argument","name":{"kind":"Name","value":"open"},"value":{"kind":"Variable","name":{"kind":"Name","value":"open"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"proposal"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}}]}}]}}]}}]}}]} as unknown as DocumentNode<BeginDraftMutation, BeginDraftMutationVariables>;
export const KeepDraftDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"KeepDraft"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"on"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Int"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"changes"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalChanges"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"changeProposal"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}},{"kind":"Argument","name":{"kind":"Name","value":"expectedVersion"},"value":{"kind":"Variable","name":{"kind":"Name","value":"on"}}},{"kind":"Argument","name":{"kind":"Name","value":"changes"},"value":{"kind":"Variable","name":{"kind":"Name","value":"changes"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"proposal"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}}]}}]}}]}}]}}]} as unknown as DocumentNode<KeepDraftMutation, KeepDraftMutationVariables>;
export const HandInDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"HandIn"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"on"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Int"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"changes"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalChanges"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"openProposal"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}},{"kind":"Argument","name":{"kind":"Name","value":"expectedVersion"},"value":{"kind":"Variable","name":{"kind":"Name","value":"on"}}},{"kind":"Argument","name":{"kind":"Name","value":"changes"},"value":{"kind":"Variable","name":{"kind":"Name","value":"changes"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"proposal"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"version"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}}]}}]}}]}}]}}]} as unknown as DocumentNode<HandInMutation, HandInMutationVariables>;
export const TermByNameDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"TermByName"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"term"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}}]} as unknown as DocumentNode<TermByNameQuery, TermByNameQueryVariables>;
export const ClaimsOnSubjectDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"ClaimsOnSubject"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"first"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Int"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"after"}},"type":{"kind":"NamedType","name":{"kind":"Name","value":"String"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"term"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}},{"kind":"Field","name":{"kind":"Name","value":"claims"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"first"},"value":{"kind":"Variable","name":{"kind":"Name","value":"first"}}},{"kind":"Argument","name":{"kind":"Name","value":"after"},"value":{"kind":"Variable","name":{"kind":"Name","value":"after"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"totalCount"}},{"kind":"Field","name":{"kind":"Name","value":"pageInfo"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"hasNextPage"}},{"kind":"Field","name":{"kind":"Name","value":"endCursor"}}]}},{"kind":"Field","name":{"kind":"Name","value":"edges"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"cursor"}},{"kind":"Field","name":{"kind":"Name","value":"node"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"relation"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"status"}}]}}]}}]}}]}}]}}]} as unknown as DocumentNode<ClaimsOnSubjectQuery, ClaimsOnSubjectQueryVariables>;
export const ToBeCorrectedDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"ToBeCorrected"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"standing"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}]},{"kind":"Field","name":{"kind":"Name","value":"claim"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"ClaimLine"}}]}},{"kind":"Field","name":{"kind":"Name","value":"term"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}},{"kind":"Field","name":{"kind":"Name","value":"note"}}]}},{"kind":"Field","name":{"kind":"Name","value":"source"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"text"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitationLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Citation"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"basis"}},{"kind":"Field","name":{"kind":"Name","value":"locator"}},{"kind":"Field","name":{"kind":"Name","value":"note"}},{"kind":"Field","name":{"kind":"Name","value":"source"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"text"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"ClaimLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Claim"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"relation"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"status"}},{"kind":"Field","name":{"kind":"Name","value":"strength"}},{"kind":"Field","name":{"kind":"Name","value":"hardness"}},{"kind":"Field","name":{"kind":"Name","value":"openDisputes"}},{"kind":"Field","name":{"kind":"Name","value":"when"}},{"kind":"Field","name":{"kind":"Name","value":"years"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"begin"}},{"kind":"Field","name":{"kind":"Name","value":"end"}},{"kind":"Field","name":{"kind":"Name","value":"padBegin"}},{"kind":"Field","name":{"kind":"Name","value":"padEnd"}},{"kind":"Field","name":{"kind":"Name","value":"doubtful"}}]}},{"kind":"Field","name":{"kind":"Name","value":"region"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"form"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"part"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"citations"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"CitationLine"}}]}}]}}]} as unknown as DocumentNode<ToBeCorrectedQuery, ToBeCorrectedQueryVariables>;