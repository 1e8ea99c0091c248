/** Told often while much is done. The words are made only where they are shown. */
export type Progress = (words: () => string) => void;
