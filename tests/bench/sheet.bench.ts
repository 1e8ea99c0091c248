import { drawUpFieldSheet } from "#server/use-cases/ask/draw-up-field-sheet.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { sayFigure } from "./figure.ts";
import { type Bench, median } from "./measure.ts";
import { openMirrored, sizes, wishesOf } from "./scale/bench-graph.ts";

const FORMS = 9;

/** Field sheets of forms without a region, each drawn up for the first time: what it computes, and its longest turn of the loop. */
export const bench: Bench = async () => {
  for (const claims of sizes()) {
    const { mirrored, close } = await openMirrored(wishesOf(claims));
    const { rows } = await mirrored.listTerms({ kinds: ["form"] }, { first: 200 });
    const every = Math.max(1, Math.floor(rows.length / FORMS));
    const forms = rows.filter((_, n) => n % every === 0).slice(0, FORMS);
    const [whole, longest]: [number[], number[]] = [[], []];
    for (const { id } of forms) {
      const turns = watchTurns();
      const before = computed();
      const sheet = await drawUpFieldSheet({ store: mirrored }, { form: id, each: 5 });
      whole.push(computed() - before);
      longest.push(turns.stop());
      if (isRefusal(sheet)) throw new Error(`No sheet of ${id}`);
    }
    await close();
    const what = `a field sheet without a region at ${claims} claims, the first time, of ${forms.length} forms`;
    sayFigure({ what: `${what}: computing, median`, value: median(whole), unit: "ms" });
    sayFigure({ what: `${what}: computing, the longest`, value: Math.max(...whole), unit: "ms" });
    sayFigure({ what: `${what}: its longest turn, median`, value: median(longest), unit: "ms" });
    sayFigure({ what: `${what}: its longest turn, the longest`, value: Math.max(...longest), unit: "ms" });
  }
  return [];
};

/** Milliseconds that this thread has computed. */
function computed(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** Comes in every turn of the loop; `stop` gives the longest one, by what was computed in it. */
function watchTurns(): { readonly stop: () => number } {
  let last = computed();
  let longest = 0;
  const come = (): void => {
    const now = computed();
    longest = Math.max(longest, now - last);
    last = now;
    next = setImmediate(come);
  };
  let next = setImmediate(come);
  return {
    stop: () => {
      clearImmediate(next);
      return longest;
    },
  };
}
