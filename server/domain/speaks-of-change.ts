import type { Sign } from "./report.ts";

/** Whether a sign speaks of anything but an original part as it was made. */
export const speaksOfChange = ({ speaks, states }: Pick<Sign, "speaks" | "states">): boolean =>
  speaks === "against" ? states.includes("original") : states.some((state) => state !== "original");
