import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { claimOfFields } from "#server/domain/proposals/form/claim-of-fields.ts";
import { fieldsOfClaim } from "#server/domain/proposals/form/fields-of-claim.ts";
import { readFormFields } from "#server/domain/proposals/form/form-fields.ts";
import { fieldsOfSource, sourceOfFields } from "#server/domain/proposals/form/source-of-fields.ts";
import { fieldsOfTerm, termOfFields } from "#server/domain/proposals/form/term-of-fields.ts";
import { anyClaims } from "#tests/support/any-graph.ts";
import { seedChange } from "#tests/support/seed-examiner.ts";

const seed = await seedChange();

describe("what stands, put into a form and read from it again", () => {
  it("[J40] is the same, for every claim, term and source of the seed graph", () => {
    for (const edit of seed) {
      if (edit.kind === "claim" && edit.after)
        expect(claimOfFields(fieldsOfClaim(edit.after), edit.after.id)).toEqual(edit.after);
      if (edit.kind === "term" && edit.after)
        expect(termOfFields(fieldsOfTerm(edit.after), edit.after.id, edit.after)).toEqual(edit.after);
      if (edit.kind === "source" && edit.after)
        expect(sourceOfFields(fieldsOfSource(edit.after), edit.after.id, edit.after)).toEqual(edit.after);
    }
    expect(seed.length).toBeGreaterThan(1000);
  });

  it("[J40] is the same for any claim", () => {
    fc.assert(
      fc.property(anyClaims, (claims) => {
        for (const claim of claims) expect(claimOfFields(fieldsOfClaim(claim), claim.id)).toEqual(claim);
      }),
    );
  });

  it("[J40] never throws, whatever stands in the fields", () => {
    const names = ["relation", "subject", "when", "ways", "years", "states", "basis", "locator", "closed"];
    fc.assert(
      fc.property(
        fc.dictionary(
          fc.constantFrom(...names),
          fc.oneof(fc.string(), fc.constantFrom("requires", "spread to")),
        ),
        (form) => {
          const fields = readFormFields(form);
          if ("problem" in fields) return;
          const made = claimOfFields(fields as Record<string, string>, "claim.any");
          expect("id" in made || made.every(({ message }) => message.endsWith("."))).toBe(true);
        },
      ),
    );
  });
});
