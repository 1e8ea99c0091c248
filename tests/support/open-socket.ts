import { WebSocket } from "ws";

export interface Message {
  readonly id?: string;
  readonly type: string;
  // What is told is the test's to know.
  // biome-ignore lint/suspicious/noExplicitAny: see above
  readonly payload?: any;
}

/** A live connection, as a client of any kind opens it; what it is told is kept until it is taken. */
export interface Socket {
  readonly send: (message: unknown) => void;
  /** Sends a text as it is. */
  readonly sendText: (text: string | Buffer) => void;
  /** The next message; rejects where it is closed first. */
  readonly next: () => Promise<Message>;
  /** What was subscribed under an id tells next. */
  readonly subscribe: (id: string, query: string, variables?: object) => void;
  readonly closed: Promise<{ readonly code: number; readonly reason: string }>;
  readonly close: () => void;
}

/** What a server is known by over TLS. */
export interface Tls {
  readonly ca: Buffer;
  readonly servername: string;
}

/** Opens a live connection with exactly these headers; rejects with the status where it is refused. */
export function openSocket(
  url: string,
  headers: Record<string, string> = {},
  protocol = "graphql-transport-ws",
  tls?: Tls,
): Promise<Socket> {
  const socket = new WebSocket(`${url.replace("http", "ws")}graphql`, protocol, { headers, ...tls });
  const messages: Message[] = [];
  const waiting: { readonly resolve: (message: Message) => void; readonly reject: (why: Error) => void }[] =
    [];
  let isOver = false;
  socket.on("message", (data) => {
    const message = JSON.parse(String(data)) as Message;
    const next = waiting.shift();
    if (next) next.resolve(message);
    else messages.push(message);
  });
  const closed = new Promise<{ code: number; reason: string }>((resolve) =>
    socket.once("close", (code, reason) => {
      isOver = true;
      for (const { reject } of waiting.splice(0)) reject(new Error(`closed: ${code} ${reason}`));
      resolve({ code, reason: String(reason) });
    }),
  );
  const send = (message: unknown) => socket.send(JSON.stringify(message));
  const opened: Socket = {
    ...{ send, closed },
    sendText: (text) => socket.send(text),
    next: () => {
      const message = messages.shift();
      if (message) return Promise.resolve(message);
      if (isOver) return Promise.reject(new Error("closed"));
      return new Promise((resolve, reject) => waiting.push({ resolve, reject }));
    },
    subscribe: (id, query, variables = {}) => send({ id, type: "subscribe", payload: { query, variables } }),
    close: () => socket.close(),
  };
  return new Promise((resolve, reject) => {
    socket.once("open", () => resolve(opened));
    socket.once("unexpected-response", (_, response) => {
      reject(new Error(`status ${response.statusCode}`));
      socket.terminate();
    });
    socket.on("error", reject);
  });
}

/** One that has begun, and may subscribe. */
export async function openLiveSocket(
  url: string,
  headers: Record<string, string> = {},
  tls?: Tls,
): Promise<Socket> {
  const socket = await openSocket(url, headers, undefined, tls);
  socket.send({ type: "connection_init" });
  const { type } = await socket.next();
  if (type !== "connection_ack") throw new Error(`Not let in: ${type}`);
  return socket;
}
