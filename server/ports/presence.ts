/** What somebody does at a piece. */
export interface Doing {
  /** Id of the part that is open there. */
  readonly part?: string;
  /** Its fields are open, or something is being typed. */
  readonly isEditing: boolean;
}
/** Somebody who has a piece open. */
export interface Present extends Doing {
  /** Id of a person, or `local`. */
  readonly person: string;
}

/** Who has which piece open, at this process at once, at others over the same store within some seconds. */
export interface Presence {
  /** Somebody is there, until `leave`; once a connection, as it said last. */
  readonly enter: (examination: string, present: Present, connection?: object) => Place;
  /** Who may see it has changed: all who are there look anew who is. */
  readonly stir: (examination: string) => void;
}
export interface Place {
  /** All who are there but this one. */
  readonly others: () => readonly Present[];
  /** Resolves when somebody came, went, does something else or may see it no more since `others` was asked last, or when `stop` fires. */
  readonly changed: (stop: AbortSignal) => Promise<void>;
  readonly leave: () => void;
}
