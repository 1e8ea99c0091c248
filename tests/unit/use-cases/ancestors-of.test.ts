import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import { ancestorsOf } from "#server/use-cases/ask/ancestors-of.ts";

const region = (name: string, broader?: string): Term => ({
  ...{ id: id<"term">(name), kind: "region", label: name },
  ...(broader === undefined ? {} : { broader: id<"term">(broader) }),
});
const finderOf =
  (...terms: readonly Term[]) =>
  async (wanted: string) =>
    terms.find((term) => term.id === wanted);

describe("the broader terms of a term", () => {
  it("go from the nearest to the top", async () => {
    const find = finderOf(region("b", "c"), region("c", "d"), region("d"));
    expect((await ancestorsOf(find, region("a", "b"))).map((term) => term.id)).toEqual(["b", "c", "d"]);
    expect(await ancestorsOf(find, region("d"))).toEqual([]);
  });

  it("end where a term is missing, or was met before", async () => {
    expect(await ancestorsOf(finderOf(), region("a", "b"))).toEqual([]);
    const ring = finderOf(region("a", "b"), region("b", "a"));
    expect((await ancestorsOf(ring, region("a", "b"))).map((term) => term.id)).toEqual(["b"]);
    expect(await ancestorsOf(finderOf(region("a", "a")), region("a", "a"))).toEqual([]);
  });
});
