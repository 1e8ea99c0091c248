import type { YearsJson } from "#server/domain/years.ts";
import { sayYears } from "../words/say-years.ts";

/** Years as text that does not break inside. */
export const Years = ({ years }: { years: YearsJson }) => (
  <span style={{ whiteSpace: "nowrap" }}>{sayYears(years)}</span>
);
