import { ApolloClient, ApolloLink, Observable } from "@apollo/client";
import { ApolloProvider } from "@apollo/client/react";
import { act, cleanup, configure, type RenderResult, render } from "@testing-library/react";
import { print } from "graphql";
import type { ReactNode } from "react";
import { afterEach, vi } from "vitest";
import { App } from "#web/app.tsx";
import { makeCache } from "#web/shared/apollo/make-cache.ts";
import type { openApi } from "./open-api.ts";

type Ask = Awaited<ReturnType<typeof openApi>>["ask"];

// What is waited for comes at once, or a good while later where as many files run at once as there are cores.
configure({ asyncUtilTimeout: 30_000 });
afterEach(cleanup);

/** How much later every answer comes, in milliseconds: shows which tests look before what they assert is there. */
const LATER = Number(process.env["SLOW_ANSWERS"] ?? 0);
// Not the one that a test puts in its place.
const realTimeout = globalThis.setTimeout;
const later = (): Promise<void> => new Promise((resolve) => realTimeout(resolve, LATER));

/** Sends every operation of the client to the API under test, as it would go over HTTP. */
const linkTo = (ask: Ask): ApolloLink =>
  new ApolloLink(
    ({ query, variables }) =>
      new Observable((observer) => {
        ask(print(query), variables)
          .then(async ({ data, errors }) => {
            if (LATER > 0) await later();
            observer.next(errors.length > 0 ? { data, errors } : { data });
            observer.complete();
          })
          .catch((error: unknown) => observer.error(error));
      }),
  );

/** Opens the whole client at a path, over an API; everything counts as in sight. `within` is what is given to all pages. */
export function renderPage(
  path: string,
  ask: Ask,
  within: (page: ReactNode) => ReactNode = (page) => page,
): Promise<RenderResult> {
  vi.stubGlobal("IntersectionObserver", AlwaysInSight);
  // What does not go through the client of the API has nobody to answer it, unless a test does.
  if (!vi.isMockFunction(globalThis.fetch))
    vi.stubGlobal("fetch", vi.fn().mockRejectedValue(new TypeError("There is no server")));
  window.history.replaceState(null, "", path);
  const client = new ApolloClient({ link: linkTo(ask), cache: makeCache() });
  return act(async () => render(<ApolloProvider client={client}>{within(<App />)}</ApolloProvider>));
}

type Tell = (entries: readonly { isIntersecting: boolean }[]) => void;

class AlwaysInSight {
  readonly #tell: Tell;
  constructor(tell: Tell) {
    this.#tell = tell;
  }
  observe(): void {
    this.#tell([{ isIntersecting: true }]);
  }
  disconnect(): void {}
}
