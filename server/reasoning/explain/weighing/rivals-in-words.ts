import type { Rival, RivalKind, Rivals } from "../../../domain/weighing/rivals.ts";
import type { WeighingWords } from "../../../domain/weighing/weighing-words.ts";
import { capitalise, decapitalise } from "../list-in-words.ts";
import { numberInWords } from "../number-in-words.ts";
import { yearsInWords } from "../years-in-words.ts";
import { probabilityInWords } from "./probability-in-words.ts";
import type { WeighingReader } from "./weighing-reader.ts";

const NAME: Readonly<Record<RivalKind, string>> = {
  "as-claimed": "as claimed, all of the first making",
  "later-parts": "as claimed, with later parts",
  provincial: "provincial and late",
  "another-region": "made elsewhere",
  revival: "of a revival",
  "made-up": "made up from several pieces",
  assembled: "put together lately from old parts",
  "to-look-old": "made later to look old",
};

const ASSUMES: Readonly<Record<RivalKind, string>> = {
  "as-claimed": "Every part of the first making, but for what nobody can exclude.",
  "later-parts": "Parts replaced as readily as such parts usually are.",
  provincial: "Old habits kept three times in ten after they went out.",
  "another-region": "The same years, judged by the claims for that place.",
  revival: "Old habits copied more often than not; tools and hardware of its own time.",
  "made-up": "Nearly half of the parts from an earlier piece.",
  assembled: "Three parts in four from earlier pieces, with longer lives.",
  "to-look-old":
    "Old habits copied nine times in ten. Weighed only because it was asked for; its prior is a choice, not a finding.",
};

const weighed = ({ against, kind }: Rival): string => {
  if (kind === "as-claimed") return "the story the others are held against";
  if (against === null) return "beyond what the model can weigh";
  if (Math.abs(against) < 0.5) return "the evidence does not tell it from the story as claimed";
  const times = 10 ** Math.abs(against);
  const told =
    times >= 1000 ? "over a thousand times" : `${times < 10 ? times.toFixed(1) : Math.round(times)} times`;
  return against > 0
    ? `what was seen is ${told} as probable as under the story as claimed`
    : `what was seen is ${told} less probable than under the story as claimed`;
};

const fewOf = (parts: Rival["parts"]): boolean => parts.length <= 5;
const countOf = (parts: Rival["parts"]): string =>
  `Then ${numberInWords(parts.length)} of the parts are not of the first making.`;

/** The rivals side by side: what each assumes, how it does, and what told. */
export const rivalsInWords = (
  { weighed: all }: Rivals,
  reader: WeighingReader,
): NonNullable<WeighingWords["rivals"]> =>
  all.map((rival) => {
    const where = rival.region ? ` in ${reader.termOf(rival.region)}` : "";
    const name = rival.kind === "another-region" ? `made${where}` : NAME[rival.kind];
    const laterParts =
      rival.parts.length === 0 || rival.kind === "as-claimed"
        ? undefined
        : `Then ${reader.partsOf(rival.parts)} ${reader.isPlural(rival.parts) ? "are" : "is"} not of the first making.`;
    const years = yearsInWords(rival.years);
    const number =
      rival.against === null || rival.kind === "as-claimed" ? "" : ` (${rival.against.toFixed(1)})`;
    return {
      kind: rival.kind,
      ...(rival.region ? { region: rival.region } : {}),
      name: capitalise(name),
      says: `${capitalise(name)}, ${years}: ${weighed(rival)}. Among these stories ${probabilityInWords(rival.posterior)}, before anything was seen ${probabilityInWords(rival.prior)}.${laterParts === undefined ? "" : ` ${laterParts}`}`,
      years,
      weighs: `${capitalise(weighed(rival))}${number}.`,
      odds: `Among these stories ${probabilityInWords(rival.posterior)}; before anything was seen ${probabilityInWords(rival.prior)}.`,
      ...(laterParts === undefined
        ? {}
        : { laterParts: fewOf(rival.parts) ? laterParts : countOf(rival.parts) }),
      assumes: ASSUMES[rival.kind],
      told: rival.told.map(
        ({ observation, log10 }) =>
          `${capitalise(reader.seenOf(observation))}: ${log10 > 0 ? "for it" : "against it"} (${log10.toFixed(1)})`,
      ),
      wouldTell: rival.wouldTell.map(
        ({ part, feature }) => `${capitalise(reader.termOf(feature))} on ${reader.partsOf([part])}`,
      ),
    };
  });

/** Whether the evidence tells the best two stories apart. */
export function rivalsTogetherInWords(
  { weighed: all, discriminates }: Rivals,
  said: NonNullable<WeighingWords["rivals"]>,
): string {
  const [first, second] = all
    .map(({ posterior }, at) => ({ posterior, name: said[at]?.name ?? "" }))
    .sort((a, b) => b.posterior - a.posterior);
  if (first === undefined || second === undefined)
    return "There is no other story to hold against the claim.";
  const names = [first, second].map(({ name }) => `“${decapitalise(name)}”`);
  return discriminates
    ? `Of these stories what was seen fits ${names[0]} best, and ${names[1]} next.`
    : `The evidence does not discriminate between ${names[0]} and ${names[1]}.`;
}
