import type { Change } from "../domain/change.ts";
import type { Claim, Relation } from "../domain/claim.ts";
import type { DumpRecord } from "../domain/dump.ts";
import type { Examination, Piece } from "../domain/examination.ts";
import type { ClaimId, ExaminationId, SourceId, TermId } from "../domain/ids.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../domain/neighbourhood.ts";
import type { Problem } from "../domain/problem.ts";
import type { Revision, RevisionNumber } from "../domain/revision.ts";
import type { Source } from "../domain/source.ts";
import type { Term, TermKind } from "../domain/term.ts";

/** A page is asked for by what comes before it, never by a count to skip. `first` is 1 to 200. */
export interface PageAsk {
  readonly first: number;
  /** The `cursor` of the last row of the page before. */
  readonly after?: string;
}
export interface Page<Row> {
  readonly rows: readonly Row[];
  readonly cursors: readonly string[];
  readonly hasMore: boolean;
  /** Rows of all pages. */
  readonly total: number;
}

export interface TermFilter {
  readonly kinds?: readonly TermKind[];
  readonly broader?: TermId;
}
export interface ClaimFilter {
  readonly subject?: TermId;
  /** Claims about something else that name the term: way, object, region, condition, scope. */
  readonly naming?: TermId;
  readonly source?: SourceId;
  /** Exceptions of any of these claims. */
  readonly of?: readonly ClaimId[];
  readonly relations?: readonly Relation[];
}

export interface SearchHit {
  readonly term: TermId;
  readonly score: number;
}

/** Who changes the graph, and why. `expected` is the revision the change was made on. */
export interface Commit {
  readonly change: Change;
  readonly by: string;
  readonly at: string;
  readonly message: string;
  readonly expected?: RevisionNumber;
}

/**
 * Where the graph and the examinations are kept. Contract, checked by `storeSuite` on every adapter:
 *
 * 1. Reads with `at` answer as the graph stood at that revision, to the byte; without it, at the newest.
 * 2. `commit` is all or nothing. It refuses (`STALE_CHANGE`) if an edit's `before` is not what stands, or
 *    (`CHANGED_MEANWHILE`) if `expected` is not the newest revision; nothing is overwritten or deleted, ever.
 * 3. When a promise of a write has resolved, the write survives the death of the process.
 * 4. Lists are sorted by id (examinations: newest change first); equal calls give equal values.
 * 5. Missing things are left out of maps, `undefined` for one; they are not errors.
 * 6. `restore` takes a whole dump or nothing (`DAMAGED_DUMP`, `OTHER_VERSION`), and only into an empty store.
 * 7. `dump` then `restore` into another adapter then `dump` gives the same records.
 */
export interface Store {
  /** Short name of the adapter, for messages. */
  readonly name: string;

  newestRevision(): Promise<Revision | undefined>;
  /** Newest first. */
  revisions(page: PageAsk): Promise<Page<Revision>>;
  /** The edits of one revision. */
  changeAt(revision: RevisionNumber): Promise<Change | undefined>;
  commit(commit: Commit): Promise<Revision | Problem>;

  neighbourhood(ask: NeighbourhoodAsk): Promise<Neighbourhood>;
  terms(ids: readonly TermId[], at?: RevisionNumber): Promise<ReadonlyMap<TermId, Term>>;
  claims(ids: readonly ClaimId[], at?: RevisionNumber): Promise<ReadonlyMap<ClaimId, Claim>>;
  sources(ids: readonly SourceId[], at?: RevisionNumber): Promise<ReadonlyMap<SourceId, Source>>;
  listTerms(filter: TermFilter, page: PageAsk, at?: RevisionNumber): Promise<Page<Term>>;
  listClaims(filter: ClaimFilter, page: PageAsk, at?: RevisionNumber): Promise<Page<Claim>>;
  listSources(page: PageAsk, at?: RevisionNumber): Promise<Page<Source>>;
  /** Best first, newest revision; words of label, other labels and note, with prefixes; at most `first` hits. */
  search(words: string, filter: TermFilter, first: number): Promise<readonly SearchHit[]>;

  createExamination(id: ExaminationId, piece: Piece, at: string): Promise<Examination | Problem>;
  /** Refuses with `CHANGED_MEANWHILE` if `expectedVersion` is not the newest. */
  changeExamination(
    id: ExaminationId,
    expectedVersion: number,
    piece: Piece,
    at: string,
  ): Promise<Examination | Problem>;
  /** Takes back the newest change (a deletion too): a new version with the content of `undoTo`. */
  undoExamination(id: ExaminationId, expectedVersion: number, at: string): Promise<Examination | Problem>;
  /** Marks as deleted; the versions stay, and `undoExamination` brings it back. */
  deleteExamination(id: ExaminationId, expectedVersion: number, at: string): Promise<Examination | Problem>;
  /** Deleted ones are found too (`deleted: true`). */
  examination(id: ExaminationId, version?: number): Promise<Examination | undefined>;
  /** Not the deleted ones. */
  listExaminations(page: PageAsk): Promise<Page<Examination>>;

  dump(): AsyncIterable<DumpRecord>;
  restore(records: AsyncIterable<DumpRecord>): Promise<{ readonly records: number } | Problem>;
  /** Recomputes the hash chain from the stored changes. */
  verify(): Promise<{ readonly revisions: number; readonly head: string } | Problem>;
  close(): Promise<void>;
}
