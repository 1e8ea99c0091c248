/** A contradiction and a rule-out cannot be; what is only out of its time is unusual. */
export type LeaningRole = "contradiction" | "unusual" | "agreement" | "silence" | "rule-out" | "sign";

/** One thing that an examination says and that leans on a claim. */
export interface LeaningLine {
  /** The strip to look at: a finding. */
  readonly strip: string;
  readonly role: LeaningRole;
  /** What it is: what was seen and where; of a rule-out or a sign, its sentence. */
  readonly says: string;
  /** How it stands, in a few words. */
  readonly now: string;
  /** How it would stand without the claim; left out where it would stand the same. */
  readonly without?: string;
}

/** What of one examination leans on a claim, in words. */
export interface LeaningInWords {
  readonly headline: string;
  /** Left out where the conclusion would read the same. */
  readonly headlineWithout?: string;
  readonly lines: readonly LeaningLine[];
}
