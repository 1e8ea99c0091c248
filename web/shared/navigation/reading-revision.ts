import { createContext, useContext } from "react";

const ReadingRevision = createContext<number | undefined>(undefined);

/** Around a page that is read as of a revision. */
export const ReadingProvider = ReadingRevision.Provider;

/** The revision as of which the page is read; undefined is the newest. */
export const useReadingRevision = (): number | undefined => useContext(ReadingRevision);

/** The same as variables of an operation. */
export function useReadOn(): { readonly revision?: number } {
  const revision = useReadingRevision();
  return revision === undefined ? {} : { revision };
}
