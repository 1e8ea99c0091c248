import { id } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import type { DatePrior } from "#server/domain/weighing/odds.ts";
import type { DatePrior as DatePriorCode } from "#web/shared/apollo/schema-types.graphql.ts";
import type { RecordedFragment } from "./Examination.graphql.ts";

const priors: Readonly<Record<DatePriorCode, DatePrior>> = {
  UNIFORM: "uniform",
  AS_CLAIMED: "as claimed",
  PRODUCTION: "production",
};

/** What the examiner chose to assume of a piece, from how the server gives it. */
export function readOdds(odds: NonNullable<RecordedFragment["odds"]>): ChosenOdds {
  const { datePrior, parts, wrongClaims, leak, madeToDeceive } = odds;
  return {
    ...(datePrior === null ? {} : { datePrior: priors[datePrior] }),
    ...(parts.length === 0
      ? {}
      : {
          parts: parts.map(({ part, original, later, reused }) => ({
            part: id<"part">(part),
            ...{ original, later, reused },
          })),
        }),
    ...(wrongClaims === null ? {} : { wrongClaims }),
    ...(leak === null ? {} : { leak }),
    ...(madeToDeceive === null ? {} : { madeToDeceive }),
  };
}
