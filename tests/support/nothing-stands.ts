import type { Standings } from "#server/ports/standings.ts";

/** As it is right after a start: no examination was examined again yet. */
export const NOTHING_STANDS: Standings = {
  find: () => undefined,
  looked: () => {},
  touchedBy: async () => new Set(),
  stored: async () => undefined,
  progress: () => ({ known: 0, waiting: 0, left: 0 }),
};
