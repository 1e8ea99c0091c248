/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
export type DisputeOutcome =
  | 'CORRECTED'
  | 'RETRACTED'
  | 'STANDS'
  | 'TAKEN_BACK';

export type DisputeState =
  | 'ENDED'
  | 'OPEN';

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

export type DisputeLineFragment = { readonly id: string, readonly says: string, readonly at: string, readonly state: Types.DisputeState, readonly by: { readonly id: string, readonly name: string | null }, readonly decision: { readonly outcome: Types.DisputeOutcome, readonly says: string, readonly at: string, readonly by: { readonly id: string, readonly name: string | null } } | null };

export type DisputesOfClaimQueryVariables = Exact<{
  claim: string;
}>;


export type DisputesOfClaimQuery = { readonly claim: { readonly id: string, readonly openDisputes: number, readonly disputes: ReadonlyArray<{ readonly id: string, readonly says: string, readonly at: string, readonly state: Types.DisputeState, readonly by: { readonly id: string, readonly name: string | null }, readonly decision: { readonly outcome: Types.DisputeOutcome, readonly says: string, readonly at: string, readonly by: { readonly id: string, readonly name: string | null } } | null }> } | null };

export type DisputeClaimMutationVariables = Exact<{
  claim: string;
  says: string;
}>;


export type DisputeClaimMutation = { readonly disputeClaim:
    | { readonly id: string }
    | { readonly problems: ReadonlyArray<{ readonly code: Types.ProblemCode, readonly message: string }> }
   };

export const DisputeLineFragmentDoc = {"kind":"Document","definitions":[{"kind":"FragmentDefinition","name":{"kind":"Name","value":"DisputeLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Dispute"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"at"}},{"kind":"Field","name":{"kind":"Name","value":"state"}},{"kind":"Field","name":{"kind":"Name","value":"by"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"name"}}]}},{"kind":"Field","name":{"kind":"Name","value":"decision"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"outcome"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"at"}},{"kind":"Field","name":{"kind":"Name","value":"by"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"name"}}]}}]}}]}}]} as unknown as DocumentNode<DisputeLineFragment, unknown>;
export const DisputesOfClaimDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"DisputesOfClaim"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"claim"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"claim"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"claim"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"openDisputes"}},{"kind":"Field","name":{"kind":"Name","value":"disputes"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"DisputeLine"}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"DisputeLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Dispute"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"at"}},{"kind":"Field","name":{"kind":"Name","value":"state"}},{"kind":"Field","name":{"kind":"Name","value":"by"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"name"}}]}},{"kind":"Field","name":{"kind":"Name","value":"decision"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"outcome"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"at"}},{"kind":"Field","name":{"kind":"Name","value":"by"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"name"}}]}}]}}]}}]} as unknown as DocumentNode<DisputesOfClaimQuery, DisputesOfClaimQueryVariables>;
export const DisputeClaimDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"mutation","name":{"kind":"Name","value":"DisputeClaim"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"claim"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"says"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"String"}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"disputeClaim"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"claim"},"value":{"kind":"Variable","name":{"kind":"Name","value":"claim"}}},{"kind":"Argument","name":{"kind":"Name","value":"says"},"value":{"kind":"Variable","name":{"kind":"Name","value":"says"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Dispute"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}}]}},{"kind":"InlineFragment","typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Refused"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"problems"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"code"}},{"kind":"Field","name":{"kind":"Name","value":"message"}}]}}]}}]}}]}}]} as unknown as DocumentNode<DisputeClaimMutation, DisputeClaimMutationVariables>;