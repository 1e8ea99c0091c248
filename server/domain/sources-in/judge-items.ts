import { citeSource } from "../cite-source.ts";
import { id } from "../ids.ts";
import type { CslItem } from "../source.ts";
import { checkItem, withTexts } from "./check-item.ts";
import { findMissing } from "./find-missing.ts";
import { type StandingSources, standingSources } from "./find-standing.ts";
import { KINDS } from "./kinds.ts";
import type { DraftItem, KnownItem, ReadItem, Refusal } from "./read-item.ts";
import { suggestId } from "./suggest-id.ts";

/** What would become of each item of a list: a source as it would be stored, or why not. */
export function judgeItems(drafts: readonly DraftItem[], known: readonly KnownItem[]): readonly ReadItem[] {
  const standing = standingSources(known);
  const lines = new Map<string, number>();
  return drafts.map((draft, index) => {
    const item = judgeItem(draft, index + 1, standing, lines);
    if (draft.key !== "" && !lines.has(draft.key.toLowerCase()))
      lines.set(draft.key.toLowerCase(), draft.line);
    return item;
  });
}

function judgeItem(
  { line, key, draft, leftOut = [], placeOf, refusals: before = [] }: DraftItem,
  at: number,
  standing: StandingSources,
  lines: ReadonlyMap<string, number>,
): ReadItem {
  const refused = (refusals: readonly Refusal[]): ReadItem => ({
    ...{ at, line, text: nameOf(draft, key) || `item ${at}`, missing: [], leftOut: [] },
    refusals: refusals.map((refusal) => ({ line, ...refusal })),
  });
  // Of what could not be read to its end nothing more is said.
  if (before.length > 0) return refused(before);
  if (typeof draft !== "object" || draft === null || Array.isArray(draft))
    return refused([{ why: "It is not an item.", remedy: "Write an object with type and title." }]);
  const twice = lines.get(key.toLowerCase());
  const refusals: readonly Refusal[] = [
    ...checkItem(draft as Record<string, unknown>).map(({ of, ...refusal }) => ({
      ...(placeOf?.(of) ?? { field: of }),
      ...refusal,
    })),
    ...(key === ""
      ? [{ why: "It has no id.", remedy: "Give it one that no other item of the list has." }]
      : []),
    ...(key !== "" && twice !== undefined
      ? [{ why: `The name ${key} stands in line ${twice} already.`, remedy: "Give one of them another." }]
      : []),
  ];
  if (refusals.length > 0) return refused(refusals);
  const plain = withTexts(draft as CslItem);
  const found = standing.find(plain, key);
  const csl: CslItem = { ...plain, id: suggestId(plain, key, standing.hasId) };
  standing.add(csl, at);
  const kind = KINDS[csl.type];
  return {
    ...{ at, line, csl, leftOut, refusals },
    text: citeSource({ id: id(csl.id), kind: kind ?? "book", csl, reading: "known" }),
    ...(kind ? { kind } : {}),
    missing: findMissing(csl),
    ...(found ? { standing: found } : {}),
  };
}

function nameOf(draft: unknown, key: string): string {
  const title = (draft as { title?: unknown } | null | undefined)?.title;
  return typeof title === "string" && title.trim() !== "" ? title : key;
}
