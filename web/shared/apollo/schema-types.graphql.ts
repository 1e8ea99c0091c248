import type { Report } from '#server/domain/report.ts';
export type Maybe<T> = T | null;
export type InputMaybe<T> = Maybe<T>;
/** All built-in and custom scalars, mapped to their actual values */
export type Scalars = {
  ID: { input: string; output: string; }
  String: { input: string; output: string; }
  Boolean: { input: boolean; output: boolean; }
  Int: { input: number; output: number; }
  Float: { input: number; output: number; }
  /** The report of the engine as one JSON value; docs/formats/report.schema.json says what is in it. */
  Report: { input: Report; output: Report; }
};

export type AatMatch = {
  readonly __typename?: 'AatMatch';
  readonly checked: Scalars['Boolean']['output'];
  readonly id: Scalars['String']['output'];
  readonly label: Scalars['String']['output'];
};

export type Attribution = {
  readonly __typename?: 'Attribution';
  readonly date: Scalars['String']['output'];
  readonly form?: Maybe<Term>;
  readonly maker?: Maybe<Term>;
  readonly region?: Maybe<Term>;
  readonly style?: Maybe<Term>;
};

export type AttributionInput = {
  readonly date: Scalars['String']['input'];
  readonly form?: InputMaybe<Scalars['ID']['input']>;
  readonly maker?: InputMaybe<Scalars['ID']['input']>;
  readonly region?: InputMaybe<Scalars['ID']['input']>;
  readonly style?: InputMaybe<Scalars['ID']['input']>;
};

export type Basis =
  | 'COMMON_PRACTICE'
  | 'FROM_MEMORY'
  | 'PUBLISHED';

export type ChangeExaminationResult = ExaminationChanged | Refused;

export type Citation = {
  readonly __typename?: 'Citation';
  readonly basis: Basis;
  readonly locator?: Maybe<Scalars['String']['output']>;
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly source?: Maybe<Source>;
};

export type Claim = Node & {
  readonly __typename?: 'Claim';
  readonly citations: ReadonlyArray<Citation>;
  readonly closed?: Maybe<Scalars['Boolean']['output']>;
  readonly exceptions: ReadonlyArray<Claim>;
  readonly form?: Maybe<Term>;
  readonly hardness?: Maybe<Hardness>;
  readonly id: Scalars['ID']['output'];
  readonly note?: Maybe<Scalars['String']['output']>;
  /** Object of `typical of`; regions of `confined to`; ends of `spread to`; condition of `void when`. */
  readonly objects: ReadonlyArray<Term>;
  readonly of?: Maybe<Claim>;
  readonly part?: Maybe<Term>;
  readonly region?: Maybe<Term>;
  readonly relation: Relation;
  readonly row?: Maybe<Scalars['String']['output']>;
  /** The claim as a sentence. */
  readonly says: Scalars['String']['output'];
  readonly states: ReadonlyArray<PartState>;
  readonly status: ClaimStatus;
  readonly strength: Strength;
  /** None for an exception: its subject is the claim in `of`. */
  readonly subject?: Maybe<Term>;
  /** Ways of a `requires`: each is a list of terms that are all needed. */
  readonly ways: ReadonlyArray<Way>;
  /** EDTF; its role (event or period) follows from the relation. */
  readonly when?: Maybe<Scalars['String']['output']>;
  /** Years the claim can mean, as spans; null where nothing bounds an end. */
  readonly years?: Maybe<DatedYears>;
};

export type ClaimConnection = {
  readonly __typename?: 'ClaimConnection';
  readonly edges: ReadonlyArray<ClaimEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type ClaimEdge = {
  readonly __typename?: 'ClaimEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Claim;
};

export type ClaimStatus =
  | 'ACCEPTED'
  | 'PROPOSED'
  | 'REJECTED';

export type DatedYears = {
  readonly __typename?: 'DatedYears';
  readonly begin: ReadonlyArray<Maybe<Scalars['Int']['output']>>;
  readonly doubtful: Scalars['Boolean']['output'];
  readonly end: ReadonlyArray<Maybe<Scalars['Int']['output']>>;
  readonly padBegin: Scalars['Int']['output'];
  readonly padEnd: Scalars['Int']['output'];
};

export type Examination = Node & {
  readonly __typename?: 'Examination';
  readonly canUndo: Scalars['Boolean']['output'];
  readonly changedAt: Scalars['String']['output'];
  readonly deleted: Scalars['Boolean']['output'];
  /** The piece examined on the newest revision, or on the one asked for. */
  readonly examined: ExamineResult;
  readonly id: Scalars['ID']['output'];
  readonly piece: Piece;
  readonly version: Scalars['Int']['output'];
};


export type ExaminationExaminedArgs = {
  revision?: InputMaybe<Scalars['Int']['input']>;
};

export type ExaminationChanged = {
  readonly __typename?: 'ExaminationChanged';
  readonly examination: Examination;
};

export type ExaminationConnection = {
  readonly __typename?: 'ExaminationConnection';
  readonly edges: ReadonlyArray<ExaminationEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type ExaminationEdge = {
  readonly __typename?: 'ExaminationEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Examination;
};

export type ExamineResult = Examined | Refused;

export type Examined = {
  readonly __typename?: 'Examined';
  /** Every claim the report names. */
  readonly claims: ReadonlyArray<Claim>;
  readonly report: Scalars['Report']['output'];
  readonly revision: Scalars['Int']['output'];
  /** Every term the report names. */
  readonly terms: ReadonlyArray<Term>;
  readonly words: ReportWords;
};

export type FindingInWords = {
  readonly __typename?: 'FindingInWords';
  readonly id: Scalars['ID']['output'];
  readonly paths: ReadonlyArray<Scalars['String']['output']>;
  readonly says: Scalars['String']['output'];
  readonly short: Scalars['String']['output'];
  readonly steps: ReadonlyArray<StepInWords>;
};

export type Hardness =
  | 'PHYSICAL'
  | 'PRACTICE';

export type Mutation = {
  readonly __typename?: 'Mutation';
  readonly changeExamination: ChangeExaminationResult;
  readonly createExamination: ChangeExaminationResult;
  readonly deleteExamination: ChangeExaminationResult;
  readonly undoExamination: ChangeExaminationResult;
};


export type MutationChangeExaminationArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
  piece: PieceInput;
};


export type MutationCreateExaminationArgs = {
  piece: PieceInput;
};


export type MutationDeleteExaminationArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};


export type MutationUndoExaminationArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};

export type Node = {
  readonly id: Scalars['ID']['output'];
};

export type Observation = {
  readonly __typename?: 'Observation';
  readonly feature: Term;
  readonly id: Scalars['ID']['output'];
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly part: Scalars['ID']['output'];
  readonly seen: Seen;
  readonly sureness: Sureness;
};

export type ObservationInput = {
  readonly feature: Scalars['ID']['input'];
  readonly id: Scalars['ID']['input'];
  readonly note?: InputMaybe<Scalars['String']['input']>;
  readonly part: Scalars['ID']['input'];
  readonly seen: Seen;
  readonly sureness?: Sureness;
};

export type PageInfo = {
  readonly __typename?: 'PageInfo';
  readonly endCursor?: Maybe<Scalars['String']['output']>;
  readonly hasNextPage: Scalars['Boolean']['output'];
  readonly hasPreviousPage: Scalars['Boolean']['output'];
  readonly startCursor?: Maybe<Scalars['String']['output']>;
};

export type Part = {
  readonly __typename?: 'Part';
  readonly id: Scalars['ID']['output'];
  readonly kind?: Maybe<Term>;
  readonly label: Scalars['String']['output'];
  readonly region?: Maybe<Term>;
  readonly within?: Maybe<Scalars['ID']['output']>;
};

export type PartInWords = {
  readonly __typename?: 'PartInWords';
  readonly part: Scalars['ID']['output'];
  readonly says: Scalars['String']['output'];
};

export type PartInput = {
  readonly id: Scalars['ID']['input'];
  readonly kind?: InputMaybe<Scalars['ID']['input']>;
  readonly label: Scalars['String']['input'];
  readonly region?: InputMaybe<Scalars['ID']['input']>;
  readonly within?: InputMaybe<Scalars['ID']['input']>;
};

export type PartState =
  | 'LATER'
  | 'ORIGINAL'
  | 'REUSED'
  | 'REWORKED';

export type Piece = {
  readonly __typename?: 'Piece';
  readonly attribution: Attribution;
  readonly examined: Scalars['Int']['output'];
  /** True for demonstration pieces: no such object exists. */
  readonly invented: Scalars['Boolean']['output'];
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly observations: ReadonlyArray<Observation>;
  readonly parts: ReadonlyArray<Part>;
  readonly separate: ReadonlyArray<ReadonlyArray<Scalars['ID']['output']>>;
  readonly title: Scalars['String']['output'];
  readonly together: ReadonlyArray<ReadonlyArray<Scalars['ID']['output']>>;
};

export type PieceInput = {
  readonly attribution: AttributionInput;
  readonly examined: Scalars['Int']['input'];
  readonly invented?: Scalars['Boolean']['input'];
  readonly note?: InputMaybe<Scalars['String']['input']>;
  readonly observations: ReadonlyArray<ObservationInput>;
  readonly parts: ReadonlyArray<PartInput>;
  readonly separate?: ReadonlyArray<ReadonlyArray<Scalars['ID']['input']>>;
  readonly title: Scalars['String']['input'];
  readonly together?: ReadonlyArray<ReadonlyArray<Scalars['ID']['input']>>;
};

export type Problem = {
  readonly __typename?: 'Problem';
  readonly code: Scalars['String']['output'];
  readonly instead?: Maybe<Scalars['String']['output']>;
  readonly message: Scalars['String']['output'];
  readonly path: ReadonlyArray<Scalars['String']['output']>;
};

export type Query = {
  readonly __typename?: 'Query';
  readonly claim?: Maybe<Claim>;
  readonly claims: ClaimConnection;
  readonly examination?: Maybe<Examination>;
  readonly examinations: ExaminationConnection;
  /** Examines a piece without keeping it. */
  readonly examine: ExamineResult;
  readonly node?: Maybe<Node>;
  /** The newest revision; null while the graph is empty. */
  readonly revision?: Maybe<Revision>;
  readonly revisions: RevisionConnection;
  readonly search: ReadonlyArray<SearchHit>;
  readonly source?: Maybe<Source>;
  readonly sources: SourceConnection;
  readonly term?: Maybe<Term>;
  readonly terms: TermConnection;
};


export type QueryClaimArgs = {
  id: Scalars['ID']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryClaimsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
  relations?: InputMaybe<ReadonlyArray<Relation>>;
};


export type QueryExaminationArgs = {
  id: Scalars['ID']['input'];
};


export type QueryExaminationsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryExamineArgs = {
  piece: PieceInput;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryNodeArgs = {
  id: Scalars['ID']['input'];
};


export type QueryRevisionsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
};


export type QuerySearchArgs = {
  first?: InputMaybe<Scalars['Int']['input']>;
  kinds?: InputMaybe<ReadonlyArray<TermKind>>;
  words: Scalars['String']['input'];
};


export type QuerySourceArgs = {
  id: Scalars['ID']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QuerySourcesArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryTermArgs = {
  id: Scalars['ID']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryTermsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  broader?: InputMaybe<Scalars['ID']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
  kinds?: InputMaybe<ReadonlyArray<TermKind>>;
};

export type Refused = {
  readonly __typename?: 'Refused';
  /** Where somebody else changed the examination meanwhile: how it stands now. */
  readonly current?: Maybe<Examination>;
  readonly problems: ReadonlyArray<Problem>;
};

export type Relation =
  | 'ACTIVE'
  | 'ATTESTED'
  | 'COMMON_FROM'
  | 'COMMON_UNTIL'
  | 'CONFINED_TO'
  | 'CURRENT'
  | 'DISCONTINUED'
  | 'INDICATES'
  | 'INTRODUCED'
  | 'NOT_FOUND_IN'
  | 'REQUIRES'
  | 'SPREAD_TO'
  | 'TYPICAL_OF'
  | 'VOID_WHEN';

export type ReportWords = {
  readonly __typename?: 'ReportWords';
  readonly findings: ReadonlyArray<FindingInWords>;
  readonly gaps: ReadonlyArray<Scalars['String']['output']>;
  readonly headline: Scalars['String']['output'];
  readonly notSearched: ReadonlyArray<Scalars['String']['output']>;
  readonly parts: ReadonlyArray<PartInWords>;
  readonly reasons: ReadonlyArray<Scalars['String']['output']>;
  readonly ruleOuts: ReadonlyArray<RuleOutInWords>;
  readonly signs: ReadonlyArray<SignInWords>;
};

export type Revision = {
  readonly __typename?: 'Revision';
  readonly at: Scalars['String']['output'];
  readonly by: Scalars['String']['output'];
  readonly edits: Scalars['Int']['output'];
  readonly hash: Scalars['String']['output'];
  readonly message: Scalars['String']['output'];
  readonly number: Scalars['Int']['output'];
  readonly previous: Scalars['String']['output'];
};

export type RevisionConnection = {
  readonly __typename?: 'RevisionConnection';
  readonly edges: ReadonlyArray<RevisionEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type RevisionEdge = {
  readonly __typename?: 'RevisionEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Revision;
};

export type RuleOutInWords = {
  readonly __typename?: 'RuleOutInWords';
  readonly id: Scalars['ID']['output'];
  readonly says: Scalars['String']['output'];
  readonly steps: ReadonlyArray<StepInWords>;
};

export type SearchHit = {
  readonly __typename?: 'SearchHit';
  readonly score: Scalars['Float']['output'];
  readonly term: Term;
};

export type Seen =
  | 'ABSENT'
  | 'PRESENT'
  | 'UNSEEN';

export type SignInWords = {
  readonly __typename?: 'SignInWords';
  readonly because: ReadonlyArray<Scalars['String']['output']>;
  readonly claim: Scalars['ID']['output'];
  readonly look: ReadonlyArray<Scalars['String']['output']>;
  readonly observation: Scalars['ID']['output'];
  readonly says: Scalars['String']['output'];
};

export type Source = Node & {
  readonly __typename?: 'Source';
  readonly author?: Maybe<Scalars['String']['output']>;
  readonly claims: ClaimConnection;
  /** The item as CSL-JSON text. */
  readonly csl: Scalars['String']['output'];
  readonly id: Scalars['ID']['output'];
  readonly kind: Scalars['String']['output'];
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly reading: Scalars['String']['output'];
  /** Citation as a line of text: author, title, place, year. */
  readonly text: Scalars['String']['output'];
  readonly title?: Maybe<Scalars['String']['output']>;
  readonly url?: Maybe<Scalars['String']['output']>;
  readonly year?: Maybe<Scalars['String']['output']>;
};


export type SourceClaimsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
};

export type SourceConnection = {
  readonly __typename?: 'SourceConnection';
  readonly edges: ReadonlyArray<SourceEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type SourceEdge = {
  readonly __typename?: 'SourceEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Source;
};

export type StepInWords = {
  readonly __typename?: 'StepInWords';
  readonly assumed: Scalars['Boolean']['output'];
  readonly claim?: Maybe<Scalars['ID']['output']>;
  readonly depth: Scalars['Int']['output'];
  readonly says: Scalars['String']['output'];
};

export type Strength =
  | 'CERTAIN'
  | 'FIRM'
  | 'TENTATIVE'
  | 'USUAL';

export type Sureness =
  | 'POSSIBLE'
  | 'PROBABLE'
  | 'SURE';

export type Term = Node & {
  readonly __typename?: 'Term';
  readonly aat?: Maybe<AatMatch>;
  readonly broader?: Maybe<Term>;
  /** From the nearest broader term to the top. */
  readonly broaderTerms: ReadonlyArray<Term>;
  readonly claims: ClaimConnection;
  readonly id: Scalars['ID']['output'];
  readonly kind: TermKind;
  readonly label: Scalars['String']['output'];
  /** Claims about other terms that name this one. */
  readonly namedIn: ClaimConnection;
  readonly narrower: TermConnection;
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly otherLabels: ReadonlyArray<Scalars['String']['output']>;
  readonly parts: ReadonlyArray<Term>;
};


export type TermClaimsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
};


export type TermNamedInArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
};


export type TermNarrowerArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: InputMaybe<Scalars['Int']['input']>;
};

export type TermConnection = {
  readonly __typename?: 'TermConnection';
  readonly edges: ReadonlyArray<TermEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type TermEdge = {
  readonly __typename?: 'TermEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Term;
};

export type TermKind =
  | 'FEATURE'
  | 'FINISH'
  | 'FORM'
  | 'HARDWARE'
  | 'MAKER'
  | 'MATERIAL'
  | 'PART'
  | 'PRACTICE'
  | 'REGION'
  | 'STYLE'
  | 'TOOL';

export type Way = {
  readonly __typename?: 'Way';
  readonly terms: ReadonlyArray<Term>;
};
