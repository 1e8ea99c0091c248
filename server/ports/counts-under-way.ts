/** How much of something is done. */
export interface Count {
  readonly done: number;
  readonly of: number;
}
/** Something that is being done, to tell of. */
export interface Counting {
  readonly tell: (count: Count) => void;
  /** It is through, or given up. */
  readonly end: () => void;
}

/** How far long work is that is under way in this process, for whoever asks meanwhile. Kept nowhere else. */
export interface CountsUnderWay {
  /** Begins to count. Of several of one name the one begun last is told. */
  readonly begin: (name: string) => Counting;
  /** Nothing where nothing of the name is under way, or nothing is counted yet. */
  readonly find: (name: string) => Count | undefined;
}

export function openCountsUnderWay(): CountsUnderWay {
  const underWay = new Map<string, { count: Count | undefined }>();
  return {
    begin: (name) => {
      const own: { count: Count | undefined } = { count: undefined };
      underWay.set(name, own);
      return {
        tell: (count) => {
          own.count = count;
        },
        end: () => {
          if (underWay.get(name) === own) underWay.delete(name);
        },
      };
    },
    find: (name) => underWay.get(name)?.count,
  };
}
