import { describe, expect, it } from "vitest";
import { type ClaimYears, claimSpans } from "#web/shared/years/claim-spans.ts";
import { sayClaimYears, sayYearsBriefly } from "#web/shared/years/say-claim-years.ts";

type Ends = readonly [number | null, number | null];
const dated = (begin: Ends, end: Ends, rest: Partial<ClaimYears> = {}): ClaimYears => ({
  begin,
  end,
  padBegin: 0,
  padEnd: 0,
  doubtful: false,
  ...rest,
});
const between1810and1820 = dated([1810, 1820], [1810, 1820]);
const about1790 = dated([1790, 1790], [1790, 1790], { padBegin: 5, padEnd: 5 });
const span = dated([1780, 1790], [1850, 1850], { padEnd: 5 });

describe("[P8] what is drawn for a dated claim", () => {
  it("holds from an introduction on, pale while it may not yet have come", () => {
    expect(claimSpans("INTRODUCED", between1810and1820)).toEqual({
      kind: "hold",
      solid: [1820, null],
      pale: [1810, null],
    });
    expect(claimSpans("COMMON_FROM", about1790)).toEqual({
      kind: "hold",
      solid: [1790, null],
      pale: [1785, null],
    });
  });

  it("holds up to the last making, pale while it may have ended", () => {
    expect(claimSpans("DISCONTINUED", between1810and1820)).toEqual({
      kind: "hold",
      solid: [null, 1810],
      pale: [null, 1820],
    });
  });

  it("holds between the ends of a span of use, pale where an end is not certain", () => {
    expect(claimSpans("CURRENT", span)).toEqual({ kind: "hold", solid: [1790, 1850], pale: [1780, 1855] });
    const decade = dated([1750, 1759], [1750, 1759]);
    expect(claimSpans("CURRENT", decade)?.solid).toEqual([1750, 1759]);
  });

  it("is a record or an exclusion where the relation is one", () => {
    expect(claimSpans("ATTESTED", about1790)).toEqual({
      kind: "record",
      solid: [1790, 1790],
      pale: [1785, 1795],
    });
    expect(claimSpans("NOT_FOUND_IN", dated([null, null], [1813, 1813]))?.kind).toBe("exclude");
    expect(claimSpans("NOT_FOUND_IN", null)).toEqual({
      kind: "exclude",
      solid: [null, null],
      pale: [null, null],
    });
  });

  it("is nothing without a date", () => {
    expect(claimSpans("REQUIRES", null)).toBeUndefined();
    expect(claimSpans("INDICATES", null)).toBeUndefined();
  });
});

describe("[P8] the same in words", () => {
  it("says an event by the years it can be of", () => {
    expect(sayClaimYears("INTRODUCED", between1810and1820)).toBe("introduced between 1810 and 1820");
    expect(sayClaimYears("INTRODUCED", about1790)).toBe("introduced in 1790, give or take 5 years");
    expect(sayClaimYears("ATTESTED", dated([null, 1800], [null, 1800]))).toBe("recorded 1800 at the latest");
  });

  it("says a span of use by its two ends, and an end that nobody states", () => {
    expect(sayClaimYears("CURRENT", span)).toBe(
      "in use from some year between 1780 and 1790 to 1850, give or take 5 years",
    );
    expect(sayClaimYears("CURRENT", dated([1780, 1780], [null, null]))).toBe(
      "in use from 1780 on; no end is stated",
    );
    expect(sayClaimYears("CURRENT", dated([null, null], [1850, 1850], { doubtful: true }))).toBe(
      "in use until 1850; no beginning is stated, marked as doubtful",
    );
  });

  it("says that a thing is found in no year", () => {
    expect(sayClaimYears("NOT_FOUND_IN", null)).toBe("not found in any year");
    expect(sayClaimYears("TYPICAL_OF", null)).toBeUndefined();
  });

  it("is brief beside a bar", () => {
    expect(sayYearsBriefly("INTRODUCED", between1810and1820)).toBe("1810–1820");
    expect(sayYearsBriefly("ATTESTED", about1790)).toBe("about 1790");
    expect(sayYearsBriefly("NOT_FOUND_IN", dated([null, null], [1813, 1813]))).toBe("until 1813");
    expect(sayYearsBriefly("CURRENT", dated([1780, 1780], [null, null]))).toBe("from 1780");
  });
});
