import { globSync, readFileSync } from "node:fs";
import { Kind, OperationTypeNode, parse } from "graphql";
import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { readPageOperations } from "#tests/bench/scale/page-operations.ts";
import { whatIsRead } from "#tests/bench/what-is-read.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openApi } from "#tests/support/open-api.ts";
import { openSeed } from "#tests/support/seed-pieces.ts";

/** Not asked by the bench: what people have written of the graph and of one another, of which its graphs have nothing, and what a form asks while it is filled in. */
const NOT_ASKED = [
  ...["ClaimsOnSubject", "Contribute", "Discussion", "DisputePage", "DisputesOfClaim", "DisputesPage"],
  ...["ExaminationNow", "ExaminationVersion", "HousePage", "ImpactOfProposal", "ImpactSoFar", "LookOver"],
  ...["PeopleToCall", "PeopleToShow", "ProposalPage", "ProposalsInState", "ProposalsToReview", "ReadBatch"],
  ...["TermByName", "ToBeCorrected", "WrittenDraft"],
];

const sentByPages = (): readonly string[] =>
  globSync("web/**/*.graphql").flatMap((file) =>
    parse(readFileSync(file, "utf8")).definitions.flatMap((definition) =>
      definition.kind === Kind.OPERATION_DEFINITION && definition.operation === OperationTypeNode.QUERY
        ? [definition.name?.value ?? file]
        : [],
    ),
  );

describe("what the bench of reads asks", () => {
  it("is what the pages send, and is answered", async () => {
    const { store, pieces } = await openSeed();
    for (const each of pieces)
      answered(await store.createExamination(id(each.id), each.piece, "2026-11-26T10:00:00.000Z"));
    const { ask } = await openApi([], store);
    const queryOf = readPageOperations();
    const asked = await whatIsRead(store);
    for (const [name, variables] of asked)
      for (const n of [0, 1, 2]) {
        const { errors } = await ask(queryOf(name), variables(n));
        expect(errors, name).toEqual([]);
      }
    const names = new Set(asked.map(([name]) => name));
    expect(
      sentByPages()
        .filter((name) => !names.has(name))
        .sort(),
    ).toEqual([...NOT_ASKED]);
  });
});
