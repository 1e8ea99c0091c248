import type { Strength } from "../../domain/claim.ts";
import type { Sign, VoidIf } from "../../domain/report.ts";
import type { ReportWords } from "../../domain/report-words.ts";
import { capitalise } from "./list-in-words.ts";
import type { ReportReader } from "./report-reader.ts";
import { speaksOfStates } from "./states-in-words.ts";

export const HOW_STRONGLY: Readonly<Record<Strength, string>> = {
  certain: "very strongly",
  firm: "strongly",
  usual: "",
  tentative: "weakly",
};

const STANDING: Readonly<Record<VoidIf["standing"], string>> = {
  "not-looked-for": "look for it",
  "could-not-be-seen": "it could not be seen",
  "merely-possible": "seen only as a possibility: make sure",
};

/** An exception that would void a claim: what to look for. */
export const voidIfInWords = (voidIf: VoidIf, reader: ReportReader): string =>
  `Would count for nothing if found with ${reader.labelOf(voidIf.condition)}: ${STANDING[voidIf.standing]}.`;

/** A sign of alteration, the reasons it is set aside, and what would set it aside. */
export function signInWords(sign: Sign, reader: ReportReader): ReportWords["signs"][number] {
  const what = `${reader.labelOf(sign.feature)} on the ${reader.partOf(sign.part)}`;
  const strongly = HOW_STRONGLY[sign.strength];
  const of = `${strongly === "" ? "" : `${strongly} `}${speaksOfStates(sign.speaks, sign.states)}`;
  const says =
    sign.speaks === "for"
      ? `${capitalise(what)} speaks ${of}.`
      : `No ${what}, though looked for: speaks ${of}.`;
  return {
    observation: sign.observation,
    claim: sign.claim,
    says,
    because: sign.because.map(({ exception }) => {
      const claim = reader.claimOf(exception);
      const condition = claim?.relation === "void when" ? reader.labelOf(claim.condition) : exception;
      return `Set aside by ${condition}.`;
    }),
    look: sign.voidIf.map((voidIf) => voidIfInWords(voidIf, reader)),
  };
}
