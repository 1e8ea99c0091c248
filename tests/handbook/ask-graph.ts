import type { Change } from "#server/domain/change.ts";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Finding } from "#server/domain/report.ts";
import type { Store } from "#server/ports/store.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import type { Line, Reading } from "./read-works.ts";

/** The seed graph in a memory store, as it stands or changed. */
export async function openSeedGraph(change: (seed: Change) => Change = (seed) => seed): Promise<Store> {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  const store = openMemoryStore();
  const seeded = await seedStore(store, { ...seed, change: change(seed.change), pieces: [] });
  if (isProblem(seeded)) throw new Error(seeded.message);
  return store;
}

/** The seed graph without its chains: no claim says what needs what, so only dates of the feature itself are left. */
export const openGraphWithoutChains = () =>
  openSeedGraph((seed) => {
    const dropped = new Set(
      seed.flatMap((edit) =>
        edit.kind === "claim" && edit.after?.relation === "requires" ? [edit.after.id] : [],
      ),
    );
    return seed.filter((edit) => {
      if (edit.kind !== "claim" || edit.after === undefined) return true;
      return (
        !dropped.has(edit.after.id) && !(edit.after.relation === "void when" && dropped.has(edit.after.of))
      );
    });
  });

type Asked = Pick<Line, "feature" | "region" | "form">;

/** What the graph says of a piece of one part that shows the feature (or is of the style or form), claimed for that place and date. */
export async function ask(store: Store, { feature, region, form }: Asked, date: string): Promise<Finding> {
  const [kind] = feature.split(".");
  const claimed = kind === "style" || kind === "form";
  const piece: Piece = {
    title: "A piece of one part",
    invented: true,
    examined: 2026,
    attribution: {
      date,
      region: id<"term">(region),
      ...(form === "" ? {} : { form: id<"term">(form) }),
      ...(claimed ? { [kind]: id<"term">(feature) } : {}),
    },
    parts: [{ id: id<"part">("part"), label: "Part" }],
    observations: claimed
      ? []
      : [
          {
            id: id<"observation">("seen"),
            part: id<"part">("part"),
            feature: id<"term">(feature),
            seen: "present",
            sureness: "sure",
          },
        ],
    together: [],
    separate: [],
  };
  const examined = await examinePiece({ store }, piece);
  if (isRefusal(examined)) throw new Error(examined.refused[0].message);
  const finding = examined.report.findings.find(({ id: named, observation }) =>
    claimed ? named === `attr.${kind}` : observation === "seen",
  );
  if (!finding) throw new Error(`Nothing was found on ${feature}`);
  return finding;
}

export const readingOf = ({ label, hardness }: Pick<Finding, "label" | "hardness">): Reading =>
  label !== "contradictory" ? label : hardness === "physical" ? "cannot be" : "unusual";
