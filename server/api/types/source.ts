import { canonicalJson } from "../../domain/canonical-json.ts";
import { citeSource } from "../../domain/cite-source.ts";
import type { CslItem, CslName } from "../../domain/source.ts";
import { listClaims } from "../../use-cases/ask/list-claims.ts";
import type { Builder } from "../builder.ts";
import { readPageOn } from "../read-page.ts";

const nameOf = ({ family, given, literal, suffix, ...particles }: CslName) => {
  const last = [particles["dropping-particle"], particles["non-dropping-particle"], family].filter(Boolean);
  return literal ?? [last.join(" "), suffix, given].filter(Boolean).join(", ");
};
const namesOf = ({ author }: CslItem) => (author?.length ? author.map(nameOf).join("; ") : undefined);
const yearOf = ({ issued }: CslItem) => issued?.["date-parts"]?.[0]?.[0]?.toString() ?? issued?.raw;

/** What a citation points to. */
export const addSource = (b: Builder) =>
  b.objectType("Source", {
    interfaces: ["Node"],
    fields: (t) => ({
      id: t.exposeID("id"),
      kind: t.exposeString("kind"),
      text: t.string({
        description: "Citation as a line of text: author, title, place, year.",
        resolve: (source) => citeSource(source),
      }),
      title: t.string({ nullable: true, resolve: (source) => source.csl.title }),
      author: t.string({ nullable: true, resolve: (source) => namesOf(source.csl) }),
      year: t.string({ nullable: true, resolve: (source) => yearOf(source.csl) }),
      url: t.string({ nullable: true, resolve: (source) => source.csl.URL }),
      reading: t.exposeString("reading", {
        description: "How far the source itself was read: read, opening, secondary, known.",
      }),
      note: t.exposeString("note", { nullable: true }),
      csl: t.string({
        description: "The item as CSL-JSON text.",
        resolve: (source) => canonicalJson(source.csl),
      }),
      claims: t.field({
        description: "Claims that cite this source.",
        type: b.connections.claims,
        args: b.pageOf(50),
        resolve: (source, args, context) =>
          readPageOn(source.at, args, (page, at) => listClaims(context, { source: source.id }, page, at)),
      }),
    }),
  });
