import type { TypedDocumentNode } from "@graphql-typed-document-node/core";
import { createContext, useContext } from "react";

/** How a page stands to the server that tells it what changes. */
export type LiveState = "connecting" | "live" | "lost";

export interface Following<Data, Variables> {
  readonly document: TypedDocumentNode<Data, Variables>;
  /** Asked at each connection anew, so that it can go on from what is known. */
  readonly variables: () => Variables;
  readonly take: (data: Data) => void;
  readonly tell?: (state: LiveState) => void;
}

/** What the server tells by itself, over one connection for the whole page. */
export interface Live {
  /** Follows until the returned function is called; connects again, and asks anew, whenever the connection was lost. */
  readonly follow: <Data, Variables extends object>(following: Following<Data, Variables>) => () => void;
}

const LiveContext = createContext<(() => Promise<Live>) | undefined>(undefined);
/** Gives the pages the way to fetch the connection; without it nothing is told. */
export const LiveProvider = LiveContext.Provider;
export const useLiveSource = () => useContext(LiveContext);
