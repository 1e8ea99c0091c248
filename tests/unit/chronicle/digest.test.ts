import { afterEach, describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import type { Caller } from "#server/domain/people/caller.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openChronicle } from "#tests/support/open-chronicle.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const saw = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;
const earlier = { ...saw, when: "1740" } as Claim;
const chest = id<"examination">("examination.chest");
const sawn = aPiece({
  region: "region.england",
  parts: [{ id: "bottom", kind: "part.drawer-bottom" }],
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});
const rita: Caller = { id: "person.rita", role: "reader", via: "session" };
const carl: Caller = { id: "person.carl", role: "contributor", via: "session" };

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});
async function open() {
  const chronicle = await openChronicle([sawGraph]);
  closing.push(chronicle.close);
  answered(await chronicle.store.createExamination(chest, sawn, "2026-01-01T01:00:00.000Z"));
  let hour = 2;
  const commit = async (...change: Parameters<typeof aCommit>) =>
    answered(
      await chronicle.store.commit({
        ...aCommit(...change),
        at: `2026-02-01T${String(hour++).padStart(2, "0")}:00:00.000Z`,
      }),
    );
  return { ...chronicle, commit };
}
const inLondon = aClaim({
  ...{ id: "claim.london", relation: "attested", subject: "feature.gesso" },
  ...{ region: "region.london", when: "1745" },
});

describe("[I10] what is followed", () => {
  it("is a term, a region, a source or an examination, by readers too, and is left again", async () => {
    const { ask, store } = await open();
    for (const about of ["tool.circular-saw", "region.england", "source.saw-book", chest]) {
      expect(await ask("follow", { about }, rita)).toEqual({ about, isFollowed: true });
      expect(await ask("follow", { about }, rita)).toEqual({ about, isFollowed: true });
      expect(await ask("following", { about }, rita)).toEqual({ about, isFollowed: true });
      expect(await ask("following", { about }, carl)).toEqual({ about, isFollowed: false });
    }
    expect(await ask("unfollow", { about: chest }, rita)).toEqual({ about: chest, isFollowed: false });
    expect(await ask("unfollow", { about: chest }, rita)).toEqual({ about: chest, isFollowed: false });
    expect((await store.listCards({ kind: "follow" }, { first: 9 })).total).toBe(3);
  });

  it.each([
    ["claim.saw", "UNKNOWN_TERM"],
    ["tool.none", "UNKNOWN_TERM"],
    ["source.none", "UNKNOWN_SOURCE"],
    ["examination.none", "UNKNOWN_EXAMINATION"],
    ["<script>", "UNKNOWN_TERM"],
  ])("is nothing else: %s", async (about, code) => {
    const { ask } = await open();
    expect(await ask("follow", { about }, rita)).toMatchObject({ refused: [{ code }] });
  });
});

describe("[I11] the digest", () => {
  it("tells what changed about each thing that is followed, from when it was followed", async () => {
    const { ask, commit } = await open();
    await commit(adding(aTerm("tool.adze")));
    for (const about of ["region.england", "tool.circular-saw", "source.saw-book"])
      await ask("follow", { about }, rita);
    expect(await ask("digest", {}, rita)).toMatchObject({
      ...{ newest: 2, pieces: [] },
      followed: [{ count: 0 }, { count: 0 }, { count: 0 }],
    });
    await commit(adding(inLondon));
    await commit(replacing(saw, earlier));
    const { followed } = await ask("digest", {}, rita);
    const told = Object.fromEntries(
      followed.map(({ about, name, edits }: { about: string; name: string; edits: { id: string }[] }) => [
        about,
        [name, edits.map((edit) => edit.id)],
      ]),
    );
    expect(told).toEqual({
      // London lies in England.
      "region.england": ["England", ["claim.london", "claim.saw"]],
      "source.saw-book": [expect.stringContaining("Saws and their marks"), ["claim.saw"]],
      "tool.circular-saw": ["circular saw", ["claim.saw"]],
    });
    expect(followed[0].edits[1]).toMatchObject({
      differences: [{ what: "date", before: "1790", after: "1740" }],
    });
  });

  it("tells of a piece that was signed what is said otherwise since, until it is signed again", async () => {
    const { ask, commit } = await open();
    await ask("sign-report", { examination: chest }, carl);
    expect((await ask("digest", {}, carl)).pieces).toEqual([]);
    await commit(replacing(saw, earlier));
    const { pieces, newest } = await ask("digest", {}, carl);
    expect(pieces).toMatchObject([
      { examination: chest, why: "signed", since: 1, claims: 1, headlineBefore: expect.any(String) },
    ]);
    expect(pieces[0].says).toBe(
      "1 claim changed since you signed this. Round saw marks on the bottom: now agrees, it was 15 years too late.",
    );
    expect((await ask("digest", {}, rita)).pieces).toEqual([]);
    await ask("digest-seen", { revision: newest }, carl);
    expect((await ask("digest", {}, carl)).pieces).toHaveLength(1);
    await ask("sign-report", { examination: chest }, carl);
    expect((await ask("digest", {}, carl)).pieces).toEqual([]);
  });

  it("tells whoever sits at a machine of their own of every piece there, until it was read", async () => {
    const { ask, commit } = await open();
    await commit(replacing(saw, earlier));
    const { pieces, newest } = await ask("digest");
    expect(pieces).toMatchObject([{ examination: chest, why: "here", since: 1, claims: 1 }]);
    expect(await ask("digest-seen", { revision: newest })).toEqual({ seen: 2 });
    expect(await ask("digest")).toMatchObject({ pieces: [], seen: 2 });
  });

  it("does not tell again what was read, and reads on from there", async () => {
    const { ask, commit } = await open();
    await ask("follow", { about: "tool.circular-saw" }, rita);
    await ask("follow", { about: chest }, rita);
    await commit(replacing(saw, earlier));
    expect(await ask("digest", {}, rita)).toMatchObject({
      ...{ followed: [{ count: 1 }], pieces: [{ why: "followed", claims: 1 }] },
    });
    await ask("digest-seen", { revision: 2 }, rita);
    expect(await ask("digest", {}, rita)).toMatchObject({ followed: [{ count: 0, since: 2 }], pieces: [] });
    expect(await ask("digest-seen", { revision: 9 }, rita)).toMatchObject({
      refused: [{ code: "UNKNOWN_REVISION" }],
    });
    expect(await ask("digest-seen", { revision: "x" }, rita)).toMatchObject({
      refused: [{ code: "WRONG_FORMAT" }],
    });
    expect(await ask("digest", {}, rita)).toMatchObject({ seen: 2 });
  });
});
