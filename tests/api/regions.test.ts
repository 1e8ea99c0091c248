import { afterEach, describe, expect, it, vi } from "vitest";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { MOST_LAID_OUT } from "#server/use-cases/ask/profile-region.ts";
import { afterSeconds } from "#tests/support/after-seconds.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { put } from "#tests/support/build-graph.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openApi } from "#tests/support/open-api.ts";
import { regionGraph } from "#tests/support/region-graph.ts";

const PROFILE = `own within unsourced missingKinds region { label } wider { id } centre { id }
  narrower { own region { id } }
  found { group subject { id } claims { says citations { basis source { text } } } }
  notFound { id } besideWider { lag } besideCentre { lag subject { label } here { id } there { region { label } } }
  sources { claims source { id } }`;

afterEach(() => {
  vi.useRealTimers();
});

/** An API over a store that holds back what comes after the claims until it is told to go on. */
async function openHeld(...changes: Parameters<typeof openApi>[0]) {
  const store = openMemoryStore();
  const { allClaims } = store;
  const { promise: held, resolve: goOn } = Promise.withResolvers<void>();
  store.allClaims = async function* (...asked) {
    await held;
    yield* allClaims(...asked);
  };
  return { ...(await openApi(changes, store)), goOn };
}

describe("regions", () => {
  const COUNTED =
    '{ regionsMade regions { within } regionProfile(id: "region.boston") { within } regionProfiles(of: []) { own } }';

  it("[R11] while they are being counted, who asks is told how far that has come instead of waiting for it", async () => {
    const { ask, goOn } = await openHeld(regionGraph);
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const { data, errors } = await afterSeconds(ask(COUNTED));
    expect(errors).toEqual([]);
    expect(data).toMatchObject({ regions: null, regionProfile: null, regionProfiles: null });
    // All terms are gone through, and no claim yet.
    const of = (kind: string) => regionGraph.filter((edit) => edit.kind === kind).length;
    const share = of("term") / (of("term") + of("claim"));
    expect((await ask("{ regionsMade }")).data.regionsMade).toBe(Math.floor(100 * share));
    goOn();
    await ask("{ regions { within } }");
    const then = await ask(COUNTED);
    expect(then.data).toMatchObject({ regionsMade: 100, regionProfile: { within: 3 }, regionProfiles: [] });
    expect(then.data.regions).toHaveLength(11);
  });

  it("[R11] on an old revision is told of that one, and the newest is there", async () => {
    const { ask, store } = await openApi([
      regionGraph.filter(({ kind }) => kind === "term"),
      regionGraph.filter(({ kind }) => kind !== "term"),
    ]);
    await ask("{ regions { within } }");
    const { allTerms } = store;
    const { promise: held, resolve: goOn } = Promise.withResolvers<void>();
    store.allTerms = async function* (...asked) {
      await held;
      yield* allTerms(...asked);
    };
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const old = await afterSeconds(ask("{ regions(revision: 1) { within } }"));
    expect(old.data).toEqual({ regions: null });
    const made = await ask("{ regionsMade(revision: 1) newest: regionsMade regions { within } }");
    expect(made.data).toMatchObject({ regionsMade: 0, newest: 100 });
    expect(made.data.regions).toHaveLength(11);
    goOn();
    expect((await ask("{ regions(revision: 1) { within } }")).data.regions).toHaveLength(11);
    expect((await ask("{ regionsMade(revision: 1) }")).data).toEqual({ regionsMade: 100 });
  });

  it("[R11] that a long change is still being laid on are not taken for regions that there are not", async () => {
    const { ask, store } = await openApi([regionGraph]);
    await ask("{ regions { within } }");
    const { changeAt } = store;
    const { promise: held, resolve: goOn } = Promise.withResolvers<void>();
    store.changeAt = async (at) => {
      await held;
      return changeAt(at);
    };
    answered(await store.commit(aCommit([put("term", { id: "part.lid", kind: "part", label: "lid" })])));
    const of = '{ regionsMade regionProfile(id: "region.boston") { within } }';
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    expect((await afterSeconds(ask(of))).data).toEqual({ regionsMade: 99, regionProfile: null });
    goOn();
    expect((await ask(of)).data).toEqual({ regionsMade: 100, regionProfile: { within: 3 } });
  });

  it("[R1] are listed with their claims counted", async () => {
    const { ask } = await openApi([regionGraph]);
    const { data, errors } = await ask("{ regions { own within region { id } } }");
    expect(errors).toEqual([]);
    expect(data.regions).toHaveLength(11);
    expect(data.regions).toContainEqual({ own: 1, within: 6, region: { id: "region.massachusetts" } });
  });

  it("[R2] [R7] have a profile with what was there and where it is known from", async () => {
    const { ask } = await openApi([regionGraph]);
    const { data, errors } = await ask(`{ regionProfile(id: "region.boston") { ${PROFILE} } }`);
    expect(errors).toEqual([]);
    expect(data.regionProfile).toMatchObject({
      ...{ own: 3, within: 3, unsourced: 1, missingKinds: ["FORM", "PRACTICE"], narrower: [] },
      ...{
        region: { label: "Boston" },
        wider: { id: "region.massachusetts" },
        centre: { id: "region.london" },
      },
      notFound: [{ id: "claim.no-kast" }, { id: "claim.shell-salem" }],
      besideWider: [{ lag: [10, 10] }],
      besideCentre: [
        { lag: [25, 35], here: { id: "claim.plain-boston" }, there: { region: { label: "Britain" } } },
      ],
      sources: [{ claims: 2, source: { id: "source.one" } }],
    });
    expect(data.regionProfile.found[0]).toMatchObject({ group: "PRACTICE", subject: { id: "style.plain" } });
  });

  it("[R8] are read with a call for each region within them, and one for what is claimed besides of what is there", async () => {
    const { ask } = await openApi([regionGraph]);
    const ask3 = (of: readonly string[]) =>
      ask(`query ($of: [ID!]!) { regionProfiles(of: $of) { within found { subject { label } } } }`, { of });
    const one = await ask3(["region.boston"]);
    const three = await ask3(["region.boston", "region.salem", "region.britain"]);
    expect(three.errors).toEqual([]);
    expect(three.data.regionProfiles.map(({ within }: { within: number }) => within)).toEqual([3, 2, 1]);
    expect(one.calls).toEqual(["allClaims", "neighbourhood", "terms"]);
    // Boston, Salem, and Britain with London within it.
    expect(three.calls.filter((call) => call === "allClaims")).toHaveLength(4);
    expect(three.calls.filter((call) => call !== "allClaims")).toEqual(["neighbourhood", "terms"]);
  });

  it("[R8] that there are not are null or left out, and more than three are refused", async () => {
    const { ask } = await openApi([regionGraph]);
    expect((await ask('{ regionProfile(id: "tool.lathe") { own } }')).data).toEqual({
      regionProfile: null,
    });
    const some = await ask('{ regionProfiles(of: ["region.atlantis", "region.salem"]) { own } }');
    expect(some.data.regionProfiles).toEqual([{ own: 2 }]);
    const many = await ask('{ regionProfiles(of: ["a", "b", "c", "d"]) { own } }');
    expect(many.errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
    expect(many.calls).toEqual([]);
  });

  it("[A4] are read on the revision asked for", async () => {
    const { ask } = await openApi([
      regionGraph.filter(({ kind }) => kind === "term"),
      regionGraph.filter(({ kind }) => kind !== "term"),
    ]);
    const before = await ask(
      '{ regionProfile(id: "region.boston", revision: 1) { within region { label } } }',
    );
    expect(before.data.regionProfile).toEqual({ within: 0, region: { label: "Boston" } });
    const never = await ask("{ regions(revision: 9) { own } }");
    expect(never.errors).toMatchObject([{ extensions: { code: "UNKNOWN_REVISION" } }]);
  });

  it("[R10] and kinds of part lead to the features looked for", async () => {
    const { ask } = await openApi([regionGraph]);
    const { data } = await ask(
      '{ part: term(id: "part.drawer") { featuresOnPart { part { id } features { label } } } tool: term(id: "tool.lathe") { featuresOnPart { part { id } } } }',
    );
    expect(data.part.featuresOnPart[0]).toEqual({
      part: { id: "part.drawer" },
      features: [{ label: "wear of a drawer" }, { label: "carved shell" }],
    });
    expect(data.tool.featuresOnPart).toEqual([]);
  });

  it("[R12] with more claims than are laid out at once are outlined, and others laid out beside them", async () => {
    const more = Array.from({ length: MOST_LAID_OUT - 2 }, (_, n) =>
      put(
        "claim",
        aClaim({
          ...{ id: `claim.more-${n}`, relation: "attested", subject: "style.plain" },
          ...{ region: "region.boston", when: String(1700 + (n % 100)) },
        }),
      ),
    );
    const { ask } = await openApi([regionGraph, more]);
    const { data, errors } = await ask(
      `{ regionProfiles(of: ["region.boston", "region.nowhere", "region.britain"]) { isOutline within region { label } wider { id }
        found { group } notFound { id } besideWider { lag } besideCentre { lag } sources { claims } } }`,
    );
    expect(errors).toEqual([]);
    const [boston, britain, ...others] = data.regionProfiles;
    expect(others).toEqual([]);
    expect(boston).toMatchObject({ isOutline: true, within: MOST_LAID_OUT + 1, region: { label: "Boston" } });
    const lists = ["found", "notFound", "besideWider", "besideCentre", "sources"];
    for (const list of lists) expect(boston[list], list).toEqual([]);
    expect(boston.wider).not.toBeNull();
    expect(britain).toMatchObject({ isOutline: false, region: { label: "Britain" } });
    expect(britain.found.length).toBeGreaterThan(0);
  }, 120_000);
});
