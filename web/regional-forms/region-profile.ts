import type { RegionPageQuery } from "./RegionPage.graphql.ts";

/** What the page of a region is given of it. */
export type RegionProfile = NonNullable<RegionPageQuery["regionProfile"]>;
