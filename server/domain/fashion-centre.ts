import { id, type TermId } from "./ids.ts";
import { ancestors, type Broader, isWithin } from "./region.ts";

/** The town whose fashion the shops of a wide region followed, as the trade measures their lag. */
const CENTRES: ReadonlyMap<TermId, TermId> = new Map([
  [id<"term">("region.britain"), id<"term">("region.london")],
  [id<"term">("region.ireland"), id<"term">("region.london")],
  [id<"term">("region.channel-islands"), id<"term">("region.london")],
  [id<"term">("region.united-states"), id<"term">("region.london")],
  [id<"term">("region.france"), id<"term">("region.paris")],
]);

/** The centre of fashion of a region; undefined where none is set down, or where the region is it or holds it. */
export function fashionCentre(region: TermId, broader: Broader): TermId | undefined {
  const led = ancestors(region, broader).find((above) => CENTRES.has(above));
  const centre = led === undefined ? undefined : CENTRES.get(led);
  if (centre === undefined || isWithin(region, centre, broader)) return undefined;
  return isWithin(centre, region, broader) ? undefined : centre;
}

/** Every region that is a centre or follows one, for a check that the graph has them. */
export const regionsOfCentres = (): readonly TermId[] => [...CENTRES.keys(), ...CENTRES.values()];
