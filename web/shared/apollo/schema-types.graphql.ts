import type { Change } from '#server/domain/change.ts';
import type { FormFields } from '#server/domain/proposals/form/form-fields.ts';
import type { Report } from '#server/domain/report.ts';
import type { Weighing } from '#server/domain/weighing/weighing.ts';
import type { WeighingWords } from '#server/domain/weighing/weighing-words.ts';
export type Maybe<T> = T | null;
export type InputMaybe<T> = Maybe<T>;
/** All built-in and custom scalars, mapped to their actual values */
export type Scalars = {
  ID: { input: string; output: string; }
  String: { input: string; output: string; }
  Boolean: { input: boolean; output: boolean; }
  Int: { input: number; output: number; }
  Float: { input: number; output: number; }
  /** A change of the graph as one JSON value: a list of edits, each as `edit` in docs/formats/dump.schema.json. */
  Change: { input: Change; output: Change; }
  /** What stands in a form: an object of texts by field, those of docs/formats/claims-csv.md. */
  FormFields: { input: FormFields; output: FormFields; }
  /** The report of the engine as one JSON value with its members in canonical order; docs/formats/report.schema.json says what is in it. */
  Report: { input: Report; output: Report; }
  /** The weighing of the engine as one JSON value with its members in canonical order; docs/formats/weighing.schema.json says what is in it. */
  Weighing: { input: Weighing; output: Weighing; }
  /** A weighing in sentences, as one JSON value. */
  WeighingWords: { input: WeighingWords; output: WeighingWords; }
};

/** A match in the Getty Art & Architecture Thesaurus. */
export type AatMatch = {
  readonly __typename?: 'AatMatch';
  /** A person has looked it up. */
  readonly checked: Scalars['Boolean']['output'];
  readonly id: Scalars['String']['output'];
  readonly label: Scalars['String']['output'];
};

export type Aid =
  | 'FINGERTIP'
  | 'LABORATORY'
  | 'LENS'
  | 'MAGNET'
  | 'MIRROR'
  | 'RAKING_LIGHT'
  | 'RULE'
  | 'SQUARE'
  | 'ULTRAVIOLET_LAMP';

/** Something of the newest revision that may be what is proposed. */
export type Alike = {
  readonly __typename?: 'Alike';
  readonly by: AlikeBy;
  /** term, claim or source. */
  readonly kind: Scalars['String']['output'];
  /** Id of the term, claim or source. */
  readonly of: Scalars['ID']['output'];
  readonly says: Scalars['String']['output'];
};

export type AlikeBy =
  | 'SAME_CLAIM'
  | 'SAME_LABEL'
  | 'SAME_SOURCE'
  | 'SAME_SOURCE_AND_PLACE';

/** What an answer does to the claim. */
export type AnswerDoes =
  | 'AGAINST'
  | 'FOR'
  | 'RULES_OUT'
  | 'SAYS_NOTHING';

/** The answer on a piece, as it is or as it would be. */
export type AnswerOnOneSide = {
  readonly __typename?: 'AnswerOnOneSide';
  readonly labels: ReadonlyArray<LabelOfTerm>;
  readonly report: Scalars['Report']['output'];
  readonly words: ReportWords;
};

/** The neighbourhood of a term, as far as it is shown. */
export type Around = {
  readonly __typename?: 'Around';
  readonly leftOut: ReadonlyArray<AroundLeftOut>;
  readonly links: ReadonlyArray<AroundLink>;
  /** The term, then its neighbours as they are read, each followed by its own. */
  readonly members: ReadonlyArray<AroundMember>;
  /** Claims, narrower terms, features and forms that were not read, since there are so many. */
  readonly unread: Scalars['Int']['output'];
};

/** Terms joined in one way to one that is shown, that are not shown. */
export type AroundLeftOut = {
  readonly __typename?: 'AroundLeftOut';
  readonly count: Scalars['Int']['output'];
  readonly from: Scalars['ID']['output'];
  /** The links go out from `from`. */
  readonly isOutgoing: Scalars['Boolean']['output'];
  readonly kind: LinkKind;
  readonly terms: ReadonlyArray<Term>;
};


/** Terms joined in one way to one that is shown, that are not shown. */
export type AroundLeftOutTermsArgs = {
  first?: Scalars['Int']['input'];
};

/** What joins two terms that are shown, with the claims that say it. */
export type AroundLink = {
  readonly __typename?: 'AroundLink';
  /** None: the term itself says it. */
  readonly claimCount: Scalars['Int']['output'];
  readonly claims: ReadonlyArray<Claim>;
  readonly from: Scalars['ID']['output'];
  /** None where nothing is bounded, or no claim says it. */
  readonly hardness?: Maybe<Hardness>;
  readonly id: Scalars['ID']['output'];
  readonly kind: LinkKind;
  readonly to: Scalars['ID']['output'];
};


/** What joins two terms that are shown, with the claims that say it. */
export type AroundLinkClaimsArgs = {
  first?: Scalars['Int']['input'];
};

/** A term that is shown. */
export type AroundMember = {
  readonly __typename?: 'AroundMember';
  /** Claims with a date about it, the earliest first. */
  readonly dated: ReadonlyArray<Claim>;
  readonly datedCount: Scalars['Int']['output'];
  /** The link that it is reached by. */
  readonly reachedBy?: Maybe<Scalars['ID']['output']>;
  /** The term that it is reached from; none for the term itself. */
  readonly reachedFrom?: Maybe<Scalars['ID']['output']>;
  /** 0 for the term itself. */
  readonly step: Scalars['Int']['output'];
  readonly term?: Maybe<Term>;
};


/** A term that is shown. */
export type AroundMemberDatedArgs = {
  first?: Scalars['Int']['input'];
};

/** What is claimed of the piece; what is not stated is unknown. */
export type Attribution = {
  readonly __typename?: 'Attribution';
  /** EDTF, read as one event. */
  readonly date: Scalars['String']['output'];
  readonly form?: Maybe<Term>;
  readonly maker?: Maybe<Term>;
  readonly region?: Maybe<Term>;
  readonly style?: Maybe<Term>;
};

export type AttributionInput = {
  /** EDTF, read as one event. */
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

export type BatchRow = {
  readonly __typename?: 'BatchRow';
  readonly alike: ReadonlyArray<Alike>;
  /** Each path begins with row and column. */
  readonly problems: ReadonlyArray<Problem>;
  /** Number of the record; the head is 1. */
  readonly row: Scalars['Int']['output'];
  /** What it would bring, as lines. */
  readonly says: ReadonlyArray<Scalars['String']['output']>;
};

export type ChangeExaminationResult = ExaminationChanged | Refused;

/** What the newest revision makes of a stored piece that an earlier one did not. */
export type ChangedSince = {
  readonly __typename?: 'ChangedSince';
  readonly claimCount: Scalars['Int']['output'];
  /** Claims the answer is read from that are new or otherwise than they were. */
  readonly claims: ReadonlyArray<Claim>;
  /** Claims it was read from and is no longer, as they stood. */
  readonly gone: ReadonlyArray<Claim>;
  /** The conclusion as it was; null if it reads the same. */
  readonly headlineBefore?: Maybe<Scalars['String']['output']>;
  /** What is said otherwise; none where the claims changed nothing of it. */
  readonly lines: ReadonlyArray<ShiftLine>;
  /** The earlier revision. */
  readonly since: Scalars['Int']['output'];
};

/** What the examiner assumes of this piece in place of the usual odds. */
export type ChosenOdds = {
  readonly __typename?: 'ChosenOdds';
  readonly datePrior?: Maybe<DatePrior>;
  readonly leak?: Maybe<Scalars['Float']['output']>;
  readonly madeToDeceive?: Maybe<Scalars['Float']['output']>;
  readonly parts: ReadonlyArray<PartOdds>;
  readonly wrongClaims?: Maybe<Scalars['Float']['output']>;
};

/** What the examiner assumes of this piece in place of the usual odds. */
export type ChosenOddsInput = {
  readonly datePrior?: InputMaybe<DatePrior>;
  /** Probability outside all known years. */
  readonly leak?: InputMaybe<Scalars['Float']['input']>;
  /** Prior of “made later to look old”. */
  readonly madeToDeceive?: InputMaybe<Scalars['Float']['input']>;
  readonly parts?: InputMaybe<ReadonlyArray<PartOddsInput>>;
  /** Times the probability that claims are wrong. */
  readonly wrongClaims?: InputMaybe<Scalars['Float']['input']>;
};

export type Citation = {
  readonly __typename?: 'Citation';
  readonly basis: Basis;
  readonly locator?: Maybe<Scalars['String']['output']>;
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly source?: Maybe<Source>;
};

/** A statement about a term, with at least one citation. */
export type Claim = Node & {
  readonly __typename?: 'Claim';
  readonly citations: ReadonlyArray<Citation>;
  /** Of a `requires`: no other way is known. An open list bounds nothing. */
  readonly closed?: Maybe<Scalars['Boolean']['output']>;
  /** Newest first, whatever the revision; those that ended too. */
  readonly disputes: ReadonlyArray<Dispute>;
  /** The `void when` claims of this claim. */
  readonly exceptions: ReadonlyArray<Claim>;
  readonly form?: Maybe<Term>;
  readonly hardness?: Maybe<Hardness>;
  readonly id: Scalars['ID']['output'];
  /** What leans on this claim, among a page of the examinations that are not deleted; each is examined with it and without it. */
  readonly leaning: Leaning;
  readonly note?: Maybe<Scalars['String']['output']>;
  /** Object of `typical of`; regions of `confined to`; ends of `spread to`; condition of `void when`. */
  readonly objects: ReadonlyArray<Term>;
  /** Of a `void when`: the claim that it is an exception of. */
  readonly of?: Maybe<Claim>;
  /** How many disputes of it are open now, whatever the revision. */
  readonly openDisputes: Scalars['Int']['output'];
  readonly part?: Maybe<Term>;
  readonly region?: Maybe<Term>;
  readonly relation: Relation;
  /** Row of the fact register it was modelled from. */
  readonly row?: Maybe<Scalars['String']['output']>;
  /** The claim as a sentence. */
  readonly says: Scalars['String']['output'];
  /** Of a `spread to`: fewest and most years that it took. */
  readonly spreadYears?: Maybe<ReadonlyArray<Scalars['Int']['output']>>;
  /** Of an `indicates`: states of the part that it speaks for. */
  readonly states: ReadonlyArray<PartState>;
  readonly status: ClaimStatus;
  readonly strength: Strength;
  /** None for an exception: its subject is the claim in `of`. */
  readonly subject?: Maybe<Term>;
  /** Ways of a `requires`; any one of them will do. */
  readonly ways: ReadonlyArray<Way>;
  /** EDTF; its role (event or period) follows from the relation. */
  readonly when?: Maybe<Scalars['String']['output']>;
  readonly years?: Maybe<DatedYears>;
};


/** A statement about a term, with at least one citation. */
export type ClaimLeaningArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
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

/** Something that somebody said of a proposal or of a dispute; never changed. */
export type Comment = {
  readonly __typename?: 'Comment';
  /** Id of the comment that it answers. */
  readonly answers?: Maybe<Scalars['ID']['output']>;
  readonly at: Scalars['String']['output'];
  readonly by: Person;
  readonly id: Scalars['ID']['output'];
  readonly isMine: Scalars['Boolean']['output'];
  readonly mentions: ReadonlyArray<Person>;
  /** Id of what it is about. */
  readonly on: Scalars['ID']['output'];
  readonly text: Scalars['String']['output'];
};

export type CommentConnection = {
  readonly __typename?: 'CommentConnection';
  readonly edges: ReadonlyArray<CommentEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type CommentEdge = {
  readonly __typename?: 'CommentEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Comment;
};

export type CommentResult = Comment | Refused;

/** One thing that one or both sides say. */
export type ComparedLine = {
  readonly __typename?: 'ComparedLine';
  readonly after?: Maybe<Scalars['String']['output']>;
  readonly before?: Maybe<Scalars['String']['output']>;
  readonly differs: Scalars['Boolean']['output'];
  readonly what: Scalars['String']['output'];
};

export type DatePrior =
  | 'AS_CLAIMED'
  | 'PRODUCTION'
  | 'UNIFORM';

/** Years a date can mean, as two spans; null where nothing bounds an end. */
export type DatedYears = {
  readonly __typename?: 'DatedYears';
  readonly begin: ReadonlyArray<Maybe<Scalars['Int']['output']>>;
  readonly doubtful: Scalars['Boolean']['output'];
  readonly end: ReadonlyArray<Maybe<Scalars['Int']['output']>>;
  readonly padBegin: Scalars['Int']['output'];
  readonly padEnd: Scalars['Int']['output'];
};

/** A dated claim of a region beside one on the same subject elsewhere. */
export type DatesBeside = {
  readonly __typename?: 'DatesBeside';
  readonly here: Claim;
  /** Fewest and most years that it is later here; null where nothing bounds it. */
  readonly lag: ReadonlyArray<Maybe<Scalars['Int']['output']>>;
  readonly subject?: Maybe<Term>;
  readonly there: Claim;
};

export type DatingLabel =
  | 'CONSISTENT'
  | 'CONTRADICTORY'
  | 'SILENT';

export type DatingPath = {
  readonly __typename?: 'DatingPath';
  /** The claim that bounds the years at its end. */
  readonly dated: Scalars['ID']['output'];
  /** If this claim holds, the claimed years are impossible. */
  readonly isOut: Scalars['Boolean']['output'];
  /** The requirements that are followed, the first of the feature itself. */
  readonly via: ReadonlyArray<Scalars['ID']['output']>;
};

/** Every single way from what was seen to a date, before exceptions and nearer claims are weighed. */
export type Datings = {
  readonly __typename?: 'Datings';
  /** What was seen, each feature once. */
  readonly features: ReadonlyArray<FeatureDatings>;
  /** There are too many ways to list them all. */
  readonly isCut: Scalars['Boolean']['output'];
  readonly revision: Scalars['Int']['output'];
};

export type DatingsResult = Datings | Refused;

/** One thing that is not as it was, in words. */
export type Difference = {
  readonly __typename?: 'Difference';
  /** Null where it went. */
  readonly after?: Maybe<Scalars['String']['output']>;
  /** Null where it came new. */
  readonly before?: Maybe<Scalars['String']['output']>;
  /** What differs: date, strength, citation. */
  readonly what: Scalars['String']['output'];
};

/** What a rule found. */
export type Disagreement = {
  readonly __typename?: 'Disagreement';
  readonly claimCount: Scalars['Int']['output'];
  /** The first of the claims, in the order in which the argument runs. */
  readonly claims: ReadonlyArray<Claim>;
  readonly id: Scalars['ID']['output'];
  readonly region?: Maybe<Term>;
  /** Id of the rule. */
  readonly rule: Scalars['ID']['output'];
  /** The finding as a sentence. */
  readonly says: Scalars['String']['output'];
  /** The one source of a region. */
  readonly source?: Maybe<Source>;
  /** What the claims are about: their subject, or a region. */
  readonly term?: Maybe<Term>;
  /** How far apart the claims are at the least; null where an end is open or no years are meant. */
  readonly years?: Maybe<Scalars['Int']['output']>;
};


/** What a rule found. */
export type DisagreementClaimsArgs = {
  first?: Scalars['Int']['input'];
};

export type DisagreementConnection = {
  readonly __typename?: 'DisagreementConnection';
  readonly edges: ReadonlyArray<DisagreementEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type DisagreementEdge = {
  readonly __typename?: 'DisagreementEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Disagreement;
};

/** One kind of disagreement that is looked for. */
export type DisagreementRule = {
  readonly __typename?: 'DisagreementRule';
  /** Accepted claims among which it was looked for. */
  readonly claimCount: Scalars['Int']['output'];
  /** How much it finds on the newest revision. */
  readonly count: Scalars['Int']['output'];
  readonly id: Scalars['ID']['output'];
  /** What it means that something was found. */
  readonly means: Scalars['String']['output'];
  /** What to do about it. */
  readonly remedy: Scalars['String']['output'];
  /** Number of the revision it was looked for on. */
  readonly revision: Scalars['Int']['output'];
  readonly title: Scalars['String']['output'];
};

/** Doubt of an accepted claim. It lowers nothing by itself. */
export type Dispute = {
  readonly __typename?: 'Dispute';
  readonly at: Scalars['String']['output'];
  readonly by: Person;
  /** As it stands now; null where it was withdrawn since. */
  readonly claim?: Maybe<Claim>;
  readonly claimId: Scalars['ID']['output'];
  /** Oldest first. */
  readonly comments: CommentConnection;
  /** How it ended; null while it is open. */
  readonly decision?: Maybe<DisputeDecision>;
  readonly id: Scalars['ID']['output'];
  readonly isMine: Scalars['Boolean']['output'];
  readonly says: Scalars['String']['output'];
  readonly state: DisputeState;
  readonly version: Scalars['Int']['output'];
};


/** Doubt of an accepted claim. It lowers nothing by itself. */
export type DisputeCommentsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
};

export type DisputeConnection = {
  readonly __typename?: 'DisputeConnection';
  readonly edges: ReadonlyArray<DisputeEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type DisputeDecision = {
  readonly __typename?: 'DisputeDecision';
  readonly at: Scalars['String']['output'];
  readonly by: Person;
  readonly isMine: Scalars['Boolean']['output'];
  readonly outcome: DisputeOutcome;
  readonly says: Scalars['String']['output'];
};

export type DisputeEdge = {
  readonly __typename?: 'DisputeEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Dispute;
};

export type DisputeOutcome =
  | 'CORRECTED'
  | 'RETRACTED'
  | 'STANDS'
  | 'TAKEN_BACK';

export type DisputeResult = Dispute | Refused;

export type DisputeState =
  | 'ENDED'
  | 'OPEN';

/** An edit of one term, claim or source. */
export type Edit = {
  readonly __typename?: 'Edit';
  /** None where it was added or withdrawn. */
  readonly differences: ReadonlyArray<Difference>;
  readonly does: EditKind;
  /** The thing as it stood afterwards, as a line; of a withdrawn one, as it last stood. */
  readonly says: Scalars['String']['output'];
};

export type EditKind =
  | 'ADDED'
  | 'CHANGED'
  | 'WITHDRAWN';

export type Examination = Node & {
  readonly __typename?: 'Examination';
  /** Null where there are no accounts, and of an examination that was recorded before one could say so or came with the program: the whole house sees those. */
  readonly access?: Maybe<ExaminationAccess>;
  readonly canUndo: Scalars['Boolean']['output'];
  readonly changedAt: Scalars['String']['output'];
  readonly deleted: Scalars['Boolean']['output'];
  /** The piece examined on the newest revision, or on the one asked for. */
  readonly examined: ExamineResult;
  readonly id: Scalars['ID']['output'];
  readonly piece: Piece;
  /** How it stands, and what changed since the revision asked for or since its record was changed, whichever is later. */
  readonly standing: Standing;
  /** Counts the changes; a change names the version it was made on. */
  readonly version: Scalars['Int']['output'];
};


export type ExaminationExaminedArgs = {
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type ExaminationStandingArgs = {
  since?: InputMaybe<Scalars['Int']['input']>;
};

/** Who sees an examination where several persons share the house. */
export type ExaminationAccess = {
  readonly __typename?: 'ExaminationAccess';
  /** Whoever recorded it. */
  readonly by: Person;
  /** You recorded it, and say who sees it. */
  readonly isYours: Scalars['Boolean']['output'];
  /** Persons who see it besides; null is the whole house. */
  readonly seenBy?: Maybe<ReadonlyArray<Person>>;
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

/** A stored examination has a new version. */
export type ExaminationNews = {
  readonly __typename?: 'ExaminationNews';
  readonly id: Scalars['ID']['output'];
  /** Number of the write in the ledger. */
  readonly sequence: Scalars['Int']['output'];
  readonly version: Scalars['Int']['output'];
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

export type FeatureDatings = {
  readonly __typename?: 'FeatureDatings';
  readonly feature: Scalars['ID']['output'];
  /** Whether some way leaves the claimed years no room, none does, or there is none. */
  readonly label: DatingLabel;
  /** By the ids of the claims along them; where a way ends, before what leads on. */
  readonly paths: ReadonlyArray<DatingPath>;
};

export type FeaturesOnPart = {
  readonly __typename?: 'FeaturesOnPart';
  readonly features: ReadonlyArray<Term>;
  /** At the kind asked for: more features are looked for on all these kinds, too many to list. */
  readonly isCut: Scalars['Boolean']['output'];
  readonly part?: Maybe<Term>;
};

/** What to look for on a piece of one form, in the order in which one goes round it. */
export type FieldSheet = {
  readonly __typename?: 'FieldSheet';
  readonly date?: Maybe<Scalars['String']['output']>;
  readonly form?: Maybe<Term>;
  /** More features are looked for on its parts, too many to weigh. */
  readonly isCut: Scalars['Boolean']['output'];
  /** The parts that the form is expected to have. */
  readonly parts: ReadonlyArray<Term>;
  readonly region?: Maybe<Term>;
  readonly revision: Scalars['Int']['output'];
  readonly sections: ReadonlyArray<SheetSection>;
};

export type FieldSheetResult = FieldSheet | Refused;

export type FindingInWords = {
  readonly __typename?: 'FindingInWords';
  readonly id: Scalars['ID']['output'];
  readonly paths: ReadonlyArray<Scalars['String']['output']>;
  readonly says: Scalars['String']['output'];
  /** A few words for the end of a strip. */
  readonly short: Scalars['String']['output'];
  readonly steps: ReadonlyArray<StepInWords>;
};

export type ForeseenDisagreement = {
  readonly __typename?: 'ForeseenDisagreement';
  readonly id: Scalars['ID']['output'];
  readonly says: Scalars['String']['output'];
};

export type FoundGroup =
  | 'FORM'
  | 'PRACTICE'
  | 'SHOP'
  | 'WOOD';

/** Something that claims say was there. */
export type FoundThere = {
  readonly __typename?: 'FoundThere';
  readonly claims: ReadonlyArray<Claim>;
  readonly group: FoundGroup;
  readonly subject?: Maybe<Term>;
};

/** The graph has a new revision. */
export type GraphNews = {
  readonly __typename?: 'GraphNews';
  readonly revision: Scalars['Int']['output'];
  /** Number of the write in the ledger. */
  readonly sequence: Scalars['Int']['output'];
  /** Ids of the terms, claims and sources that it touched; null if there are more than 500. */
  readonly touched?: Maybe<ReadonlyArray<Scalars['ID']['output']>>;
};

export type Hardness =
  | 'PHYSICAL'
  | 'PRACTICE';

/** What one revision did to one thing. */
export type HistoryEntry = {
  readonly __typename?: 'HistoryEntry';
  readonly edit: Edit;
  readonly revision: Revision;
};

export type HistoryEntryConnection = {
  readonly __typename?: 'HistoryEntryConnection';
  readonly edges: ReadonlyArray<HistoryEntryEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type HistoryEntryEdge = {
  readonly __typename?: 'HistoryEntryEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: HistoryEntry;
};

/** What accepting a change would do, were it accepted now. */
export type Impact = {
  readonly __typename?: 'Impact';
  /** Disagreements that it would bring up; not told again by an answer that goes on. */
  readonly created: ReadonlyArray<ForeseenDisagreement>;
  /** How many of them are not shown to you. */
  readonly hidden: Scalars['Int']['output'];
  /** How many more it can touch: an answer is given after some two seconds of looking. */
  readonly left: Scalars['Int']['output'];
  /** Stored examinations that were looked at, of those that it can touch; no other can change. */
  readonly looked: Scalars['Int']['output'];
  /** The first of them that are shown to you, by id. */
  readonly moved: ReadonlyArray<MovedPiece>;
  /** How many would come to something else. */
  readonly movedCount: Scalars['Int']['output'];
  /** Where one can go on: an answer `after` it looks at what is left. */
  readonly reached?: Maybe<Scalars['Int']['output']>;
  /** Reviewers who have to agree in a shared house. */
  readonly reviewersNeeded: Scalars['Int']['output'];
  /** The revision it was laid over. */
  readonly revision: Scalars['Int']['output'];
  /** Disagreements that it would settle; not told again by an answer that goes on. */
  readonly settled: ReadonlyArray<ForeseenDisagreement>;
};

/** How far an impact is that is being worked out. */
export type ImpactSoFar = {
  readonly __typename?: 'ImpactSoFar';
  /** Stored examinations looked at. */
  readonly looked: Scalars['Int']['output'];
  /** How many of those looked at for this answer would come to something else. */
  readonly moved: Scalars['Int']['output'];
  /** Of all that it can touch. */
  readonly of: Scalars['Int']['output'];
};

/** What to look at on a piece of an attribution before it is there. */
export type InspectionPlan = {
  readonly __typename?: 'InspectionPlan';
  /** Looks that these were chosen from. */
  readonly considered: Scalars['Int']['output'];
  readonly date: Scalars['String']['output'];
  readonly form?: Maybe<Term>;
  /** More features are looked for on the parts, too many to weigh. */
  readonly isCut: Scalars['Boolean']['output'];
  /** By position; in each the most telling first. */
  readonly items: ReadonlyArray<PlanItem>;
  /** The parts that the form is expected to have. */
  readonly parts: ReadonlyArray<Term>;
  readonly region?: Maybe<Term>;
  readonly revision: Scalars['Int']['output'];
};

export type InspectionPlanResult = InspectionPlan | Refused;

/** What a term is called on one side. */
export type LabelOfTerm = {
  readonly __typename?: 'LabelOfTerm';
  readonly label: Scalars['String']['output'];
  readonly term: Scalars['ID']['output'];
};

/** The examinations of one page that lean on a claim. */
export type Leaning = {
  readonly __typename?: 'Leaning';
  /** Where to look on; null where there are no more. */
  readonly endCursor?: Maybe<Scalars['String']['output']>;
  /** Those of the page of which something leans on the claim, the one changed last first. */
  readonly examinations: ReadonlyArray<LeaningExamination>;
  /** How many examinations the page has. */
  readonly looked: Scalars['Int']['output'];
  /** How many examinations there are. */
  readonly total: Scalars['Int']['output'];
};

/** An examination of which something leans on the claim. */
export type LeaningExamination = {
  readonly __typename?: 'LeaningExamination';
  readonly examination: Examination;
  readonly headline: Scalars['String']['output'];
  /** The conclusion without the claim; null if the same. */
  readonly headlineWithout?: Maybe<Scalars['String']['output']>;
  readonly lines: ReadonlyArray<LeaningLine>;
};

/** One thing that an examination says and that leans on the claim. */
export type LeaningLine = {
  readonly __typename?: 'LeaningLine';
  /** How it stands. */
  readonly now: Scalars['String']['output'];
  readonly role: LeaningRole;
  /** What it is about; of a rule-out or a sign, its sentence. */
  readonly says: Scalars['String']['output'];
  /** The strip to look at: a finding. */
  readonly strip: Scalars['ID']['output'];
  /** How it would stand without the claim; null if the same. */
  readonly without?: Maybe<Scalars['String']['output']>;
};

export type LeaningRole =
  | 'AGREEMENT'
  | 'CONTRADICTION'
  | 'RULE_OUT'
  | 'SIGN'
  | 'SILENCE'
  | 'UNUSUAL';

/** What joins two terms. */
export type LinkKind =
  | 'BROADER'
  | 'CONFINED_TO'
  | 'DATED_IN'
  | 'HAS_PART'
  | 'LOOKED_FOR_ON'
  | 'MISTAKEN_FOR'
  | 'NOT_FOUND_IN'
  | 'REQUIRES'
  | 'SAID_OF'
  | 'SPREAD_FROM'
  | 'SPREAD_TO'
  | 'TYPICAL_OF'
  | 'VOID_WHEN';

/** Something that looks like a feature and is not. */
export type LookAlike = {
  readonly __typename?: 'LookAlike';
  /** How the two are told apart. */
  readonly apart: Scalars['String']['output'];
  readonly term?: Maybe<Term>;
  readonly what: Scalars['String']['output'];
};

export type LookedOver = {
  readonly __typename?: 'LookedOver';
  readonly alike: ReadonlyArray<Alike>;
  /** What would be proposed; null while something is lacking or wrong. */
  readonly change?: Maybe<Scalars['Change']['output']>;
  readonly edits: ReadonlyArray<ProposedEdit>;
  /** What is lacking or wrong; each path is a field of the form, or a place in the change. */
  readonly problems: ReadonlyArray<Problem>;
};

/** How a feature is looked for, what it is mistaken for, what brings it about in all honesty. */
export type Looking = {
  readonly __typename?: 'Looking';
  readonly aids: ReadonlyArray<Aid>;
  readonly basis: Basis;
  readonly how: Scalars['String']['output'];
  readonly innocent?: Maybe<Scalars['String']['output']>;
  readonly mistakenFor: ReadonlyArray<LookAlike>;
  readonly move: Move;
};

export type Move =
  | 'DRAWER_OUT'
  | 'NOTHING'
  | 'PIECE_TURNED'
  | 'SAMPLE_TAKEN'
  | 'SOMETHING_UNFASTENED';

/** A stored piece of which something would be said otherwise. */
export type MovedPiece = {
  readonly __typename?: 'MovedPiece';
  readonly after?: Maybe<AnswerOnOneSide>;
  readonly before?: Maybe<AnswerOnOneSide>;
  readonly examination: Examination;
  readonly headline?: Maybe<Scalars['String']['output']>;
  /** The conclusion as it is; null if it would read the same. */
  readonly headlineBefore?: Maybe<Scalars['String']['output']>;
  readonly id: Scalars['ID']['output'];
  readonly invented: Scalars['Boolean']['output'];
  /** What would be said otherwise: `before` is as it is, `now` as it would be. */
  readonly lines: ReadonlyArray<ShiftLine>;
  readonly title: Scalars['String']['output'];
};

export type Mutation = {
  readonly __typename?: 'Mutation';
  readonly changeExamination: ChangeExaminationResult;
  /** For its maker alone. */
  readonly changeProposal: ProposalResult;
  /** Says something of a proposal or a dispute. */
  readonly comment: CommentResult;
  readonly createExamination: ChangeExaminationResult;
  /** What a reviewer makes of it. Accepting makes a revision as soon as enough reviewers agree. */
  readonly decideOnProposal: ProposalResult;
  /** Takes it out of the lists; an undo brings it back. */
  readonly deleteExamination: ChangeExaminationResult;
  readonly disputeClaim: DisputeResult;
  /** Ends it with a decision that stays. Only who brought it up takes it back. */
  readonly endDispute: DisputeResult;
  /** A draft is seen by its maker alone, and may be unfit still; what is open is refused if the graph would refuse it. */
  readonly makeProposal: ProposalResult;
  /** Hands it to the reviewers, with what is said otherwise. */
  readonly openProposal: ProposalResult;
  /** Says who sees an examination; only whoever recorded it may. */
  readonly setExaminationAccess: ChangeExaminationResult;
  /** Takes back the newest change, a deletion too. */
  readonly undoExamination: ChangeExaminationResult;
  /** Takes it back; for its maker alone. */
  readonly withdrawProposal: ProposalResult;
};


export type MutationChangeExaminationArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
  piece: PieceInput;
};


export type MutationChangeProposalArgs = {
  changes: ProposalChanges;
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};


export type MutationCommentArgs = {
  answers?: InputMaybe<Scalars['ID']['input']>;
  mentions?: ReadonlyArray<Scalars['ID']['input']>;
  on: Scalars['ID']['input'];
  text: Scalars['String']['input'];
};


export type MutationCreateExaminationArgs = {
  piece: PieceInput;
  seenBy?: InputMaybe<ReadonlyArray<Scalars['ID']['input']>>;
};


export type MutationDecideOnProposalArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
  reason?: Scalars['String']['input'];
  supersededBy?: InputMaybe<Scalars['ID']['input']>;
  verdict: Verdict;
};


export type MutationDeleteExaminationArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};


export type MutationDisputeClaimArgs = {
  claim: Scalars['ID']['input'];
  says: Scalars['String']['input'];
};


export type MutationEndDisputeArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
  outcome: DisputeOutcome;
  says?: Scalars['String']['input'];
};


export type MutationMakeProposalArgs = {
  input: ProposalInput;
  open?: Scalars['Boolean']['input'];
};


export type MutationOpenProposalArgs = {
  changes?: InputMaybe<ProposalChanges>;
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};


export type MutationSetExaminationAccessArgs = {
  id: Scalars['ID']['input'];
  seenBy?: InputMaybe<ReadonlyArray<Scalars['ID']['input']>>;
};


export type MutationUndoExaminationArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};


export type MutationWithdrawProposalArgs = {
  expectedVersion: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};

/** What was changed, in the order of the ledger, none left out and none twice. */
export type News = {
  readonly __typename?: 'News';
  readonly changes: ReadonlyArray<NewsItem>;
  /** More that was missed follows at once. */
  readonly hasMore: Scalars['Boolean']['output'];
  /** More than 20000 writes were missed, or the store was restored: read anew what is shown. */
  readonly readAnew: Scalars['Boolean']['output'];
  /** Known up to here: go on from it with `since`. */
  readonly sequence: Scalars['Int']['output'];
};

export type NewsItem = ExaminationNews | GraphNews | ProposalNews;

export type NewsKind =
  | 'EXAMINATION'
  | 'GRAPH'
  | 'PROPOSAL';

/** Anything with an id of its own. Ids are readable: `tool.circular-saw`, `claim.A13`. */
export type Node = {
  readonly id: Scalars['ID']['output'];
};

/** A feature on a part of this piece. */
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
  /** A term of kind `feature`. */
  readonly feature: Scalars['ID']['input'];
  readonly id: Scalars['ID']['input'];
  readonly note?: InputMaybe<Scalars['String']['input']>;
  readonly part: Scalars['ID']['input'];
  readonly seen: Seen;
  readonly sureness?: Sureness;
};

export type Other = {
  readonly __typename?: 'Other';
  readonly isEditing: Scalars['Boolean']['output'];
  /** In another window. */
  readonly isYou: Scalars['Boolean']['output'];
  /** Null where one may not see it, and where there are no accounts. */
  readonly name?: Maybe<Scalars['String']['output']>;
  /** The part that is open there. */
  readonly part?: Maybe<Scalars['ID']['output']>;
};

/** Who else has a piece open. */
export type Others = {
  readonly __typename?: 'Others';
  /** More than are told of one by one, if there are many. */
  readonly count: Scalars['Int']['output'];
  readonly others: ReadonlyArray<Other>;
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
  /** Only where the part is known to be from elsewhere. */
  readonly region?: Maybe<Term>;
  /** The part it belongs to. */
  readonly within?: Maybe<Scalars['ID']['output']>;
};

export type PartInWords = {
  readonly __typename?: 'PartInWords';
  readonly part: Scalars['ID']['output'];
  readonly says: Scalars['String']['output'];
};

export type PartInput = {
  readonly id: Scalars['ID']['input'];
  /** A term of kind `part`. */
  readonly kind?: InputMaybe<Scalars['ID']['input']>;
  readonly label: Scalars['String']['input'];
  /** Only where the part is known to be from elsewhere. */
  readonly region?: InputMaybe<Scalars['ID']['input']>;
  /** Id of the part it belongs to. */
  readonly within?: InputMaybe<Scalars['ID']['input']>;
};

export type PartOdds = {
  readonly __typename?: 'PartOdds';
  readonly later: Scalars['Float']['output'];
  readonly original: Scalars['Float']['output'];
  readonly part: Scalars['ID']['output'];
  readonly reused: Scalars['Float']['output'];
};

/** Odds of three states of a part; they add up to 1. */
export type PartOddsInput = {
  readonly later: Scalars['Float']['input'];
  readonly original: Scalars['Float']['input'];
  readonly part: Scalars['ID']['input'];
  readonly reused: Scalars['Float']['input'];
};

export type PartState =
  | 'LATER'
  | 'ORIGINAL'
  | 'REUSED'
  | 'REWORKED';

/** Whoever did something in this house. */
export type Person = {
  readonly __typename?: 'Person';
  readonly id: Scalars['ID']['output'];
  /** As the others see it; null for whoever sits at a machine of their own, and where it was taken away. */
  readonly name?: Maybe<Scalars['String']['output']>;
};

export type Piece = {
  readonly __typename?: 'Piece';
  readonly attribution: Attribution;
  /** Year in which the piece was looked at: nothing on it can be later. */
  readonly examined: Scalars['Int']['output'];
  /** True for demonstration pieces: no such object exists. */
  readonly invented: Scalars['Boolean']['output'];
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly observations: ReadonlyArray<Observation>;
  readonly odds?: Maybe<ChosenOdds>;
  readonly parts: ReadonlyArray<Part>;
  /** Pairs of parts that cannot share an origin. */
  readonly separate: ReadonlyArray<ReadonlyArray<Scalars['ID']['output']>>;
  readonly title: Scalars['String']['output'];
  /** Parts that cannot be of different origin. */
  readonly together: ReadonlyArray<ReadonlyArray<Scalars['ID']['output']>>;
};

export type PieceInput = {
  readonly attribution: AttributionInput;
  /** Year in which the piece was looked at. */
  readonly examined: Scalars['Int']['input'];
  readonly invented?: Scalars['Boolean']['input'];
  readonly note?: InputMaybe<Scalars['String']['input']>;
  readonly observations: ReadonlyArray<ObservationInput>;
  readonly odds?: InputMaybe<ChosenOddsInput>;
  readonly parts: ReadonlyArray<PartInput>;
  /** Pairs of parts that cannot share an origin. */
  readonly separate?: ReadonlyArray<ReadonlyArray<Scalars['ID']['input']>>;
  readonly title: Scalars['String']['input'];
  /** Parts that cannot be of different origin. */
  readonly together?: ReadonlyArray<ReadonlyArray<Scalars['ID']['input']>>;
};

/** What one answer would do. */
export type PlanAnswer = {
  readonly __typename?: 'PlanAnswer';
  readonly claim: AnswerDoes;
  /** Of the Bayes factor for the claimed years; null beyond the model. */
  readonly log10?: Maybe<Scalars['Float']['output']>;
  readonly says: Scalars['String']['output'];
  /** The state of the part that it speaks for, if it does. */
  readonly state?: Maybe<PartState>;
};

/** Something to look at. */
export type PlanItem = {
  readonly __typename?: 'PlanItem';
  /** Other kinds of part on which the same would tell. */
  readonly alsoOn: ReadonlyArray<Term>;
  readonly bases: ReadonlyArray<Basis>;
  /** Expected of the claim. */
  readonly bits: Scalars['Float']['output'];
  /** Expected of the state of the part. */
  readonly bitsOfState: Scalars['Float']['output'];
  readonly claims: ReadonlyArray<Claim>;
  readonly feature?: Maybe<Term>;
  readonly ifAbsent: PlanAnswer;
  readonly ifSeen: PlanAnswer;
  /** What it would mean to see it; may be empty. */
  readonly means: Scalars['String']['output'];
  readonly part?: Maybe<Term>;
  readonly position: Position;
  /** Its place in the order of what tells most, from 1 on. */
  readonly rank: Scalars['Int']['output'];
};

/** Where one stands or what one has opened, in the order in which one goes round a piece. */
export type Position =
  | 'BACK'
  | 'DRAWERS_OUT'
  | 'FRONT'
  | 'UNDERNEATH';

export type Problem = {
  readonly __typename?: 'Problem';
  readonly code: ProblemCode;
  /** What the input might have meant. */
  readonly instead?: Maybe<Scalars['String']['output']>;
  /** One sentence that says what is wrong, where, and what to do. */
  readonly message: Scalars['String']['output'];
  /** Place in the input, e.g. parts, 3, within. */
  readonly path: ReadonlyArray<Scalars['String']['output']>;
};

export type ProblemCode =
  | 'BROKEN_SEAL'
  | 'CHANGED_MEANWHILE'
  | 'CYCLE_OF_BROADER_TERMS'
  | 'CYCLE_OF_EXCEPTIONS'
  | 'DAMAGED_DUMP'
  | 'DUPLICATE_ID'
  | 'EMPTY_LIST'
  | 'IMPOSSIBLE_ODDS'
  | 'LAST_OWNER'
  | 'LINK_USED_UP'
  | 'MISSING_LOCATOR'
  | 'NAME_TAKEN'
  | 'NOTHING_TO_UNDO'
  | 'NOT_ALLOWED'
  | 'NOT_SIGNED_IN'
  | 'OTHER_HISTORY'
  | 'OTHER_VERSION'
  | 'PART_OF_ITSELF'
  | 'SECOND_STEP_NEEDED'
  | 'SIGN_IN_REFUSED'
  | 'STALE_CHANGE'
  | 'STORE_CORRUPT'
  | 'STORE_FULL'
  | 'STORE_LOCKED'
  | 'STORE_NOT_EMPTY'
  | 'STORE_UNREACHABLE'
  | 'TOGETHER_AND_SEPARATE'
  | 'TOO_LARGE'
  | 'TRY_LATER'
  | 'UNCITED_CLAIM'
  | 'UNKNOWN_CLAIM'
  | 'UNKNOWN_EXAMINATION'
  | 'UNKNOWN_PART'
  | 'UNKNOWN_PERSON'
  | 'UNKNOWN_PROPOSAL'
  | 'UNKNOWN_REPORT'
  | 'UNKNOWN_REVISION'
  | 'UNKNOWN_SESSION'
  | 'UNKNOWN_SOURCE'
  | 'UNKNOWN_TERM'
  | 'UNREADABLE_DATING'
  | 'UNREADABLE_FILE'
  | 'WEAK_PASSWORD'
  | 'WRONG_FORMAT'
  | 'WRONG_KIND_OF_TERM'
  | 'WRONG_STATE';

export type Proposal = {
  readonly __typename?: 'Proposal';
  /** Revision it was made on. */
  readonly base: Scalars['Int']['output'];
  readonly by: Person;
  readonly change: Scalars['Change']['output'];
  readonly changedAt: Scalars['String']['output'];
  /** Oldest first. */
  readonly comments: CommentConnection;
  readonly editCount: Scalars['Int']['output'];
  /** The first edits, as it is beside as it would be. */
  readonly edits: ReadonlyArray<ProposedEdit>;
  /** What stands in the form it is written in; for its maker alone. */
  readonly form?: Maybe<Scalars['FormFields']['output']>;
  readonly id: Scalars['ID']['output'];
  /** Null where the graph would refuse it (`unfit`), and where it is decided. */
  readonly impact?: Maybe<Impact>;
  /** How far the impact is that you asked for last, at whichever server; null where none is worked out for you, and in its first half second where another server does it. */
  readonly impactSoFar?: Maybe<ImpactSoFar>;
  readonly isMine: Scalars['Boolean']['output'];
  readonly kind: ProposalKind;
  readonly madeAt: Scalars['String']['output'];
  /** Every step, and why whoever asks may not take it. */
  readonly may: ReadonlyArray<ProposalStepAllowed>;
  /** House and proposal it came from. */
  readonly origin?: Maybe<Scalars['String']['output']>;
  /** The first regions that its claims are scoped to, or name as places. */
  readonly regions: ReadonlyArray<Term>;
  /** Oldest first. */
  readonly reviews: ReadonlyArray<Review>;
  /** Revision that accepting it made. */
  readonly revision?: Maybe<Scalars['Int']['output']>;
  readonly state: ProposalState;
  /** The proposal that took its place. */
  readonly supersededBy?: Maybe<Proposal>;
  readonly title: Scalars['String']['output'];
  /** Why the graph would refuse it now; null if it fits, or where it is decided. */
  readonly unfit?: Maybe<Problem>;
  /** Counts its changes; a change names the one it was made on. */
  readonly version: Scalars['Int']['output'];
  readonly why: Scalars['String']['output'];
};


export type ProposalCommentsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
};


export type ProposalImpactArgs = {
  after?: InputMaybe<Scalars['Int']['input']>;
  pieces?: Scalars['Int']['input'];
};

export type ProposalChanged = {
  readonly __typename?: 'ProposalChanged';
  readonly proposal: Proposal;
  /** Reviewers who still have to agree, as the change moves many conclusions. */
  readonly stillNeeded: Scalars['Int']['output'];
};

/** What is left out stays as it is. */
export type ProposalChanges = {
  readonly base?: InputMaybe<Scalars['Int']['input']>;
  readonly change?: InputMaybe<Scalars['Change']['input']>;
  readonly form?: InputMaybe<Scalars['FormFields']['input']>;
  readonly kind?: InputMaybe<ProposalKind>;
  readonly title?: InputMaybe<Scalars['String']['input']>;
  readonly why?: InputMaybe<Scalars['String']['input']>;
};

export type ProposalConnection = {
  readonly __typename?: 'ProposalConnection';
  readonly edges: ReadonlyArray<ProposalEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type ProposalEdge = {
  readonly __typename?: 'ProposalEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Proposal;
};

export type ProposalInput = {
  /** Revision it was made on; none is the newest. */
  readonly base?: InputMaybe<Scalars['Int']['input']>;
  readonly change: Scalars['Change']['input'];
  /** What stands in the form it is written in. */
  readonly form?: InputMaybe<Scalars['FormFields']['input']>;
  readonly kind: ProposalKind;
  /** In a few words what it is. */
  readonly title: Scalars['String']['input'];
  /** Why the graph should change. */
  readonly why: Scalars['String']['input'];
};

export type ProposalKind =
  | 'CLAIM'
  | 'CORRECTION'
  | 'EXCEPTION'
  | 'MERGE'
  | 'RETIREMENT'
  | 'SOURCE'
  | 'TERM';

/** A proposal or a dispute was changed, judged or talked about. */
export type ProposalNews = {
  readonly __typename?: 'ProposalNews';
  readonly id: Scalars['ID']['output'];
  /** Number of the write in the ledger. */
  readonly sequence: Scalars['Int']['output'];
};

export type ProposalResult = ProposalChanged | Refused;

export type ProposalState =
  | 'ACCEPTED'
  | 'CHANGES_ASKED_FOR'
  | 'DECLINED'
  | 'DRAFT'
  | 'OPEN'
  | 'SUPERSEDED'
  | 'WITHDRAWN';

export type ProposalStep =
  | 'ACCEPT'
  | 'ASK_FOR_CHANGES'
  | 'CHANGE'
  | 'DECLINE'
  | 'OPEN'
  | 'SUPERSEDE'
  | 'WITHDRAW';

export type ProposalStepAllowed = {
  readonly __typename?: 'ProposalStepAllowed';
  /** Why whoever asks may not do it now; null if they may. */
  readonly refused?: Maybe<Scalars['String']['output']>;
  readonly step: ProposalStep;
};

/** One edit of a proposal: the thing as it is beside the thing as it would be. */
export type ProposedEdit = {
  readonly __typename?: 'ProposedEdit';
  /** Null where it is withdrawn. */
  readonly after?: Maybe<Scalars['String']['output']>;
  /** As a line; null where it is new. */
  readonly before?: Maybe<Scalars['String']['output']>;
  readonly does: EditKind;
  /** term, claim or source. */
  readonly kind: Scalars['String']['output'];
  /** Id of the term, claim or source. */
  readonly of: Scalars['ID']['output'];
  readonly rows: ReadonlyArray<ComparedLine>;
};

export type Query = {
  readonly __typename?: 'Query';
  /** How a term, claim or source of the newest revision differs from the same on an earlier one, as one edit; null if it does not. */
  readonly changedSince?: Maybe<Edit>;
  /** Null if there is no such claim on that revision. */
  readonly claim?: Maybe<Claim>;
  readonly claims: ClaimConnection;
  /** What is said of a proposal or a dispute, oldest first; nothing of what is not shown to whoever asks. */
  readonly comments: CommentConnection;
  /** Every way from what was seen on a piece to what dates it. */
  readonly datings: DatingsResult;
  /** What is looked for in the newest revision, in the order it is read; null while it is being made (disagreementsMade). */
  readonly disagreementRules?: Maybe<ReadonlyArray<DisagreementRule>>;
  /** What one rule finds in the newest revision, or all of them; the farthest apart first; null while it is being made. */
  readonly disagreements?: Maybe<DisagreementConnection>;
  /** How far the making of what disagrees has come, in percent. It is made of the whole graph after the start, beside all else. */
  readonly disagreementsMade: Scalars['Int']['output'];
  readonly dispute?: Maybe<Dispute>;
  /** Newest first. */
  readonly disputes: DisputeConnection;
  /** A deleted one is found too, so that it can be brought back. */
  readonly examination?: Maybe<Examination>;
  /** Not the deleted ones; the one changed last first. */
  readonly examinations: ExaminationConnection;
  /** Examines a piece without keeping it. */
  readonly examine: ExamineResult;
  /** The field sheet of a form, for a region and a claimed date where they are known. */
  readonly fieldSheet: FieldSheetResult;
  /** Every edit of a term, claim or source, newest first; a withdrawn one has a history too. */
  readonly history: HistoryEntryConnection;
  /** What to look at, in order, on a piece of a form that is claimed to be of a place and date. */
  readonly inspectionPlan: InspectionPlanResult;
  /** Reads a form back on the newest revision: in words, with what it lacks and what stands already. Keeps nothing. */
  readonly lookOver: LookedOver;
  /** Comments that call whoever asks, newest first. */
  readonly mentions: ReadonlyArray<Comment>;
  readonly node?: Maybe<Node>;
  /** Persons who are let in and can be called by a comment; 200 at the most. */
  readonly people: ReadonlyArray<Person>;
  /** Null if there is none, or if it is somebody else's draft. */
  readonly proposal?: Maybe<Proposal>;
  /** Newest first; all that are named must hold. Drafts are seen by their makers alone. */
  readonly proposals: ProposalConnection;
  /** Those not decided yet that edit a term, claim or source; newest first. */
  readonly proposalsOn: ReadonlyArray<Proposal>;
  /** Open ones, oldest first; in a shared house not those of whoever asks. */
  readonly proposalsToReview: ProposalConnection;
  /** Reads a table of claims, comma-separated values as in docs/formats/claims-csv.md. Keeps nothing. */
  readonly readBatch: ReadBatch;
  /** What the graph says of a region; null if there is no such region on that revision, or while the claims on regions are being counted (regionsMade below 100). */
  readonly regionProfile?: Maybe<RegionProfile>;
  /** Two or three regions to lay side by side, read at once; one that there is not is left out. Null while the claims on regions are being counted (regionsMade). */
  readonly regionProfiles?: Maybe<ReadonlyArray<RegionProfile>>;
  /** Every region with how many accepted claims there are on it, by id; null while they are being counted (regionsMade). */
  readonly regions?: Maybe<ReadonlyArray<RegionCount>>;
  /** How far the counting of claims on regions has come, in percent. All claims are gone through after the start, beside all else. */
  readonly regionsMade: Scalars['Int']['output'];
  /** The newest revision, or the one of a number; null if there is none. */
  readonly revision?: Maybe<Revision>;
  /** Newest first. */
  readonly revisions: RevisionConnection;
  /** Terms that have the words, or their beginnings, in label, other labels or note; best first. Without words, all that part, region and years admit, by label. */
  readonly search: ReadonlyArray<SearchHit>;
  /** Null if there is no such source on that revision. */
  readonly source?: Maybe<Source>;
  readonly sources: SourceConnection;
  /** A term, claim or source as it stands, as the one edit that would take it out: put `after` beside its `before`. No edit where there is none. */
  readonly standing: Scalars['Change']['output'];
  /** Null if there is no such term on that revision. */
  readonly term?: Maybe<Term>;
  readonly terms: TermConnection;
  /** Weighs a piece: what would have to be true, probabilities, rivals, what to look at next. Ask for some stages at a time; what was not through when the request ended is named as missing. */
  readonly weigh: WeighResult;
};


export type QueryChangedSinceArgs = {
  id: Scalars['ID']['input'];
  revision: Scalars['Int']['input'];
};


export type QueryClaimArgs = {
  id: Scalars['ID']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryClaimsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
  relations?: InputMaybe<ReadonlyArray<Relation>>;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryCommentsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
  on: Scalars['ID']['input'];
};


export type QueryDatingsArgs = {
  piece: PieceInput;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryDisagreementsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
  rule?: InputMaybe<Scalars['ID']['input']>;
};


export type QueryDisputeArgs = {
  id: Scalars['ID']['input'];
};


export type QueryDisputesArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
  state?: DisputeState;
};


export type QueryExaminationArgs = {
  id: Scalars['ID']['input'];
};


export type QueryExaminationsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
};


export type QueryExamineArgs = {
  piece: PieceInput;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryFieldSheetArgs = {
  date?: InputMaybe<Scalars['String']['input']>;
  each?: Scalars['Int']['input'];
  form: Scalars['ID']['input'];
  region?: InputMaybe<Scalars['ID']['input']>;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryHistoryArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
  id: Scalars['ID']['input'];
};


export type QueryInspectionPlanArgs = {
  date: Scalars['String']['input'];
  examined: Scalars['Int']['input'];
  form: Scalars['ID']['input'];
  region?: InputMaybe<Scalars['ID']['input']>;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryLookOverArgs = {
  form: Scalars['FormFields']['input'];
  kind: ProposalKind;
};


export type QueryMentionsArgs = {
  first?: Scalars['Int']['input'];
};


export type QueryNodeArgs = {
  id: Scalars['ID']['input'];
};


export type QueryProposalArgs = {
  id: Scalars['ID']['input'];
};


export type QueryProposalsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  by?: InputMaybe<Scalars['ID']['input']>;
  first?: Scalars['Int']['input'];
  kind?: InputMaybe<ProposalKind>;
  mine?: InputMaybe<Scalars['Boolean']['input']>;
  region?: InputMaybe<Scalars['ID']['input']>;
  state?: InputMaybe<ProposalState>;
};


export type QueryProposalsOnArgs = {
  id: Scalars['ID']['input'];
};


export type QueryProposalsToReviewArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
  kind?: InputMaybe<ProposalKind>;
  region?: InputMaybe<Scalars['ID']['input']>;
};


export type QueryReadBatchArgs = {
  text: Scalars['String']['input'];
};


export type QueryRegionProfileArgs = {
  id: Scalars['ID']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryRegionProfilesArgs = {
  of: ReadonlyArray<Scalars['ID']['input']>;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryRegionsArgs = {
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryRegionsMadeArgs = {
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryRevisionArgs = {
  number?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryRevisionsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
};


export type QuerySearchArgs = {
  first?: Scalars['Int']['input'];
  from?: InputMaybe<Scalars['Int']['input']>;
  kinds?: InputMaybe<ReadonlyArray<TermKind>>;
  part?: InputMaybe<Scalars['ID']['input']>;
  region?: InputMaybe<Scalars['ID']['input']>;
  to?: InputMaybe<Scalars['Int']['input']>;
  words: Scalars['String']['input'];
};


export type QuerySourceArgs = {
  id: Scalars['ID']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QuerySourcesArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryStandingArgs = {
  id: Scalars['ID']['input'];
};


export type QueryTermArgs = {
  id: Scalars['ID']['input'];
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryTermsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  broader?: InputMaybe<Scalars['ID']['input']>;
  first?: Scalars['Int']['input'];
  kinds?: InputMaybe<ReadonlyArray<TermKind>>;
  revision?: InputMaybe<Scalars['Int']['input']>;
};


export type QueryWeighArgs = {
  piece: PieceInput;
  revision?: InputMaybe<Scalars['Int']['input']>;
  stages?: InputMaybe<ReadonlyArray<WeighingStage>>;
};

/** A table of claims as it would be proposed: all of it, or nothing. */
export type ReadBatch = {
  readonly __typename?: 'ReadBatch';
  /** Null while anything is wrong. */
  readonly change?: Maybe<Scalars['Change']['output']>;
  /** What is wrong with the table as a whole. */
  readonly problems: ReadonlyArray<Problem>;
  readonly rows: ReadonlyArray<BatchRow>;
};

/** A measured or counted value that bounds no date. It is a number, a range with both ends, or words where it cannot be put as either. */
export type ReferenceRow = {
  readonly __typename?: 'ReferenceRow';
  readonly citations: ReadonlyArray<Citation>;
  readonly form?: Maybe<Term>;
  readonly from?: Maybe<Scalars['Float']['output']>;
  readonly id: Scalars['ID']['output'];
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly number?: Maybe<Scalars['Float']['output']>;
  readonly part?: Maybe<Term>;
  /** What was measured, in words. */
  readonly quantity: Scalars['String']['output'];
  readonly region?: Maybe<Term>;
  readonly strength: Strength;
  readonly table: Scalars['String']['output'];
  readonly to?: Maybe<Scalars['Float']['output']>;
  readonly unit?: Maybe<Scalars['String']['output']>;
  /** A formula, a month, a letter. */
  readonly words?: Maybe<Scalars['String']['output']>;
};

/** Nothing was changed. */
export type Refused = {
  readonly __typename?: 'Refused';
  /** Where somebody else changed the examination meanwhile: how it stands now. */
  readonly current?: Maybe<Examination>;
  readonly problems: ReadonlyArray<Problem>;
};

export type RegionCount = {
  readonly __typename?: 'RegionCount';
  /** Claims that name it. */
  readonly own: Scalars['Int']['output'];
  readonly region?: Maybe<Term>;
  /** Claims that name it or a region within it, each once. */
  readonly within: Scalars['Int']['output'];
};

/** What accepted claims say of a region and the regions within it. */
export type RegionProfile = {
  readonly __typename?: 'RegionProfile';
  /** Its dates beside that town or the region around it. */
  readonly besideCentre: ReadonlyArray<DatesBeside>;
  /** Its dates beside the nearest wider region that has one for the same; longest lag first. */
  readonly besideWider: ReadonlyArray<DatesBeside>;
  /** The town whose fashion its shops followed, if one is set down. */
  readonly centre?: Maybe<Term>;
  readonly found: ReadonlyArray<FoundThere>;
  /** More than 10000 claims are within it, so that its lists are left empty; ask for regions within it. */
  readonly isOutline: Scalars['Boolean']['output'];
  /** Kinds of subject that the wider region has claims on, and this one none. */
  readonly missingKinds: ReadonlyArray<TermKind>;
  readonly narrower: ReadonlyArray<RegionCount>;
  /** Claims that keep something out of it, or confine it to other regions. */
  readonly notFound: ReadonlyArray<Claim>;
  readonly own: Scalars['Int']['output'];
  readonly region?: Maybe<Term>;
  readonly sources: ReadonlyArray<SourceCount>;
  /** Claims that cite no published source. */
  readonly unsourced: Scalars['Int']['output'];
  /** The nearest wider region that has claims beyond its own. */
  readonly wider?: Maybe<Term>;
  readonly within: Scalars['Int']['output'];
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
  /** At most three. */
  readonly reasons: ReadonlyArray<Scalars['String']['output']>;
  readonly ruleOuts: ReadonlyArray<RuleOutInWords>;
  readonly signs: ReadonlyArray<SignInWords>;
};

/** What a reviewer said of one version. */
export type Review = {
  readonly __typename?: 'Review';
  readonly at: Scalars['String']['output'];
  readonly by: Person;
  readonly isMine: Scalars['Boolean']['output'];
  readonly reason: Scalars['String']['output'];
  readonly verdict: Verdict;
  readonly version: Scalars['Int']['output'];
};

/** One accepted change of the graph, chained to the one before by its hash. */
export type Revision = {
  readonly __typename?: 'Revision';
  readonly at: Scalars['String']['output'];
  readonly by: Scalars['String']['output'];
  /** How many terms, claims and sources it touched. */
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

/** A feature to look for. */
export type SheetEntry = {
  readonly __typename?: 'SheetEntry';
  readonly bases: ReadonlyArray<Basis>;
  readonly claims: ReadonlyArray<Claim>;
  readonly feature?: Maybe<Term>;
  /** What it would mean to see it. */
  readonly means: Scalars['String']['output'];
  readonly tells: Tells;
};

/** What to look for on one part from one position. */
export type SheetSection = {
  readonly __typename?: 'SheetSection';
  /** Told in full on a part before, and looked for here too. */
  readonly again: ReadonlyArray<Term>;
  /** The most telling first. */
  readonly entries: ReadonlyArray<SheetEntry>;
  /** What else would tell something on this part; counted at its last section. */
  readonly more: Scalars['Int']['output'];
  readonly part?: Maybe<Term>;
  readonly position: Position;
};

export type ShiftKind =
  | 'FINDING'
  | 'PART'
  | 'RECORD'
  | 'RULE_OUT'
  | 'STATE';

/** One thing that is said otherwise than before. */
export type ShiftLine = {
  readonly __typename?: 'ShiftLine';
  readonly before: Scalars['String']['output'];
  readonly kind: ShiftKind;
  readonly now: Scalars['String']['output'];
  /** Of what a part most probably is: the probabilities that the words are of. */
  readonly odds?: Maybe<ShiftedOdds>;
  /** What it is about; of a rule-out, its sentence without the full stop. */
  readonly says: Scalars['String']['output'];
  /** The strip to look at, where there is one: a finding. */
  readonly strip?: Maybe<Scalars['ID']['output']>;
};

export type ShiftedOdds = {
  readonly __typename?: 'ShiftedOdds';
  readonly before: StateOdds;
  readonly now: StateOdds;
};

export type SignInWords = {
  readonly __typename?: 'SignInWords';
  /** Why it is set aside, or what would set it aside. */
  readonly because: ReadonlyArray<Scalars['String']['output']>;
  readonly claim: Scalars['ID']['output'];
  readonly look: ReadonlyArray<Scalars['String']['output']>;
  readonly observation: Scalars['ID']['output'];
  readonly says: Scalars['String']['output'];
};

export type Source = Node & {
  readonly __typename?: 'Source';
  readonly author?: Maybe<Scalars['String']['output']>;
  /** Claims that cite this source. */
  readonly claims: ClaimConnection;
  /** The item as CSL-JSON text. */
  readonly csl: Scalars['String']['output'];
  readonly id: Scalars['ID']['output'];
  readonly kind: Scalars['String']['output'];
  readonly note?: Maybe<Scalars['String']['output']>;
  /** How far the source itself was read: read, opening, secondary, known. */
  readonly reading: Scalars['String']['output'];
  /** Citation as a line of text: author, title, place, year. */
  readonly text: Scalars['String']['output'];
  readonly title?: Maybe<Scalars['String']['output']>;
  readonly url?: Maybe<Scalars['String']['output']>;
  readonly year?: Maybe<Scalars['String']['output']>;
};


export type SourceClaimsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
};

export type SourceConnection = {
  readonly __typename?: 'SourceConnection';
  readonly edges: ReadonlyArray<SourceEdge>;
  readonly pageInfo: PageInfo;
  readonly totalCount: Scalars['Int']['output'];
};

export type SourceCount = {
  readonly __typename?: 'SourceCount';
  readonly claims: Scalars['Int']['output'];
  readonly source?: Maybe<Source>;
};

export type SourceEdge = {
  readonly __typename?: 'SourceEdge';
  readonly cursor: Scalars['String']['output'];
  readonly node: Source;
};

/** How a stored examination stands: each is examined again in the background when the graph changes. */
export type Standing = {
  readonly __typename?: 'Standing';
  /** What changed since; null if nothing did. */
  readonly changedSince?: Maybe<ChangedSince>;
  /** The revision on which it was examined again last; null before the first time. */
  readonly revision?: Maybe<Scalars['Int']['output']>;
  /** No later change that this process knows of can have touched it. */
  readonly upToDate: Scalars['Boolean']['output'];
};

/** How probable each state of a part is; the four add up to 1. */
export type StateOdds = {
  readonly __typename?: 'StateOdds';
  readonly later: Scalars['Float']['output'];
  readonly original: Scalars['Float']['output'];
  readonly reused: Scalars['Float']['output'];
  readonly reworked: Scalars['Float']['output'];
};

/** One step of a chain; `depth` indents it below what it supports. */
export type StepInWords = {
  readonly __typename?: 'StepInWords';
  /** An assumption of the engine rather than a claim. */
  readonly assumed: Scalars['Boolean']['output'];
  /** What to cite beside it. */
  readonly claim?: Maybe<Scalars['ID']['output']>;
  readonly depth: Scalars['Int']['output'];
  readonly says: Scalars['String']['output'];
};

export type Strength =
  | 'CERTAIN'
  | 'FIRM'
  | 'TENTATIVE'
  | 'USUAL';

export type Subscription = {
  readonly __typename?: 'Subscription';
  /** What is changed: what was missed since a write first, then each as it happens. */
  readonly news: News;
  /** Who else has a piece open. As long as one follows it, one is told to the others. */
  readonly presence: Others;
};


export type SubscriptionNewsArgs = {
  about?: InputMaybe<Scalars['ID']['input']>;
  kinds?: InputMaybe<ReadonlyArray<NewsKind>>;
  since?: InputMaybe<Scalars['Int']['input']>;
};


export type SubscriptionPresenceArgs = {
  examination: Scalars['ID']['input'];
  isEditing?: Scalars['Boolean']['input'];
  part?: InputMaybe<Scalars['ID']['input']>;
};

export type Sureness =
  | 'POSSIBLE'
  | 'PROBABLE'
  | 'SURE';

/** What seeing a feature comes to: years it cannot be outside of, a state of the part, usual years, what it is typical of, a record. */
export type Tells =
  | 'BOUND'
  | 'HABIT'
  | 'RECORD'
  | 'SIGN'
  | 'TYPICAL';

/** Something that can be seen on a part, done in a shop, bought, or named. */
export type Term = Node & {
  readonly __typename?: 'Term';
  readonly aat?: Maybe<AatMatch>;
  /** What claims and the tree of terms join it to, one step away or two. */
  readonly around: Around;
  readonly broader?: Maybe<Term>;
  /** From the nearest broader term to the top. */
  readonly broaderTerms: ReadonlyArray<Term>;
  /** Claims about this term. */
  readonly claims: ClaimConnection;
  /** Of a kind of part: what is looked for on it, on kinds within it and on those around it; else none. */
  readonly featuresOnPart: ReadonlyArray<FeaturesOnPart>;
  readonly id: Scalars['ID']['output'];
  readonly kind: TermKind;
  readonly label: Scalars['String']['output'];
  readonly looking?: Maybe<Looking>;
  /** The term that it is one with, and that stands for both; null for all others. */
  readonly mergedInto?: Maybe<Term>;
  /** Claims about other terms that name this one. */
  readonly namedIn: ClaimConnection;
  readonly narrower: TermConnection;
  readonly note?: Maybe<Scalars['String']['output']>;
  readonly otherLabels: ReadonlyArray<Scalars['String']['output']>;
  /** Of a feature: the kinds of part it is looked for on. Of a form: the parts it is expected to have. */
  readonly parts: ReadonlyArray<Term>;
  /** What is measured or counted of this term; rows that disagree stand side by side. */
  readonly referenceRows: ReadonlyArray<ReferenceRow>;
};


/** Something that can be seen on a part, done in a shop, bought, or named. */
export type TermAroundArgs = {
  each?: Scalars['Int']['input'];
  steps?: Scalars['Int']['input'];
};


/** Something that can be seen on a part, done in a shop, bought, or named. */
export type TermClaimsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
};


/** Something that can be seen on a part, done in a shop, bought, or named. */
export type TermNamedInArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
};


/** Something that can be seen on a part, done in a shop, bought, or named. */
export type TermNarrowerArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
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

export type Verdict =
  | 'ACCEPT'
  | 'ASK_FOR_CHANGES'
  | 'DECLINE'
  | 'SUPERSEDE';

/** One way of a `requires`: all its terms are needed. */
export type Way = {
  readonly __typename?: 'Way';
  readonly terms: ReadonlyArray<Term>;
};

export type WeighResult = Refused | Weighed;

export type Weighed = {
  readonly __typename?: 'Weighed';
  /** Every claim the weighing names. */
  readonly claims: ReadonlyArray<Claim>;
  readonly revision: Scalars['Int']['output'];
  /** Every term the weighing names. */
  readonly terms: ReadonlyArray<Term>;
  readonly weighing: Scalars['Weighing']['output'];
  readonly words: Scalars['WeighingWords']['output'];
};

export type WeighingStage =
  | 'DATES'
  | 'LOOKS'
  | 'MENDS'
  | 'ORIGINS'
  | 'RIVALS'
  | 'SENSITIVITY'
  | 'WEIGHTS';
