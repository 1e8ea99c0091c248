/** What the server answered: what was asked for, or why not, each with the field it belongs to. */
export type Answered<Body> =
  | { readonly done: Body }
  | {
      readonly refused: readonly {
        readonly code: string;
        readonly message: string;
        readonly path?: readonly unknown[];
      }[];
    };

const UNREACHABLE = {
  code: "UNREACHABLE",
  message: "The server cannot be reached. Nothing was changed. Try again.",
};

/** Asks for something by POST with JSON; who is not signed in any more goes to do so. */
export async function askServer<Body = object>(path: string, input: object = {}): Promise<Answered<Body>> {
  try {
    const response = await sendToServer(path, input);
    const body = await response.json();
    return response.ok ? { done: body as Body } : refusalIn(response.status, body);
  } catch {
    return { refused: [UNREACHABLE] };
  }
}

/** Sends JSON by POST, as our own page. */
export const sendToServer = (path: string, input: object): Promise<Response> =>
  fetch(path, {
    ...{ method: "POST", credentials: "same-origin", cache: "no-store" },
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(input),
  });

/** Why something was refused, as the body of an answer says it. */
export function refusalIn(
  status: number,
  body: {
    readonly refused?: Extract<Answered<unknown>, { refused: unknown }>["refused"];
    readonly errors?: readonly { readonly message?: string }[];
  },
): Extract<Answered<unknown>, { refused: unknown }> {
  if (status === 401) goToSignIn();
  const message = body.errors?.[0]?.message ?? "That did not work.";
  return { refused: body.refused ?? [{ code: "FAILED", message }] };
}

/** Leads to the page to sign in on, and back here afterwards. */
function goToSignIn(): void {
  const here = window.location.pathname + window.location.search;
  window.location.assign(`/sign-in?to=${encodeURIComponent(here)}`);
}
