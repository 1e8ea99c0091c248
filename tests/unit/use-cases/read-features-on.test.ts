import { beforeAll, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { readFeaturesOn } from "#server/use-cases/ask/read-features-on.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";

const DRAWER = id<"term">("part.drawer");
const TOP = id<"term">("part.top");
const LEG = id<"term">("part.leg");

let store: Store;
beforeAll(async () => {
  store = openMemoryStore();
  const many = Array.from({ length: 700 }, (_, n) =>
    aTerm(`feature.d${String(n).padStart(3, "0")}`, { parts: ["part.drawer"] }),
  );
  const few = [0, 1, 2].map((n) => aTerm(`feature.t${n}`, { parts: ["part.top"] }));
  const parts = ["part.drawer", "part.top", "part.leg"].map((name) => aTerm(name));
  answered(await store.commit(aCommit(adding(...parts, ...many, ...few))));
});

describe("features of kinds of part", () => {
  it("[F2] are all read where they are few enough, however uneven the lists", async () => {
    const { features, isCut } = await readFeaturesOn(store, [[DRAWER], [TOP], [LEG]], 703, undefined);
    expect(features).toHaveLength(703);
    expect(isCut).toBe(false);
  });

  it("[F2] are cut where they are too many, and no list for another", async () => {
    const { features, isCut } = await readFeaturesOn(store, [[DRAWER], [TOP]], 300, undefined);
    expect(features).toHaveLength(300);
    expect(features.filter((term) => term.parts?.includes(TOP))).toHaveLength(3);
    expect(isCut).toBe(true);
  });

  it("[F2] are none of no kinds", async () => {
    expect(await readFeaturesOn(store, [], 9, undefined)).toEqual({ features: [], isCut: false });
    expect(await readFeaturesOn(store, [[LEG]], 9, undefined)).toEqual({ features: [], isCut: false });
  });
});
