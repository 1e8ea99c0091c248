import type { Dating } from "#server/domain/dating.ts";
import { yearsToJson } from "#server/domain/years.ts";
import { sayYears } from "./say-years.ts";

/** How a date as it was typed is understood, for an event: "made 1760–1780, give or take 5 years". */
export const sayDating = ({ members, padBegin, padEnd, doubtful }: Dating): string => {
  const pad = Math.max(padBegin, padEnd);
  return [
    `made ${sayYears(yearsToJson(members))}`,
    ...(pad > 0 ? [`give or take ${pad} years`] : []),
    ...(doubtful ? ["doubtful"] : []),
  ].join(", ");
};
