/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

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

export type Basis =
  | 'COMMON_PRACTICE'
  | 'FROM_MEMORY'
  | 'PUBLISHED';

export type Move =
  | 'DRAWER_OUT'
  | 'NOTHING'
  | 'PIECE_TURNED'
  | 'SAMPLE_TAKEN'
  | 'SOMETHING_UNFASTENED';

export type LookingNotesFragment = { readonly how: string, readonly move: Types.Move, readonly aids: ReadonlyArray<Types.Aid>, readonly innocent: string | null, readonly basis: Types.Basis, readonly mistakenFor: ReadonlyArray<{ readonly what: string, readonly apart: string, readonly term: { readonly id: string, readonly label: string } | null }> };

export const LookingNotesFragmentDoc = {"kind":"Document","definitions":[{"kind":"FragmentDefinition","name":{"kind":"Name","value":"LookingNotes"},"typeCondition":{"kind":"NamedType","name":{"kind":"Name","value":"Looking"}},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"how"}},{"kind":"Field","name":{"kind":"Name","value":"move"}},{"kind":"Field","name":{"kind":"Name","value":"aids"}},{"kind":"Field","name":{"kind":"Name","value":"mistakenFor"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"what"}},{"kind":"Field","name":{"kind":"Name","value":"term"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"label"}}]}},{"kind":"Field","name":{"kind":"Name","value":"apart"}}]}},{"kind":"Field","name":{"kind":"Name","value":"innocent"}},{"kind":"Field","name":{"kind":"Name","value":"basis"}}]}}]} as unknown as DocumentNode<LookingNotesFragment, unknown>;