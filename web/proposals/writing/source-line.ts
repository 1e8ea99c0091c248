import { citeSource } from "#server/domain/cite-source.ts";
import { id } from "#server/domain/ids.ts";
import type { CslItem } from "#server/domain/source.ts";

/** A source in a line, as it is cited. */
export const sourceLine = (csl: CslItem): string =>
  citeSource({ id: id(csl.id), kind: "book", csl, reading: "known" });
