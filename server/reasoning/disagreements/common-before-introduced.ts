import { beforeIntroduced } from "./before-introduced.ts";
import type { DisagreementRule } from "./rule.ts";

const IN_USE: readonly string[] = ["common from", "common until", "current", "active"];

/** [Q3] In use before it was introduced. */
export const commonBeforeIntroduced: DisagreementRule = {
  id: "common-before-introduced",
  find: (evidence) =>
    beforeIntroduced("common-before-introduced", evidence, ({ relation }) => IN_USE.includes(relation)),
};
