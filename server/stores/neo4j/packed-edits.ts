import { zstdCompressSync, zstdDecompressSync } from "node:zlib";

/** Some edits of a change as they lie on a node: their canonical JSON, or its bytes compressed with zstd. */
export interface PackedEdits {
  readonly edits?: string | null;
  readonly packed?: Int8Array | null;
}

/** From so many signs on edits are packed: a tenth of the bytes is written then, to the store and to its log. */
const WORTH_PACKING = 10_000;

/** The properties of a node for the canonical JSON of some edits. */
export function packedEdits(text: string): PackedEdits {
  if (text.length < WORTH_PACKING) return { edits: text };
  const { buffer, byteOffset, length } = zstdCompressSync(text);
  return { packed: new Int8Array(buffer, byteOffset, length) };
}

/** The canonical JSON of the edits of a node. Throws a SyntaxError where that is none any more. */
export function editsText({ edits, packed }: PackedEdits): string {
  if (packed === null || packed === undefined) return edits ?? "";
  try {
    return zstdDecompressSync(packed).toString("utf8");
  } catch (failure) {
    throw new SyntaxError("The edits cannot be unpacked", { cause: failure });
  }
}
