import { createHash } from "node:crypto";
import { dumpLine } from "#server/chain/seal-dump.ts";
import type { DumpRecord } from "#server/domain/dump.ts";

/** The revisions and examinations of a dump as version 1 had them. */
export function asVersionOne(dump: readonly DumpRecord[]): DumpRecord[] {
  const things = dump.filter(({ kind }) => kind === "revision" || kind === "examination");
  const lines: DumpRecord[] = [{ kind: "header", format: "scribeline/dump", version: 1 }, ...things];
  const counted = (kind: string) => things.filter((record) => record.kind === kind).length;
  const sha256 = createHash("sha256").update(lines.map(dumpLine).join("")).digest("hex");
  return [
    ...lines,
    { kind: "trailer", revisions: counted("revision"), examinations: counted("examination"), sha256 },
  ];
}
