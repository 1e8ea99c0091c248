import { orStopped } from "../ports/or-stopped.ts";
import type { Place, Presence, Present } from "../ports/presence.ts";

interface Room {
  readonly places: Map<object, Present>;
  changes: number;
  changed: PromiseWithResolvers<void>;
}

/** Presence of this process alone. */
export function openPresence(): Presence & { readonly count: () => number } {
  const rooms = new Map<string, Room>();
  const tell = (room: Room): void => {
    room.changes++;
    const { resolve } = room.changed;
    room.changed = Promise.withResolvers();
    resolve();
  };
  return {
    count: () => [...rooms.values()].reduce((sum, { places }) => sum + places.size, 0),
    stir: (examination) => {
      const room = rooms.get(examination);
      if (room !== undefined) tell(room);
    },
    enter: (examination, present, me = {}): Place => {
      const room = rooms.get(examination) ?? {
        ...{ places: new Map(), changes: 0, changed: Promise.withResolvers<void>() },
      };
      rooms.set(examination, room);
      room.places.set(me, present);
      tell(room);
      let seen = -1;
      return {
        others: () => {
          seen = room.changes;
          return [...room.places].flatMap(([place, each]) => (place === me ? [] : [each]));
        },
        changed: async (stop) => {
          if (room.changes === seen) await orStopped(room.changed.promise, stop);
        },
        leave: () => {
          if (room.places.get(me) !== present) return;
          room.places.delete(me);
          if (room.places.size === 0) rooms.delete(examination);
          tell(room);
        },
      };
    },
  };
}
