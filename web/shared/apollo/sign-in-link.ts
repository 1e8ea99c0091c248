import { ApolloLink } from "@apollo/client";
import { mergeMap, NEVER, of } from "rxjs";

/** Pages that one sees without being signed in. */
const OPEN = ["/sign-in", "/sign-in/elsewhere", "/set-up", "/new-password", "/invitation"];

/**
 * Where the server answers nobody, leads to the page to sign in on, and from there back; what was asked then gets no answer, as the
 * page that asked is left.
 */
export const signInLink = (go: (path: string) => void = (path) => window.location.assign(path)): ApolloLink =>
  new ApolloLink((operation, forward) =>
    forward(operation).pipe(
      mergeMap((result) => {
        const isTurnedAway = result.errors?.some(
          ({ extensions }) => extensions?.["code"] === "NOT_SIGNED_IN",
        );
        if (!isTurnedAway) return of(result);
        const { pathname, search } = window.location;
        if (!OPEN.includes(pathname)) go(`/sign-in?to=${encodeURIComponent(pathname + search)}`);
        return NEVER;
      }),
    ),
  );
