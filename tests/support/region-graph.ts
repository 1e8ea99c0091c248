import type { Change } from "#server/domain/change.ts";
import type { Citations } from "#server/domain/claim.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { aClaim } from "./build-claim.ts";
import { aSource } from "./build-graph.ts";

const term = (id: string, label: string, rest: object = {}): Term =>
  ({ id, kind: id.split(".")[0] as TermKind, label, ...rest }) as unknown as Term;
const published = (source: string): Citations =>
  [{ basis: "published", source, locator: "p. 1" }] as unknown as Citations;

/**
 * Towns of a made-up trade under real names of regions: London leads, Boston follows, Salem lies beside Boston, and Paris
 * is another country. Dates are made up.
 */
export const regionGraph: Change = [
  ...[
    term("region.world", "world"),
    term("region.europe", "Europe", { broader: "region.world" }),
    term("region.britain", "Britain", { broader: "region.europe" }),
    term("region.london", "London", { broader: "region.britain" }),
    term("region.france", "France", { broader: "region.europe" }),
    term("region.paris", "Paris", { broader: "region.france" }),
    term("region.north-america", "North America", { broader: "region.world" }),
    term("region.united-states", "United States", { broader: "region.north-america" }),
    term("region.massachusetts", "Massachusetts", { broader: "region.united-states" }),
    term("region.boston", "Boston", { broader: "region.massachusetts", note: "A port." }),
    term("region.salem", "Salem", { broader: "region.massachusetts" }),
    term("material.wood", "wood"),
    term("material.pine", "pine", { broader: "material.wood" }),
    term("feature.pine-inside", "pine in hidden parts", { parts: ["part.drawer-bottom"] }),
    term("feature.drawer-wear", "wear of a drawer", { parts: ["part.drawer"] }),
    term("feature.shell", "carved shell", { parts: ["part.drawer-bottom", "part.drawer"] }),
    term("practice.stacking", "stacked blocks"),
    term("style.plain", "plain style"),
    term("form.kast", "kast"),
    term("tool.lathe", "lathe"),
    term("maker.wharf-shop", "shop at the wharf"),
    term("part.drawer", "drawer"),
    term("part.drawer-bottom", "drawer bottom", { broader: "part.drawer" }),
    term("part.leg", "leg"),
  ].map((after) => ({ kind: "term" as const, after })),
  ...["source.one", "source.two"].map((id) => ({ kind: "source" as const, after: aSource(id) })),
  ...[
    aClaim({
      id: "claim.pine",
      relation: "requires",
      subject: "feature.pine-inside",
      ways: [["material.pine"]],
    }),
    aClaim({
      id: "claim.pine-boston",
      relation: "typical of",
      subject: "feature.pine-inside",
      object: "region.boston",
      citations: published("source.one"),
    }),
    aClaim({
      id: "claim.plain-boston",
      relation: "current",
      subject: "style.plain",
      region: "region.boston",
      when: "1730/1760",
      citations: published("source.one"),
    }),
    aClaim({
      id: "claim.plain-britain",
      relation: "current",
      subject: "style.plain",
      region: "region.britain",
      when: "1700~/1730",
      citations: published("source.two"),
    }),
    aClaim({
      id: "claim.plain-states",
      relation: "current",
      subject: "style.plain",
      region: "region.united-states",
      when: "1720/1780",
    }),
    aClaim({
      id: "claim.shell-salem",
      relation: "confined to",
      subject: "feature.shell",
      region: "region.united-states",
      regions: ["region.salem"],
    }),
    aClaim({
      id: "claim.kast-paris",
      relation: "confined to",
      subject: "form.kast",
      regions: ["region.paris"],
    }),
    aClaim({
      id: "claim.no-kast",
      relation: "not found in",
      subject: "form.kast",
      region: "region.massachusetts",
    }),
    aClaim({
      id: "claim.wharf",
      relation: "active",
      subject: "maker.wharf-shop",
      region: "region.boston",
      when: "1740/1770",
    }),
    aClaim({
      id: "claim.stacking",
      relation: "attested",
      subject: "practice.stacking",
      region: "region.salem",
      when: "1750",
    }),
    aClaim({
      id: "claim.lathe",
      relation: "introduced",
      subject: "tool.lathe",
      region: "region.massachusetts",
      when: "1800",
      status: "rejected",
    }),
  ].map((after) => ({ kind: "claim" as const, after })),
];
