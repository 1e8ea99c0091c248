import { init } from "z3-solver";
import type { AnySketch } from "#tests/support/any-sketch.ts";
import { QUARTERS } from "#tests/support/any-sketch.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";

/** Whether atoms hold together, and the core of those that do not, asked of z3 (github.com/Z3Prover/z3, package z3-solver). */
export interface Z3Question {
  readonly atoms: readonly string[];
  readonly holds: (atoms: readonly string[]) => Promise<boolean>;
  readonly core: (atoms: readonly string[]) => Promise<readonly string[]>;
}

export interface Z3 {
  /** The atoms of a sketched piece at one of its places: one of the quarters, or `elsewhere`. */
  readonly ask: (sketch: AnySketch, place: string) => Z3Question;
  /** Must be called at the end: else its threads keep the process alive. */
  readonly stop: () => void;
}

const PLACES = [...QUARTERS, "elsewhere"] as const;

export async function openZ3(): Promise<Z3> {
  const { Context, em } = await init();
  const context = Context("sketch");
  const { Solver, Bool, Int, And, Or, Implies } = context;
  return {
    stop: () => (em as { PThread: { terminateAllThreads(): void } }).PThread.terminateAllThreads(),
    ask: ({ claims, piece }, place) => {
      const solver = new Solver();
      const names = new Set<string>();
      const bool = (name: string) => {
        names.add(name);
        return Bool.const(name);
      };
      const isIn = (year: ReturnType<typeof Int.const>, when: string) => {
        const [from, to] = when.split("/").map(Number) as [number, number];
        return And(year.ge(from), year.le(to));
      };
      const group = (part: string): string => (piece.together?.[0]?.includes(part) ? "p0" : part);
      const whole = Int.const("year");
      solver.add(Implies(bool("date"), isIn(whole, piece.date)));
      for (const { id } of piece.parts)
        solver.add(Implies(bool(`original ${group(id)}`), Int.const(`year ${group(id)}`).eq(whole)));
      for (const [a, b] of piece.separate ?? [])
        solver.add(
          Implies(
            bool(`separate ${a} ${b}`),
            Or(bool(`original ${group(a)}`).not(), bool(`original ${group(b)}`).not()),
          ),
        );
      for (const { id, part, feature } of piece.observations) {
        const own = piece.parts.find((one) => one.id === part)?.region;
        const at = Int.const(`place ${part}`);
        const places = own === undefined ? [place] : own === "world" ? PLACES : [own];
        solver.add(Or(...places.map((one) => at.eq(PLACES.indexOf(one as (typeof PLACES)[number])))));
        const year = Int.const(`year ${group(part)}`);
        const isAt = (regions: readonly string[]) =>
          Or(...regions.map((region) => at.eq(PLACES.indexOf(region as (typeof PLACES)[number]))));
        const say = (
          on: readonly ClaimSketch[],
          what: Parameters<typeof Implies>[1],
          isRegional: boolean,
        ) => {
          const atoms = [bool(id), bool(on.map((claim) => claim.id).join("|"))];
          if (isRegional && own === undefined && piece.region !== undefined) atoms.push(bool("region"));
          solver.add(Implies(And(...atoms), what));
        };
        const mine = claims.filter(({ subject }) => subject === feature);
        const dated = mine.filter(({ when }) => when !== undefined);
        const [first] = dated;
        if (first !== undefined) {
          const years = Or(...dated.map(({ when }) => isIn(year, when as string)));
          const scope = first.region;
          say(dated, scope === undefined ? years : Or(isAt([scope]).not(), years), scope !== undefined);
        }
        for (const claim of mine) if (claim.regions) say([claim], isAt(claim.regions), true);
      }
      const check = (atoms: readonly string[]) => solver.check(...atoms.map((name) => Bool.const(name)));
      return {
        atoms: [...names],
        holds: async (atoms) => (await check(atoms)) === "sat",
        core: async (atoms) => {
          if ((await check(atoms)) !== "unsat") throw new Error("these hold together");
          return [...solver.unsatCore()].map(String);
        },
      };
    },
  };
}
