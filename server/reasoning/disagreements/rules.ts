import { attestedBeforeIntroduced } from "./attested-before-introduced.ts";
import { commonBeforeIntroduced } from "./common-before-introduced.ts";
import { narrowerBeforeWider } from "./narrower-before-wider.ts";
import { oneSource } from "./one-source.ts";
import { rivals } from "./rivals.ts";
import type { DisagreementRule } from "./rule.ts";
import { spreadInACircle } from "./spread-in-a-circle.ts";

/** Every rule, in the order in which they are read: what cannot be, then what differs, then what leans on little. */
export const DISAGREEMENT_RULES: readonly DisagreementRule[] = [
  attestedBeforeIntroduced,
  commonBeforeIntroduced,
  narrowerBeforeWider,
  rivals,
  spreadInACircle,
  oneSource,
];
