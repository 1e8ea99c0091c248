/** What a card can hold: a plain JSON value. */
export type CardBody = unknown;

/**
 * What a house keeps beside the graph and the examinations (persons, proposals, talk about them, and the like): one card a
 * thing, found by its kind and id, or by its keys.
 */
export interface Card<Body = CardBody> {
  /** Lower-case words with hyphens between them. */
  readonly kind: string;
  /** Unlike any other of its kind; a list of cards is in the order of ids. */
  readonly id: string;
  /** Counts its changes, from 1. */
  readonly version: number;
  /** What it is found by, each name with its values. */
  readonly keys: CardKeys;
  readonly body: Body;
}
export type CardKeys = Readonly<Record<string, readonly string[]>>;

/** A card that is added, changed or taken away. */
export interface CardWrite {
  readonly kind: string;
  readonly id: string;
  /** The version it was made on; 0 where there is no such card yet. */
  readonly expectedVersion: number;
  /** What it is to hold; left out, the card is taken away with its content. */
  readonly next?: { readonly keys: CardKeys; readonly body: CardBody };
}
