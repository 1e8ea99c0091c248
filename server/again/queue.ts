/** What waits, most wanted first, else in the order in which it came. */
export interface Queue<Id> {
  /** One that waits already is given another ticket. */
  readonly add: (id: Id, wanted: number) => void;
  /** Wanted more than before, if it waits. */
  readonly favour: (id: Id, wanted: number) => void;
  /** To the end, wanted by nobody. */
  readonly postpone: (id: Id) => void;
  readonly remove: (id: Id) => void;
  readonly first: () => Id | undefined;
  readonly has: (id: Id) => boolean;
  /** Another one whenever it is added. */
  readonly ticketOf: (id: Id) => number | undefined;
  readonly all: () => Iterable<Id>;
  readonly size: () => number;
}

export function openQueue<Id>(): Queue<Id> {
  const tickets = new Map<Id, number>();
  const favoured = new Map<Id, number>();
  let given = 0;
  const remove = (id: Id): void => {
    tickets.delete(id);
    favoured.delete(id);
  };
  const favour = (id: Id, wanted: number): void => {
    if (wanted > 0 && tickets.has(id)) favoured.set(id, wanted);
  };
  return {
    add: (id, wanted) => {
      tickets.set(id, ++given);
      favour(id, wanted);
    },
    favour,
    postpone: (id) => {
      if (!tickets.has(id)) return;
      remove(id);
      tickets.set(id, ++given);
    },
    remove,
    first: () => {
      // Few are looked at, beside all that wait.
      let best: { readonly id: Id; readonly wanted: number } | undefined;
      for (const [id, wanted] of favoured)
        if (best === undefined || wanted > best.wanted) best = { id, wanted };
      if (best !== undefined) return best.id;
      for (const id of tickets.keys()) return id;
      return undefined;
    },
    has: (id) => tickets.has(id),
    ticketOf: (id) => tickets.get(id),
    all: () => tickets.keys(),
    size: () => tickets.size,
  };
}
