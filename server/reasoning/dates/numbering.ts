/** Gives things numbers in the order in which they are first asked for; the same thing always has the same. */
export function numbering<Thing>(): (thing: Thing) => number {
  const numbers = new Map<Thing, number>();
  return (thing) => {
    const found = numbers.get(thing) ?? numbers.size;
    numbers.set(thing, found);
    return found;
  };
}
