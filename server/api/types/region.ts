import { id } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { DatesBeside } from "../../use-cases/ask/compare-dates.ts";
import {
  FOUND_GROUPS,
  type FoundThere,
  MOST_LAID_OUT,
  outlineRegion,
  profileRegion,
  type RegionProfile,
  type SourceCount,
} from "../../use-cases/ask/profile-region.ts";
import { readRegionEvidence } from "../../use-cases/ask/read-region-evidence.ts";
import type { RegionCount } from "../../use-cases/ask/surveys/region-survey.ts";
import { surveyedSoon } from "../../use-cases/ask/surveys/surveyed-soon.ts";
import { type AsOf, asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import type { Context } from "../context.ts";

/** Entries that the lists of a profile are taken to have, for the cost. */
const ENTRIES = { found: 200, dates: 60, sources: 60, notFound: 20, narrower: 20 };

/** The counts of all regions, each marked with the revision; nothing while they are still being made. */
export async function readCounts(
  { surveys }: Context,
  asked: RevisionNumber | undefined,
): Promise<readonly AsOf<RegionCount>[] | undefined> {
  const soon = await surveyedSoon(surveys.regions(asked));
  if (soon === undefined) return undefined;
  const { what: survey, at } = soon;
  return survey.counts().map((count) => asOf(count, at));
}

/** The profiles of the regions that there are, in the order asked for; nothing while the counts of regions are still being made. */
export async function readProfiles(
  context: Context,
  of: readonly string[],
  asked: RevisionNumber | undefined,
): Promise<readonly AsOf<RegionProfile>[] | undefined> {
  const soon = await surveyedSoon(context.surveys.regions(asked));
  if (soon === undefined) return undefined;
  const { what: survey, at } = soon;
  const regions = of.map((region) => id<"term">(region));
  const laidOut = regions.filter((region) => survey.countOf(region).within <= MOST_LAID_OUT);
  const evidence = await readRegionEvidence(context, survey, laidOut, at);
  return regions.flatMap((region) => {
    const profile = laidOut.includes(region)
      ? profileRegion(evidence, region)
      : outlineRegion(survey, region);
    return profile ? [asOf(profile, at)] : [];
  });
}

/** What a region is known for and what is not known of it. */
export function addRegion(b: Builder) {
  const group = b.enumType("FoundGroup", {
    values: Object.fromEntries(FOUND_GROUPS.map((value) => [value.toUpperCase(), { value }])) as Record<
      string,
      { value: (typeof FOUND_GROUPS)[number] }
    >,
  });
  const count = b.objectRef<AsOf<RegionCount>>("RegionCount").implement({
    fields: (t) => ({
      region: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ region, at }, _, { load }) => load.terms.one(region, at),
      }),
      own: t.exposeInt("own", { description: "Claims that name it." }),
      within: t.exposeInt("within", {
        description: "Claims that name it or a region within it, each once.",
      }),
    }),
  });
  const found = b.objectRef<AsOf<FoundThere>>("FoundThere").implement({
    description: "Something that claims say was there.",
    fields: (t) => ({
      subject: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ subject, at }, _, { load }) => load.terms.one(subject, at),
      }),
      group: t.expose("group", { type: group }),
      claims: t.field({
        extensions: { entries: 3 },
        type: ["Claim"],
        resolve: ({ claims, at }) => claims.map((claim) => asOf(claim, at)),
      }),
    }),
  });
  const dates = b.objectRef<AsOf<DatesBeside>>("DatesBeside").implement({
    description: "A dated claim of a region beside one on the same subject elsewhere.",
    fields: (t) => ({
      subject: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ subject, at }, _, { load }) => load.terms.one(subject, at),
      }),
      here: t.field({ type: "Claim", resolve: ({ here, at }) => asOf(here, at) }),
      there: t.field({ type: "Claim", resolve: ({ there, at }) => asOf(there, at) }),
      lag: t.intList({
        description: "Fewest and most years that it is later here; null where nothing bounds it.",
        nullable: { list: false, items: true },
        resolve: ({ lag }) => lag,
      }),
    }),
  });
  const source = b.objectRef<AsOf<SourceCount>>("SourceCount").implement({
    fields: (t) => ({
      source: t.field({
        type: "Source",
        nullable: true,
        resolve: ({ source, at }, _, { load }) => load.sources.one(source, at),
      }),
      claims: t.exposeInt("claims"),
    }),
  });
  const profile = b.objectRef<AsOf<RegionProfile>>("RegionProfile").implement({
    description: "What accepted claims say of a region and the regions within it.",
    fields: (t) => ({
      region: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ region, at }, _, { load }) => load.terms.one(region, at),
      }),
      own: t.exposeInt("own"),
      within: t.exposeInt("within"),
      isOutline: t.exposeBoolean("isOutline", {
        description: `More than ${MOST_LAID_OUT} claims are within it, so that its lists are left empty; ask for regions within it.`,
      }),
      narrower: t.field({
        extensions: { entries: ENTRIES.narrower },
        type: [count],
        resolve: ({ narrower, at }) => narrower.map((each) => asOf(each, at)),
      }),
      found: t.field({
        extensions: { entries: ENTRIES.found },
        type: [found],
        resolve: ({ found, at }) => found.map((each) => asOf(each, at)),
      }),
      notFound: t.field({
        description: "Claims that keep something out of it, or confine it to other regions.",
        extensions: { entries: ENTRIES.notFound },
        type: ["Claim"],
        resolve: ({ notFound, at }) => notFound.map((claim) => asOf(claim, at)),
      }),
      besideWider: t.field({
        description:
          "Its dates beside the nearest wider region that has one for the same; longest lag first.",
        extensions: { entries: ENTRIES.dates },
        type: [dates],
        resolve: ({ besideWider, at }) => besideWider.map((each) => asOf(each, at)),
      }),
      centre: t.field({
        description: "The town whose fashion its shops followed, if one is set down.",
        type: "Term",
        nullable: true,
        resolve: ({ centre, at }, _, { load }) => (centre ? load.terms.one(centre, at) : null),
      }),
      besideCentre: t.field({
        description: "Its dates beside that town or the region around it.",
        extensions: { entries: ENTRIES.dates },
        type: [dates],
        resolve: ({ besideCentre, at }) => besideCentre.map((each) => asOf(each, at)),
      }),
      sources: t.field({
        extensions: { entries: ENTRIES.sources },
        type: [source],
        resolve: ({ sources, at }) => sources.map((each) => asOf(each, at)),
      }),
      unsourced: t.exposeInt("unsourced", { description: "Claims that cite no published source." }),
      wider: t.field({
        description: "The nearest wider region that has claims beyond its own.",
        type: "Term",
        nullable: true,
        resolve: ({ wider, at }, _, { load }) => (wider ? load.terms.one(wider, at) : null),
      }),
      missingKinds: t.field({
        description: "Kinds of subject that the wider region has claims on, and this one none.",
        type: [b.enums.termKind],
        resolve: ({ missingKinds }) => missingKinds,
      }),
    }),
  });
  return { count, profile };
}
export type RegionTypes = ReturnType<typeof addRegion>;
