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

export type Strength =
  | 'CERTAIN'
  | 'FIRM'
  | 'TENTATIVE'
  | 'USUAL';

export type CitedClaimFragment = { readonly id: string, readonly says: string, readonly status: Types.ClaimStatus, readonly strength: Types.Strength, readonly hardness: Types.Hardness | null, readonly openDisputes: number, readonly citations: ReadonlyArray<{ readonly basis: Types.Basis, readonly locator: string | null, readonly note: string | null, readonly source: { readonly id: string, readonly text: string } | null }> };

export const CitedClaimFragmentDoc = {"kind":"Document","definitions":[{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitedClaim"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Claim"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"status"}},{"kind":"Field","name":{"kind":"Name","value":"strength"}},{"kind":"Field","name":{"kind":"Name","value":"hardness"}},{"kind":"Field","name":{"kind":"Name","value":"openDisputes"}},{"kind":"Field","name":{"kind":"Name","value":"citations"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"CitationLine"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"CitationLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Citation"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"basis"}},{"kind":"Field","name":{"kind":"Name","value":"locator"}},{"kind":"Field","name":{"kind":"Name","value":"note"}},{"kind":"Field","name":{"kind":"Name","value":"source"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"text"}}]}}]}}]} as unknown as DocumentNode<CitedClaimFragment, unknown>;