import { describe, expect, it } from "vitest";
import { countSigns } from "#server/domain/count-signs.ts";
import type { Sign } from "#server/domain/report.ts";

const sign = (observation: string, part: string, cause?: string): Sign =>
  ({ observation, part, claim: "claim.a", ...(cause === undefined ? {} : { cause }) }) as unknown as Sign;

describe("counting signs", () => {
  it("counts signs of one cause on one part once", () => {
    expect(countSigns([sign("o1", "top", "recut"), sign("o2", "top", "recut")])).toBe(1);
  });

  it("counts them apart on two parts, of two causes, or of none stated", () => {
    expect(countSigns([sign("o1", "top", "recut"), sign("o2", "foot", "recut")])).toBe(2);
    expect(countSigns([sign("o1", "top", "recut"), sign("o2", "top", "refinished")])).toBe(2);
    expect(countSigns([sign("o1", "top"), sign("o2", "top")])).toBe(2);
  });
});
