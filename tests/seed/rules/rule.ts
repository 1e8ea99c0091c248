import type { SeedGraph } from "../seed-graph.ts";

/** A rule of the seed graph: what breaks it in a seed, and edits that must be found out. */
export interface Rule {
  readonly says: string;
  readonly find: (seed: SeedGraph) => readonly string[];
  readonly brokenBy: Readonly<Record<string, (seed: SeedGraph) => SeedGraph>>;
}
