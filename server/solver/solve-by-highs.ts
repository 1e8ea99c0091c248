import loadHighs from "highs";

/** Branches after which HiGHS gives up on one program: a number and not a time, so that every machine gives up on the same ones. */
const MOST_NODES = 20_000;

/** The value of each variable at the optimum of a program in the LP format of CPLEX; nothing where the solver did not get there. */
export type SolveProgram = (text: string) => ((variable: string) => number | undefined) | undefined;

interface Loaded {
  solve(text: string, options: Readonly<Record<string, number>>): Solution;
}
interface Solution {
  readonly Status: string;
  readonly Columns: Readonly<Record<string, { readonly Primal?: number }>>;
}

/**
 * Loads HiGHS (Huangfu & Hall 2018), which takes some tens of milliseconds. It works in one thread and to the exact optimum, so that its answer
 * is the same each time; a program can keep the thread for seconds, so use it off the main thread.
 */
export async function openHighs(): Promise<SolveProgram> {
  // The types describe the CommonJS build, in which the loader is a member of the module.
  const load = loadHighs as unknown as () => Promise<Loaded>;
  const highs = await load();
  return (text) => {
    const { Status, Columns } = highs.solve(text, { mip_rel_gap: 0, mip_max_nodes: MOST_NODES, threads: 1 });
    return Status === "Optimal" ? (variable) => Columns[variable]?.Primal : undefined;
  };
}
