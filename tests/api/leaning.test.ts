import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { adding, replacing, withdrawing } from "#tests/support/build-change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const claim = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;

const CREATE = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id } } ... on Refused { problems { message } }
} }`;
const LEANING = `query ($id: ID!, $revision: Int, $first: Int, $after: String) {
  claim(id: $id, revision: $revision) { leaning(first: $first, after: $after) {
    looked total endCursor
    examinations { examination { id piece { title } } headline headlineWithout lines { strip role says now without } }
  } }
}`;

const seen = (id: string, part: string, feature: string) => ({
  ...{ id, part, feature, seen: "PRESENT", sureness: "SURE" },
});
/** Carved ground that an exception excuses, and nothing that the saw speaks of. */
const gilded = {
  ...sawnChest,
  title: "Gilded frame of the test",
  observations: [seen("o1", "carcase", "feature.rough-ground"), seen("o2", "carcase", "feature.gesso")],
};

async function openWith(changes: readonly Change[], pieces: readonly object[] = [sawnChest, gilded]) {
  const api = await openApi(changes);
  for (const piece of pieces) expect((await api.ask(CREATE, { piece })).errors).toEqual([]);
  const leaning = async (variables: Record<string, unknown>) => {
    const { data, errors } = await api.ask(LEANING, variables);
    expect(errors).toEqual([]);
    return data.claim.leaning;
  };
  return { ...api, leaning };
}

describe("[A52] what leans on a claim", () => {
  it("is told with how it would stand without: a contradiction, by each claim of its chain", async () => {
    const { leaning } = await openWith([sawGraph]);
    for (const id of ["claim.saw", "claim.marks"]) {
      const found = await leaning({ id });
      expect(found).toMatchObject({ looked: 2, total: 2, endCursor: null });
      expect(found.examinations).toHaveLength(1);
      const [{ examination, headline, headlineWithout, lines }] = found.examinations;
      expect(examination.piece.title).toBe("Chest of the test");
      expect(headline).toMatch(/cannot be of 1760 to 1775/);
      expect(headlineWithout).toMatch(/does not discriminate/);
      expect(lines).toEqual([
        {
          strip: "o1",
          role: "CONTRADICTION",
          says: "Round saw marks on the drawer bottom",
          now: "15 years too late",
          without: expect.stringMatching(/^says nothing: /),
        },
      ]);
    }
  });

  it("holds signs, and what an exception sets aside", async () => {
    const { leaning } = await openWith([sawGraph]);
    const { examinations } = await leaning({ id: "claim.ground" });
    expect(examinations[0].lines).toMatchObject([
      { strip: "o1", role: "SIGN", now: "set aside", without: "falls" },
    ]);
    const { examinations: excused } = await leaning({ id: "claim.ground-gilded" });
    expect(excused[0].examination.piece.title).toBe("Gilded frame of the test");
    expect(excused[0].lines).toMatchObject([
      { strip: "o1", role: "SIGN", now: "set aside", without: "stands" },
    ]);
  });

  it("calls what is only out of its time unusual, and no contradiction", async () => {
    const habit = { ...claim, relation: "common from", hardness: "practice" } as unknown as Claim;
    const { leaning } = await openWith([sawGraph, replacing(claim, habit)]);
    const { examinations } = await leaning({ id: "claim.saw" });
    expect(examinations[0].lines).toMatchObject([
      { strip: "o1", role: "UNUSUAL", now: expect.stringMatching(/^unusual by \d+ years$/) },
    ]);
  });

  it("says that a finding would stand the same where another claim holds it up too", async () => {
    const again = adding({ ...claim, id: "claim.saw-too" } as unknown as Claim);
    const { leaning } = await openWith([sawGraph, again]);
    const told = [await leaning({ id: "claim.saw" }), await leaning({ id: "claim.saw-too" })];
    const lines = told.flatMap(({ examinations }) =>
      examinations.flatMap((each: { lines: object[] }) => each.lines),
    );
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) expect(line).toMatchObject({ now: "15 years too late", without: null });
  });

  it("gives the years where the words alone would be the same", async () => {
    const wide = adding(
      { ...claim, id: "claim.saw-early", when: "1700" } as unknown as Claim,
      {
        ...claim,
        id: "claim.saw-common",
        relation: "common from",
        hardness: "practice",
        when: "1710",
      } as unknown as Claim,
    );
    const { leaning } = await openWith([withoutSaw, wide]);
    const { examinations } = await leaning({ id: "claim.saw-early" });
    expect(examinations[0].lines).toMatchObject([
      {
        role: "AGREEMENT",
        now: expect.stringMatching(/possible 1700 or later/),
        without: expect.stringMatching(/possible any year/),
      },
    ]);
  });

  it("is nothing for a claim that no report comes upon, or that is rejected", async () => {
    const rejected = replacing(claim, { ...claim, status: "rejected" });
    const { leaning } = await openWith([sawGraph, rejected]);
    for (const id of ["claim.plain-saw", "claim.saw"])
      expect(await leaning({ id })).toEqual({ looked: 2, total: 2, endCursor: null, examinations: [] });
  });

  it("is read on the revision on which the claim was read", async () => {
    const { leaning } = await openWith([sawGraph, withdrawing(claim)]);
    const { examinations } = await leaning({ id: "claim.saw", revision: 1 });
    expect(examinations).toMatchObject([{ lines: [{ role: "CONTRADICTION" }] }]);
  });

  it("[A3] looks through a page of examinations at a time, not through deleted ones", async () => {
    const { ask, leaning } = await openWith([sawGraph], [sawnChest, sawnChest, sawnChest]);
    const { data } = await ask("{ examinations { edges { node { id version } } } }");
    const [{ node }] = data.examinations.edges;
    await ask(
      "mutation ($id: ID!, $v: Int!) { deleteExamination(id: $id, expectedVersion: $v) { __typename } }",
      {
        id: node.id,
        v: node.version,
      },
    );
    const first = await leaning({ id: "claim.saw", first: 1 });
    expect(first).toMatchObject({ looked: 1, total: 2, endCursor: expect.any(String) });
    const second = await leaning({ id: "claim.saw", first: 1, after: first.endCursor });
    expect(second).toMatchObject({ looked: 1, total: 2, endCursor: null });
    const ids = [first, second].map(({ examinations }) => examinations[0].examination.id);
    expect(new Set(ids).size).toBe(2);
    expect(ids).not.toContain(node.id);
  });

  it("sees a change of the piece at once, and gives the same answer each time", async () => {
    const { ask, leaning } = await openWith([sawGraph], [sawnChest]);
    const before = await leaning({ id: "claim.saw" });
    expect(await leaning({ id: "claim.saw" })).toEqual(before);
    const { id } = before.examinations[0].examination;
    await ask(
      "mutation ($id: ID!, $piece: PieceInput!) { changeExamination(id: $id, expectedVersion: 1, piece: $piece) { __typename } }",
      { id, piece: { ...sawnChest, attribution: { ...sawnChest.attribution, date: "1800/1810" } } },
    );
    const { examinations } = await leaning({ id: "claim.saw" });
    expect(examinations).toMatchObject([
      { lines: [{ role: "AGREEMENT", now: expect.not.stringMatching(/late/) }] },
    ]);
  });

  it("[A12] costs by the examinations looked through, so that too many are refused before any is examined", async () => {
    const { ask } = await openWith([sawGraph]);
    const { errors, calls } = await ask(LEANING, { id: "claim.saw", first: 200 });
    expect(errors).toMatchObject([{ extensions: { code: "QUERY_TOO_COSTLY" } }]);
    expect(calls).toEqual([]);
  });
});

const withoutSaw: Change = sawGraph.filter(({ after }) => after?.id !== "claim.saw");
