import type { TermKind } from "./term.ts";

/** Kinds of term that can be seen, or looked for, on a part. */
export const OBSERVED_KINDS: readonly TermKind[] = ["feature", "hardware", "material", "finish"];
