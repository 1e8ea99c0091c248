import { orStopped } from "../ports/or-stopped.ts";
import type { Place, Presence, Present } from "../ports/presence.ts";

interface Room {
  readonly places: Map<object, Present>;
  /** Those at other processes. */
  elsewhere: readonly Present[];
  changes: number;
  changed: PromiseWithResolvers<void>;
}

/** Who is in which room at this process, to be told to others, and who is there at others. */
export interface Rooms {
  /** Those with somebody in them at this process, and who it is. */
  readonly here: () => ReadonlyMap<string, readonly Present[]>;
  /** Says who is in a room at other processes from now on; nothing of a room where nobody is here. */
  readonly put: (room: string, elsewhere: readonly Present[]) => void;
  /** Says that somebody here came, went or does something else. */
  onChange: () => void;
  readonly count: () => number;
}

/** Presence at this process, and at others as far as `put` told of it. */
export function openPresence(): { readonly presence: Presence; readonly rooms: Rooms } {
  const open = new Map<string, Room>();
  const tell = (room: Room): void => {
    room.changes++;
    const { resolve } = room.changed;
    room.changed = Promise.withResolvers();
    resolve();
  };
  const rooms: Rooms = {
    here: () => new Map([...open].map(([name, { places }]) => [name, [...places.values()]])),
    put: (name, elsewhere) => {
      const room = open.get(name);
      if (room === undefined || JSON.stringify(room.elsewhere) === JSON.stringify(elsewhere)) return;
      room.elsewhere = elsewhere;
      tell(room);
    },
    onChange: () => {},
    count: () => [...open.values()].reduce((sum, { places }) => sum + places.size, 0),
  };
  const enter: Presence["enter"] = (examination, present, me = {}): Place => {
    const room = open.get(examination) ?? {
      ...{ places: new Map(), elsewhere: [], changes: 0, changed: Promise.withResolvers<void>() },
    };
    open.set(examination, room);
    room.places.set(me, present);
    tell(room);
    rooms.onChange();
    let seen = -1;
    return {
      others: () => {
        seen = room.changes;
        const here = [...room.places].flatMap(([place, each]) => (place === me ? [] : [each]));
        return [...here, ...room.elsewhere];
      },
      changed: async (stop) => {
        if (room.changes === seen) await orStopped(room.changed.promise, stop);
      },
      leave: () => {
        if (room.places.get(me) !== present) return;
        room.places.delete(me);
        if (room.places.size === 0) open.delete(examination);
        tell(room);
        rooms.onChange();
      },
    };
  };
  const stir: Presence["stir"] = (examination) => {
    const room = open.get(examination);
    if (room !== undefined) tell(room);
  };
  return { presence: { enter, stir }, rooms };
}
