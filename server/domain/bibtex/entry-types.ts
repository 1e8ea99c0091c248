/**
 * Types of CSL-JSON by entry type, of BibTeX and of BibLaTeX. Types after O. Patashnik, BibTeXing (1988), 3.1 and P.
 * Lehman et al., The biblatex Package (manual of 3.20), 2.1; what they are in CSL as other readers have it (the
 * handbook tests compare).
 */
export const CSL_TYPES: Readonly<Record<string, string>> = {
  ...{
    article: "article-journal",
    book: "book",
    booklet: "pamphlet",
    manual: "book",
    unpublished: "manuscript",
  },
  ...{ inbook: "chapter", incollection: "chapter", inproceedings: "paper-conference", proceedings: "book" },
  ...{ conference: "paper-conference", phdthesis: "thesis", mastersthesis: "thesis", techreport: "report" },
  ...{ mvbook: "book", bookinbook: "chapter", suppbook: "chapter", collection: "book", mvcollection: "book" },
  ...{ suppcollection: "chapter", mvproceedings: "book", reference: "book", mvreference: "book" },
  ...{ inreference: "entry", thesis: "thesis", report: "report", patent: "patent", periodical: "periodical" },
  ...{ online: "webpage", electronic: "webpage", www: "webpage", dataset: "dataset", review: "review" },
  ...{ letter: "personal_communication", legislation: "legislation", standard: "standard", image: "graphic" },
  ...{ artwork: "graphic", suppperiodical: "article-journal" },
};

/** What BibLaTeX says of an article beside its type. */
export const SUBTYPES: Readonly<Record<string, string>> = {
  magazine: "article-magazine",
  newspaper: "article-newspaper",
};

/** Words for the kind of a thesis where the entry has none of its own. */
export const THESES: Readonly<Record<string, string>> = {
  phdthesis: "PhD thesis",
  mastersthesis: "Master’s thesis",
};
