import type { Problem } from "../domain/problem.ts";

/** One thing of the seed and the place where it stands. */
export interface SeedLine<Thing extends { readonly id: string } = { readonly id: string }> {
  readonly thing: Thing;
  readonly file: string;
  /** The first line of a file is 1. */
  readonly line: number;
}

/** A problem said of its line: file, line, id and field stand before what is wrong and what to do. */
export function said({ file, line, thing }: SeedLine, { path, ...found }: Problem): Problem {
  const field = path.map((step, i) => (typeof step === "number" ? `[${step}]` : i === 0 ? step : `.${step}`));
  const place = [file, `line ${line}`, thing.id, ...(path.length === 0 ? [] : [`field ${field.join("")}`])];
  return { ...found, path, message: `${place.join(", ")}: ${found.message}` };
}
