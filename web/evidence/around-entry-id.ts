/** The id of an entry's element in the list of neighbours. */
export const aroundEntryId = (id: string): string => `around-${id.replaceAll(/[^\w.-]/g, "_")}`;
