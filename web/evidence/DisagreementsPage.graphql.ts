/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type * as Types from '../shared/apollo/schema-types.graphql.ts';

import type { TypedDocumentNode as DocumentNode } from '@graphql-typed-document-node/core';
export type DisagreementsPageQueryVariables = Exact<{ [key: string]: never; }>;


export type DisagreementsPageQuery = { readonly disagreementsMade: number, readonly disagreementRules: ReadonlyArray<{ readonly id: string, readonly title: string, readonly means: string, readonly count: number, readonly claimCount: number }> | null };


export const DisagreementsPageDocument = {"kind":"Document","definitions":[{"kind":"OperationDefinition","operation":"query","name":{"kind":"Name","value":"DisagreementsPage"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"disagreementsMade"}},{"kind":"Field","name":{"kind":"Name","value":"disagreementRules"},"selectionSet":{"kind":"SelectionSet","selections":[{"kind":"Field","name":{"kind":"Name","value":"id"}},{"kind":"Field","name":{"kind":"Name","value":"title"}},{"kind":"Field","name":{"kind":"Name","value":"means"}},{"kind":"Field","name":{"kind":"Name","value":"count"}},{"kind":"Field","name":{"kind":"Name","value":"claimCount"}}]}}]}}]} as unknown as DocumentNode<DisagreementsPageQuery, DisagreementsPageQueryVariables>;