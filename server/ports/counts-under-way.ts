/** How much of something is done. */
export interface Count {
  readonly done: number;
  readonly of: number;
  /** Of what is done, how many are such as are looked for. */
  readonly found: number;
}
/** Something that is being done, to tell of. */
export interface Counting {
  readonly tell: (count: Count) => void;
  /** It is through, or given up. */
  readonly end: () => void;
}

/** How far long work is that is under way at any process over the store, for whoever asks meanwhile. */
export interface CountsUnderWay {
  /** Begins to count. Of several of one name the one begun last in this process is told. */
  readonly begin: (name: string) => Counting;
  /** Nothing where nothing of the name is under way, or nothing is counted yet. */
  readonly find: (name: string) => Promise<Count | undefined>;
}
