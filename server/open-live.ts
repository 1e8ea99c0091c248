import type { Server as HttpServer } from "node:http";
import { ENTRY_CARD } from "./domain/people/entry.ts";
import { ACCESS_CARD } from "./domain/people/examination-access.ts";
import { PERSON_CARD } from "./domain/people/person.ts";
import { SESSION_CARD } from "./domain/people/session.ts";
import { TOKEN_CARD } from "./domain/people/token.ts";
import type { Written } from "./domain/written.ts";
import type { Listener } from "./follower/follow-writes.ts";
import { liveProtocol, type Told } from "./http/live/live-protocol.ts";
import { type Known, type LiveSettings, openSockets, type Sockets } from "./http/live/open-sockets.ts";
import { openCounts } from "./live/open-counts.ts";
import { openNews } from "./live/open-news.ts";
import { openPresence } from "./live/open-presence.ts";
import { sharePresence } from "./live/share-presence.ts";
import type { CountsUnderWay } from "./ports/counts-under-way.ts";
import type { Log } from "./ports/log.ts";
import type { Tell } from "./ports/metrics.ts";
import type { News } from "./ports/news.ts";
import type { Notes } from "./ports/notes.ts";
import { oneGauge } from "./ports/one-number.ts";
import type { Presence } from "./ports/presence.ts";
import type { Store } from "./ports/store.ts";

/** What open pages are told while they are open. */
export interface Live {
  readonly news: News;
  readonly presence: Presence;
  readonly counts: CountsUnderWay;
  readonly follow: Listener;
  /** Takes live connections on the server from now on. */
  readonly attach: (server: HttpServer, told: Told, settings: LiveSettings) => void;
  readonly letGo: () => void;
  readonly close: () => Promise<void>;
  readonly tell: Tell;
}

export interface LiveOptions {
  /** The number of the write up to which the store was followed. */
  readonly after: number;
  /** A name of this process that no other over the store has. */
  readonly by: string;
  readonly log: Log;
}

/** All of a store that is told. */
export function openLive(store: Pick<Store, "writesAfter"> & Notes, { after, by, log }: LiveOptions): Live {
  const { follow, ...news } = openNews(store, after);
  const { presence, rooms } = openPresence();
  const shared = sharePresence(rooms, store, { by, log });
  let sockets: Sockets | undefined;
  return {
    ...{ news, presence, counts: openCounts(store, { by, log }) },
    follow: async (written) => {
      // Whoever may know no more is let go of before there is more to know.
      await sockets?.seeAgain(isConcernedBy(written));
      await follow(written);
      for (const { kind, id } of written.cards ?? []) if (kind === ACCESS_CARD) presence.stir(id);
    },
    attach: (server, told, settings) => {
      sockets = openSockets(server, liveProtocol(told), settings);
    },
    letGo: () => sockets?.letGo(),
    close: async () => {
      await sockets?.close();
      await shared.stop();
    },
    tell: () => [
      oneGauge(
        { name: "scribeline_live_connections", help: "Live connections that are open." },
        sockets?.count() ?? 0,
      ),
      oneGauge({ name: "scribeline_live_present", help: "Pages that have a piece open." }, rooms.count()),
    ],
  };
}

/** Tells of whom a write changes who they are, or whether they are let in. */
const isConcernedBy =
  ({ cards = [], restored }: Written) =>
  ({ caller, session }: Known): boolean =>
    restored === true ||
    cards.some(
      ({ kind, id }) =>
        ((kind === PERSON_CARD || kind === ENTRY_CARD) && id === caller.id) ||
        (kind === SESSION_CARD && id === session) ||
        (kind === TOKEN_CARD && caller.via === "token"),
    );
