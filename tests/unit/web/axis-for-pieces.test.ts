import { describe, expect, it } from "vitest";
import { axisForPieces } from "#web/start/axis-for-pieces.ts";
import type { PieceRowFragment } from "#web/start/PieceRow.graphql.ts";

const claimed = (date: string) => ({ piece: { attribution: { date } } }) as unknown as PieceRowFragment;

describe("[P9] the axis that all pieces share", () => {
  it("reaches beyond every claimed date, to where features begin and end", () => {
    const axis = axisForPieces([claimed("1765/1775"), claimed("1750~"), claimed("18XX")]);
    expect(axis.first).toBeLessThanOrEqual(1650);
    expect(axis.last).toBeGreaterThanOrEqual(1999);
  });

  it("does not run off with an open date, and stands without any", () => {
    expect(axisForPieces([claimed("../2026")])).toMatchObject({ first: 1650, last: 1900 });
    expect(axisForPieces([claimed("no date"), claimed("1700")])).toMatchObject({ first: 1550, last: 1850 });
    expect(axisForPieces([])).toMatchObject({ first: 1650, last: 1900 });
  });
});
