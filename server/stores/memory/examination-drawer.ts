import { compareIds, compareText } from "../../domain/compare.ts";
import type { Examination } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { Page, PageAsk } from "../../ports/store.ts";
import { pageOf } from "./page-of.ts";

/** All versions of all examinations, oldest first within one. */
export type Drawer = ReadonlyMap<ExaminationId, readonly Examination[]>;

/** One version, or the newest. */
export function findVersion(drawer: Drawer, id: ExaminationId, version?: number): Examination | undefined {
  const versions = drawer.get(id) ?? [];
  return version === undefined ? versions.at(-1) : versions[version - 1];
}

/** The drawer with one more version. */
export const withVersion = (drawer: Drawer, version: Examination): Drawer =>
  new Map([...drawer, [version.id, [...(drawer.get(version.id) ?? []), version]]]);

/** Every version of every examination, by id and version. */
export const allVersions = (drawer: Drawer): readonly Examination[] =>
  [...drawer.keys()].sort().flatMap((id) => drawer.get(id) ?? []);

/** The newest versions that are not deleted and not left out, last changed first. */
export function listNewest(
  drawer: Drawer,
  ask: PageAsk,
  isLeftOut: (id: ExaminationId) => boolean,
): Page<Examination> {
  const newest = [...drawer.values()]
    .flatMap((versions) => versions.at(-1) ?? [])
    .filter(({ id, deleted }) => !deleted && !isLeftOut(id))
    .sort(compare);
  return pageOf(newest, ask, cursorOf, (row, cursor) => {
    const [changedAt = "", id = ""] = cursor.split("~");
    return compare(row, { changedAt, id }) > 0;
  });
}

const cursorOf = ({ changedAt, id }: Examination): string => `${changedAt}~${id}`;

function compare(
  a: { readonly changedAt: string; readonly id: string },
  b: { readonly changedAt: string; readonly id: string },
): number {
  return compareText(b.changedAt, a.changedAt) || compareIds(a, b);
}
