import type { PartId } from "../../domain/ids.ts";
import type { Span } from "../../domain/years.ts";
import type { Item } from "./items.ts";

/** Years that one proof leaves to what was seen, by span, and what it rests on that can be given up. */
export interface Bound {
  readonly fits: Uint8Array;
  readonly drops: readonly Item[];
}

/** One thing seen or claimed, with all that bounds it. */
export interface Sighting {
  /** The observation, or the part of the claim. */
  readonly name: string;
  readonly misread: Item | undefined;
  readonly altered: Item | undefined;
  readonly bounds: readonly Bound[];
}

/** All that is seen on a unit, if its parts are from one place of a region of their own. */
export interface Variant {
  /** The years up to the examination, cut where something here begins or ends. */
  readonly spans: readonly Span[];
  readonly sightings: readonly Sighting[];
}

/** Parts that are together, and so of one state and one year; or, without parts, what is claimed of the whole. */
export interface Unit {
  readonly parts: readonly PartId[];
  readonly later: Item | undefined;
  readonly reused: Item | undefined;
  /** One of these is true; there is one alone unless parts are from a region of their own, whose places differ. */
  readonly variants: readonly Variant[];
}

/** Two units that cannot both be of the first making unless this is given up. */
export interface Pair {
  readonly units: readonly [number, number];
  readonly item: Item;
}
