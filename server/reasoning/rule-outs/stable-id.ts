const OFFSETS = [0x811c9dc5, 0x01000193];
const PRIME = 0x01000193;

/** An id that depends on a text alone: the same on every machine, in every report that has it (FNV-1a, two runs of 32 bits). */
export function stableId(kind: string, text: string): string {
  const halves = OFFSETS.map((offset) => {
    let hash = offset;
    for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), PRIME) >>> 0;
    return hash.toString(16).padStart(8, "0");
  });
  return `${kind}.${halves.join("")}`;
}
