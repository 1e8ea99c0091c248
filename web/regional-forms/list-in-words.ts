const list = new Intl.ListFormat("en-GB", { type: "disjunction" });

/** Names as a list in a sentence: "tools, forms or finishes". */
export const listInWords = (names: readonly string[]): string => list.format(names);
