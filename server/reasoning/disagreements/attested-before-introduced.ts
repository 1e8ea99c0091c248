import { hardnessOf } from "../known-graph.ts";
import { beforeIntroduced } from "./before-introduced.ts";
import type { DisagreementRule } from "./rule.ts";

/** [Q2] A record of the thing from before it was introduced. A habit disputes no record: only physical introductions count. */
export const attestedBeforeIntroduced: DisagreementRule = {
  id: "attested-before-introduced",
  find: (evidence) =>
    beforeIntroduced(
      "attested-before-introduced",
      evidence,
      (earlier, introduced) => earlier.relation === "attested" && hardnessOf(introduced) === "physical",
    ),
};
