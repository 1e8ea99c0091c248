import type { Strength } from "#server/domain/claim.ts";
import { MOVES } from "#server/domain/looking.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";
import type { Table } from "./block.ts";

const ODDS = ASSUMED_ODDS;

const number = (value: number): string => String(Number(value.toPrecision(6)));
const nameOfKind = (kind: string): string => kind.slice(kind.indexOf(".") + 1).replaceAll("-", " ");
const strengths = Object.keys(ODDS.wrongClaim) as Strength[];

/** Thousandths of a decade of odds, as mends are priced. */
const price = (ok: number, not: number): string =>
  String(Math.max(0, Math.round(1000 * Math.log10(ok / not))));

const stateRow = (name: string, { original, later, reused }: PlainStateOdds): readonly string[] => [
  name,
  number(original),
  number(later),
  number(reused),
];

/** Priors of the states by kind of part, before anything is seen. */
export const statesTable: Table = {
  caption: "What is taken of a part before anything is seen, by its kind",
  columns: ["kind of part", "original", "later", "reused"],
  rows: [
    ...ODDS.states.map(({ kind, odds }) => stateRow(nameOfKind(kind), odds)),
    stateRow("any other", ODDS.otherwise),
  ],
};

export const strengthsTable: Table = {
  caption: "How far a claim is trusted, by its strength, and the price of giving it up",
  columns: ["strength", "taken as wrong with", "price"],
  rows: [
    ...strengths.map((strength) => {
      const wrong = ODDS.wrongClaim[strength];
      return [strength, number(wrong), price(1 - wrong, wrong)];
    }),
    [
      "nobody had it earlier (fall-back)",
      number(ODDS.wrongFallback),
      price(1 - ODDS.wrongFallback, ODDS.wrongFallback),
    ],
  ],
};

export const surenessTable: Table = {
  caption: "How far an observation is trusted, by how sure the examiner was",
  columns: ["sureness", "misread with", "price"],
  rows: Object.entries(ODDS.misread).map(([sureness, wrong]) => [
    sureness,
    number(wrong),
    price(1 - wrong, wrong),
  ]),
};

/** The verbal scale for a likelihood ratio, as it is known to us: upper ends in order. */
const VERBAL: readonly (readonly [number, string])[] = [
  [10, "weak support"],
  [100, "moderate support"],
  [1000, "moderately strong support"],
];
const verbal = (ratio: number): string =>
  VERBAL.find(([end]) => ratio <= end + 1e-9)?.[1] ?? "strong support";

export const signsTable: Table = {
  caption: "Signs: how probable in a state that they speak for, and in another",
  columns: ["strength", "in its states", "in others", "likelihood ratio", "in words, if it is surely seen"],
  rows: strengths.map((strength) => {
    const [spokenFor, otherwise] = ODDS.signs[strength];
    const ratio = spokenFor / otherwise;
    return [strength, number(spokenFor), number(otherwise), number(ratio), verbal(ratio)];
  }),
};

export const typicalTable: Table = {
  caption: "What is typical of a region: how probable it is there, and elsewhere",
  columns: ["strength", "where it is typical", "elsewhere"],
  rows: strengths.map((strength) => [strength, number(ODDS.typical[strength]), number(ODDS.notTypical)]),
};

export const movesTable: Table = {
  caption: "What is moved for a look: whether the place can then be seen, and the trouble",
  columns: ["moved", "can be seen with", "trouble"],
  rows: MOVES.map((move) => [move, number(ODDS.access[move]), number(ODDS.effort[move])]),
};

const RIVAL_NAMES: Readonly<Record<keyof typeof ODDS.rivals, string>> = {
  "as-claimed": "as claimed, all of one making",
  "later-parts": "as claimed, with later parts",
  provincial: "provincial and late",
  "another-region": "of another region",
  revival: "of a revival",
  "made-up": "made up from several",
  assembled: "assembled lately from old parts",
};

export const rivalsTable: Table = {
  caption: "Stories of a piece: what is taken of each before anything is seen",
  columns: ["story", "prior"],
  rows: (Object.keys(ODDS.rivals) as (keyof typeof ODDS.rivals)[]).map((kind) => [
    RIVAL_NAMES[kind],
    number(ODDS.rivals[kind]),
  ]),
};

/** Numbers that stand in a table of their own. */
const ELSEWHERE: readonly string[] = ["wrongFallback", "notTypical"];
/** What the single numbers are called, and what they stand for. */
const SINGLE: Readonly<Record<string, readonly [string, string]>> = {
  reworked: ["reworked", "share of every prior that goes to a part worked over since"],
  laterWork: ["later work", "that a dating feature on a reworked part is of the later work"],
  doubtful: ["doubtful", "what a “?” on a date multiplies the trust in its claim by"],
  detect: ["detection", "that what is there is found when it is looked for"],
  prevalence: ["prevalence", "share of the parts of its time that have a thing in full use"],
  baseRate: ["base rate", "that a thing is reported where it was misread"],
  leak: ["leak", "probability left outside all known years"],
  copied: ["copied", "that a habit out of its time was copied on purpose, outside stories of copying"],
  lateSurvival: ["late survival", "how common a habit stays after it went out"],
  reuseYears: ["age of what is reused", "mean, in years"],
  ageYears: ["age at which signs of age are full", "in years; a younger part shows them as much less"],
  gridFrom: ["first year", "where the years begin, unless the claim lies before it"],
  worlds: ["worlds", "shared claims and sources tried both right and wrong"],
};

/** Every single number that is assumed; one without words stands under its own name. */
export const numbersTable: Table = {
  caption: "The other numbers that are assumed",
  columns: ["number", "value", "what it stands for"],
  rows: Object.entries(ODDS).flatMap(([name, value]) => {
    if (typeof value !== "number" || ELSEWHERE.includes(name)) return [];
    const [called, means] = SINGLE[name] ?? [name, ""];
    return [[called, number(value), means]];
  }),
};

const handles = ODDS.states.find(({ kind }) => kind === "part.handle")?.odds ?? ODDS.otherwise;
const plain = 1 - ODDS.reworked;

export const pricesTable: Table = {
  caption: "Prices of giving something up, by the example of a handle",
  columns: ["given up", "price"],
  rows: [
    ["the handle is of the first making: it is later", price(handles.original, handles.later)],
    ["the handle is of the first making: it is reused", price(handles.original, handles.reused)],
    [
      "what was seen on it is of the first making: it was altered",
      price(handles.original * plain, ODDS.reworked),
    ],
    ["a sure observation: it was misread", price(1 - ODDS.misread.sure, ODDS.misread.sure)],
    ["a usual claim: it is wrong", price(1 - ODDS.wrongClaim.usual, ODDS.wrongClaim.usual)],
    ["nobody had it earlier", price(1 - ODDS.wrongFallback, ODDS.wrongFallback)],
  ],
};
