import type { Server as HttpServer, IncomingMessage } from "node:http";
import type { Duplex } from "node:stream";
import { GRAPHQL_TRANSPORT_WS_PROTOCOL, type Server } from "graphql-ws";
import { type WebSocket, WebSocketServer } from "ws";
import type { Context } from "../../api/context.ts";
import { readShown, type Shown } from "../credentials.ts";
import { isOwnHost, isOwnOrigin } from "../is-own-request.ts";
import { refuseUpgrade } from "./refuse-upgrade.ts";
import { CLOSED, runSocket } from "./run-socket.ts";

/** Who is at the other end, as it was when they connected. */
export interface Known {
  readonly caller: NonNullable<Context["caller"]>;
  /** Id of the session that it is known by. */
  readonly session?: string;
}
/** One live connection. */
export interface Connected {
  readonly known: Known;
  readonly shown: Shown;
}
export interface LiveSettings {
  readonly origins: readonly string[];
  readonly isStopping: () => boolean;
  /** Who wants to connect. */
  readonly find: (shown: Shown) => Promise<Known | undefined>;
  /** Who that is at this moment, without that it counts as a request. */
  readonly lookUp: (shown: Shown) => Promise<Known | undefined>;
  /** A page of another site tried to connect. */
  readonly onForeign: () => Promise<void>;
  readonly onDefect: (failure: unknown) => void;
}
export interface Sockets {
  readonly count: () => number;
  /** Sees again who those are that `isConcerned` names; who is no longer who they were is let go of. */
  readonly seeAgain: (isConcerned: (known: Known) => boolean) => Promise<void>;
  /** Tells all to connect again elsewhere; nobody is taken any more. */
  readonly letGo: () => void;
  /** Waits a moment for those that were let go of, then cuts them off. */
  readonly close: () => Promise<void>;
}

/** Bytes of a message, connections of one person, and of all. */
const LARGEST_MESSAGE = 16_384;
const MOST_OF_ONE = 30;
const MOST = 2000;
/** Milliseconds between two looks whether sessions and tokens still hold, for what ends by time alone. */
const SEE_AGAIN_EVERY = 30_000;
/** Milliseconds that clients have to close. */
const PATIENCE = 1000;

/** Takes live connections of an HTTP server: GraphQL over WebSocket, by the protocol `graphql-transport-ws`. */
export function openSockets(
  server: HttpServer,
  protocol: Server<Connected>,
  { origins, isStopping, find, lookUp, onForeign, onDefect }: LiveSettings,
): Sockets {
  const taker = new WebSocketServer({
    ...{ noServer: true, maxPayload: LARGEST_MESSAGE, clientTracking: false, perMessageDeflate: false },
    handleProtocols: () => GRAPHQL_TRANSPORT_WS_PROTOCOL,
  });
  const open = new Map<WebSocket, Connected>();
  let isClosing = false;

  const take = async (request: IncomingMessage, socket: Duplex, head: Buffer): Promise<void> => {
    const { headers } = request;
    const refuse = (status: number, code: string, message: string) =>
      refuseUpgrade(socket, status, code, message);
    if (!isOwnHost(headers, origins))
      return refuse(421, "FOREIGN_HOST", "This server does not answer by that name.");
    if (!isOwnOrigin(headers, origins)) {
      await onForeign();
      return refuse(403, "FOREIGN_ORIGIN", "Only Scribeline's own page may connect from a browser.");
    }
    if (!asksForProtocol(headers["sec-websocket-protocol"]))
      return refuse(400, "BAD_REQUEST", `Ask for the protocol ${GRAPHQL_TRANSPORT_WS_PROTOCOL}.`);
    if (isStopping() || isClosing) return refuse(503, "SHUTTING_DOWN", "It is about to stop; connect again.");
    const shown = readShown(headers, origins);
    const known = await find(shown);
    if (known === undefined) return refuse(401, "NOT_SIGNED_IN", "Sign in first.");
    if (open.size >= MOST) return refuse(503, "TRY_LATER", "Too many are connected; try again later.");
    if (known.caller.via !== "loopback" && countOf(known.caller.id) >= MOST_OF_ONE)
      return refuse(429, "TRY_LATER", `One person has at most ${MOST_OF_ONE} live connections.`);
    taker.handleUpgrade(request, socket, head, (taken) => {
      const connected = { known, shown };
      open.set(taken, connected);
      taken.once("close", () => open.delete(taken));
      runSocket(protocol, taken, connected, onDefect);
      if (isClosing) taken.close(...CLOSED.restart);
    });
  };
  const countOf = (id: string): number =>
    [...open.values()].filter(({ known }) => known.caller.id === id).length;

  server.on("upgrade", (request, socket, head) => {
    socket.on("error", () => socket.destroy());
    take(request, socket, head).catch((failure: unknown) => {
      onDefect(failure);
      refuseUpgrade(socket, 500, "INTERNAL_SERVER_ERROR", "Something went wrong here; the log has it.");
    });
  });

  const seeAgain: Sockets["seeAgain"] = async (isConcerned) => {
    const concerned = [...open].filter(([, { known }]) => isConcerned(known));
    await Promise.all(
      concerned.map(async ([socket, { known, shown }]) => {
        // Where it cannot be found out, it counts as no longer so.
        const now = await lookUp(shown).catch(() => undefined);
        if (now?.caller.id !== known.caller.id || now.caller.role !== known.caller.role) {
          open.delete(socket);
          socket.close(...CLOSED.changed);
          setTimeout(() => socket.terminate(), PATIENCE).unref();
        }
      }),
    );
  };
  const byTime = setInterval(
    () => void seeAgain(({ caller }) => caller.via !== "loopback"),
    SEE_AGAIN_EVERY,
  ).unref();

  const letGo = (): void => {
    isClosing = true;
    clearInterval(byTime);
    for (const socket of open.keys()) socket.close(...CLOSED.restart);
  };
  return {
    count: () => open.size,
    seeAgain,
    letGo,
    close: async () => {
      letGo();
      const end = performance.now() + PATIENCE;
      while (open.size > 0 && performance.now() < end)
        await new Promise((resolve) => setTimeout(resolve, 10));
      for (const socket of open.keys()) socket.terminate();
      taker.close();
    },
  };
}

const asksForProtocol = (header: string | undefined): boolean =>
  (header ?? "").split(",").some((each) => each.trim() === GRAPHQL_TRANSPORT_WS_PROTOCOL);
