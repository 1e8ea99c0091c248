import { ApolloClient } from "@apollo/client";
import { makeCache } from "./make-cache.ts";

/** Earlier readings kept at once. */
const MOST_KEPT = 4;
const kept = new WeakMap<ApolloClient, Map<number, ApolloClient>>();

/**
 * A client for what is read as of a revision, over the link of the given one. Things keep their ids from revision to
 * revision, so that each revision needs a cache of its own.
 */
export function clientAsOf(client: ApolloClient, revision: number): ApolloClient {
  const clients = kept.get(client) ?? new Map<number, ApolloClient>();
  kept.set(client, clients);
  const found = clients.get(revision) ?? new ApolloClient({ link: client.link, cache: makeCache() });
  clients.delete(revision);
  clients.set(revision, found);
  for (const old of [...clients.keys()].slice(0, -MOST_KEPT)) clients.delete(old);
  return found;
}
