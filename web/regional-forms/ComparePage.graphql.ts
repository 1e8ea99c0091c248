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

export type FoundGroup =
  | 'FORM'
  | 'PRACTICE'
  | 'SHOP'
  | 'WOOD';

export type Hardness =
  | 'PHYSICAL'
  | 'PRACTICE';

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

export type CompareRegionsQueryVariables = Exact<{
  of: ReadonlyArray<string> | string;
}>;


export type CompareRegionsQuery = { readonly regionsMade: number, readonly regionProfiles: ReadonlyArray<{ readonly own: number, readonly within: number, readonly isOutline: boolean, readonly region: { readonly id: string, readonly label: string, readonly broaderTerms: ReadonlyArray<{ readonly id: string }> } | null, readonly sources: ReadonlyArray<{ readonly claims: number }>, readonly found: ReadonlyArray<{ readonly group: Types.FoundGroup, readonly subject: { readonly id: string, readonly label: string, readonly kind: Types.TermKind } | null, readonly claims: ReadonlyArray<{ readonly id: string, readonly relation: Types.Relation, readonly hardness: Types.Hardness | null, readonly years: { readonly begin: ReadonlyArray<number | null>, readonly end: ReadonlyArray<number | null>, readonly padBegin: number, readonly padEnd: number, readonly doubtful: boolean } | null, readonly objects: ReadonlyArray<{ readonly id: string, readonly label: string }>, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis }> }> }> }> | null };


export const CompareRegionsDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"CompareRegions"},"variableDefinitions":[{"kind":"VariableDefinition","variable":{"kind":"Variable","name":{"kind":"Name","value":"of"}},"type":{"kind":"NonNullType","type":{"kind":"ListType","type":{"kind":"NonNullType","type":{"kind":"NamedType","name":{"kind":"Name","value":"ID"}}}}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"regionsMade"}},{"kind":"Field","name":{"kind":"Name","value":"regionProfiles"},"arguments":[{"kind":"Argument","name":{"kind":"Name","value":"of"},"value":{"kind":"Variable","name":{"kind":"Name","value":"of"}}}],"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"own"}},{"kind":"Field","name":{"kind":"Name","value":"within"}},{"kind":"Field","name":{"kind":"Name","value":"isOutline"}},{"kind":"Field","name":{"kind":"Name","value":"region"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}},{"kind":"Field","name":{"kind":"Name","value":"broaderTerms"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}}]}}]}},{"kind":"Field","name":{"kind":"Name","value":"sources"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"claims"}}]}},{"kind":"Field","name":{"kind":"Name","value":"found"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"group"}},{"kind":"Field","name":{"kind":"Name","value":"subject"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}},{"kind":"Field","name":{"kind":"Name","value":"kind"}}]}},{"kind":"Field","name":{"kind":"Name","value":"claims"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"relation"}},{"kind":"Field","name":{"kind":"Name","value":"hardness"}},{"kind":"Field","name":{"kind":"Name","value":"years"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"begin"}},{"kind":"Field","name":{"kind":"Name","value":"end"}},{"kind":"Field","name":{"kind":"Name","value":"padBegin"}},{"kind":"Field","name":{"kind":"Name","value":"padEnd"}},{"kind":"Field","name":{"kind":"Name","value":"doubtful"}}]}},{"kind":"Field","name":{"kind":"Name","value":"objects"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"citations"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"basis"}}]}}]}}]}}]}}]}}]} as unknown as DocumentNode<CompareRegionsQuery, CompareRegionsQueryVariables>;