/** Writes one line about the running program, as one JSON object. Never personal text, never what was asked for. */
export type Log = (line: {
  readonly level: "info" | "warn" | "error";
  readonly event: string;
  readonly [field: string]: unknown;
}) => void;
