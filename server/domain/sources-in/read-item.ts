import type { CslItem, SourceKind } from "../source.ts";

/** Why something is refused and what to do, one sentence each. */
export interface Refusal {
  /** Line of the text, from 1. */
  readonly line?: number;
  /** The field as it is called in the text. */
  readonly field?: string;
  readonly why: string;
  readonly remedy: string;
}

/** A source that an item seems to be: of the graph, or another item of the list. */
export interface Standing {
  /** What it is cited by. */
  readonly id: string;
  /** Place in the list, from 1, of the item that is the same; left out where it is a source of the graph. */
  readonly at?: number;
  /** What the two have in common. */
  readonly same: "id and title" | "DOI" | "ISBN" | "address" | "title and year";
}

/** One item of a list, as it would become a source. */
export interface ReadItem {
  /** Place in the list, from 1. */
  readonly at: number;
  /** Line where it begins, from 1. */
  readonly line: number;
  /** The citation as we would print it; what it can be called by if it is refused. */
  readonly text: string;
  /** As it would be stored, by the id it would have; none if it is refused. */
  readonly csl?: CslItem;
  /** None where a person has to choose. */
  readonly kind?: SourceKind;
  /** What a good citation of its kind would also say. */
  readonly missing: readonly string[];
  /** Fields of the text that would not be kept. */
  readonly leftOut: readonly string[];
  /** What it seems to be already. */
  readonly standing?: Standing;
  /** Empty if it would be taken. */
  readonly refusals: readonly Refusal[];
}

/** What items are compared with, by its id as a source. */
export type KnownItem = Pick<CslItem, "id"> & Readonly<Record<string, unknown>>;

/** An item as it stands in the text, before it is judged. */
export interface DraftItem {
  readonly line: number;
  /** What it is called in the text; empty if it has no name. */
  readonly key: string;
  /** CSL-JSON, of which nothing is certain. */
  readonly draft: unknown;
  readonly leftOut?: readonly string[];
  /** Line of a field of CSL-JSON, and what the text calls it, where that is known. */
  readonly placeOf?: (field: string) => { readonly line: number; readonly field: string } | undefined;
  /** What was wrong with it before it could be judged. */
  readonly refusals?: readonly Refusal[];
}
