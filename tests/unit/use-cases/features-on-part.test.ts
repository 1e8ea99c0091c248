import { beforeAll, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { featuresOnPart } from "#server/use-cases/ask/features-on-part.ts";
import { regionGraph } from "#tests/support/region-graph.ts";

let store: Store;
beforeAll(async () => {
  store = openMemoryStore();
  await store.commit({ change: regionGraph, by: "test", at: "2026-01-01T00:00:00Z", message: "test" });
});
const on = async (part: string) =>
  (await featuresOnPart({ store }, id<"term">(part))).map((group) => [
    group.part,
    group.features.map((feature) => feature.id),
  ]);

describe("features looked for on a kind of part", () => {
  it("[R10] are those of the kind, then of kinds within and around it, each once", async () => {
    expect(await on("part.drawer-bottom")).toEqual([
      ["part.drawer-bottom", ["feature.pine-inside", "feature.shell"]],
      ["part.drawer", ["feature.drawer-wear"]],
    ]);
    expect(await on("part.drawer")).toEqual([
      ["part.drawer", ["feature.drawer-wear", "feature.shell"]],
      ["part.drawer-bottom", ["feature.pine-inside"]],
    ]);
  });

  it("[R10] may be none, and there is nothing for a kind that there is not", async () => {
    expect(await on("part.leg")).toEqual([["part.leg", []]]);
    expect(await on("part.wing")).toEqual([]);
    expect(await on("tool.lathe")).toEqual([]);
  });
});
