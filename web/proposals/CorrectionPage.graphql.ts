/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { Change } from '#server/domain/change.ts';
import type { FormFields } from '#server/domain/proposals/form/form-fields.ts';
import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
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

export type CorrectionQueryVariables = Exact<{
  id: string;
}>;


export type CorrectionQuery = { readonly standing: Change, readonly claim: { readonly id: string, readonly says: string } | null, readonly term: { readonly id: string, readonly label: string } | null };

export type FindConditionQueryVariables = Exact<{
  words: string;
}>;


export type FindConditionQuery = { readonly search: ReadonlyArray<{ readonly term: { readonly id: string, readonly label: string } }> };

export type MakeProposalMutationVariables = Exact<{
  input: Types.ProposalInput;
  open: boolean;
}>;


export type MakeProposalMutation = { readonly makeProposal:
    | { readonly proposal: { readonly id: string } }
    | { readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string, readonly path: ReadonlyArray<string> }> }
   };


export const CorrectionDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"Correction"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"standing"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}]},{"kind":"Field","name":{"kind":"Name","value":"claim"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}}]}},{"kind":"Field","name":{"kind":"Name","value":"term"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}}]} as unknown as DocumentNode<CorrectionQuery, CorrectionQueryVariables>;
export const FindConditionDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"FindCondition"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"words"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"String"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"search"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"words"},"value":{"kind":"Variable","name":{"kind":"Name","value":"words"}}},{"kind":"Argument","name":{"kind":"Name","value":"kinds"},"value":{"kind":"ListValue","values":[{"kind":"EnumValue","value":"FEATURE"}]}},{"kind":"Argument","name":{"kind":"Name","value":"first"},"value":{"kind":"IntValue","value":"16"}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"term"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}}]}}]} as unknown as DocumentNode<FindConditionQuery, FindConditionQueryVariables>;
export const MakeProposalDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"MakeProposal"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"input"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalInput"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"open"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"Boolean"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"makeProposal"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"input"},"value":{"kind":"Variable","name":{"kind":"Name","value":"input"}}},{"kind":"Argument","name":{"kind":"Name","value":"open"},"value":{"kind":"Variable","name":{"kind":"Name","value":"open"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ProposalChanged"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"proposal"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}}]}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}},{"kind":"Field","name":{"kind":"Name","value":"path"}}]}}]}}]}}]}}]} as unknown as DocumentNode<MakeProposalMutation, MakeProposalMutationVariables>;