import type { EditKind } from "#server/domain/edit-words.ts";

/** How many things of a kind became what: "3 claims added". */
export const sayGroup = ({
  kind,
  does,
  count,
}: {
  readonly kind: "term" | "claim" | "source";
  readonly does: EditKind;
  readonly count: number;
}): string => `${count} ${kind}${count === 1 ? "" : "s"} ${does}`;
