import { writeFileSync } from "node:fs";
import { ACCOUNT_ACTIONS } from "#server/api/account/account-actions.ts";
import { ROLES } from "#server/domain/people/caller.ts";
import { type Action, LEAST_ROLE, mayDo } from "#server/domain/people/may-do.ts";
import { leastOperations } from "./least-operations.ts";
import { openHouse, refusals } from "./open-house.ts";
import { post } from "./open-http.ts";

const BY_POLICY = ["NOT_SIGNED_IN", "NOT_ALLOWED"];
const COLUMNS = ["nobody", ...ROLES, "token of an owner"] as const;
/** What would leave its caller outside, or make the next row another's, is asked for at the end. */
const LAST = ["sign-out"];

const row = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
const table = (first: string, rows: readonly (readonly string[])[]): string =>
  [row([first, ...COLUMNS]), row([first, ...COLUMNS].map(() => "---")), ...rows.map(row)].join("\n");
const say = (may: boolean): string => (may ? "may" : "·");

/** What the policy says of each action. */
const policyRows = () =>
  (Object.keys(LEAST_ROLE) as Action[]).map((action) => [
    action,
    ...[
      undefined,
      ...ROLES.map((role) => ({ id: "person.a", role, via: "session" as const })),
      { id: "person.a", role: "owner" as const, via: "token" as const },
    ].map((caller) => say(mayDo(caller, action) === undefined)),
  ]);

/** What a server with accounts lets through, asked for each thing once by each of them. */
async function askedRows() {
  const house = await openHouse();
  try {
    const cookies = [];
    for (const role of ROLES) cookies.push(await house.join(role, `some ${role}`.replace(" ", "-")));
    const asked = { label: "roles", role: "owner", days: 1 };
    const { secret } = JSON.parse((await house.act("make-token", asked, house.owner)).text);
    const callers: readonly Record<string, string>[] = [
      {},
      ...cookies,
      { Authorization: `Bearer ${secret}` },
    ];
    const askApi = async (document: string, caller: Record<string, string>) => {
      const { data, errors } = JSON.parse((await post(house.url, { query: document }, caller)).text);
      const codes = [...(errors ?? []).map(codeOfError), ...(data?.done?.problems ?? []).map(codeOf)];
      return say(!codes.some((code) => BY_POLICY.includes(code)));
    };
    const askAccounts = async (action: string, caller: Record<string, string>) => {
      const codes = refusals(await house.act(action, action === "audit" ? {} : LEAST_INPUT, caller));
      return say(!codes.some((code) => BY_POLICY.includes(code)));
    };
    const each = async (ask: (caller: Record<string, string>) => Promise<string>) => {
      const told = [];
      for (const caller of callers) told.push(await ask(caller));
      return told;
    };
    const rows = { queries: [] as string[][], mutations: [] as string[][], accounts: [] as string[][] };
    for (const { kind, name, document } of leastOperations)
      rows[kind === "query" ? "queries" : "mutations"].push([
        name,
        ...(await each((caller) => askApi(document, caller))),
      ]);
    const actions = Object.keys(ACCOUNT_ACTIONS).sort(
      (a, b) => Number(LAST.includes(a)) - Number(LAST.includes(b)),
    );
    for (const action of actions)
      rows.accounts.push([action, ...(await each((caller) => askAccounts(action, caller)))]);
    return rows;
  } finally {
    await house.stop();
  }
}

const codeOf = ({ code }: { readonly code: string }): string => code;
const codeOfError = ({ extensions }: { readonly extensions: { readonly code: string } }): string =>
  extensions.code;

/** Fits every action by its form, and none by what it says, so that nothing is changed. */
const LEAST_INPUT = {
  ...{ id: "person.x", expectedVersion: 1, role: "reader", state: "active", label: "x", days: 1 },
  ...{ before: "not it at all", password: "x", code: "000000", secret: "x", signInName: "x", name: "x" },
};

/** docs/roles.md as it should be. */
export async function printedRoles(): Promise<string> {
  const { queries, mutations, accounts } = await askedRows();
  return [
    "# Who may do what",
    "Printed by `npm run roles`; not written by hand. A dot is a refusal, by `NOT_SIGNED_IN` for nobody and by `NOT_ALLOWED` for the rest. The policy is `server/domain/people/may-do.ts`; a thing itself can forbid more ([C2](spec/21-people.md)).",
    "## The policy",
    table("action", policyRows()),
    "## What a server lets through",
    "A server with accounts was asked for each thing by each of them. Where the table says *may*, the policy let it through; that what was sent names nothing that there is, is told after that.",
    "### Mutations of the API",
    table("mutation", mutations),
    "### Questions to the API",
    table("query", queries),
    "### Accounts",
    table("action", accounts),
  ]
    .join("\n\n")
    .concat("\n");
}

if (import.meta.main) writeFileSync(new URL("../../docs/roles.md", import.meta.url), await printedRoles());
