import type { Card, CardWrite } from "../domain/card.ts";
import type { Change, Edit } from "../domain/change.ts";
import type { Claim, Relation } from "../domain/claim.ts";
import type { Deed } from "../domain/deed.ts";
import type { DumpRecord } from "../domain/dump.ts";
import type { Examination, Piece } from "../domain/examination.ts";
import type { ClaimId, ExaminationId, SourceId, TermId } from "../domain/ids.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../domain/neighbourhood.ts";
import type { Problem } from "../domain/problem.ts";
import type { Revision, RevisionNumber } from "../domain/revision.ts";
import type { Source } from "../domain/source.ts";
import type { Term, TermKind } from "../domain/term.ts";
import type { Written } from "../domain/written.ts";
import type { Span } from "../domain/years.ts";
import type { Notes } from "./notes.ts";
import type { Progress } from "./progress.ts";
import type { WalkBlock } from "./walk-block.ts";

/** Rows a page may hold at most. */
export const LARGEST_PAGE = 200;

/**
 * A page is asked for by what comes before it, never by a count to skip. `first` is 1 to `LARGEST_PAGE`; anything else
 * is a defect of the caller (RangeError).
 */
export interface PageAsk {
  readonly first: number;
  /** The `cursor` of the last row of the page before. A text that no page gave as a cursor gives some page, or none. */
  readonly after?: string;
}
export interface Page<Row> {
  readonly rows: readonly Row[];
  /** One a row. */
  readonly cursors: readonly string[];
  readonly hasMore: boolean;
  /** Rows of all pages. */
  readonly total: number;
}

/** All that are named must hold; an empty list admits nothing. */
export interface TermFilter {
  readonly kinds?: readonly TermKind[];
  /** Terms directly below this one. */
  readonly broader?: TermId;
  /** Terms, but kinds of part, that list one of these kinds of part. */
  readonly parts?: readonly TermId[];
}
/** What a search is narrowed to; all that are named must hold. Only accepted claims count. */
export interface SearchFilter extends Omit<TermFilter, "parts"> {
  /** Terms looked for on this kind of part, on one above it or on one below it. */
  readonly part?: TermId;
  /** Terms with a claim about them that is scoped to this region, to one above it or to one below it. */
  readonly region?: TermId;
  /** Terms with a dated claim that can mean one of these years; with `region`, one claim for both. */
  readonly years?: Span;
}
/** All that are named must hold; an empty list admits nothing. Claims of every status are found. */
export interface ClaimFilter {
  readonly subject?: TermId;
  /** Claims that name the term anywhere: subject, way, object, region, condition, scope (`namedTerms`). */
  readonly naming?: TermId;
  /** Not the claims about this term, so that with `naming` only those of other subjects are left. */
  readonly notAbout?: TermId;
  readonly source?: SourceId;
  /** Exceptions of any of these claims. */
  readonly of?: readonly ClaimId[];
  readonly relations?: readonly Relation[];
}

export interface SearchHit {
  readonly term: TermId;
  readonly score: number;
}

/** What one revision did to one thing. */
export interface PastEdit {
  readonly revision: Revision;
  readonly edit: Edit;
}

/** Who changes the graph, and why. `expected` is the revision the change was made on. */
export interface Commit extends Along {
  readonly change: Change;
  readonly by: string;
  /** ISO 8601 time in UTC; so is every other `at` that is a text. */
  readonly at: string;
  readonly message: string;
  readonly expected?: RevisionNumber;
}

/** What is kept together with a write, or not at all. */
export interface Along {
  /** Who does it, when and what, for the ledger. */
  readonly deed?: Deed;
  readonly cards?: readonly CardWrite[];
}

/** All that are named must hold. */
export interface CardFilter {
  readonly kind: string;
  /** Cards with this value among those of this key. */
  readonly key?: CardKey;
}
export interface CardKey {
  readonly name: string;
  readonly value: string;
}
/** What a list leaves out, and does not count: what has a card of this kind and of its id that is found by one key, unless also by another. */
export interface LeftOut {
  readonly kind: string;
  readonly by: CardKey;
  readonly unless?: CardKey;
}

/**
 * Where the graph and the examinations are kept. Contract, checked by `storeSuite` on every adapter; the numbers are
 * those of docs/spec/4-store.md.
 *
 * - S1 Reads with `at` answer as the graph stood at that revision, to the byte; without it, at the newest. 0 is the
 *   empty graph. A revision that does not exist is a defect of the caller (RangeError): ask `changeAt` first.
 * - S2 `commit` is all or nothing. It refuses `CHANGED_MEANWHILE` if `expected` is not the newest revision,
 *   `STALE_CHANGE` if an edit's `before` is not what stands, and everything that `checkChange` refuses. Nothing is
 *   overwritten or deleted, ever.
 * - S3 When the promise of a write has resolved to anything but a problem, the write survives the death of the process.
 *   When it has resolved to a problem or was rejected, nothing was written.
 * - S4 Lists are sorted by id, revisions and examinations newest first (examinations by `changedAt`, then id); equal
 *   calls give equal values. Ids are compared by their characters' codes.
 * - S5 Missing things are left out of maps, `undefined` for one; they are not errors.
 * - S6 Revisions are chained by hashes (`linkRevision`); `verify` recomputes the chain and finds every row that does not
 *   follow from the changes.
 * - S7 Versions of an examination are never overwritten. A write names the version it was made on.
 * - S8 `dump` then `restore` into any other adapter then `dump` gives the same records. A dump is one moment: writes
 *   made while it is read do not show in it.
 * - S9 `restore` takes a whole sound dump or nothing, and only into an empty store.
 * - S10 Values handed over are shared: neither side changes them, and what a store gives is frozen.
 * - S11 Reads throw `StoreFailed` where the medium fails; writes give its problem (`STORE_FULL`, `STORE_LOCKED`,
 *   `STORE_CORRUPT`, `STORE_UNREACHABLE`). After such a failure the store goes on as it stood before.
 * - S67 Cards go with a write or by themselves, all or none; each names the version it was made on.
 * - S68 The ledger chains every write by hashes to the one before; `verify` recomputes it.
 * - S46 Writes are numbered in the order in which they were kept, each in one step with what it wrote: who sees a number
 *   sees what that write and all before it wrote. A restore is one write, that of an empty dump none.
 * - S71 Notes are what processes tell each other for a short while, beside everything else (`Notes`).
 * - S12 to S14, S41 Filters, search, neighbourhood, history: at each of them below.
 */
export interface Store extends Notes {
  /** Short name of the adapter, for messages. */
  readonly name: string;

  newestRevision(): Promise<Revision | undefined>;
  /** Newest first. */
  revisions(page: PageAsk): Promise<Page<Revision>>;
  revision(number: RevisionNumber): Promise<Revision | undefined>;
  /** Every edit of one thing, newest first, with the revision that made it: all since it was first added (S41). */
  history(kind: Edit["kind"], id: TermId | ClaimId | SourceId, page: PageAsk): Promise<Page<PastEdit>>;
  /** The edits of one revision. */
  changeAt(revision: RevisionNumber): Promise<Change | undefined>;
  /** How many edits each of these revisions has, in their order; one that there is not is left out. */
  editCounts(revisions: readonly RevisionNumber[]): Promise<ReadonlyMap<RevisionNumber, number>>;
  commit(commit: Commit): Promise<Revision | Problem>;
  /** Why a commit of this change would be refused now; nothing is written (S69). */
  wouldRefuse(change: Change): Promise<Problem | undefined>;

  /** As defined at `Neighbourhood`. */
  neighbourhood(ask: NeighbourhoodAsk): Promise<Neighbourhood>;
  /**
   * What `neighbourhood` runs over as it stood at a revision, whatever is written meanwhile (S50): all terms first, then
   * the rest in any order. For a copy of it in memory; bodies are read with `claims` and `terms`.
   */
  walkBlocks(at: RevisionNumber): AsyncIterable<WalkBlock>;
  /** In the order of their ids, as are the next two. */
  terms(ids: readonly TermId[], at?: RevisionNumber): Promise<ReadonlyMap<TermId, Term>>;
  claims(ids: readonly ClaimId[], at?: RevisionNumber): Promise<ReadonlyMap<ClaimId, Claim>>;
  sources(ids: readonly SourceId[], at?: RevisionNumber): Promise<ReadonlyMap<SourceId, Source>>;
  listTerms(filter: TermFilter, page: PageAsk, at?: RevisionNumber): Promise<Page<Term>>;
  listClaims(filter: ClaimFilter, page: PageAsk, at?: RevisionNumber): Promise<Page<Claim>>;
  listSources(page: PageAsk, at?: RevisionNumber): Promise<Page<Source>>;
  /**
   * All that pass a filter at a revision (the newest when it was asked, whatever is written meanwhile), in slices of some
   * hundred rows, in no particular order. Others get their turn between two slices.
   */
  allTerms(filter: TermFilter, at?: RevisionNumber): AsyncIterable<readonly Term[]>;
  allClaims(filter: ClaimFilter, at?: RevisionNumber): AsyncIterable<readonly Claim[]>;
  /**
   * Terms of the newest revision by words of label, other labels and note, at most `first` (1 to `LARGEST_PAGE`).
   * Accents, case, beginnings of words and small typing errors are forgiven. Best first, ties by id; a term labelled
   * exactly as asked comes before all others. No words, no hits, unless `part`, `region` or `years` narrow the search:
   * then all that they admit, by label, with a score of 0.
   */
  search(words: string, filter: SearchFilter, first: number): Promise<readonly SearchHit[]>;

  /** Refuses an id that was ever used with `DUPLICATE_ID`. */
  createExamination(
    id: ExaminationId,
    piece: Piece,
    at: string,
    along?: Along,
  ): Promise<Examination | Problem>;
  /**
   * This write and the next two refuse `UNKNOWN_EXAMINATION`, then `CHANGED_MEANWHILE` if `expectedVersion` is not the
   * newest. A deleted one cannot be changed or deleted (`UNKNOWN_EXAMINATION`), only brought back.
   */
  changeExamination(
    id: ExaminationId,
    expectedVersion: number,
    piece: Piece,
    at: string,
    along?: Along,
  ): Promise<Examination | Problem>;
  /**
   * Takes back the newest change (a deletion too): a new version with the content of `undoTo`, from which the next undo
   * goes on. `NOTHING_TO_UNDO` at the first content.
   */
  undoExamination(
    id: ExaminationId,
    expectedVersion: number,
    at: string,
    along?: Along,
  ): Promise<Examination | Problem>;
  /** Marks as deleted; the versions stay, and `undoExamination` brings it back. */
  deleteExamination(
    id: ExaminationId,
    expectedVersion: number,
    at: string,
    along?: Along,
  ): Promise<Examination | Problem>;
  /** The newest version, or the one asked for. Deleted ones are found too (`deleted: true`). */
  examination(id: ExaminationId, version?: number): Promise<Examination | undefined>;
  /** The newest versions; not the deleted ones, and not what is left out. */
  listExaminations(page: PageAsk, leftOut?: LeftOut): Promise<Page<Examination>>;

  /**
   * Writes cards alone, all or none; refuses `CHANGED_MEANWHILE` if one was not made on what stands. A deed without cards is
   * kept too.
   */
  writeCards(along: Along & { readonly deed: Deed }): Promise<Written | Problem>;
  card(kind: string, id: string): Promise<Card | undefined>;
  /** By their ids, in the order of these. */
  cards(kind: string, ids: readonly string[]): Promise<ReadonlyMap<string, Card>>;
  /** In the order of their ids, or the other way round. */
  listCards(filter: CardFilter, page: PageAsk, order?: "up" | "down"): Promise<Page<Card>>;

  /** The number of the newest write; 0 before the first. */
  newestWrite(): Promise<number>;
  /** The writes after that number, oldest first, at most `first` of them (1 or more; else a RangeError). */
  writesAfter(sequence: number, first: number): Promise<readonly Written[]>;

  dump(): AsyncIterable<DumpRecord>;
  /** Refuses `STORE_NOT_EMPTY`, `OTHER_VERSION`, `DAMAGED_DUMP`. `records` counts header and trailer too. */
  restore(
    records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
  ): Promise<{ readonly records: number } | Problem>;
  /** Refuses `STORE_CORRUPT`, naming the first revision that does not check. `head` is the newest hash. */
  verify(progress?: Progress): Promise<{ readonly revisions: number; readonly head: string } | Problem>;
  /** Lets go of everything held; the store is not used afterwards. Closing again does nothing. */
  close(): Promise<void>;
}
