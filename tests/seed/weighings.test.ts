import { describe, expect, it } from "vitest";
import { STAGES } from "#server/domain/weighing/weighing.ts";
import { readWeighing } from "#server/formats/read-weighing.ts";
import { weighPiece } from "#server/use-cases/ask/weigh-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { weighHere } from "#server/weigher/weigh-here.ts";
import { openSeed } from "#tests/support/seed-pieces.ts";

const { store, pieces } = await openSeed();

describe("[A24] the weighings of the demonstrations", () => {
  it.each(pieces.map(({ id, piece }) => [id, piece] as const))(
    "are whole, and of the published form: %s",
    async (_, piece) => {
      for (const odds of [undefined, { madeToDeceive: 0.02, datePrior: "as claimed" as const }]) {
        const asked = odds ? { ...piece, odds } : piece;
        const weighed = await weighPiece({ store, weigher: weighHere }, asked);
        if (isRefusal(weighed)) throw new Error(weighed.refused[0].message);
        expect(readWeighing(weighed.weighing)).toEqual(weighed.weighing);
        expect(weighed.weighing.missing).toEqual([]);
        for (const stage of STAGES) expect(weighed.weighing).toHaveProperty(stage);
      }
    },
  );
});
