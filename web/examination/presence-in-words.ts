import type { OtherPresentFragment } from "./Live.graphql.ts";

/** Who else has the piece open and what they do, one sentence each; `labelOf` gives the name of a part that there is. */
export function presenceInWords(
  others: readonly OtherPresentFragment[],
  count: number,
  labelOf: (part: string) => string | undefined,
): readonly string[] {
  const said = others.map(({ isYou, name, part, isEditing }) => {
    const who = isYou ? "You, in another window," : (name ?? "Somebody");
    const verb = isYou ? "are" : "is";
    const label = part === null ? undefined : labelOf(part);
    const what = isEditing ? "editing" : "looking at";
    return `${who} ${verb} ${what} ${label ?? "this piece"}.`;
  });
  const more = count - others.length;
  const each = [...new Set(said)];
  return more > 0 ? [...each, `${more} more ${more === 1 ? "has" : "have"} it open.`] : each;
}
