/** What a source of each kind is good for as a witness, and what it is not. */
export const witnessWords: Readonly<Record<string, string>> = {
  book: "Weigh it by who wrote it, when, and what it cites itself.",
  article: "Weigh it by who wrote it, when, and what it cites itself.",
  thesis: "Examined work with its evidence laid open; seldom published.",
  patent: "Fixes that the design was known on that day, not that it was made or sold.",
  statute: "Fixes what was required or forbidden from its date, in its place; not that all obeyed.",
  standard: "Fixes what was agreed or measured when it was issued.",
  "museum text": "The attribution of those who keep the piece, often without its grounds.",
  "trade text":
    "Fixes what the trade offered or taught; of makers it tells no more than they said of themselves.",
  "web page": "Nobody need have reviewed it, and it can change; look for what it cites itself.",
  "documented piece": "Shows that the thing was done there and then, and no more than that.",
};
