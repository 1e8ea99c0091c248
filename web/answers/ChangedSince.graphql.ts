/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
export type ShiftKind =
  | 'FINDING'
  | 'PART'
  | 'RECORD'
  | 'RULE_OUT';

export type ShiftedLineFragment = { readonly kind: Types.ShiftKind, readonly strip: string | null, readonly says: string, readonly before: string, readonly now: string };

export type ChangedSinceFieldsFragment = { readonly since: number, readonly claimCount: number, readonly claims: ReadonlyArray<{ readonly id: string, readonly says: string }>, readonly gone: ReadonlyArray<{ readonly id: string, readonly says: string }>, readonly lines: ReadonlyArray<{ readonly kind: Types.ShiftKind, readonly strip: string | null, readonly says: string, readonly before: string, readonly now: string }> };

export const ShiftedLineFragmentDoc = {"kind":"Document","definitions":[{"kind":"FragmentDefinition","name":{"kind":"Name","value":"ShiftedLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ShiftLine"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"kind"}},{"kind":"Field","name":{"kind":"Name","value":"strip"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"before"}},{"kind":"Field","name":{"kind":"Name","value":"now"}}]}}]} as unknown as DocumentNode<ShiftedLineFragment, unknown>;
export const ChangedSinceFieldsFragmentDoc = {"kind":"Document","definitions":[{"kind":"FragmentDefinition","name":{"kind":"Name","value":"ChangedSinceFields"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ChangedSince"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"since"}},{"kind":"Field","name":{"kind":"Name","value":"claimCount"}},{"kind":"Field","name":{"kind":"Name","value":"claims"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}}]}},{"kind":"Field","name":{"kind":"Name","value":"gone"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"says"}}]}},{"kind":"Field","name":{"kind":"Name","value":"lines"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"FragmentSpread","name":{"kind":"Name","value":"ShiftedLine"}}]}}]}},{"kind":"FragmentDefinition","name":{"kind":"Name","value":"ShiftedLine"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"ShiftLine"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"kind"}},{"kind":"Field","name":{"kind":"Name","value":"strip"}},{"kind":"Field","name":{"kind":"Name","value":"says"}},{"kind":"Field","name":{"kind":"Name","value":"before"}},{"kind":"Field","name":{"kind":"Name","value":"now"}}]}}]} as unknown as DocumentNode<ChangedSinceFieldsFragment, unknown>;