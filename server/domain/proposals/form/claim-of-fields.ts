import type { Claim, Hardness, Relation, Strength } from "../../claim.ts";
import type { Draft } from "../../draft.ts";
import { makeClaim } from "../../make-claim.ts";
import { type Problem, problem } from "../../problem.ts";
import {
  CITATION_FIELDS,
  COMMON_FIELDS,
  citationField,
  FIELDS_OF_RELATION,
  isRelation,
  MOST_CITATIONS,
} from "./claim-fields.ts";
import { type FormFields, listIn, saidIn } from "./form-fields.ts";

/** How far a claim can be leaned on where nobody says otherwise. */
const STRENGTH_OF_BASIS: Readonly<Record<string, Strength>> = {
  published: "firm",
  "common practice": "usual",
  "from memory": "tentative",
};
const PHYSICAL: readonly Relation[] = ["introduced", "attested", "active", "requires"];

/** Physical where a thing cannot be older than what it is made with, practice where it is habit. */
export const usualHardness = (relation: Relation): Hardness =>
  PHYSICAL.includes(relation) ? "physical" : "practice";

/** The claim that a form says, or everything that is wrong with it, each at its field. */
export function claimOfFields(fields: FormFields, id: string): Claim | readonly Problem[] {
  const relation = saidIn(fields, "relation");
  if (!isRelation(relation))
    return [
      problem("WRONG_FORMAT", `Say what is claimed: one of ${Object.keys(FIELDS_OF_RELATION).join(", ")}.`, [
        "relation",
      ]),
    ];
  const draft = draftOfClaim(fields, id);
  const made = makeClaim(draft);
  const known: readonly string[] = [...COMMON_FIELDS, ...FIELDS_OF_RELATION[relation]];
  const needless = Object.keys(fields)
    .filter((name) => saidIn(fields, name) !== undefined && !known.includes(name) && !isOfCitation(name))
    .map((name) =>
      problem(
        "WRONG_FORMAT",
        `A claim of the kind “${relation}” says nothing of ${name}; empty that field.`,
        [name],
      ),
    );
  if ("id" in made) return needless.length > 0 ? needless : made;
  return [...needless, ...made.map((one) => sayAtField(one, fields))];
}

/** As much of a claim as a form says already; it may lack anything. */
export function draftOfClaim(fields: FormFields, id: string): Draft {
  const relation = saidIn(fields, "relation");
  const wanted: readonly string[] = isRelation(relation) ? FIELDS_OF_RELATION[relation] : ["subject"];
  const citations = citationsOf(fields).map(({ citation }) => citation);
  const own = Object.fromEntries(
    wanted.flatMap((name) => {
      const value = valueIn(name, fields, relation);
      return value === undefined || ["region", "form", "part"].includes(name)
        ? []
        : [[MEMBER[name] ?? name, value]];
    }),
  );
  const scope = Object.fromEntries(
    ["region", "form", "part"].flatMap((name) => {
      const term = wanted.includes(name) ? saidIn(fields, name) : undefined;
      return term === undefined ? [] : [[name, term]];
    }),
  );
  const basis = saidIn(fields, "basis") ?? "";
  return {
    id,
    relation,
    strength: saidIn(fields, "strength") ?? STRENGTH_OF_BASIS[basis] ?? "usual",
    status: saidIn(fields, "status") ?? "accepted",
    ...said(fields, "note"),
    ...said(fields, "row"),
    ...(wanted.includes("region") ? { scope } : {}),
    ...own,
    ...(citations.length > 0 ? { citations } : {}),
  };
}

const MEMBER: Readonly<Record<string, string>> = { "absence-only": "absenceOnly" };

const said = (fields: FormFields, name: string): Draft => {
  const text = saidIn(fields, name);
  return text === undefined ? {} : { [name]: text };
};

function valueIn(name: string, fields: FormFields, relation: string | undefined): unknown {
  const text = saidIn(fields, name);
  switch (name) {
    case "hardness":
      return text ?? (isRelation(relation) ? usualHardness(relation) : undefined);
    case "ways":
      return text === undefined ? undefined : listIn(fields, name).map(termsOfWay);
    case "regions":
    case "states":
      return text === undefined ? undefined : listIn(fields, name);
    case "closed":
      return yesOrNo(text ?? "yes");
    case "anywhere":
      return yesOrNo(text ?? "no");
    case "absence-only":
      return text === undefined ? undefined : yesOrNo(text);
    case "years":
      return text === undefined ? undefined : yearsOf(text);
    default:
      return text;
  }
}

/** One way to make a thing: all its terms with a plus between them. */
export const termsOfWay = (way: string): readonly string[] => way.split("+").map((term) => term.trim());

/** Anything but yes and no stays as it is, to be refused. */
const yesOrNo = (text: string): unknown => (text === "yes" ? true : text === "no" ? false : text);

/** "5-10", "5 to 10", "5". */
function yearsOf(text: string): unknown {
  const [, least, most] = /^(\d{1,4})(?:\s*(?:-|–|to)\s*(\d{1,4}))?$/.exec(text) ?? [];
  return least === undefined ? text : [Number(least), Number(most ?? least)];
}

/** The citations of a form, each with its place there; one that says nothing is left out. */
function citationsOf(fields: FormFields): readonly { readonly nth: number; readonly citation: Draft }[] {
  return Array.from({ length: MOST_CITATIONS }, (_, nth) => {
    const [basis, source, locator, note] = CITATION_FIELDS.map((name) =>
      saidIn(fields, citationField(name, nth)),
    );
    const citation = {
      ...(basis === undefined ? {} : { basis }),
      ...(source === undefined ? {} : { source }),
      ...(locator === undefined ? {} : { locator }),
      ...(note === undefined ? {} : { note }),
    };
    return { nth, citation };
  }).filter(({ citation }) => Object.keys(citation).length > 0);
}

const isOfCitation = (name: string): boolean =>
  Array.from({ length: MOST_CITATIONS }, (_, nth) => nth).some((nth) =>
    CITATION_FIELDS.some((one) => citationField(one, nth) === name),
  );

/** The field that a problem of the claim lies in, and what to do there in the words of the form. */
function sayAtField(one: Problem, fields: FormFields): Problem {
  const [first, second, third] = one.path;
  const field =
    first === "scope"
      ? String(second ?? "region")
      : first === "citations"
        ? citationField(
            third === "note" ? "citation-note" : asCited(third),
            citationsOf(fields)[Number(second ?? 0)]?.nth ?? 0,
          )
        : first === "absenceOnly"
          ? "absence-only"
          : String(first ?? "relation");
  const isEmpty = saidIn(fields, field) === undefined;
  return {
    ...one,
    message: (isEmpty ? ASKED[field.replace(/\.\d+$/, "")] : undefined) ?? one.message,
    path: [field],
  };
}

const asCited = (member: unknown): "basis" | "source" | "locator" =>
  member === "source" || member === "locator" ? member : "basis";

/** What is asked for where nothing is said yet. */
const ASKED: Readonly<Record<string, string>> = {
  subject: "Say what the claim is about: choose a term.",
  when: "Say when: a year, a decade or a span of years.",
  ways: "Say what it is made with: choose at least one term.",
  object: "Say what it is usual for: choose a term.",
  regions: "Say where alone it was made: choose at least one region.",
  from: "Say where it spread from: choose a region.",
  to: "Say where it spread to: choose a region.",
  years: "Say how many years it took: one number, or two such as 5-10.",
  states: "Say what the sign speaks for: choose at least one state.",
  of: "Say which claim it is an exception of.",
  condition: "Say what has to be seen: choose a term.",
  basis: "Say how you know it.",
  source: "Say where it is printed: choose the source, or describe a new one.",
  locator: "Say where in it: a page, section, plate or number.",
};
