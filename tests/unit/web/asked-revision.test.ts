import { describe, expect, it } from "vitest";
import { addressAsOf, askedRevision } from "#web/shared/navigation/asked-revision.ts";

describe("[P51] the revision that an address asks for", () => {
  it.each([
    ["/claims/claim.A13", "?revision=3", 3],
    ["/terms/tool.saw", "?from=1&revision=0", 0],
    ["/sources/source.book", "", undefined],
    ["/evidence", "?revision=3", undefined],
    ["/terms/tool.saw/around", "?revision=3", 3],
    ["/terms/tool.saw/else", "?revision=3", undefined],
    ["/pieces/examination.x", "?revision=3", undefined],
    ["/claims/claim.A13", "?revision=", ""],
    ["/claims/claim.A13", "?revision=-1", "-1"],
    ["/claims/claim.A13", "?revision=1e3", "1e3"],
    ["/claims/claim.A13", "?revision=4294967296", "4294967296"],
  ])("%s%s", (path, search, asked) => {
    expect(askedRevision(path, search)).toBe(asked);
  });

  it("is carried along to what can be read so, and to nothing else", () => {
    expect(addressAsOf("/terms/tool.saw", 2)).toBe("/terms/tool.saw?revision=2");
    expect(addressAsOf("/terms/tool.saw?x=1", 2)).toBe("/terms/tool.saw?x=1&revision=2");
    expect(addressAsOf("/terms/tool.saw?revision=1", 2)).toBe("/terms/tool.saw?revision=1");
    expect(addressAsOf("/terms/tool.saw/around", 2)).toBe("/terms/tool.saw/around?revision=2");
    expect(addressAsOf("/terms/tool.saw/else", 2)).toBe("/terms/tool.saw/else");
    expect(addressAsOf("/evidence?kind=TOOL", 2)).toBe("/evidence?kind=TOOL");
    expect(addressAsOf("/terms/tool.saw", undefined)).toBe("/terms/tool.saw");
  });
});
