import type { Claim } from "../../../domain/claim.ts";
import type { ClaimId, TermId } from "../../../domain/ids.ts";
import type { RevisionNumber } from "../../../domain/revision.ts";
import type { Term } from "../../../domain/term.ts";
import { LARGEST_PAGE, type Page, type PageAsk, type Store } from "../../../ports/store.ts";
import { exceptionsOf } from "../exceptions-of.ts";
import type { Link } from "./link.ts";
import { linksOfClaims, linksOfTerm } from "./links-of.ts";

/** Everything that joins a term to others. */
export interface LinksRead {
  readonly links: readonly Link[];
  /** Claims, narrower terms, features and forms beyond those read. */
  readonly unread: number;
}

/**
 * Reads what joins a term to others, at most `pages` pages of claims, of narrower terms, and of the features and forms that
 * name a kind of part. Only accepted claims count.
 */
export async function readLinks(
  store: Store,
  term: Term,
  pages: number,
  at: RevisionNumber | undefined,
): Promise<LinksRead> {
  const claims = await readSome((page) => store.listClaims({ naming: term.id }, page, at), pages);
  const narrower = await readSome((page) => store.listTerms({ broader: term.id }, page, at), pages);
  const naming = claims.rows.filter(isAccepted);
  const own = naming.filter((claim) => "subject" in claim && claim.subject === term.id);
  const exceptions = [
    ...(
      await exceptionsOf(
        { store },
        own.map(({ id }) => id),
        at,
      )
    ).values(),
  ].flat();
  const subjects = await readSubjects(store, naming, at);
  const owners =
    term.kind === "part"
      ? await readSome(
          (page) => store.listTerms({ kinds: ["feature", "form"], parts: [term.id] }, page, at),
          pages,
        )
      : NONE;
  const all = [
    ...linksOfClaims(new Set([...naming, ...exceptions.filter(isAccepted)]), (claim) =>
      own.some(({ id }) => id === claim) ? term.id : subjects.get(claim),
    ),
    ...[term, ...narrower.rows, ...owners.rows].flatMap(linksOfTerm),
  ];
  return {
    links: all.filter(({ from, to }) => from === term.id || to === term.id),
    unread: claims.unread + narrower.unread + owners.unread,
  };
}

export const isAccepted = ({ status }: Claim): boolean => status === "accepted";

/** Subjects of the claims that exceptions among these belong to. */
async function readSubjects(
  store: Store,
  claims: readonly Claim[],
  at: RevisionNumber | undefined,
): Promise<ReadonlyMap<ClaimId, TermId>> {
  const of = claims.flatMap((claim) => (claim.relation === "void when" ? [claim.of] : []));
  const read = of.length === 0 ? [] : [...(await store.claims([...new Set(of)], at)).values()];
  return new Map(read.flatMap((claim) => ("subject" in claim ? [[claim.id, claim.subject] as const] : [])));
}

const NONE = { rows: [], unread: 0 };

/** The first pages of a list, and how many rows are beyond them. */
async function readSome<Row>(
  list: (page: PageAsk) => Promise<Page<Row>>,
  pages: number,
): Promise<{ readonly rows: readonly Row[]; readonly unread: number }> {
  const rows: Row[] = [];
  for (let after: string | undefined, read = 1; ; read++) {
    const page = await list({ first: LARGEST_PAGE, ...(after === undefined ? {} : { after }) });
    rows.push(...page.rows);
    after = page.cursors.at(-1);
    if (!page.hasMore || read >= pages) return { rows, unread: page.total - rows.length };
  }
}
