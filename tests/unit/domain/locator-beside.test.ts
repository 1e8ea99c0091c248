import { describe, expect, it } from "vitest";
import { locatorBeside } from "#server/domain/locator-beside.ts";

// Invented works, in the form of our citations.
describe("[G31] the locator beside a citation", () => {
  it.each<[string, string, string | undefined]>([
    ["A. Alder, “On Saws”, Journal of Benches 12, p. 21, 1990", "p. 21", undefined],
    ["A. Alder, “On Saws”, Journal of Benches 12, pp. 21–30, 1990", "p. 25", "p. 25"],
    ["A. Alder, “On Saws”, Journal of Benches 21, p. 4, 1990", "p. 21", "p. 21"],
    ["A. Alder, “On Saws”, Journal of Benches 12, pp. 180, 185, 1990", "pp. 180 and 185", undefined],
    ["A. Alder, “On Saws”, Journal of Benches 12, pp. 169–170, 1990", "pages 169-170", undefined],
    ["Oak, Sawing machine, United States patent 51,735, 26 December 1865", "No. 51,735", undefined],
    ["Oak, Sawing machine, United States patent 51,735, 1865", "No. 51,735, header", "header"],
    ["Oak, Sawing machine, Great Britain patent, 19 August 1856", "patent of 19 August 1856", undefined],
    [
      "Oak, Sawing machine, Great Britain patent, 1856",
      "patent of 19 August 1856",
      "patent of 19 August 1856",
    ],
    ["Oak, Sawing machine, Great Britain patent, 1856", "patent of 1856", undefined],
    ["Oak, Sawing machine of 1856, Great Britain patent, 1860", "patent of 1856", "patent of 1856"],
    ["“Lock”, in A Cyclopædia X, p. 563, 1879", "vol. X, p. 563", undefined],
    ["“Lock”, in A Cyclopædia X, 1879", "vol. X, p. 563", "p. 563"],
    ["A Museum, “Chest, item 1814”, undated", "item 1814", undefined],
    ["A Museum, “Chest (page cw-16)”, undated", "page cw-16", undefined],
    ["A. Alder, Book of Prices, London, 1788", "first edition, 1788", "first edition, 1788"],
    ["A. Alder, Book of Prices, London, 1788", "plate 12", "plate 12"],
    ["A. Alder, Terms, 1788", "terms", "terms"],
    ["A. Alder, Terms, 1788", "1788", "1788"],
    ["", "p. 21", "p. 21"],
  ])("%j, %j", (text, locator, left) => {
    expect(locatorBeside(text, locator)).toBe(left);
  });
});
