import type { SourceId } from "../../../domain/ids.ts";
import type { Varied } from "../../../domain/weighing/weights.ts";

const FACTOR: Readonly<Record<0.5 | 2, string>> = { 0.5: "half as", 2: "twice as" };

/** What was changed to see what follows, to complete "the answer depends on". */
export function variedInWords(what: Varied["what"], nameOf: (source: SourceId) => string): string {
  switch (what.kind) {
    case "date-prior":
      return what.prior === "as claimed"
        ? "whether the claim itself counts for something beforehand"
        : "taking every year alike beforehand";
    case "later-parts":
      return `how readily parts are replaced (${FACTOR[what.factor]} readily as assumed)`;
    case "leak":
      return `how far the known years can be wrong (${FACTOR[what.factor]} far as assumed)`;
    case "wrong-claims":
      return `how often claims are wrong (${FACTOR[what.factor]} often as assumed)`;
    case "without-source":
      return `one source: ${nameOf(what.source)}`;
    case "without-claim":
      return "one claim";
  }
}
