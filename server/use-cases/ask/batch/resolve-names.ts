import { isId } from "../../../domain/draft.ts";
import { foldName } from "../../../domain/fold-name.ts";
import { id } from "../../../domain/ids.ts";
import { type Problem, problem } from "../../../domain/problem.ts";
import { FIELDS_OF_TERMS } from "../../../domain/proposals/form/claim-fields.ts";
import { termsOfWay } from "../../../domain/proposals/form/claim-of-fields.ts";
import { asList, type FormFields, listIn, saidIn } from "../../../domain/proposals/form/form-fields.ts";
import type { TermKind } from "../../../domain/term.ts";
import type { Store } from "../../../ports/store.ts";
import { everySource } from "../look-over/every-source.ts";

const TERMS_LOOKED_AT = 20;
const KIND_OF_FIELD: Readonly<Record<string, readonly TermKind[]>> = {
  ...{ region: ["region"], regions: ["region"], from: ["region"], to: ["region"] },
  ...{ form: ["form"], part: ["part"] },
};
type Resolve = (field: string, name: string) => Promise<string | Problem>;

/** Puts ids in the place of labels and titles. What was found is kept for the next row. */
export function openNames(store: Store): (fields: FormFields) => Promise<FormFields | readonly Problem[]> {
  const known = new Map<string, Promise<string | Problem>>();
  const remembered =
    (resolve: Resolve): Resolve =>
    (field, name) => {
      const key = `${KIND_OF_FIELD[field]?.[0] ?? (field === "source" ? "source" : "")} ${name}`;
      const found = known.get(key) ?? resolve(field, name);
      known.set(key, found);
      return found;
    };
  const term = remembered((field, name) => findTerm(store, field, name));
  const titles = openTitles(store);
  const source = remembered((_, name) => titles(name));

  return async (fields) => {
    const told: Problem[] = [];
    const read: Record<string, string> = { ...fields };
    const take = async (resolve: Resolve, field: string, name: string): Promise<string> => {
      const found = await resolve(field, name);
      if (typeof found === "string") return found;
      told.push({ ...found, path: [field] });
      return name;
    };
    for (const field of FIELDS_OF_TERMS) {
      if (saidIn(fields, field) === undefined) continue;
      const named = await Promise.all(
        listIn(fields, field).map(async (one) => {
          const way = field === "ways" ? termsOfWay(one) : [one];
          return (await Promise.all(way.map((name) => take(term, field, name)))).join(" + ");
        }),
      );
      read[field] = asList(named);
    }
    const cited = saidIn(fields, "source");
    if (cited !== undefined) read["source"] = await take(source, "source", cited);
    return told.length > 0 ? told : read;
  };
}

async function findTerm(store: Store, field: string, name: string): Promise<string | Problem> {
  if (isId(name) && (await store.terms([id(name)])).size > 0) return name;
  const kinds = KIND_OF_FIELD[field];
  const hits = await store.search(name, kinds ? { kinds } : {}, TERMS_LOOKED_AT);
  const terms = [...(await store.terms(hits.map((hit) => hit.term))).values()];
  const own = terms.filter(({ label }) => foldName(label) === foldName(name));
  const same =
    own.length > 0
      ? own
      : terms.filter((one) => one.otherLabels?.some((label) => foldName(label) === foldName(name)));
  const [found] = same;
  if (found && same.length === 1) return found.id;
  const shown = name.slice(0, 60);
  if (same.length > 1)
    return problem(
      "UNKNOWN_TERM",
      `“${shown}” is the name of several terms; write the id of one: ${same.map((one) => one.id).join(", ")}.`,
    );
  const near = hits[0]?.term;
  return problem(
    "UNKNOWN_TERM",
    `There is no ${kinds?.[0] ?? "term"} “${shown}”; ${near ? `write ${near} if that is meant, or propose the term first` : "correct it, or propose the term first"}.`,
    [],
    near,
  );
}

/** Sources by id or by title; read once, when the first title is asked for. */
function openTitles(store: Store): (name: string) => Promise<string | Problem> {
  let all: ReturnType<typeof everySource> | undefined;
  return async (name) => {
    if (isId(name) && (await store.sources([id(name)])).size > 0) return name;
    all ??= everySource(store);
    const same = (await all).filter(({ csl }) => foldName(csl.title) === foldName(name));
    const [found] = same;
    if (found && same.length === 1) return found.id;
    return problem(
      "UNKNOWN_SOURCE",
      `There is no one source “${name.slice(0, 60)}”; write its id, or describe it in the columns title, author and year.`,
    );
  };
}
