import type { Claim } from "../../domain/claim.ts";
import type { Examination } from "../../domain/examination.ts";
import type { LeaningLine } from "../../domain/leaning-words.ts";
import type { Page } from "../../ports/store.ts";
import { type FoundLeaning, findLeaning } from "../../use-cases/ask/find-leaning.ts";
import { listExaminations } from "../../use-cases/ask/list-examinations.ts";
import type { AsOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { EXAMINE_WEIGHT } from "../limits/operation-cost.ts";
import { pageAsk } from "../read-page.ts";

interface LookedThrough {
  readonly claim: AsOf<Claim>;
  readonly page: Page<Examination>;
}

/** What leans on a claim. */
export function addLeaning(b: Builder) {
  const line = b.objectRef<LeaningLine>("LeaningLine").implement({
    description: "One thing that an examination says and that leans on the claim.",
    fields: (t) => ({
      strip: t.id({ description: "The strip to look at: a finding.", resolve: ({ strip }) => strip }),
      role: t.expose("role", { type: b.enums.leaningRole }),
      says: t.exposeString("says", {
        description: "What it is about; of a rule-out or a sign, its sentence.",
      }),
      now: t.exposeString("now", { description: "How it stands." }),
      without: t.exposeString("without", {
        description: "How it would stand without the claim; null if the same.",
        nullable: true,
      }),
    }),
  });
  const examination = b.objectRef<FoundLeaning>("LeaningExamination").implement({
    description: "An examination of which something leans on the claim.",
    fields: (t) => ({
      examination: t.expose("examination", { type: "Examination" }),
      headline: t.string({ resolve: ({ words }) => words.headline }),
      headlineWithout: t.string({
        description: "The conclusion without the claim; null if the same.",
        nullable: true,
        resolve: ({ words }) => words.headlineWithout,
      }),
      lines: t.field({
        type: [line],
        extensions: { entries: 10 },
        resolve: ({ words }) => words.lines,
      }),
    }),
  });
  const looked = b.objectRef<LookedThrough>("Leaning").implement({
    description: "The examinations of one page that lean on a claim.",
    fields: (t) => ({
      examinations: t.field({
        description: "Those of the page of which something leans on the claim, the one changed last first.",
        extensions: { weight: 2 * EXAMINE_WEIGHT, entries: 1 },
        type: [examination],
        resolve: ({ claim, page }, _, context) => findLeaning(context, claim, page.rows, claim.at),
      }),
      looked: t.int({
        description: "How many examinations the page has.",
        resolve: ({ page }) => page.rows.length,
      }),
      total: t.int({ description: "How many examinations there are.", resolve: ({ page }) => page.total }),
      endCursor: t.string({
        description: "Where to look on; null where there are no more.",
        nullable: true,
        resolve: ({ page }) => (page.hasMore ? page.cursors.at(-1) : null),
      }),
    }),
  });
  b.objectField("Claim", "leaning", (t) =>
    t.field({
      description:
        "What leans on this claim, among a page of the examinations that are not deleted; each is examined with it and without it.",
      type: looked,
      args: b.pageOf(10),
      resolve: async (claim, args, context) => ({
        claim,
        page: await listExaminations(context, pageAsk(args)),
      }),
    }),
  );
}
