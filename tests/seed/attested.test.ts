import { beforeAll, describe, expect, it } from "vitest";
import type { Change, Edit } from "#server/domain/change.ts";
import type { Dated } from "#server/domain/claim.ts";
import type { Attribution, Observation, Part, Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { OBSERVED_KINDS } from "#server/domain/observed-kinds.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Finding } from "#server/domain/report.ts";
import type { DocumentedPiece, Source } from "#server/domain/source.ts";
import type { TermKind } from "#server/domain/term.ts";
import type { Store } from "#server/ports/store.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";

let change: Change;
let store: Store;

beforeAll(async () => {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  store = openMemoryStore();
  const seeded = await seedStore(store, seed);
  if (isProblem(seeded)) throw new Error(seeded.message);
  change = seed.change;
});

const thingsOf = <Kind extends Edit["kind"]>(kind: Kind) =>
  change.flatMap((edit) => (edit.kind === kind && edit.after ? [edit.after] : [])) as NonNullable<
    Extract<Edit, { kind: Kind }>["after"]
  >[];

/** Findings of a piece with one part for each thing seen. */
async function findingsOf(
  attribution: Attribution,
  seen: readonly { feature: string; part?: string | undefined }[],
) {
  const parts = seen.map(
    ({ part }, i): Part => ({
      id: id(`p${i}`),
      label: `Part ${i}`,
      ...(part === undefined ? {} : { kind: id(part) }),
    }),
  );
  const observations = seen.map(
    ({ feature }, i): Observation => ({
      ...{ id: id(`o${i}`), part: id(`p${i}`), feature: id(feature) },
      ...{ seen: "present", sureness: "sure" },
    }),
  );
  const piece: Piece = {
    ...{ title: "What a source attests", invented: true, examined: 2026 },
    ...{ attribution, parts, observations, together: [], separate: [] },
  };
  const examined = await examinePiece({ store }, piece);
  if (isRefusal(examined)) throw new Error(examined.refused[0].message);
  return examined.report.findings;
}

const impossible = (findings: readonly Finding[]) =>
  findings.filter(({ label, hardness }) => label === "contradictory" && hardness === "physical");

describe("what the sources of the seed attest", () => {
  it("is never called impossible at its own place and date", async () => {
    const kinds = new Map(thingsOf("term").map((term) => [term.id, term.kind]));
    const attested = thingsOf("claim").filter(
      (claim): claim is Dated => claim.relation === "attested" && claim.status === "accepted",
    );
    const wrong: string[] = [];
    let tried = 0;
    for (const { id: claim, subject, when, scope } of attested) {
      const kind = kinds.get(subject) as TermKind;
      const claimed = ["form", "style", "maker"].includes(kind) ? { [kind]: subject } : {};
      const seen = OBSERVED_KINDS.includes(kind) ? [{ feature: subject, part: scope.part }] : [];
      if (seen.length === 0 && Object.keys(claimed).length === 0) continue;
      const { part: _, ...where } = scope;
      tried++;
      if (impossible(await findingsOf({ date: when, ...where, ...claimed }, seen)).length > 0)
        wrong.push(`${claim} ${when}`);
    }
    expect(tried).toBeGreaterThan(60);
    expect(wrong).toEqual([]);
  });

  it("is never called impossible of a documented piece", async () => {
    const pieces = thingsOf("source").filter(
      (source): source is Source & { piece: DocumentedPiece } => source.piece !== undefined,
    );
    expect(pieces.length).toBeGreaterThan(0);
    for (const { id: source, piece } of pieces) {
      const { made: date, region, form, features } = piece;
      expect(impossible(await findingsOf({ date, region, form }, features)), source).toEqual([]);
    }
  });
});
