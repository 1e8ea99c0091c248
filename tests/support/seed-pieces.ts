import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import { ancestors, broaderTerms } from "#server/domain/region.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { randomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";

/** The seed graph in memory, with its demonstration pieces and its terms. */
export async function openSeed(): Promise<{
  readonly store: Store;
  readonly pieces: readonly { readonly id: string; readonly piece: Piece }[];
  readonly terms: readonly Term[];
}> {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  const store = openMemoryStore();
  await store.commit({ change: seed.change, by: "seed", at: seed.at, message: "seed" });
  const terms = seed.change.flatMap((edit) => (edit.kind === "term" && edit.after ? [edit.after] : []));
  return { store, pieces: seed.pieces, terms };
}

/** A piece at random on the terms of the seed: things seen, absent and not to be seen that are looked for on its kinds of part. */
export function anyOfSeed(seed: number, terms: readonly Term[], parts: number, observations: number): Piece {
  const random = randomSource(seed);
  const of = (kind: TermKind): readonly Term[] => terms.filter((term) => term.kind === kind);
  const broader = broaderTerms(terms);
  const features = of("feature");
  const made = Array.from({ length: parts }, (_, i) => ({
    ...{ id: id<"part">(`p${i}`), label: `part ${i}` },
    kind: random.pick(of("part")).id,
  }));
  const from = 1650 + random.below(230);
  return {
    ...{ title: "A piece at random", invented: true, examined: 2026 },
    attribution: {
      date: `${from}/${from + random.below(30)}`,
      ...{ region: random.pick(of("region")).id, form: random.pick(of("form")).id },
    },
    parts: made,
    observations: Array.from({ length: observations }, (_, i) => {
      const { id: part, kind } = made[i % parts] as (typeof made)[number];
      const wanted = ancestors(kind, broader);
      const fit = features.filter((feature) => feature.parts?.some((each) => wanted.includes(each)));
      return {
        ...{ id: id<"observation">(`o${i}`), part, feature: random.pick(fit.length > 0 ? fit : features).id },
        seen: random.pick(["present", "present", "present", "absent", "unseen"] as const),
        sureness: random.pick(["sure", "sure", "probable", "possible"] as const),
      };
    }).filter(
      ({ part, feature }, i, all) =>
        all.findIndex((one) => one.part === part && one.feature === feature) === i,
    ),
    ...{ together: [], separate: [] },
  };
}
