import type { Piece } from "./domain/examination.ts";
import type { WeighingWords } from "./domain/weighing/weighing-words.ts";

function section(title: string, lines: readonly string[] | undefined): readonly string[] {
  return lines === undefined || lines.length === 0 ? [] : ["", title, ...lines.map((line) => `  ${line}`)];
}

/** A weighing in words as plain text for a terminal, in the order of the screen. */
export function weighingAsText(words: WeighingWords, { title, invented }: Piece): string {
  const lines = [
    `${title}${invented ? " (invented: no such object exists)" : ""}`,
    ...(words.headline === undefined ? [] : ["", words.headline]),
    ...(words.reasons ?? []).map((reason) => `  ${reason}`),
    ...section("The answer depends on", words.dependsOn),
    ...(words.mends ?? []).flatMap(({ says, perPart, moved, proved }) =>
      section(says, [
        ...perPart.flatMap(({ says: part, options }) => [
          part,
          ...options.map(({ says: option, price }) => `  ${option} (${price})`),
        ]),
        ...(moved === undefined ? [] : [moved]),
        proved,
      ]),
    ),
    ...section("Pieces in it at least", words.origins),
    ...section(
      "Part by part",
      words.parts?.map(({ says, when }) => `${says} ${when}`),
    ),
    ...section(
      "What each thing seen weighs",
      words.weights?.map(({ says }) => says),
    ),
    ...section(
      "Rival stories",
      words.rivals?.flatMap(({ says, assumes, told }) => [
        says,
        `  ${assumes}`,
        ...told.map((line) => `  ${line}`),
      ]),
    ),
    ...section("What to look at next", [
      ...(words.looks ?? []).map(({ says, because }) => `${says} ${because}`),
      ...(words.looksTogether === undefined ? [] : [words.looksTogether]),
    ]),
    ...section("Missing", words.missing),
    "",
    "Probabilities hold under the assumptions stated in docs/method.md: not a certificate or a valuation.",
  ];
  return `${lines.join("\n")}\n`;
}
