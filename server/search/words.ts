/** Lower case without accents, so that "Écritoire" is found by "ecritoire". */
export const fold = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

/** The words of a text, folded: runs of letters and digits. */
export const wordsOf = (text: string): readonly string[] => fold(text).match(/[\p{L}\p{N}]+/gu) ?? [];
