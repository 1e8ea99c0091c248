import type { TermKind } from "../domain/term.ts";
import type { RandomSource } from "./random-source.ts";
import { drawBetween, type Quantiles } from "./weighted.ts";

/** Stands first in every note, so that nobody takes what is made up for knowledge. */
export const MADE_UP = "Made up to measure with.";

const QUALITIES = [
  ...["tapered", "waved", "stopped", "lapped", "pierced", "turned", "sawn", "riven", "planed", "scraped"],
  ...["beaded", "reeded", "hollow", "raised", "sunk", "split", "bent", "cast", "rolled", "drawn", "cut"],
  ...["plain", "double", "narrow", "broad", "early", "late", "coarse", "fine", "slanting", "upright"],
  ...["hidden", "outer", "inner", "upper", "lower", "rounded", "square", "blunt", "pointed", "ribbed"],
  ...["stained", "waxed", "oiled", "polished", "gilded", "bleached", "figured", "straight", "knotty"],
];
const PLACES = [
  ...["at the back", "under the top", "on the drawer side", "in the corner", "along the edge"],
  ...["behind the front", "below the rail", "of the bottom board", "on the inner face", "at the foot"],
];
const THINGS: Readonly<Record<TermKind, readonly string[]>> = {
  feature: ["mark", "groove", "joint", "notch", "score line", "hole", "moulding", "ridge", "wear", "plug"],
  practice: ["joining", "sawing", "laying", "bending", "stacking", "polishing", "marking out", "wedging"],
  tool: ["saw", "plane", "press", "cutter", "lathe", "drill", "gauge", "chisel", "mill", "stamp"],
  hardware: ["hinge", "lock", "handle", "screw", "nail", "castor", "bolt", "plate", "bracket", "catch"],
  material: ["board", "wire", "glue", "sheet", "veneer", "cloth", "filling", "brass", "timber", "resin"],
  finish: ["varnish", "wax finish", "lacquer", "stain", "oil finish", "paint"],
  style: ["manner", "taste", "fashion"],
  form: ["chest", "table", "chair", "desk", "press", "stand", "bench", "cupboard", "bed", "stool"],
  region: ["county", "valley", "town", "coast", "province", "port", "upland", "island"],
  maker: ["workshop", "works", "joinery", "turning shop"],
  part: ["side", "bottom", "rail", "leg", "back", "front", "top", "runner", "post", "panel"],
};
const SENTENCES = [
  ...["It is seen best in raking light.", "Two of three hands agree on it.", "The edges are worn."],
  ...["Other shops kept to the older way.", "Most of it lies on the inner faces.", "It runs with the grain."],
  ...["The depth is even from end to end.", "Compare both sides before it is noted."],
  ...["A later repair may hide it.", "Country work shows it a generation later, if at all."],
  ...["The number is kept so that one tells it from the next.", "Nothing of it is left where it was planed."],
  ...["Look at the ends first, then at the middle, and at last at what lies behind."],
];

/** "made-up waved joint 1234", as long as labels of the seed are; the number makes it unlike all others. */
export function labelOf(random: RandomSource, kind: TermKind, number: number, length: Quantiles): string {
  const wanted = drawBetween(random, length);
  const thing = random.pick(THINGS[kind]);
  const named = (words: string): string => `made-up ${words}${thing} ${number}`;
  let words = "";
  while (named(words).length + 8 < wanted) {
    if (named(words).length + 18 < wanted && random.chance(0.3))
      return `${named(words)} ${random.pick(PLACES)}`;
    words += `${random.pick(QUALITIES)} `;
  }
  return named(words);
}

/** Sentences of at most this many characters, but the first ones, which say that all is made up. */
export function textOf(random: RandomSource, length: number, start = MADE_UP): string {
  let text = start.length <= length ? start : start === MADE_UP ? "Made up." : start;
  while (text.length < length) {
    const next = `${text === "" ? "" : " "}${random.pick(SENTENCES)}`;
    if (text.length + next.length > length) {
      const words = next.slice(0, length - text.length - 1).lastIndexOf(" ");
      return words < 6 ? text || "Made up." : `${text}${next.slice(0, words)}.`;
    }
    text += next;
  }
  return text;
}
