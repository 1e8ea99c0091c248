import { ApolloClient, HttpLink } from "@apollo/client";
import { makeCache } from "./make-cache.ts";
import { signInLink } from "./sign-in-link.ts";
import { writeSequenceLink } from "./write-sequence-link.ts";

/** The one way to the server. `uri` is the address of the GraphQL endpoint. */
export const makeClient = (uri = "/graphql"): ApolloClient =>
  new ApolloClient({
    link: signInLink()
      .concat(writeSequenceLink())
      .concat(new HttpLink({ uri, credentials: "same-origin" })),
    cache: makeCache(),
  });
