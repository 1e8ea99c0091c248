/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
export type Basis =
  | 'COMMON_PRACTICE'
  | 'FROM_MEMORY'
  | 'PUBLISHED';

export type ClaimStatus =
  | 'ACCEPTED'
  | 'PROPOSED'
  | 'REJECTED';

export type Hardness =
  | 'PHYSICAL'
  | 'PRACTICE';

export type PartState =
  | 'LATER'
  | 'ORIGINAL'
  | 'REUSED'
  | 'REWORKED';

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

export type TermKind =
  | 'FEATURE'
  | 'FINISH'
  | 'FORM'
  | 'HARDWARE'
  | 'MAKER'
  | 'MATERIAL'
  | 'PART'
  | 'PRACTICE'
  | 'REGION'
  | 'STYLE'
  | 'TOOL';

export type ClaimPageQueryVariables = Exact<{
  id: string;
  revision?: number | null | undefined;
}>;


export type ClaimPageQuery = { readonly claim: { readonly note: string | null, readonly row: string | null, readonly closed: boolean | null, readonly states: ReadonlyArray<Types.PartState>, readonly id: string, readonly relation: Types.Relation, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly when: string | null, readonly ways: ReadonlyArray<{ readonly terms: ReadonlyArray<{ readonly id: string, readonly label: string }> }>, readonly objects: ReadonlyArray<{ readonly id: string, readonly label: string }>, readonly of: { readonly id: string, readonly relation: Types.Relation, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly when: string | null, readonly years: { readonly begin: ReadonlyArray<number | null>, readonly end: ReadonlyArray<number | null>, readonly padBegin: number, readonly padEnd: number, readonly doubtful: boolean } | null, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null, readonly part: { readonly id: string, readonly label: string } | null, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> } | null, readonly exceptions: ReadonlyArray<{ readonly id: string, readonly relation: Types.Relation, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly when: string | null, readonly objects: ReadonlyArray<{ readonly id: string, readonly label: string }>, readonly years: { readonly begin: ReadonlyArray<number | null>, readonly end: ReadonlyArray<number | null>, readonly padBegin: number, readonly padEnd: number, readonly doubtful: boolean } | null, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null, readonly part: { readonly id: string, readonly label: string } | null, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> }>, readonly subject: { readonly id: string, readonly kind: Types.TermKind, readonly label: string, readonly claims: { readonly totalCount: number, readonly edges: ReadonlyArray<{ readonly cursor: string, readonly node: { readonly id: string, readonly relation: Types.Relation, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly when: string | null, readonly years: { readonly begin: ReadonlyArray<number | null>, readonly end: ReadonlyArray<number | null>, readonly padBegin: number, readonly padEnd: number, readonly doubtful: boolean } | null, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null, readonly part: { readonly id: string, readonly label: string } | null, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> } }>, readonly pageInfo: { readonly hasNextPage: boolean, readonly endCursor: string | null } } } | null, readonly years: { readonly begin: ReadonlyArray<number | null>, readonly end: ReadonlyArray<number | null>, readonly padBegin: number, readonly padEnd: number, readonly doubtful: boolean } | null, readonly region: { readonly id: string, readonly label: string } | null, readonly form: { readonly id: string, readonly label: string } | null, readonly part: { readonly id: string, readonly label: string } | null, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> } | null };


export const ClaimPageDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"ClaimPage"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"id"}},"type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}},{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"revision"}},"type":{"kind":"NamedType","name":{"kind":"Name","value":"Int"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"claim"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"id"},"value":{"kind":"Variable","name":{"kind":"Name","value":"id"}}},{"kind":"Argument","name":{"kind":"Name","value":"revision"},"value":{"kind":"Variable","name":{"kind":"Name","value":"revision"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"ClaimLine"}},{"kind":"Field","name":{"kind":"Name","value":"note"}},{"kind":"Field","name":{"kind":"Name","value":"row"}},{"kind":"Field","name":{"kind":"Name","value":"closed"}},{"kind":"Field","name":{"kind":"Name","value":"states"}},{"kind":"Field","name":{"kind":"Name","value":"ways"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"terms"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}},{"kind":"Field","name":{"kind":"Name","value":"objects"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"of"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"ClaimLine"}}]}},{"kind":"Field","name":{"kind":"Name","value":"exceptions"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"ClaimLine"}},{"kind":"Field","name":{"kind":"Name","value":"objects"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}}]}},{"kind":"Field","name":{"kind":"Name","value":"subject"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"kind"}},{"kind":"Field","name":{"kind":"Name","value":"label"}},{"kind":"Field","name":{"kind":"Name","value":"claims"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"first"},"value":{"kind":"IntValue","value":"50"}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"edges"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"cursor"}},{"kind":"Field","name":{"kind":"Name","value":"node"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"ClaimLine"}}]}}]}},{"kind":"Field","name":{"kind":"Name","value":"pageInfo"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"hasNextPage"}},{"kind":"Field","name":{"kind":"Name","value":"endCursor"}}]}},{"kind":"Field","name":{"kind":"Name","value":"totalCount"}}]}}]}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitationLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Citation"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"basis"}},{"kind":"Field","name":{"kind":"Name","value":"locator"}},{"kind":"Field","name":{"kind":"Name","value":"note"}},{"kind":"Field","name":{"kind":"Name","value":"source"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"text"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"ClaimLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Claim"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"relation"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"status"}},{"kind":"Field","name":{"kind":"Name","value":"strength"}},{"kind":"Field","name":{"kind":"Name","value":"hardness"}},{"kind":"Field","name":{"kind":"Name","value":"openDisputes"}},{"kind":"Field","name":{"kind":"Name","value":"when"}},{"kind":"Field","name":{"kind":"Name","value":"years"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"begin"}},{"kind":"Field","name":{"kind":"Name","value":"end"}},{"kind":"Field","name":{"kind":"Name","value":"padBegin"}},{"kind":"Field","name":{"kind":"Name","value":"padEnd"}},{"kind":"Field","name":{"kind":"Name","value":"doubtful"}}]}},{"kind":"Field","name":{"kind":"Name","value":"region"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"form"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"part"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"citations"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"CitationLine"}}]}}]}}]} as unknown as DocumentNode<ClaimPageQuery, ClaimPageQueryVariables>;