import { describe, expect, it } from "vitest";
import type { TermKind } from "#server/domain/term.ts";
import { termSearch } from "#server/search/term-search.ts";
import { readSeedLines } from "./read-seed-lines.ts";
import { parseSeed } from "./seed-graph.ts";

const { terms } = parseSeed(readSeedLines());
const search = termSearch();
for (const term of terms) search.apply({ after: term });
const first = (words: string, kind?: TermKind) =>
  search.find(words, kind === undefined ? {} : { kinds: [kind] }, 1)[0]?.term;

/** What those who buy, sell and mend furniture call a thing, and the term that it is. */
describe("[S13] words of the trade", () => {
  it.each([
    ["ogee foot", "feature.ogee-bracket-foot"],
    ["marlborough leg", "feature.marlborough-leg-plinth"],
    ["gadrooning", "feature.gadrooned-edge"],
    ["stop fluting", "feature.stop-fluted-leg"],
    ["fluting", "feature.fluted-quarter-columns"],
    ["barley twist", "feature.twist-turning"],
    ["ended out", "feature.feet-pieced-out"],
    ["pieced foot", "feature.feet-pieced-out"],
    ["wormholes", "feature.straight-clean-worm-holes"],
    ["case cut down", "feature.depth-reduced"],
    ["hand planed", "feature.hand-plane-troughs"],
    ["shiplap", "feature.lapped-back-boards"],
    ["tongue and groove", "feature.lapped-back-boards"],
    ["rabbeted backboards", "feature.back-of-nailed-boards"],
    ["tiger maple", "material.maple"],
    ["quarter sawn", "feature.quartered-boards"],
    ["secondary wood", "feature.hidden-wood"],
    ["batwing brass", "feature.willow-backplate"],
    ["cock beading", "feature.cockbead"],
    ["bail handle", "feature.bail"],
    ["wire nail", "hardware.wire-nail"],
  ])("%s finds %s first", (words, term) => {
    expect(first(words)).toContain(term);
  });

  it.each([
    ["dower chest", "form.chest"],
    ["marriage chest", "form.chest"],
    ["kas", "form.kas"],
    ["Schrank", "form.schrank"],
    ["ladderback", "form.turned-chair"],
    ["longcase clock", "form.clock-case"],
    ["lowboy", "form.companion-dressing-table"],
    ["linen press", "form.press"],
    ["tallboy", "form.chest-on-chest"],
  ])("%s is offered as the form %s first", (words, term) => {
    expect(first(words, "form")).toBe(term);
  });

  it("takes Holland for the Netherlands", () => {
    expect(first("Holland", "region")).toBe("region.netherlands");
  });
});

describe("[F2] where a thing is looked for", () => {
  it("a corner of a drawer is not looked for on a case that has no drawer", () => {
    const onCase = terms.filter(
      ({ label, parts = [] }) =>
        /\bdrawer (corner|front|sides)\b/.test(label) &&
        parts.some((part) => part === "part.drawer-side") &&
        parts.some((part) => part === "part.carcase"),
    );
    expect(onCase.map(({ id }) => id)).toEqual([]);
  });
});
