import type { Part } from "#server/domain/examination.ts";
import type { PartId } from "#server/domain/ids.ts";
import type { PartSummary } from "#server/domain/report.ts";
import { chestOfDrawers } from "./chest-of-drawers.ts";
import { dropLeafTable } from "./drop-leaf-table.ts";
import { fallFrontDesk } from "./fall-front-desk.ts";
import { highChest } from "./high-chest.ts";
import { press, wardrobe } from "./press.ts";
import type { DrawnForm, Shape, View } from "./shape.ts";
import { sideChair } from "./side-chair.ts";

/**
 * How the parts of a piece find their shapes.
 *
 * A shape shows one kind of part. It stands for the parts of the piece that are
 *   1. of exactly that kind; if there are none, of the next wider kind below (a drawer front stands for "Drawers").
 *      Where all of that kind lie within parts of a wider one, the other parts of that wider kind keep their shapes:
 *      "Fronts" within "Upper drawers" leave the front of the "Lowest drawer" to it;
 *   2. if no wider kind is recorded either, of a narrower kind (a foot stands for "Foot blocks").
 * Where a kind has several shapes in a view and several parts in the piece, they are paired in order: parts as they
 * are listed, shapes top to bottom. Shapes with one `slot` are two sights of one thing (a drawer bottom from above and
 * from beneath) and count once. Kinds that cannot be pointed at (finish, fasteners, glue) have no shape: the list of
 * parts has them. A shape that stands for nothing is a part not recorded yet.
 */
const WIDER: Readonly<Record<string, string>> = {
  "part.drawer-front": "part.drawer",
  "part.drawer-side": "part.drawer",
  "part.drawer-back": "part.drawer",
  "part.drawer-bottom": "part.drawer",
  "part.carcase-side": "part.carcase",
  "part.case-bottom": "part.carcase",
  "part.drawer-blade": "part.carcase",
  "part.drawer-runner": "part.carcase",
  "part.dustboard": "part.carcase",
  "part.back": "part.carcase",
  "part.shelf": "part.carcase",
  "part.upper-case": "part.carcase",
  "part.lower-case": "part.carcase",
  "part.door-panel": "part.door",
  "part.foot-block": "part.foot",
  "part.foot": "part.base",
  "part.cornice": "part.moulding",
  "part.moulding": "part.base",
  "part.seat-rail": "part.rail",
  "part.crest-rail": "part.rail",
  "part.stretcher": "part.rail",
  "part.apron": "part.rail",
  "part.rail": "part.frame",
  "part.leaf-support": "part.leg",
  "part.leg": "part.frame",
  "part.stile": "part.frame",
  "part.corner-block": "part.frame",
  "part.marble-top": "part.top",
  "part.handle": "part.hardware",
  "part.escutcheon": "part.hardware",
  "part.lock": "part.escutcheon",
  "part.hinge": "part.hardware",
};

/** Forms that have a drawing. */
export const DRAWN_FORMS: readonly DrawnForm[] = [
  chestOfDrawers,
  highChest,
  dropLeafTable,
  sideChair,
  fallFrontDesk,
  wardrobe,
  press,
];

/**
 * The drawing for a form: its own, or that of the nearest broader form in `forms` (the form first); as the features
 * that were seen make it, where it is drawn so.
 */
export function findDrawing(forms: readonly string[], seen: readonly string[] = []): DrawnForm | undefined {
  const [drawn] = forms.flatMap((form) => DRAWN_FORMS.find((each) => each.form === form) ?? []);
  const asSeen = drawn?.asSeen?.find(({ feature }) => seen.includes(feature));
  return drawn && asSeen ? { ...drawn, views: asSeen.views } : drawn;
}

const partsOfKind = (parts: readonly Part[], kind: string): readonly Part[] =>
  parts.filter((part) => part.kind === kind);

/** True if `part` lies within `whole`, over any number of steps. */
function liesWithin(parts: readonly Part[], part: Part, whole: Part): boolean {
  const passed = new Set<string>();
  for (let at = part.within; at !== undefined && !passed.has(at); ) {
    if (at === whole.id) return true;
    passed.add(at);
    at = parts.find((each) => each.id === at)?.within;
  }
  return false;
}

/** The parts a kind of shape can stand for, by the rules above. */
function candidates(parts: readonly Part[], kind: string): readonly Part[] {
  let exact: readonly Part[] = [];
  for (let at: string | undefined = kind; at !== undefined; at = WIDER[at]) {
    const found = partsOfKind(parts, at);
    if (exact.length === 0) {
      exact = found;
      continue;
    }
    const inside = (whole: Part) => exact.filter((part) => liesWithin(parts, part, whole));
    if (exact.every((part) => found.some((whole) => liesWithin(parts, part, whole))))
      exact = found.flatMap((whole) => (inside(whole).length > 0 ? inside(whole) : [whole]));
  }
  if (exact.length > 0) return exact;
  const isNarrower = (of: string | undefined): boolean =>
    of !== undefined && (WIDER[of] === kind || isNarrower(WIDER[of]));
  return parts.filter((part) => isNarrower(part.kind));
}

/** For each shape of a view, by its key, the parts of the piece it stands for; empty where nothing is recorded. */
export function pairShapes(view: View, parts: readonly Part[]): ReadonlyMap<string, readonly PartId[]> {
  const pairs = new Map<string, readonly PartId[]>();
  const byCandidates = new Map<string, { parts: readonly Part[]; slots: Map<string, Shape[]> }>();
  for (const shape of view.shapes) {
    const found = candidates(parts, shape.kind);
    const key = found.map((part) => part.id).join(" ");
    const entry = byCandidates.get(key) ?? { parts: found, slots: new Map<string, Shape[]>() };
    const slot = shape.slot ?? shape.key;
    entry.slots.set(slot, [...(entry.slots.get(slot) ?? []), shape]);
    byCandidates.set(key, entry);
  }
  for (const { parts: found, slots } of byCandidates.values()) {
    const shares = [...slots.values()];
    shares.forEach((shapes, i) => {
      const from = Math.floor((i * found.length) / shares.length);
      const to = Math.max(from + 1, Math.floor(((i + 1) * found.length) / shares.length));
      for (const shape of shapes)
        pairs.set(
          shape.key,
          found.slice(from, to).map((part) => part.id),
        );
    });
  }
  return pairs;
}

const WORST_FIRST: readonly PartSummary["speaks"][] = [
  "against-hard",
  "against-soft",
  "sign",
  "for",
  "nothing",
  "not-looked",
];

/** What is hatched on a shape that stands for several parts: the worst that any of them says. */
export const worstOf = (speaks: readonly PartSummary["speaks"][]): PartSummary["speaks"] =>
  WORST_FIRST.find((one) => speaks.includes(one)) ?? "not-looked";
