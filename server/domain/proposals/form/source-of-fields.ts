import { checkSource } from "../../check-source.ts";
import { id } from "../../ids.ts";
import { isSame } from "../../is-same.ts";
import { type Problem, problem } from "../../problem.ts";
import { type CslItem, type CslName, SOURCE_KINDS, type Source, type SourceKind } from "../../source.ts";
import { type FormFields, saidIn, stated } from "./form-fields.ts";

/** What CSL calls a source of each kind, where nothing nearer is known. */
const TYPE_OF_KIND: Readonly<Record<SourceKind, string>> = {
  book: "book",
  article: "article-journal",
  thesis: "thesis",
  patent: "patent",
  statute: "legislation",
  standard: "standard",
  "museum text": "document",
  "trade text": "document",
  "web page": "webpage",
  "documented piece": "document",
};

/** Fields of a form that are texts in CSL, by their names there. */
const TEXTS = {
  title: "title",
  container: "container-title",
  publisher: "publisher",
  place: "publisher-place",
  volume: "volume",
  issue: "issue",
  pages: "page",
  number: "number",
  isbn: "ISBN",
  doi: "DOI",
  url: "URL",
} as const;

/** Fields by which a source is described. */
export const FIELDS_OF_SOURCE = [
  ...["source-kind", "author", "editor", "year", "reading", "source-note"],
  ...Object.keys(TEXTS),
] as const;

/** What a source that people can find again has to say. */
const NEEDED = [
  ["title", "Say what it is called."],
  ["author", "Say who wrote it; “anonymous”, or the body that published it, where nobody is named."],
  ["year", "Say when it came out, in four figures."],
] as const;

/** The source that a form says, or everything that is wrong with it, each at its field. What the form does not ask for stays. */
export function sourceOfFields(
  fields: FormFields,
  sourceId: string,
  before?: Source,
): Source | readonly Problem[] {
  const kind = saidIn(fields, "source-kind") ?? before?.kind ?? "book";
  const year = saidIn(fields, "year");
  const told = [
    ...NEEDED.filter(
      ([name]) => saidIn(fields, name) === undefined && (before === undefined || name === "title"),
    ).map(([name, message]) => problem("WRONG_FORMAT", message, [name])),
    ...(SOURCE_KINDS.some((one) => one === kind)
      ? []
      : [problem("WRONG_FORMAT", `Say what it is: one of ${SOURCE_KINDS.join(", ")}.`, ["source-kind"])]),
    ...(year === undefined || isYear(year) || year === (before && yearOf(before.csl))
      ? []
      : [
          problem("WRONG_FORMAT", "The year of a source has four figures, such as 1923; correct it.", [
            "year",
          ]),
        ]),
  ];
  if (told.length > 0) return told;
  const note = saidIn(fields, "source-note");
  const { note: _, ...kept } = before ?? {};
  const source: Source = {
    ...kept,
    ...{ id: id<"source">(sourceId), kind: kind as SourceKind },
    csl: cslOf(fields, sourceId, kind as SourceKind, before),
    reading: (saidIn(fields, "reading") ?? before?.reading ?? "known") as Source["reading"],
    ...(note === undefined ? {} : { note }),
  };
  const wrong = checkSource(source);
  return wrong.length > 0 ? wrong : source;
}

function cslOf(fields: FormFields, sourceId: string, kind: SourceKind, before?: Source): CslItem {
  const was = before === undefined ? {} : fieldsOfSource(before);
  const csl: Record<string, unknown> = {
    ...before?.csl,
    id: sourceId,
    type: before && before.kind === kind ? before.csl.type : TYPE_OF_KIND[kind],
  };
  const put = (field: string, member: string, value: (text: string) => unknown): void => {
    const text = saidIn(fields, field);
    if (text === saidIn(was, field)) return;
    if (text === undefined) delete csl[member];
    else csl[member] = value(text);
  };
  for (const [field, member] of Object.entries(TEXTS)) put(field, member, (text) => text);
  put("author", "author", namesOf);
  put("editor", "editor", namesOf);
  put("year", "issued", (text) => ({ "date-parts": [[Number(text)]] }));
  return before && isSame(csl, before.csl) ? before.csl : (csl as CslItem);
}

const isYear = (text: string): boolean => /^\d{4}$/.test(text);

/** "Alder, Ann; van der Berg, Jan; The Bench Society": family and given name with a comma between them, or a body. */
const namesOf = (text: string): readonly CslName[] =>
  text
    .split(";")
    .map((name) => name.trim())
    .filter((name) => name !== "")
    .map((name) => {
      const [, family, given] = /^([^,]+),\s*(.+)$/.exec(name) ?? [];
      return family === undefined || given === undefined
        ? { literal: name }
        : { family: family.trim(), given: given.trim() };
    });

const sayNames = (names: readonly CslName[] | undefined): string | undefined =>
  names
    ?.map((name) =>
      name.literal !== undefined
        ? name.literal
        : [
            [name["non-dropping-particle"], name.family].filter(Boolean).join(" "),
            [name.given, name["dropping-particle"], name.suffix].filter(Boolean).join(" "),
          ]
            .filter((part) => part !== "")
            .join(", "),
    )
    .join("; ");

const yearOf = ({ issued }: CslItem): string | undefined => {
  const year = issued?.["date-parts"]?.[0]?.[0];
  return year === undefined ? issued?.raw : String(year);
};

/** An item of a list as it stands in a form, to be looked over. */
export function fieldsOfItem(csl: CslItem): FormFields {
  const text = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);
  return {
    ...stated("author", sayNames(csl.author)),
    ...stated("editor", sayNames(csl.editor)),
    ...stated("year", yearOf(csl)),
    ...Object.assign({}, ...Object.entries(TEXTS).map(([field, member]) => stated(field, text(csl[member])))),
  };
}

/** A source as it stands in a form. */
export const fieldsOfSource = ({ kind, csl, reading, note }: Source): FormFields => ({
  ...{ "source-kind": kind, reading },
  ...fieldsOfItem(csl),
  ...stated("source-note", note),
});
