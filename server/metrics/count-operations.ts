import type { Tell } from "../ports/metrics.ts";
import { openCounter } from "./open-counter.ts";
import { openHistogram } from "./open-histogram.ts";

/** One GraphQL operation that was answered, with the codes of its errors. */
export interface EndedOperation {
  readonly name: string | undefined;
  readonly type: string;
  readonly codes: readonly string[];
  /** Milliseconds. */
  readonly took: number;
}

/**
 * Counts operations by name. A name is text of whoever asks: only those of our own pages (`names`) are told, all others are `other`.
 */
export function countOperations(names: readonly string[]): {
  readonly ended: (operation: EndedOperation) => void;
  readonly tell: Tell;
} {
  const known = new Set(names);
  const operations = openCounter({
    name: "scribeline_operations",
    help: "Operations of the API by name (those of our own pages; else other), and whether they were answered without an error.",
  });
  const errors = openCounter({
    name: "scribeline_operation_errors",
    help: "Operations with an error of this code.",
  });
  const seconds = openHistogram({
    name: "scribeline_operation_seconds",
    help: "How long operations took, by name.",
    unit: "seconds",
  });
  return {
    ended: ({ name, type, codes, took }) => {
      const operation = name !== undefined && known.has(name) ? name : "other";
      operations.add({ operation, type, outcome: codes.length === 0 ? "answered" : "error" });
      for (const code of new Set(codes)) errors.add({ code });
      seconds.take(took / 1000, { operation });
    },
    tell: () => [operations.tell(), errors.tell(), seconds.tell()],
  };
}
