import { isNarrower } from "../../domain/scope.ts";
import { hardnessOf } from "../known-graph.ts";
import { beforeIntroduced } from "./before-introduced.ts";
import type { DisagreementRule } from "./rule.ts";

/** [Q4] Introduced in a narrower scope earlier than in the wider one that holds it. A habit disputes no fact. */
export const narrowerBeforeWider: DisagreementRule = {
  id: "narrower-before-wider",
  find: (evidence) =>
    beforeIntroduced(
      "narrower-before-wider",
      evidence,
      (earlier, introduced) =>
        earlier.relation === "introduced" &&
        hardnessOf(earlier) === hardnessOf(introduced) &&
        isNarrower(earlier.scope, introduced.scope, evidence.broader),
    ),
};
