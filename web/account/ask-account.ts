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

/** Asks for something that has to do with accounts (docs/spec/21-people.md). Who is not signed in any more goes to do so. */
export async function askAccount<Body = object>(action: string, input: object = {}): Promise<Answered<Body>> {
  const unreachable = {
    code: "UNREACHABLE",
    message: "The server cannot be reached. Nothing was changed. Try again.",
  };
  try {
    const response = await fetch(`/account/${action}`, {
      ...{ method: "POST", credentials: "same-origin", cache: "no-store" },
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(input),
    });
    const body = await response.json();
    if (response.ok) return { done: body as Body };
    if (response.status === 401) goToSignIn();
    return {
      refused: body.refused ?? [
        { code: "FAILED", message: body.errors?.[0]?.message ?? "That did not work." },
      ],
    };
  } catch {
    return { refused: [unreachable] };
  }
}

/** Leads to the page to sign in on, and back here afterwards. */
function goToSignIn(): void {
  const here = window.location.pathname + window.location.search;
  window.location.assign(`/sign-in?to=${encodeURIComponent(here)}`);
}

export interface Caller {
  readonly id: string;
  readonly role: "reader" | "contributor" | "reviewer" | "owner";
}
export interface Who {
  readonly accounts: boolean;
  readonly caller: Caller | null;
}

/** A path of this site that somebody wanted to go to; anything else is the start. */
export function pathToGoTo(search: string): string {
  const to = new URLSearchParams(search).get("to") ?? "/";
  return /^\/(?![/\\])/.test(to) ? to : "/";
}
