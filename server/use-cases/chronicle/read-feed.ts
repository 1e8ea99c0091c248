import type { Change } from "../../domain/change.ts";
import { id as idOf, type TermId } from "../../domain/ids.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller } from "../acting.ts";
import { type FindNamed, sayEdit } from "../ask/say-edit.ts";
import type { Refusal } from "../refusal.ts";
import { namesOfPersons } from "./names-of-persons.ts";
import { touchesOf } from "./touches-of.ts";

/** Revisions of one page: a page is always of the same revisions, counted from the first. */
const ON_PAGE = 20;
/** Pages that are looked through for one document of a region: many revisions may say nothing of it. */
const MOST_PAGES = 25;
/** Edits told of one revision. */
const MOST_TOLD = 50;

/** One accepted change, in words. */
export interface FeedEntry {
  /** `urn:uuid:` and what follows from the hash of the revision and the region, so that it never changes. */
  readonly id: string;
  readonly revision: Revision;
  readonly by: string;
  readonly says: readonly string[];
  /** Edits that are not told. */
  readonly more: number;
}
export interface Feed {
  readonly id: string;
  readonly region: { readonly id: TermId; readonly label: string } | undefined;
  /** ISO 8601 time in UTC. */
  readonly updated: string;
  /** Newest first. */
  readonly entries: readonly FeedEntry[];
  /** The page it begins with, the last there is, and where it goes on; pages are numbered from the oldest, 0. */
  readonly page: number;
  readonly newestPage: number;
  readonly next: number | undefined;
}

const BEFORE_ANYTHING = "1970-01-01T00:00:00.000Z";

type Ports = Acting & {
  readonly store: Store;
  readonly seals: Pick<Seals, "house" | "hash">;
  readonly named: FindNamed;
};

/** The accepted changes of a region and all within it, or of all, newest first, from a page on; the newest page if none is named. */
export async function readFeed(
  ports: Ports,
  asked: { readonly region: string | undefined; readonly page: number | undefined },
): Promise<Feed | Refusal> {
  const refusal = refuseCaller(ports, "read the graph");
  if (refusal) return refusal;
  const { store, seals } = ports;
  const region = asked.region === undefined ? undefined : await findRegion(store, asked.region);
  if (region !== undefined && "problem" in region) return { refused: [region] };
  const newest = await store.newestRevision();
  const newestPage = newest === undefined ? 0 : Math.floor((newest.number - 1) / ON_PAGE);
  const page = Math.min(newestPage, asked.page ?? newestPage);
  const entries: FeedEntry[] = [];
  let at = page;
  for (; at >= 0 && at > page - MOST_PAGES && entries.length < ON_PAGE; at--)
    entries.push(...(await entriesOn(ports, at, region?.id, newest?.number ?? 0)));
  const { house } = await seals.house();
  return {
    ...{ id: urnOf(seals, `${house} ${region?.id ?? "all"}`), region, entries, page, newestPage },
    updated: entries[0]?.revision.at ?? newest?.at ?? BEFORE_ANYTHING,
    next: at >= 0 ? at : undefined,
  };
}

async function findRegion(store: Store, id: string): Promise<NonNullable<Feed["region"]> | Problem> {
  const term = (await store.terms([idOf(id)])).get(idOf(id));
  if (term?.kind === "region") return { id: term.id, label: term.label };
  return problem("UNKNOWN_TERM", `There is no region ${id}.`, ["region"]);
}

async function entriesOn(
  ports: Ports,
  page: number,
  region: TermId | undefined,
  newest: number,
): Promise<readonly FeedEntry[]> {
  const { store, seals } = ports;
  const entries: FeedEntry[] = [];
  const last = Math.min(newest, (page + 1) * ON_PAGE);
  for (let number = last; number > page * ON_PAGE; number--) {
    const revision = await store.revision(number);
    const change = await editsOn(ports, (await store.changeAt(number)) ?? [], region, newest);
    if (revision === undefined || change.length === 0) continue;
    const told = change.slice(0, MOST_TOLD);
    const said = await Promise.all(
      told.map((edit) => sayEdit(ports.named, edit, { before: number - 1, after: number })),
    );
    const nameOf = await namesOfPersons(ports, [revision.by]);
    entries.push({
      id: urnOf(seals, `${revision.hash} ${region ?? "all"}`),
      ...{ revision, by: nameOf(revision.by), more: change.length - told.length },
      says: said.map(({ does, says, differences }) => {
        const what = [...new Set(differences.map((each) => each.what))].join(", ");
        return `${DONE[does]}${what === "" ? "" : ` (${what})`}: ${says}`;
      }),
    });
  }
  return entries;
}

const DONE = { added: "New", changed: "Changed", withdrawn: "Withdrawn" } as const;

/** The edits that touch a region or what lies within it. */
async function editsOn(
  ports: Ports,
  change: Change,
  region: TermId | undefined,
  at: number,
): Promise<Change> {
  if (region === undefined) return change;
  const touches = await touchesOf(ports, change, at);
  return change.filter((edit) => touches(edit).has(region));
}

/** A UUID of version 8 (RFC 9562) that follows from a text. */
function urnOf({ hash }: Pick<Seals, "hash">, text: string): string {
  const digits = hash(text);
  const variant = ((Number.parseInt(digits[16] ?? "0", 16) & 3) | 8).toString(16);
  const parts = [digits.slice(0, 8), digits.slice(8, 12), `8${digits.slice(13, 16)}`];
  return `urn:uuid:${[...parts, `${variant}${digits.slice(17, 20)}`, digits.slice(20, 32)].join("-")}`;
}
