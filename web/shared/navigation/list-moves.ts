/** Where a key leads in a list, from the place one is at and the last place. Other keys lead nowhere. */
export const LIST_MOVES: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowDown: (at, last) => Math.min(at + 1, last),
  ArrowUp: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_, last) => last,
};
