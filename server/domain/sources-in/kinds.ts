import type { SourceKind } from "../source.ts";

/** Kinds of source by type of CSL-JSON, which is also the list of types that are read; null where a person chooses. */
export const KINDS: Readonly<Record<string, SourceKind | null>> = {
  ...{
    book: "book",
    chapter: "book",
    entry: "book",
    "entry-dictionary": "book",
    "entry-encyclopedia": "book",
  },
  ...{ article: "article", "article-journal": "article", "article-magazine": "article" },
  ...{
    "article-newspaper": "article",
    review: "article",
    "review-book": "article",
    "paper-conference": "article",
  },
  ...{ thesis: "thesis", patent: "patent", standard: "standard" },
  ...{ legislation: "statute", bill: "statute", regulation: "statute" },
  ...{ webpage: "web page", post: "web page", "post-weblog": "web page" },
  ...{ collection: null, document: null, pamphlet: null, report: null, manuscript: null, speech: null },
  ...{
    personal_communication: null,
    periodical: null,
    dataset: null,
    figure: null,
    graphic: null,
    map: null,
  },
};
