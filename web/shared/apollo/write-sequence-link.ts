import { ApolloLink } from "@apollo/client";
import { ServerError } from "@apollo/client/errors";
import { catchError, tap, throwError } from "rxjs";

/** As the server names it (docs/spec/18-running.md, H4). */
const SEQUENCE_HEADER = "Scribeline-Sequence";

/**
 * Sees to it that every answer knows of all that this client was told before, its own writes above all, whichever of
 * several servers it comes from: the newest number that an answer had goes along with each operation. Where a server cannot
 * come so far in time, it is asked once more for what it knows now: a reader would rather see that than nothing, and a write
 * names the version it was made on.
 */
export function writeSequenceLink(): ApolloLink {
  let seen = 0;
  const ask = (operation: ApolloLink.Operation, forward: ApolloLink.ForwardFunction) => {
    operation.setContext(({ headers }: { headers?: Readonly<Record<string, string>> }) => {
      const { [SEQUENCE_HEADER]: _, ...others } = headers ?? {};
      return { headers: seen > 0 ? { ...others, [SEQUENCE_HEADER]: String(seen) } : others };
    });
    return forward(operation).pipe(
      tap(() => {
        const { response } = operation.getContext() as { response?: Response };
        seen = Math.max(seen, Number(response?.headers.get(SEQUENCE_HEADER) ?? 0) || 0);
      }),
    );
  };
  return new ApolloLink((operation, forward) =>
    ask(operation, forward).pipe(
      catchError((error: unknown) => {
        if (!isNotReached(error) || seen === 0) return throwError(() => error);
        seen = 0;
        return ask(operation, forward);
      }),
    ),
  );
}

/** One of 503 for another reason has no such code. */
const isNotReached = (error: unknown): boolean =>
  ServerError.is(error) && error.statusCode === 503 && error.bodyText.includes('"NOT_REACHED_YET"');
