/** "a", "a and b", "a, b and c"; the last joint can be another word. */
export function listInWords(items: readonly string[], joint = "and"): string {
  if (items.length < 2) return items[0] ?? "";
  return `${items.slice(0, -1).join(", ")} ${joint} ${items.at(-1)}`;
}

export const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Lower case at the start of a phrase inside a sentence, but not for names and initials ("U-shaped", "London"). */
export const decapitalise = (text: string): string =>
  /^[A-Z][a-z]+(\s[a-z]|$|s\b)/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
