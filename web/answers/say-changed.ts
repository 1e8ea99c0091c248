/** What changed, to stand before "since revision 3". */
export const sayChangedClaims = (count: number): string => {
  if (count === 0) return "What this is read from changed";
  return count === 1
    ? "One claim that this is read from changed"
    : `${count} claims that this is read from changed`;
};
